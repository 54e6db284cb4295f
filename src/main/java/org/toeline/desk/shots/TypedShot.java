package org.toeline.desk.shots;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.toeline.desk.text.Texts;
import org.toeline.flight.FigureUnit;
import org.toeline.flight.Shot;
import org.toeline.flight.ShotFigure;
import org.toeline.flight.table.Meaning;
import org.toeline.flight.table.TypedFigure;

/**
 * One row of the table: the shot, and what was typed into it that could not be read. Nothing typed is ever lost: what could
 * not be read is kept in the shot's remark, as {@code [launch-angle? 1x2]}, and stands in its cell again.
 *
 * @param unread by the meaning of the column it was typed under; never a blank text
 */
record TypedShot(Shot shot, Map<Meaning, String> unread) {

    static final TypedShot EMPTY = new TypedShot(new Shot(Map.of()), Map.of());

    private static final Pattern KEPT = Pattern.compile("\\s*\\[([a-z-]+)\\? ([^\\]]*)\\]");

    TypedShot {
        if (unread.isEmpty()) {
            unread = Map.of();
        } else {
            EnumMap<Meaning, String> copy = new EnumMap<>(Meaning.class);
            copy.putAll(unread);
            unread = Collections.unmodifiableMap(copy);
        }
    }

    /** A shot of the ledger; what its remark keeps of typing goes back into the cells. */
    static TypedShot of(Shot kept) {
        if (kept.remark().indexOf('[') < 0) {
            return new TypedShot(kept, Map.of());
        }
        Map<Meaning, String> unread = new EnumMap<>(Meaning.class);
        Matcher matcher = KEPT.matcher(kept.remark());
        StringBuilder remark = new StringBuilder();
        while (matcher.find()) {
            Optional<Meaning> meaning = Meaning.of(matcher.group(1));
            meaning.ifPresent(m -> unread.put(m, matcher.group(2)));
            matcher.appendReplacement(remark, meaning.isPresent() ? "" : Matcher.quoteReplacement(matcher.group()));
        }
        matcher.appendTail(remark);
        return new TypedShot(kept.withRemark(remark.toString()), unread);
    }

    /** As the ledger keeps it. */
    Shot kept() {
        if (unread.isEmpty()) {
            return shot;
        }
        StringBuilder remark = new StringBuilder(shot.remark());
        unread.forEach((meaning, text) -> remark.append(remark.isEmpty() ? "" : " ")
                .append('[')
                .append(meaning.id())
                .append("? ")
                .append(text.replace(']', ')'))
                .append(']'));
        return shot.withRemark(remark.toString());
    }

    /** @param why it is put aside; empty lets it count again */
    TypedShot aside(String why) {
        return new TypedShot(shot.withAside(why), unread);
    }

    boolean blank() {
        return shot.figures().isEmpty() && unread.isEmpty() && shot.remark().isEmpty();
    }

    /** The figure under a column, in the unit used inside; back and side spin follow from rate and axis. */
    OptionalDouble figure(Meaning meaning) {
        if (meaning.figure().isPresent()) {
            return shot.figure(meaning.figure().get());
        }
        OptionalDouble rate = shot.figure(ShotFigure.SPIN_RATE);
        OptionalDouble axis = shot.figure(ShotFigure.SPIN_AXIS);
        if (rate.isEmpty() || meaning == Meaning.SIDE_SPIN && axis.isEmpty()) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(rate.getAsDouble()
                * (meaning == Meaning.BACK_SPIN ? Math.cos(axis.orElse(0)) : Math.sin(axis.getAsDouble())));
    }

    /** What stands in a cell. */
    String text(Meaning meaning, ShotUnits units) {
        String typed = unread.get(meaning);
        OptionalDouble figure = figure(meaning);
        return typed != null ? typed : figure.isPresent() ? units.number(meaning, figure.getAsDouble()) : "";
    }

    /** Why what stands in a cell is not a figure. */
    Optional<String> fault(Meaning meaning, FigureUnit unit) {
        String typed = unread.get(meaning);
        return typed == null
                ? Optional.empty()
                : Optional.of(TypedFigure.of(typed, meaning, unit)
                        .fault()
                        .orElseGet(() -> Texts.of("shots.note.no-back-spin")));
    }

    /** The row with other text in one of its cells; the same text changes nothing. */
    TypedShot typed(Meaning meaning, String text, ShotUnits units) {
        return text.strip().equals(text(meaning, units)) ? this : put(meaning, text, units);
    }

    private TypedShot put(Meaning meaning, String text, ShotUnits units) {
        TypedFigure read = TypedFigure.of(text, meaning, units.of(meaning));
        TypedShot without = without(meaning);
        if (read.inside().isEmpty()) {
            return read.fault().isEmpty() ? without : without.withUnread(meaning, text);
        }
        TypedShot changed =
                switch (meaning) {
                    case BACK_SPIN -> without.withSpin(read.inside(), figure(Meaning.SIDE_SPIN));
                    case SIDE_SPIN ->
                        figure(Meaning.BACK_SPIN).isPresent()
                                ? without.withSpin(figure(Meaning.BACK_SPIN), read.inside())
                                : without.withUnread(meaning, text);
                    default ->
                        new TypedShot(
                                without.shot.with(
                                        meaning.figure().orElseThrow(),
                                        read.inside().getAsDouble()),
                                without.unread);
                };
        String waiting = changed.unread.get(Meaning.SIDE_SPIN);
        return meaning == Meaning.BACK_SPIN && waiting != null
                ? changed.put(Meaning.SIDE_SPIN, waiting, units)
                : changed;
    }

    private TypedShot withSpin(OptionalDouble back, OptionalDouble side) {
        Shot spun = shot.with(ShotFigure.SPIN_RATE, Math.hypot(back.getAsDouble(), side.orElse(0)));
        return new TypedShot(
                side.isEmpty()
                        ? spun
                        : spun.with(ShotFigure.SPIN_AXIS, Math.atan2(side.getAsDouble(), back.getAsDouble())),
                unread);
    }

    private TypedShot withUnread(Meaning meaning, String text) {
        EnumMap<Meaning, String> more = new EnumMap<>(Meaning.class);
        more.putAll(unread);
        more.put(meaning, text.strip());
        return new TypedShot(shot, more);
    }

    /** Without what stands under a column. Without back spin there is no spin; without side spin its axis is not known. */
    private TypedShot without(Meaning meaning) {
        EnumMap<Meaning, String> texts = new EnumMap<>(Meaning.class);
        texts.putAll(unread);
        texts.remove(meaning);
        EnumMap<ShotFigure, Double> figures = new EnumMap<>(ShotFigure.class);
        figures.putAll(shot.figures());
        meaning.figure().ifPresent(figures::remove);
        if (meaning == Meaning.BACK_SPIN) {
            figures.remove(ShotFigure.SPIN_RATE);
            figures.remove(ShotFigure.SPIN_AXIS);
        } else if (meaning == Meaning.SIDE_SPIN && figure(Meaning.BACK_SPIN).isPresent()) {
            figures.put(ShotFigure.SPIN_RATE, figure(Meaning.BACK_SPIN).getAsDouble());
            figures.remove(ShotFigure.SPIN_AXIS);
        }
        return new TypedShot(shot.withFigures(figures), texts);
    }
}

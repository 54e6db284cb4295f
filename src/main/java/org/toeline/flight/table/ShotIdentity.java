package org.toeline.flight.table;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.toeline.flight.Shot;
import org.toeline.flight.ShotFigure;
import org.toeline.language.Sentences;

/**
 * What makes rows the same shot: the same number or the same time within one club, player, day and title, if the figures
 * both rows have do not say otherwise. Rows that are alike without a number or a time are kept, and named.
 */
final class ShotIdentity {

    /** Such a share of the rows has a number or a time of its own, or they tell nothing. */
    private static final double APART = 0.3;

    private static final double SAME = 1e-6;
    /** More pairs of equal rows are counted, not listed. */
    private static final int LISTED = 5;

    private final TableBody body;
    private final List<Integer> keys = new ArrayList<>();
    private final List<Integer> names = new ArrayList<>();
    /** Whether any shot stands under a title. */
    private final boolean titled;

    /** Names as they are written first. */
    private final Map<String, String> written = new HashMap<>();

    private final Map<List<String>, Integer> shotOf = new HashMap<>();
    private final Map<List<String>, Integer> rows = new HashMap<>();
    private int alike;

    private ShotIdentity(TableBody body) {
        this.body = body;
        this.titled = body.rows().sections().stream().anyMatch(s -> !s.isEmpty());
    }

    static ShotIdentity of(TableBody body) {
        ShotIdentity identity = new ShotIdentity(body);
        Row headings = body.header().row();
        for (int i = 0; i < body.header().width(); i++) {
            String words = HeadingText.of(headings.cell(i)).words();
            if (HeadingNames.names(words) && identity.sorts(i, HeadingNames.is(HeadingNames.SETUP, words) ? 1 : 2)) {
                identity.names.add(i);
            }
            if ((HeadingNames.is("shot-number", words) || HeadingNames.is("time", words)) && identity.tellsApart(i)) {
                identity.keys.add(i);
            }
        }
        return identity;
    }

    /** A name for each row is no name of a group. */
    private boolean sorts(int place, int least) {
        List<Row> all = body.rows().shots();
        long values = all.stream().map(r -> value(r, place)).distinct().count();
        return values >= least && (values <= 3 || 2 * values <= all.size());
    }

    private boolean tellsApart(int place) {
        List<Row> all = body.rows().shots();
        long filled = all.stream()
                .filter(r -> r.cell(place).chars().anyMatch(Character::isDigit))
                .count();
        long apart = all.stream().map(r -> r.cell(place)).distinct().count();
        return filled == all.size() && apart >= APART * all.size() && apart > 1;
    }

    private static final Pattern BLANKS = Pattern.compile("[\\s\\u00a0]+");
    private static final Pattern DAY_AND_TIME = Pattern.compile("^(\\S*\\d[-/.年月]\\S*\\d\\S*)[T ]\\d{1,2}:\\d{2}.*$");

    /** Of a day with a time only the day; a name that differs in capitals and blanks alone as it is written first. */
    private String value(Row row, int place) {
        String cell = row.cell(place);
        String day = DAY_AND_TIME.matcher(cell).replaceFirst("$1");
        return day.isEmpty() ? Imported.NOTHING : written.computeIfAbsent(spelt(day), s -> day);
    }

    private static String spelt(String name) {
        return BLANKS.matcher(Normalizer.normalize(name, Normalizer.Form.NFKC))
                .replaceAll(" ")
                .strip()
                .toLowerCase(Locale.ROOT);
    }

    /** What tells a shot from those of another club, player, day or title. */
    Map<String, String> group(int index) {
        Map<String, String> group = new LinkedHashMap<>();
        Row row = body.rows().shots().get(index);
        names.forEach(n -> group.put(body.header().heading(n), value(row, n)));
        String title = body.rows().sections().get(index);
        if (titled) {
            group.put(Imported.TITLE, title.isEmpty() ? Imported.NOTHING : title);
        }
        return group;
    }

    private List<String> key(int index) {
        List<String> key = new ArrayList<>(group(index).values());
        keys.forEach(k -> key.add(body.rows().shots().get(index).cell(k)));
        return key;
    }

    /**
     * An earlier shot that a row is about as well.
     *
     * @param merged that shot with what this row adds; empty where the two contradict each other, and the first stays
     */
    record Twin(int shot, Optional<Shot> merged) {}

    Optional<Twin> twin(int index, Shot shot, List<Shot> shots) {
        Integer earlier = keys.isEmpty() ? null : shotOf.get(key(index));
        if (earlier == null) {
            return Optional.empty();
        }
        Shot first = shots.get(earlier);
        int both = 0;
        int same = 0;
        Shot merged = first;
        for (Map.Entry<ShotFigure, Double> e : shot.figures().entrySet()) {
            if (first.figure(e.getKey()).isPresent()) {
                both++;
                double other = first.figure(e.getKey()).getAsDouble();
                same += Math.abs(other - e.getValue()) <= SAME * Math.max(1, Math.abs(other)) ? 1 : 0;
            } else {
                merged = merged.with(e.getKey(), e.getValue());
            }
        }
        if (both > 0 && 2 * same < both) {
            return Optional.empty();
        }
        return Optional.of(same == both ? new Twin(earlier, Optional.of(merged)) : new Twin(earlier, Optional.empty()));
    }

    void seen(int index, int shot) {
        if (!keys.isEmpty()) {
            shotOf.put(key(index), shot);
        }
    }

    /** Says of the first few rows that they are alike. */
    Optional<String> identical(Row row, int shot, List<Integer> lines) {
        Integer before = rows.putIfAbsent(row.cells(), shot);
        if (before == null) {
            return Optional.empty();
        }
        alike++;
        return alike <= LISTED
                ? Optional.of(Sentences.of(ShotIdentity.class).of("table.alike", row.line(), lines.get(before)))
                : Optional.empty();
    }

    List<String> notes() {
        return alike > LISTED ? List.of(Sentences.of(ShotIdentity.class).of("table.alike-many", alike)) : List.of();
    }
}

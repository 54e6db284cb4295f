package org.toeline.desk.sheet;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.application.Platform;
import org.toeline.assist.Asked;
import org.toeline.assist.LandmarkSuggester;
import org.toeline.assist.RodNames;
import org.toeline.assist.SnappedRod;
import org.toeline.assist.ViewSuggestion;
import org.toeline.assist.ViewSuggestion.Part;
import org.toeline.assist.ViewSuggestion.Reason;
import org.toeline.camera.UsualLens;
import org.toeline.desk.lesson.Item;
import org.toeline.desk.lesson.LessonListener;
import org.toeline.desk.lesson.LessonModel;
import org.toeline.desk.lesson.MarkOrder;
import org.toeline.desk.lesson.Marking;
import org.toeline.desk.text.Texts;
import org.toeline.geometry.ImagePoint;
import org.toeline.ledger.ClipMoment;
import org.toeline.ledger.Unfinished;
import org.toeline.mark.BallMark;
import org.toeline.mark.FloorLayout;
import org.toeline.mark.FloorMark;
import org.toeline.mark.Handedness;
import org.toeline.mark.Landmark;
import org.toeline.mark.Mark;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;
import org.toeline.video.Frame;

/** Puts onto a view, as suggestions, all that the program sees in it, and says what it does not see and why. */
final class Suggesting implements LessonListener {

    /**
     * What was seen of a view's marked frame.
     *
     * @param moment the clip and its marked frame
     * @param hand   from which it was looked at
     */
    private record Seen(ClipMoment moment, Handedness hand, List<SnappedRod> rods) {}

    private final Map<View, Seen> seen = new EnumMap<>(View.class);
    private FloorLayout floor = FloorLayout.NONE;
    private final LessonModel model;
    private final Searches searches;
    private final ClipDrawer clips;
    private final Consumer<String> say;
    private Optional<LandmarkSuggester> suggester = Optional.empty();

    Suggesting(LessonModel model, Searches searches, ClipDrawer clips, Consumer<String> say) {
        this.model = model;
        this.searches = searches;
        this.clips = clips;
        this.say = say;
        model.listen(this);
    }

    /** As known of the view's lens, or as usual. */
    static double focalPx(LessonModel model, View of, Frame frame) {
        return model.marks(of)
                .map(v -> v.lens().focalPx())
                .orElse(OptionalDouble.empty())
                .orElse(UsualLens.MAIN.focalPx(frame.width(), frame.height()));
    }

    /** As the coach asks: of the large view. */
    void suggest() {
        View of = model.large();
        Optional<Frame> frame = clips.frame(of);
        if (frame.isEmpty() || model.marks(of).isEmpty()) {
            say.accept(Texts.of("suggest.no-clip"));
            return;
        }
        if (model.repeating()) {
            say.accept(Texts.of("suggest.again"));
            return;
        }
        if (model.away(of)) {
            say.accept(Texts.of("film.elsewhere"));
            return;
        }
        say.accept(Texts.of("suggest.looking"));
        Asked asked = asked(of, frame.get());
        searches.run(of, frame.get(), Texts.of("suggest.looking"), stopped -> look(asked, stopped), found -> {
            if (found.isEmpty()) {
                say.accept(Texts.of("suggest.no-model"));
                return;
            }
            ViewMarks marks = onto(model.sheet(), model.lesson().unfinished(), found.get(), of);
            if (!model.sheet().view(of).equals(Optional.of(marks))) {
                model.apply(model.sheet().withView(marks));
            }
            remember(of, asked, found.get());
            if (model.large() == of) {
                model.suggestions().lookAtNext();
            }
            say.accept(said(of, found.get()));
        });
    }

    /**
     * By itself, of the frame that a view is to be marked on: nothing that is selected, shown or to be undone changes.
     *
     * @param done when the looking has ended, whatever comes of it
     */
    void draft(View of, Frame frame, Runnable done) {
        Asked asked = asked(of, frame);
        String what = Texts.of("suggest.looking.in", Texts.of("view." + of.id()));
        BooleanSupplier stands =
                () -> clips.toBeMarked(of).filter(f -> f == frame).isPresent();
        Function<BooleanSupplier, Optional<ViewSuggestion>> work = stopped -> {
            try {
                return look(asked, stopped);
            } finally {
                Platform.runLater(done);
            }
        };
        searches.run(
                of,
                stands,
                what,
                work,
                found -> found.ifPresent(there -> {
                    remember(of, asked, there);
                    model.draft(of, (sheet, unfinished) -> onto(sheet, unfinished, there, of));
                    say.accept(Texts.of("suggest.drafted", Texts.of("view." + of.id()), said(of, there)));
                }));
    }

    private Asked asked(View of, Frame frame) {
        Optional<BallMark> ball = model.marks(of).flatMap(v -> v.onlyAccepted().ball());
        List<ImagePoint> hints = ball.map(b -> List.of(b.centre())).orElse(List.of());
        return new Asked(frame, of, model.sheet().handedness(), hints, focalPx(model, of, frame), ball);
    }

    private Optional<ViewSuggestion> look(Asked asked, BooleanSupplier stopped) {
        if (suggester.isEmpty()) {
            suggester = LandmarkSuggester.load();
        }
        try {
            return suggester.map(s -> s.suggest(asked, stopped));
        } catch (CancellationException e) {
            return Optional.empty(); // nobody waits for it any more
        }
    }

    private void remember(View of, Asked asked, ViewSuggestion what) {
        Optional.ofNullable(model.lesson().clips().get(of))
                .ifPresent(moment -> seen.put(of, new Seen(moment, asked.handedness(), what.rods())));
    }

    /** What lies on the ground is often said after the rods were seen: then their ends have a name. */
    @Override
    public void changed() {
        if (model.sheet().floor().equals(floor)) {
            return;
        }
        floor = model.sheet().floor();
        new EnumMap<>(seen).forEach((of, s) -> {
            if (s.moment.equals(model.lesson().clips().get(of))
                    && s.hand == model.sheet().handedness()) {
                model.draft(
                        of, (sheet, unfinished) -> withRods(sheet.view(of).orElseThrow(), sheet, unfinished, s.rods));
            }
        });
    }

    /** From which hand a view was looked at last. */
    Optional<Handedness> hand(View of) {
        return Optional.ofNullable(seen.get(of)).map(Seen::hand);
    }

    /** What was placed, also meanwhile, stays; what the coach said cannot be seen is not suggested. */
    private static ViewMarks onto(MarkSheet sheet, Unfinished unfinished, ViewSuggestion seen, View of) {
        ViewMarks v = sheet.view(of).orElseThrow().onlyAccepted();
        for (Mark mark : seen.landmarks()) {
            Item item = new Item.OfLandmark(mark.landmark());
            if (v.mark(mark.landmark()).isEmpty() && isIn(v, mark.at()) && !isUnseen(unfinished, v, item)) {
                v = v.withMark(mark);
            }
        }
        if (v.ball().isEmpty() && !isUnseen(unfinished, v, Item.BALL)) {
            v = v.withBall(seen.ball());
        }
        if (v.verticals().isEmpty() && !isUnseen(unfinished, v, new Item.OfVertical(0))) {
            v = v.withVerticals(seen.uprights());
        }
        return withRods(v, sheet, unfinished, seen.rods());
    }

    private static ViewMarks withRods(ViewMarks v, MarkSheet sheet, Unfinished unfinished, List<SnappedRod> rods) {
        ViewMarks with = v;
        for (FloorMark end : RodNames.of(rods, sheet.floor(), v.view(), sheet.handedness())) {
            Item item = new Item.OfFloor(end.pointId());
            if (v.floorMark(end.pointId()).isEmpty() && isIn(v, end.at()) && !isUnseen(unfinished, v, item)) {
                with = with.withFloorMark(end);
            }
        }
        return with;
    }

    private static boolean isIn(ViewMarks v, ImagePoint at) {
        return at.xPx() >= 0 && at.xPx() <= v.widthPx() && at.yPx() >= 0 && at.yPx() <= v.heightPx();
    }

    private static boolean isUnseen(Unfinished unfinished, ViewMarks v, Item item) {
        return unfinished.unseen(v.view()).contains(item.name());
    }

    /** How much there is to look at, then a sentence for each thing that is neither there nor marked already. */
    private String said(View of, ViewSuggestion seen) {
        ViewMarks v = model.sheet().view(of).orElseThrow();
        Map<Part, Reason> missing = new EnumMap<>(Part.class);
        missing.putAll(seen.missing());
        Optional<Reason> nobody = Optional.ofNullable(missing.get(Part.BODY))
                .filter(r -> missing.get(Part.SHAFT) == r && missing.get(Part.UPRIGHTS) == r);
        if (nobody.isPresent()) {
            return Texts.of("suggest.none." + word(nobody.get()));
        }
        if (of != View.TEE) {
            missing.putIfAbsent(Part.RODS, Reason.NOT_FOUND);
        }
        List<String> sentences = new ArrayList<>();
        sentences.add(Texts.of(
                "suggest.found",
                Marking.marked(v).stream()
                        .filter(i -> MarkOrder.suggested(v, i))
                        .count()));
        missing.forEach((part, reason) -> {
            if (!isThere(v, part)) {
                sentences.add(Texts.of("suggest.missing." + word(part) + "." + word(reason)));
            }
        });
        return String.join(" ", sentences);
    }

    private boolean isThere(ViewMarks v, Part part) {
        return switch (part) {
            case BODY -> v.marks().stream().anyMatch(m -> !isOfTheClub(m));
            case SHAFT -> v.marks().stream().anyMatch(Suggesting::isOfTheClub);
            case BALL -> !Marking.handles(v, Item.BALL).isEmpty();
            case RODS ->
                !v.floorMarks().isEmpty() || model.sheet().floor().points().isEmpty();
            case UPRIGHTS -> !v.verticals().isEmpty();
            case CROWN -> v.mark(Landmark.CROWN).isPresent();
            case GROUND -> v.mark(Landmark.GROUND).isPresent();
        };
    }

    private static boolean isOfTheClub(Mark mark) {
        return switch (mark.landmark()) {
            case CLUB_HEAD, GRIP_END -> true;
            default -> false;
        };
    }

    private static String word(Enum<?> of) {
        return of.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }

    void close() {
        suggester.ifPresent(LandmarkSuggester::close);
    }
}

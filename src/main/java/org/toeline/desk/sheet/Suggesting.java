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
import org.toeline.assist.Asked;
import org.toeline.assist.LandmarkSuggester;
import org.toeline.assist.RodNames;
import org.toeline.assist.ViewSuggestion;
import org.toeline.assist.ViewSuggestion.Part;
import org.toeline.assist.ViewSuggestion.Reason;
import org.toeline.camera.UsualLens;
import org.toeline.desk.lesson.Item;
import org.toeline.desk.lesson.LessonModel;
import org.toeline.desk.lesson.Marking;
import org.toeline.desk.text.Texts;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.FloorMark;
import org.toeline.mark.Mark;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;
import org.toeline.video.Frame;

/** Puts onto a view, as suggestions, all that the program sees in it, and says what it does not see and why. */
final class Suggesting {

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
    }

    /** As known of the view's lens, or as usual. */
    static double focalPx(LessonModel model, Frame frame) {
        return model.marks(model.large())
                .map(v -> v.lens().focalPx())
                .orElse(OptionalDouble.empty())
                .orElse(UsualLens.MAIN.focalPx(frame.width(), frame.height()));
    }

    void suggest() {
        View of = model.large();
        Optional<Frame> frame = clips.frame(of);
        Optional<ViewMarks> marks = model.marks(of);
        if (frame.isEmpty() || marks.isEmpty()) {
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
        List<ImagePoint> hints =
                marks.get().onlyAccepted().ball().map(b -> List.of(b.centre())).orElse(List.of());
        Asked asked = new Asked(frame.get(), of, model.sheet().handedness(), hints, focalPx(model, frame.get()));
        searches.run(of, frame.get(), Texts.of("suggest.looking"), stopped -> look(asked, stopped), found -> {
            if (found.isEmpty()) {
                say.accept(Texts.of("suggest.no-model"));
            } else {
                add(of, found.get());
            }
        });
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

    /** What was placed, also meanwhile, stays; what the coach said cannot be seen is not suggested. */
    private void add(View of, ViewSuggestion seen) {
        ViewMarks was = model.sheet().view(of).orElseThrow();
        ViewMarks v = was.onlyAccepted();
        Map<Part, Reason> missing = new EnumMap<>(Part.class);
        missing.putAll(seen.missing());
        int count = 0;
        for (Mark mark : seen.landmarks()) {
            if (v.mark(mark.landmark()).isEmpty() && fits(of, v, mark.at(), new Item.OfLandmark(mark.landmark()))) {
                v = v.withMark(mark);
                count++;
            }
        }
        if (v.ball().isEmpty() && seen.ball().isPresent() && !model.unseen(of, Item.BALL)) {
            v = v.withBall(seen.ball());
            count++;
        }
        List<FloorMark> ends = RodNames.of(
                seen.rods(), model.sheet().floor(), of, model.sheet().handedness());
        if (ends.isEmpty()) {
            missing.put(Part.RODS, Reason.NOT_FOUND);
        }
        for (FloorMark end : ends) {
            if (v.floorMark(end.pointId()).isEmpty() && fits(of, v, end.at(), new Item.OfFloor(end.pointId()))) {
                v = v.withFloorMark(end);
                count++;
            }
        }
        if (v.verticals().isEmpty() && !model.unseen(of, new Item.OfVertical(0))) {
            v = v.withVerticals(seen.uprights());
            count += seen.uprights().size();
        }
        if (!v.equals(was)) {
            model.apply(model.sheet().withView(v));
        }
        if (model.large() == of) {
            model.suggestions().lookAtNext();
        }
        say.accept(said(v, missing, count));
    }

    private boolean fits(View of, ViewMarks v, ImagePoint at, Item item) {
        return at.xPx() >= 0
                && at.xPx() <= v.widthPx()
                && at.yPx() >= 0
                && at.yPx() <= v.heightPx()
                && !model.unseen(of, item);
    }

    /** How much there is to look at, then a sentence for each thing that is neither there nor marked already. */
    private String said(ViewMarks v, Map<Part, Reason> missing, int count) {
        Optional<Reason> nobody = Optional.ofNullable(missing.get(Part.BODY))
                .filter(r -> missing.get(Part.SHAFT) == r && missing.get(Part.UPRIGHTS) == r);
        if (nobody.isPresent()) {
            return Texts.of("suggest.none." + word(nobody.get()));
        }
        List<String> sentences = new ArrayList<>();
        sentences.add(Texts.of("suggest.found", count));
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

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
import java.util.function.Supplier;
import javafx.application.Platform;
import org.toeline.assist.Asked;
import org.toeline.assist.LandmarkSuggester;
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
import org.toeline.mark.Handedness;
import org.toeline.mark.Landmark;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;
import org.toeline.video.Frame;

/** Puts onto a view, as suggestions, all that the program sees in it, and says what it does not see and why. */
final class Suggesting implements LessonListener {

    /**
     * What was seen of the frame that a view is marked on, or will be.
     *
     * @param clip  its file name as the lesson has it
     * @param frame which one of the clip
     * @param hand  from which it was looked at
     */
    private record Seen(String clip, int frame, Handedness hand, ViewSuggestion what) {}

    private final Map<View, Seen> seen = new EnumMap<>(View.class);
    private final HandSeen hands = new HandSeen();
    private FloorLayout floor = FloorLayout.NONE;
    private Handedness set;
    private final LessonModel model;
    private final Searches searches;
    private final ClipDrawer clips;
    private final Consumer<String> say;
    private final Learning learning;
    private Optional<LandmarkSuggester> suggester = Optional.empty();

    Suggesting(LessonModel model, Searches searches, ClipDrawer clips, Learning learning, Consumer<String> say) {
        this.model = model;
        this.searches = searches;
        this.clips = clips;
        this.learning = learning;
        this.say = say;
        this.set = model.sheet().handedness();
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
        Supplier<List<Frame>> still = still(of, frame.get());
        searches.run(of, frame.get(), Texts.of("suggest.looking"), stopped -> look(asked, still, stopped), found -> {
            if (found.isEmpty()) {
                say.accept(Texts.of("suggest.no-model"));
                return;
            }
            ViewSuggestion there = remember(of, asked, found.get());
            ViewMarks marks = onto(model.sheet(), model.lesson().unfinished(), of, asked.handedness(), there);
            if (!model.sheet().view(of).equals(Optional.of(marks))) {
                model.apply(model.sheet().withView(marks));
            }
            if (model.large() == of) {
                model.suggestions().lookAtNext();
            }
            say.accept(said(of, there));
        });
    }

    /**
     * By itself, of the frame that a view is to be marked on: nothing that is selected, shown or to be undone changes.
     *
     * @param done when the looking has ended, whatever comes of it
     */
    void draft(View of, Frame frame, Runnable done) {
        Asked asked = asked(of, frame);
        Supplier<List<Frame>> still = still(of, frame);
        String what = Texts.of("suggest.looking.in", Texts.of("view." + of.id()));
        BooleanSupplier stands =
                () -> clips.toBeMarked(of).filter(f -> f == frame).isPresent();
        Function<BooleanSupplier, Optional<ViewSuggestion>> work = stopped -> {
            try {
                return look(asked, still, stopped);
            } finally {
                Platform.runLater(done);
            }
        };
        searches.run(
                of,
                stands,
                what,
                work,
                found -> found.ifPresent(saw -> {
                    ViewSuggestion there = remember(of, asked, saw);
                    draft(of, asked.handedness(), there);
                    say.accept(Texts.of("suggest.drafted", Texts.of("view." + of.id()), said(of, there)));
                }));
    }

    private void draft(View of, Handedness hand, ViewSuggestion what) {
        model.draft(of, (sheet, unfinished) -> onto(sheet, unfinished, of, hand, what));
    }

    private ViewMarks onto(MarkSheet sheet, Unfinished unfinished, View of, Handedness hand, ViewSuggestion what) {
        boolean sides = sheet.handedness() == hand && hands.tellsSides(of, model.lesson());
        return OntoView.all(sheet, unfinished, what, of, sides);
    }

    private Asked asked(View of, Frame frame) {
        Optional<BallMark> ball = model.marks(of).flatMap(v -> v.onlyAccepted().ball());
        List<ImagePoint> hints = ball.map(b -> List.of(b.centre())).orElse(List.of());
        return new Asked(frame, of, model.sheet().handedness(), hints, focalPx(model, of, frame), ball, List.of());
    }

    /** Close by nobody is looked for, and nothing again. */
    private Supplier<List<Frame>> still(View of, Frame frame) {
        return Optional.ofNullable(clips.open.get(of))
                .filter(o -> of != View.TEE)
                .map(o -> o.still(frame, clips.slowMotion(of).factor()))
                .orElse(List::of);
    }

    /** @param still other frames of the still span */
    private Optional<ViewSuggestion> look(Asked asked, Supplier<List<Frame>> still, BooleanSupplier stopped) {
        if (suggester.isEmpty()) {
            suggester = LandmarkSuggester.load();
        }
        try {
            return suggester.map(s -> s.suggest(asked.with(still.get()), stopped));
        } catch (CancellationException e) {
            return Optional.empty(); // nobody waits for it any more
        }
    }

    /** As it is suggested to this coach. */
    private ViewSuggestion remember(View of, Asked asked, ViewSuggestion saw) {
        ViewSuggestion what = learning.suggested(of, asked.handedness(), saw);
        Optional.ofNullable(model.lesson().clips().get(of)).ifPresent(moment -> {
            seen.put(of, new Seen(moment.clip(), asked.frame().index(), asked.handedness(), what));
            // of a player who is seen from another side than asked for the hand is none
            hands.saw(of, moment.clip(), what.hand().filter(h -> what.view().equals(Optional.of(of))));
        });
        withdrawSides();
        return what;
    }

    /** Takes away what is suggested and tells lead from trail, where nothing of the kind may be suggested now. */
    private void withdrawSides() {
        for (View view : View.values()) {
            boolean ofTheOther = Optional.ofNullable(seen.get(view))
                    .filter(s -> s.hand != set)
                    .isPresent();
            if (model.sheet().view(view).isPresent() && (ofTheOther || !hands.tellsSides(view, model.lesson()))) {
                model.draft(
                        view,
                        (sheet, unfinished) ->
                                OntoView.withoutSides(sheet.view(view).orElseThrow()));
            }
        }
    }

    /** From which hand the pictures show the player to play. */
    HandSeen hands() {
        return hands;
    }

    /** The hand that is set is the right one: what was not suggested while it was asked is suggested now. */
    void keepHand() {
        hands.keep(model.lesson());
        new EnumMap<>(seen).forEach((of, s) -> {
            if (isOfNow(of, s) && hands.tellsSides(of, model.lesson())) {
                draft(of, s.hand, s.what);
            }
        });
    }

    private boolean isOfNow(View of, Seen s) {
        ClipMoment now = model.lesson().clips().get(of);
        OpenClip open = clips.open.get(of);
        boolean sameFrame =
                now != null && open != null && now.clip().equals(s.clip) && open.place(now.seconds()) == s.frame;
        return sameFrame && s.hand == model.sheet().handedness();
    }

    /** What lies on the ground is often said after the rods were seen: then their ends have a name. The other hand exchanges sides. */
    @Override
    public void changed() {
        if (model.sheet().handedness() != set) {
            set = model.sheet().handedness();
            withdrawSides();
        }
        if (model.sheet().floor().equals(floor)) {
            return;
        }
        floor = model.sheet().floor();
        new EnumMap<>(seen).forEach((of, s) -> {
            if (isOfNow(of, s) && hands.tellsSides(of, model.lesson())) {
                model.draft(
                        of,
                        (sheet, unfinished) ->
                                OntoView.rods(sheet.view(of).orElseThrow(), sheet, unfinished, s.what.rods()));
            }
        });
    }

    /** From which hand a view was looked at last. */
    Optional<Handedness> hand(View of) {
        return Optional.ofNullable(seen.get(of)).map(Seen::hand);
    }

    /** How much there is to look at, then a sentence for each thing that is neither there nor marked already. */
    private String said(View of, ViewSuggestion seen) {
        ViewMarks v = model.sheet().view(of).orElseThrow();
        Map<Part, Reason> missing = new EnumMap<>(Part.class);
        missing.putAll(seen.missing());
        Optional<String> nobody = MissingWords.ofNobody(missing);
        if (nobody.isPresent()) {
            return nobody.get();
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
                sentences.add(MissingWords.of(part, reason));
            }
        });
        return String.join(" ", sentences);
    }

    private boolean isThere(ViewMarks v, Part part) {
        return switch (part) {
            case BODY -> v.marks().stream().anyMatch(OntoView::isOfTheBody);
            case SHAFT -> v.marks().stream().anyMatch(OntoView::isOfTheClub);
            case BALL -> !Marking.handles(v, Item.BALL).isEmpty();
            case RODS ->
                !v.floorMarks().isEmpty() || model.sheet().floor().points().isEmpty();
            case UPRIGHTS -> !v.verticals().isEmpty();
            case CROWN -> v.mark(Landmark.CROWN).isPresent();
            case GROUND -> v.mark(Landmark.GROUND).isPresent();
        };
    }

    void close() {
        suggester.ifPresent(LandmarkSuggester::close);
    }
}

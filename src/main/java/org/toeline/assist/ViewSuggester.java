package org.toeline.assist;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import org.toeline.assist.BonyPoints.Axes;
import org.toeline.assist.PoseModel.Seen;
import org.toeline.assist.ShaftSearch.Shaft;
import org.toeline.assist.Strokes.Stroke;
import org.toeline.assist.ViewSuggestion.Part;
import org.toeline.assist.ViewSuggestion.Reason;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.BallMark;
import org.toeline.mark.Handedness;
import org.toeline.mark.Landmark;
import org.toeline.mark.Mark;
import org.toeline.mark.VerticalMark;
import org.toeline.mark.View;
import org.toeline.video.Frame;

/**
 * Marks a whole view: body, shaft, ball, rods and uprights, in this order, since each is looked for where the one before says.
 * Without a player there is nothing, without a shaft no ball; and a shaft with no ball at its end is none.
 */
final class ViewSuggester {

    /** Of the club's head on the shaft's line: the ground is known from the ball, and on what tee that lies is not. */
    private static final double HEAD_SIGMA = 0.019;

    private static final double GRIP_SIGMA = 0.020;
    /** From the middle of the hands up to the end of the grip, measured on drawn players. */
    private static final double GRIP_UP_FACE_ON = 0.048;

    private static final double GRIP_UP_DOWN_THE_LINE = 0.060;

    /** Another frame of the still span, and the player in it. */
    private record Again(Frame frame, Optional<Seen> seen) {}

    private final PoseModel model;
    private final BooleanSupplier stopped;
    private final Map<Part, Reason> missing = new EnumMap<>(Part.class);

    ViewSuggester(PoseModel model, BooleanSupplier stopped) {
        this.model = model;
        this.stopped = stopped;
    }

    ViewSuggestion suggest(Asked asked) {
        Frame frame = asked.frame();
        PoseSearch search = new PoseSearch(model, frame);
        Optional<Seen> person = search.person(asked.hints());
        check();
        if (person.isEmpty()) {
            return ViewSuggestion.nothing(search.unclear() ? Reason.NOT_CLEAR : Reason.NOBODY);
        }
        return around(asked, search, person.get());
    }

    private ViewSuggestion around(Asked asked, PoseSearch search, Seen seen) {
        Frame frame = asked.frame();
        Optional<View> view = Standing.view(seen);
        Optional<Handedness> hand = Standing.hand(seen, asked.view());
        List<List<Stroke>> strokes = strokes(frame);
        check();
        List<Stroke> bright = strokes.get(Strokes.Of.BRIGHTNESS.ordinal());
        Optional<Shaft> shaft = new ShaftSearch(frame, seen).in(bright);
        List<BallMark> discs = new ArrayList<>();
        List<SnappedRod> rods = new ArrayList<>();
        List<VerticalMark> uprights = new ArrayList<>();
        AtomicBoolean several = new AtomicBoolean();
        List<Again> again = new ArrayList<>();
        sideBySide(
                () -> {
                    several.set(asked.hints().isEmpty() && search.anotherBeside(seen));
                    again.addAll(again(asked, search, seen));
                },
                () -> shaft.filter(s -> !s.rival())
                        .ifPresent(s -> discs.addAll(
                                new BallSearch(frame, asked.view(), asked.focalPx()).near(s, seen, stopped))),
                () -> rods.addAll(new RodSearch(frame, seen, shaft).in(coloured(strokes))),
                () -> uprights.addAll(new UprightSearch(frame, seen).in(bright)));
        check();
        if (several.get()) {
            return ViewSuggestion.nothing(Reason.SEVERAL);
        }
        List<Mark> marks = new ArrayList<>(body(seen, again, asked, view, hand));
        Optional<BallMark> ball = ball(shaft, BallSearch.besides(discs, rods)).flatMap(b -> steady(b, asked));
        if (ball.isPresent()) {
            List<Mark> club = steadyClub(shaft.orElseThrow(), ball.get(), seen, again, asked);
            marks.addAll(club);
            ball = ball.filter(b -> !club.isEmpty());
        }
        if (rods.isEmpty()) {
            missing.put(Part.RODS, Reason.NOT_FOUND);
        }
        if (uprights.isEmpty()) {
            missing.put(Part.UPRIGHTS, Reason.NOT_FOUND);
        }
        return new ViewSuggestion(
                view, hand, OptionalDouble.of(PoseSearch.span(seen)), marks, ball, rods, uprights, missing);
    }

    /** In the order of {@link Strokes.Of}. */
    private static List<List<Stroke>> strokes(Frame frame) {
        return Stream.of(Strokes.Of.values())
                .parallel()
                .map(of -> Strokes.of(frame, of))
                .toList();
    }

    private static List<Stroke> coloured(List<List<Stroke>> strokes) {
        List<Stroke> coloured = new ArrayList<>(strokes.get(Strokes.Of.BLUE.ordinal()));
        coloured.addAll(strokes.get(Strokes.Of.RED.ordinal()));
        return coloured;
    }

    /** What needs nothing of one another, on as many processors as there are; back when all is done. */
    private void sideBySide(Runnable... searches) {
        Stream.of(searches).parallel().filter(s -> !stopped.getAsBoolean()).forEach(Runnable::run);
    }

    /** Lead and trail are exchanged where the hand is the other one: nothing of the body is suggested then. */
    private List<Mark> body(Seen seen, List<Again> again, Asked asked, Optional<View> view, Optional<Handedness> hand) {
        Optional<Sides> sides = Sides.of(seen, asked.view(), asked.handedness() == Handedness.RIGHT);
        if (view.isPresent() && view.get() != asked.view()) {
            missing.put(Part.BODY, Reason.OTHER_VIEW);
        } else if (hand.isPresent() && hand.get() != asked.handedness()) {
            missing.put(Part.BODY, Reason.OTHER_HAND);
        } else if (view.isEmpty() || sides.isEmpty()) {
            missing.put(Part.BODY, Reason.NOT_CLEAR);
        } else {
            return steadyBody(sides.get(), again, asked);
        }
        return List.of();
    }

    private List<Mark> steadyBody(Sides sides, List<Again> again, Asked asked) {
        boolean rightTrails = asked.handedness() == Handedness.RIGHT;
        List<List<Mark>> frames = new ArrayList<>();
        frames.add(BonyPoints.of(sides, asked.view(), asked.handedness()));
        for (Again a : again) {
            frames.add(a.seen.flatMap(s -> Sides.of(s, asked.view(), rightTrails))
                    .map(s -> BonyPoints.of(s, asked.view(), asked.handedness()))
                    .orElse(List.of()));
        }
        List<Mark> steady = Steady.marks(frames);
        if (steady.isEmpty()) {
            missing.put(Part.BODY, Reason.UNSTEADY);
        }
        return steady;
    }

    /** The player in the other frames, one after the other: the model takes one at a time. */
    private List<Again> again(Asked asked, PoseSearch search, Seen seen) {
        return asked.still().stream()
                .filter(f -> !stopped.getAsBoolean())
                .map(f -> new Again(f, search.again(f, seen)))
                .toList();
    }

    private Optional<BallMark> steady(BallMark ball, Asked asked) {
        List<Optional<BallMark>> frames = new ArrayList<>();
        frames.add(Optional.of(ball));
        frames.addAll(asked.still().parallelStream()
                .map(f -> stopped.getAsBoolean()
                        ? Optional.<BallMark>empty()
                        : BallOutline.fit(f, asked.view(), asked.focalPx(), ball.centre()))
                .toList());
        check();
        Optional<BallMark> steady = Steady.ball(frames);
        if (steady.isEmpty()) {
            missing.put(Part.BALL, Reason.UNSTEADY);
            missing.put(Part.SHAFT, Reason.NO_BALL);
        }
        return steady;
    }

    /** Both of its ends or none: they lie on one line. */
    private List<Mark> steadyClub(Shaft shaft, BallMark ball, Seen seen, List<Again> again, Asked asked) {
        List<List<Mark>> frames = new ArrayList<>();
        frames.add(club(shaft, ball, seen, asked.view()));
        for (Again a : again) {
            frames.add(a.seen.flatMap(s ->
                            new ShaftSearch(a.frame, s).again(shaft).map(there -> club(there, ball, s, asked.view())))
                    .orElse(List.of()));
        }
        List<Mark> steady = Steady.marks(frames);
        if (steady.size() == frames.get(0).size()) {
            return steady;
        }
        missing.put(Part.SHAFT, Reason.UNSTEADY);
        missing.put(Part.BALL, Reason.NO_SHAFT);
        return List.of();
    }

    private Optional<BallMark> ball(Optional<Shaft> shaft, List<BallMark> balls) {
        if (shaft.isEmpty() || shaft.get().rival()) {
            missing.put(Part.SHAFT, shaft.isEmpty() ? Reason.NOT_FOUND : Reason.SEVERAL);
            missing.put(Part.BALL, Reason.NO_SHAFT);
            return Optional.empty();
        }
        if (balls.size() == 1) {
            return Optional.of(balls.get(0));
        }
        missing.put(Part.SHAFT, Reason.NO_BALL);
        missing.put(Part.BALL, balls.isEmpty() ? Reason.NOT_FOUND : Reason.SEVERAL);
        return Optional.empty();
    }

    /** The club's head lies on the shaft's line where the ground at the ball is, the grip's end above the hands. */
    private static List<Mark> club(Shaft shaft, BallMark ball, Seen seen, View view) {
        double span = PoseSearch.span(seen);
        double length = Math.max(1, shaft.lengthPx());
        Axes up = new Axes(
                (shaft.hands().xPx() - shaft.low().xPx()) / length,
                (shaft.hands().yPx() - shaft.low().yPx()) / length);
        double gripUp = view == View.FACE_ON ? GRIP_UP_FACE_ON : GRIP_UP_DOWN_THE_LINE;
        ImagePoint end = up.moved(shaft.hands(), 0, gripUp * span);
        double groundY = ball.centre().yPx() + 0.9 * ball.diameterPx().orElse(0);
        return List.of(
                new Mark(Landmark.GRIP_END, end, GRIP_SIGMA * span, Mark.Origin.SUGGESTED),
                new Mark(Landmark.CLUB_HEAD, shaft.atRow(groundY), HEAD_SIGMA * span, Mark.Origin.SUGGESTED));
    }

    private void check() {
        if (stopped.getAsBoolean()) {
            throw new CancellationException("stopped");
        }
    }
}

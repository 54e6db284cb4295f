package org.toeline.assist;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import org.toeline.assist.BonyPoints.Axes;
import org.toeline.assist.PoseModel.Seen;
import org.toeline.assist.ShaftSearch.Shaft;
import org.toeline.assist.Strokes.Stroke;
import org.toeline.assist.ViewSuggestion.Part;
import org.toeline.assist.ViewSuggestion.Reason;
import org.toeline.assist.ViewSuggestion.Upright;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.BallMark;
import org.toeline.mark.Handedness;
import org.toeline.mark.Landmark;
import org.toeline.mark.Mark;
import org.toeline.mark.View;
import org.toeline.video.Frame;

/**
 * Marks a whole view in one go: body, shaft, ball, rods and uprights, in this order, since each is looked for where the one
 * before says. Without a player there is nothing, without a shaft no ball. The body is the median over the frames given;
 * the rest is looked for in the first of them, which is the marked one.
 */
final class ViewSuggester {

    /** Of the club's head on the shaft's line: the ground is known from the ball, and on what tee that lies is not. */
    private static final double HEAD_SIGMA = 0.014;

    private static final double GRIP_SIGMA = 0.020;
    /** From the middle of the hands up to the end of the grip, measured on the sample clips. */
    private static final double GRIP_UP = 0.075;

    private final PoseModel model;
    private final BooleanSupplier stopped;
    private final Map<Part, Reason> missing = new EnumMap<>(Part.class);
    private final Map<Part, Reason> doubtful = new EnumMap<>(Part.class);

    ViewSuggester(PoseModel model, BooleanSupplier stopped) {
        this.model = model;
        this.stopped = stopped;
    }

    ViewSuggestion suggest(List<Frame> frames, View view, Handedness handedness, double focalPx) {
        Frame frame = frames.get(0);
        PoseSearch search = new PoseSearch(model, frame);
        Optional<Seen> first = search.person(List.of());
        if (first.isEmpty()) {
            return ViewSuggestion.nothing(search.unclear() ? Reason.NOT_CLEAR : Reason.NOBODY);
        }
        check();
        Seen seen = search.over(first.get(), frames.subList(1, frames.size()), this::check);
        Optional<View> seemsFrom = Standing.view(seen);
        Optional<Handedness> seemsHand = Standing.hand(seen, view);
        List<Mark> marks = new ArrayList<>(body(seen, view, handedness, seemsFrom, seemsHand));
        check();
        List<Stroke> strokes = Strokes.of(frame, 0);
        check();
        Optional<Shaft> shaft = new ShaftSearch(frame, seen).in(strokes);
        Optional<BallMark> ball = ball(frame, view, focalPx, shaft, PoseSearch.span(seen));
        shaft.ifPresent(s -> marks.addAll(club(s, ball, seen)));
        check();
        LineFinder lines = new LineFinder(frame, seen);
        List<Stroke> coloured = new ArrayList<>(Strokes.of(frame, 1));
        coloured.addAll(Strokes.of(frame, 2));
        check();
        List<SnappedRod> rods = lines.rods(coloured);
        List<Upright> uprights = lines.uprights(strokes);
        if (rods.isEmpty()) {
            missing.put(Part.RODS, Reason.BY_HAND);
        }
        if (uprights.isEmpty()) {
            missing.put(Part.UPRIGHTS, Reason.NOT_FOUND);
        }
        return new ViewSuggestion(seemsFrom, seemsHand, marks, ball, rods, uprights, missing, doubtful);
    }

    private List<Mark> body(
            Seen seen, View view, Handedness handedness, Optional<View> seemsFrom, Optional<Handedness> seemsHand) {
        if (seemsFrom.isPresent() && seemsFrom.get() != view) {
            missing.put(Part.BODY, Reason.OTHER_VIEW);
            return List.of();
        }
        Optional<Sides> sides = Sides.of(seen, view, handedness == Handedness.RIGHT);
        if (sides.isEmpty()) {
            missing.put(Part.BODY, Reason.NOT_CLEAR);
            return List.of();
        }
        if (seemsFrom.isEmpty()) {
            doubtful.put(Part.BODY, Reason.OTHER_VIEW);
        } else if (seemsHand.isPresent() && seemsHand.get() != handedness) {
            doubtful.put(Part.BODY, Reason.OTHER_HAND);
        }
        List<Mark> marks = BonyPoints.of(sides.get(), view, handedness);
        if (view == View.DOWN_THE_LINE && Standing.shouldersInOnePlace(seen)) {
            doubtful.putIfAbsent(Part.BODY, Reason.UNORDERED);
        }
        return marks;
    }

    private Optional<BallMark> ball(Frame frame, View view, double focalPx, Optional<Shaft> shaft, double span) {
        if (shaft.isEmpty()) {
            missing.put(Part.SHAFT, Reason.NOT_FOUND);
            missing.put(Part.BALL, Reason.NO_SHAFT);
            return Optional.empty();
        }
        if (shaft.get().rival()) {
            doubtful.put(Part.SHAFT, Reason.SEVERAL);
        }
        List<BallMark> balls =
                new BallSearch(frame, view, focalPx).near(shaft.get().low(), span);
        if (balls.isEmpty()) {
            missing.put(Part.BALL, Reason.BY_HAND);
            return Optional.empty();
        }
        if (balls.size() > 1) {
            doubtful.put(Part.BALL, Reason.SEVERAL);
        }
        return Optional.of(balls.get(0));
    }

    /** The club's head lies on the shaft's line where the ground at the ball is, the grip's end above the hands. */
    private static List<Mark> club(Shaft shaft, Optional<BallMark> ball, Seen seen) {
        double span = PoseSearch.span(seen);
        double length = Math.max(1, shaft.lengthPx());
        Axes up = new Axes(
                (shaft.hands().xPx() - shaft.low().xPx()) / length,
                (shaft.hands().yPx() - shaft.low().yPx()) / length);
        List<Mark> marks = new ArrayList<>();
        ImagePoint end = up.moved(shaft.hands(), 0, GRIP_UP * span);
        marks.add(new Mark(Landmark.GRIP_END, end, GRIP_SIGMA * span, Mark.Origin.SUGGESTED));
        ball.ifPresent(b -> {
            double ground = b.centre().yPx() + 0.9 * b.diameterPx().orElse(0);
            ImagePoint head = shaft.atRow(ground);
            marks.add(new Mark(Landmark.CLUB_HEAD, head, HEAD_SIGMA * span, Mark.Origin.SUGGESTED));
        });
        return marks;
    }

    private void check() {
        if (stopped.getAsBoolean()) {
            throw new CancellationException("stopped");
        }
    }
}

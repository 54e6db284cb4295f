package org.toeline.mark;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.toeline.language.Sentences;

/**
 * Everything marked on the one frame of a view. At most one mark for each landmark and for each floor point.
 *
 * @param widthPx  width of the picture as shown, pixels
 * @param heightPx height of the picture as shown, pixels
 */
public record ViewMarks(
        View view,
        int widthPx,
        int heightPx,
        LensNote lens,
        List<FloorMark> floorMarks,
        List<VerticalMark> verticals,
        Optional<BallMark> ball,
        List<Mark> marks) {

    public ViewMarks {
        if (widthPx < 1 || heightPx < 1) {
            throw new IllegalArgumentException(Sentences.of(ViewMarks.class).of("view.size", widthPx, heightPx));
        }
        floorMarks = List.copyOf(floorMarks);
        verticals = List.copyOf(verticals);
        marks = List.copyOf(marks);
        Set<Landmark> landmarks = EnumSet.noneOf(Landmark.class);
        for (Mark mark : marks) {
            if (!landmarks.add(mark.landmark())) {
                throw new IllegalArgumentException(Sentences.of(ViewMarks.class)
                        .of("view.mark-twice", mark.landmark().id(), view.id()));
            }
        }
        Set<String> floorPoints = new HashSet<>();
        for (FloorMark mark : floorMarks) {
            if (!floorPoints.add(mark.pointId())) {
                throw new IllegalArgumentException(
                        Sentences.of(ViewMarks.class).of("view.floor-twice", mark.pointId(), view.id()));
            }
        }
    }

    public static ViewMarks empty(View view, int widthPx, int heightPx) {
        return new ViewMarks(view, widthPx, heightPx, LensNote.NONE, List.of(), List.of(), Optional.empty(), List.of());
    }

    public Optional<Mark> mark(Landmark landmark) {
        return marks.stream().filter(m -> m.landmark() == landmark).findFirst();
    }

    public Optional<FloorMark> floorMark(String pointId) {
        return floorMarks.stream().filter(m -> m.pointId().equals(pointId)).findFirst();
    }

    public ViewMarks withMark(Mark mark) {
        List<Mark> changed = new ArrayList<>(withoutMark(mark.landmark()).marks);
        changed.add(mark);
        return new ViewMarks(view, widthPx, heightPx, lens, floorMarks, verticals, ball, changed);
    }

    public ViewMarks withoutMark(Landmark landmark) {
        List<Mark> kept = marks.stream().filter(m -> m.landmark() != landmark).toList();
        return new ViewMarks(view, widthPx, heightPx, lens, floorMarks, verticals, ball, kept);
    }

    public ViewMarks withFloorMark(FloorMark mark) {
        List<FloorMark> changed = new ArrayList<>(withoutFloorMark(mark.pointId()).floorMarks);
        changed.add(mark);
        return new ViewMarks(view, widthPx, heightPx, lens, changed, verticals, ball, marks);
    }

    public ViewMarks withoutFloorMark(String pointId) {
        List<FloorMark> kept =
                floorMarks.stream().filter(m -> !m.pointId().equals(pointId)).toList();
        return new ViewMarks(view, widthPx, heightPx, lens, kept, verticals, ball, marks);
    }

    public ViewMarks withVerticals(List<VerticalMark> changed) {
        return new ViewMarks(view, widthPx, heightPx, lens, floorMarks, changed, ball, marks);
    }

    public ViewMarks withBall(Optional<BallMark> changed) {
        return new ViewMarks(view, widthPx, heightPx, lens, floorMarks, verticals, changed, marks);
    }

    public ViewMarks withLens(LensNote changed) {
        return new ViewMarks(view, widthPx, heightPx, changed, floorMarks, verticals, ball, marks);
    }

    /** Whether nothing is marked. */
    public boolean isBlank() {
        return marks.isEmpty() && floorMarks.isEmpty() && verticals.isEmpty() && ball.isEmpty();
    }

    /** Without the landmarks. */
    public ViewMarks withoutMarks() {
        return new ViewMarks(view, widthPx, heightPx, lens, floorMarks, verticals, ball, List.of());
    }

    /** Whether somebody placed or accepted all of it. */
    public boolean isAccepted() {
        return Stream.of(
                        marks.stream().map(Mark::origin),
                        floorMarks.stream().map(FloorMark::origin),
                        verticals.stream().map(VerticalMark::origin),
                        ball.stream().map(BallMark::origin))
                .flatMap(s -> s)
                .allMatch(o -> o == Mark.Origin.PLACED);
    }

    /** What somebody placed or accepted. */
    public ViewMarks onlyAccepted() {
        return new ViewMarks(
                view,
                widthPx,
                heightPx,
                lens,
                floorMarks.stream()
                        .filter(m -> m.origin() == Mark.Origin.PLACED)
                        .toList(),
                verticals.stream().filter(m -> m.origin() == Mark.Origin.PLACED).toList(),
                ball.filter(b -> b.origin() == Mark.Origin.PLACED),
                marks.stream().filter(m -> m.origin() == Mark.Origin.PLACED).toList());
    }
}

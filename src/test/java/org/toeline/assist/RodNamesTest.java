package org.toeline.assist;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.toeline.assist.SnappedRod.Beyond;
import org.toeline.assist.SnappedRod.End;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.FloorKind;
import org.toeline.mark.FloorMark;
import org.toeline.mark.Handedness;
import org.toeline.mark.Mark;
import org.toeline.mark.View;

/** Which end is which follows from how a camera sees the floor; worked out by hand for cameras square to the target line. */
class RodNamesTest {

    private static final SnappedRod LEVEL = rod(800, 600, Beyond.GROUND, 300, 610, Beyond.GROUND);
    private static final SnappedRod AWAY = rod(560, 640, Beyond.GROUND, 590, 480, Beyond.GROUND);

    @Test
    void faceOnTheTargetIsToTheRightAndTheFeetAreFurtherOff() {
        assertThat(named(List.of(LEVEL, AWAY), FloorKind.RODS_AS_T, View.FACE_ON, Handedness.RIGHT))
                .containsExactly("rod-near 300", "rod-far 800", "cross-ball 560", "cross-feet 590");
        assertThat(named(List.of(LEVEL, AWAY), FloorKind.RODS_AS_T, View.FACE_ON, Handedness.LEFT))
                .containsExactly("rod-near 800", "rod-far 300", "cross-ball 560", "cross-feet 590");
    }

    @Test
    void downTheLineTheTargetIsFurtherOffAndTheFeetAreToTheLeft() {
        assertThat(named(List.of(LEVEL, AWAY), FloorKind.RODS_AS_T, View.DOWN_THE_LINE, Handedness.RIGHT))
                .containsExactly("rod-near 560", "rod-far 590", "cross-ball 800", "cross-feet 300");
        assertThat(named(List.of(LEVEL, AWAY), FloorKind.RODS_AS_T, View.DOWN_THE_LINE, Handedness.LEFT))
                .containsExactly("rod-near 560", "rod-far 590", "cross-ball 300", "cross-feet 800");
    }

    @Test
    void aCornerIsNamedOnce() {
        assertThat(named(List.of(LEVEL, AWAY), FloorKind.RODS_AS_L, View.FACE_ON, Handedness.RIGHT))
                .containsExactly("corner 300", "rod-far 800", "cross-feet 590");
    }

    @Test
    void anEndThatIsCoveredIsNone() {
        SnappedRod covered = rod(800, 600, Beyond.COVER, 300, 610, Beyond.GROUND);
        assertThat(named(List.of(covered), FloorKind.RODS_AS_T, View.FACE_ON, Handedness.RIGHT))
                .containsExactly("rod-near 300");
    }

    @Test
    void whatCouldBeEitherOrIsNoRodOfTheLayoutHasNoName() {
        SnappedRod aslant = rod(300, 600, Beyond.GROUND, 500, 460, Beyond.GROUND);
        assertThat(named(List.of(aslant), FloorKind.RODS_AS_T, View.FACE_ON, Handedness.RIGHT))
                .isEmpty();
        SnappedRod second = rod(300, 650, Beyond.GROUND, 800, 650, Beyond.GROUND);
        assertThat(named(List.of(LEVEL, second), FloorKind.RODS_AS_T, View.FACE_ON, Handedness.RIGHT))
                .isEmpty();
        assertThat(named(List.of(LEVEL, AWAY), FloorKind.MAT, View.FACE_ON, Handedness.RIGHT))
                .isEmpty();
    }

    private static SnappedRod rod(double x1, double y1, Beyond b1, double x2, double y2, Beyond b2) {
        return new SnappedRod(
                new End(new ImagePoint(x1, y1), 0.3, b1), new End(new ImagePoint(x2, y2), 0.3, b2), 0.1, 3);
    }

    private static List<String> named(List<SnappedRod> rods, FloorKind kind, View view, Handedness handedness) {
        List<FloorMark> marks = RodNames.of(rods, kind.layout(), view, handedness);
        assertThat(marks).allMatch(m -> m.origin() == Mark.Origin.SUGGESTED && m.sigmaPx() >= 0.5);
        return marks.stream().map(m -> m.pointId() + " " + (int) m.at().xPx()).toList();
    }
}

package org.toeline.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.Map;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.util.Binary64;
import org.hipparchus.util.Binary64Field;
import org.junit.jupiter.api.Test;
import org.toeline.mark.Landmark;
import org.toeline.posture.Body;

/** Each formula on a body whose answer can be worked out by hand, sign included. */
class ReadingKindTest {

    private static final double EXACT = 1e-9;

    private final Map<Landmark, double[]> at = new EnumMap<>(Landmark.class);
    private double[] ball = {0, 0, 0.06};
    private final double diameter = 0.0427;

    private double shown(ReadingKind kind) {
        Body<Binary64> body = new Body<>() {
            @Override
            public FieldVector3D<Binary64> at(Landmark landmark) {
                return vector(at.get(landmark));
            }

            @Override
            public FieldVector3D<Binary64> ball() {
                return vector(ball);
            }

            @Override
            public Binary64 ballDiameter() {
                return new Binary64(diameter);
            }
        };
        return kind.unit().fromInside(kind.of(body).getReal());
    }

    private static FieldVector3D<Binary64> vector(double[] p) {
        return new FieldVector3D<>(
                Binary64Field.getInstance(), new org.hipparchus.geometry.euclidean.threed.Vector3D(p[0], p[1], p[2]));
    }

    private void put(Landmark landmark, double t, double h, double u) {
        at.put(landmark, new double[] {t, h, u});
    }

    @Test
    void halfTheBallAboveTheCrown() {
        put(Landmark.CROWN, -0.03, 0, 0.06);
        assertThat(shown(ReadingKind.BALL_ABOVE_CROWN)).isCloseTo(50, within(EXACT));
        ball = new double[] {0, 0, 0.06 + diameter / 2};
        assertThat(shown(ReadingKind.BALL_ABOVE_CROWN)).isCloseTo(100, within(EXACT));
    }

    @Test
    void teeHeightIsUnderTheBall() {
        assertThat(shown(ReadingKind.TEE_HEIGHT)).isCloseTo(60 - 21.35, within(EXACT));
    }

    @Test
    void ballPositionIsPositiveTowardsTheTarget() {
        put(Landmark.LEAD_SHOULDER, -0.12, 0.9, 1.3);
        put(Landmark.LEAD_HEEL, -0.02, 1.1, 0);
        put(Landmark.TRAIL_HEEL, -0.52, 1.1, 0);
        assertThat(shown(ReadingKind.BALL_TO_LEAD_SHOULDER)).isCloseTo(12, within(EXACT));
        assertThat(shown(ReadingKind.BALL_TO_LEAD_HEEL)).isCloseTo(2, within(EXACT));
        assertThat(shown(ReadingKind.BALL_IN_STANCE)).isCloseTo(104, within(EXACT));
        assertThat(shown(ReadingKind.LEAD_FOOT_OUTSIDE_SHOULDER)).isCloseTo(10, within(EXACT));
        assertThat(shown(ReadingKind.STANCE_WIDTH)).isCloseTo(50, within(EXACT));
    }

    /** Open: the lead side stands farther from the ball's line than the trail side. */
    @Test
    void openIsPositive() {
        put(Landmark.LEAD_SHOULDER, 0.2, 0.9 + 0.2 * Math.tan(Math.toRadians(10)), 1.3);
        put(Landmark.TRAIL_SHOULDER, -0.2, 0.9 - 0.2 * Math.tan(Math.toRadians(10)), 1.3);
        put(Landmark.LEAD_TOE, 0.25, 0.85 - 0.25 * Math.tan(Math.toRadians(2)), 0);
        put(Landmark.TRAIL_TOE, -0.25, 0.85 + 0.25 * Math.tan(Math.toRadians(2)), 0);
        assertThat(shown(ReadingKind.SHOULDERS_TO_TARGET)).isCloseTo(10, within(EXACT));
        assertThat(shown(ReadingKind.FEET_TO_TARGET)).isCloseTo(-2, within(EXACT));
        assertThat(shown(ReadingKind.SHOULDERS_TO_FEET)).isCloseTo(12, within(EXACT));
        assertThat(shown(ReadingKind.SHOULDER_TILT)).isCloseTo(0, within(EXACT));
        assertThat(shown(ReadingKind.BALL_DISTANCE)).isCloseTo(85, within(EXACT));
    }

    @Test
    void tiltIsOfTheLineInSpaceNotOfItsPicture() {
        double level = 0.4 * Math.cos(Math.toRadians(8));
        put(Landmark.TRAIL_SHOULDER, 0, 0, 1.3);
        put(
                Landmark.LEAD_SHOULDER,
                level * Math.cos(0.3),
                level * Math.sin(0.3),
                1.3 + 0.4 * Math.sin(Math.toRadians(8)));
        assertThat(shown(ReadingKind.SHOULDER_TILT)).isCloseTo(8, within(EXACT));
    }

    @Test
    void stanceOverShoulders() {
        put(Landmark.LEAD_HEEL, 0.3, 1, 0);
        put(Landmark.TRAIL_HEEL, -0.3, 1, 0);
        put(Landmark.LEAD_SHOULDER, 0.2, 0.8, 1.3);
        put(Landmark.TRAIL_SHOULDER, -0.2, 0.8, 1.3);
        assertThat(shown(ReadingKind.STANCE_TO_SHOULDER_WIDTH)).isCloseTo(1.5, within(EXACT));
    }

    @Test
    void trunkBends() {
        put(Landmark.LEAD_HIP, 0.16, 1.1, 0.9);
        put(Landmark.TRAIL_HIP, -0.16, 1.1, 0.9);
        double side = 0.5 * Math.tan(Math.toRadians(6));
        double forward = 0.5 * Math.tan(Math.toRadians(30));
        put(Landmark.LEAD_SHOULDER, 0.2 - side, 1.1 - forward, 1.4);
        put(Landmark.TRAIL_SHOULDER, -0.2 - side, 1.1 - forward, 1.4);
        assertThat(shown(ReadingKind.SIDE_BEND)).isCloseTo(6, within(EXACT));
        assertThat(shown(ReadingKind.FORWARD_BEND)).isCloseTo(30, within(EXACT));
    }

    @Test
    void handsHeadShaftKneeAndFeet() {
        put(Landmark.LEAD_WRIST, 0, 0.5, 0.85);
        put(Landmark.TRAIL_WRIST, -0.05, 0.5, 0.80);
        assertThat(shown(ReadingKind.TRAIL_HAND_LOWER)).isCloseTo(5, within(EXACT));
        put(Landmark.HEAD_CENTRE, -0.20, 0.7, 1.5);
        assertThat(shown(ReadingKind.HEAD_TO_BALL)).isCloseTo(-20, within(EXACT));
        put(Landmark.CLUB_HEAD, 0, 0, 0);
        put(Landmark.GRIP_END, 0.8 * Math.tan(Math.toRadians(4)), 0.7, 0.8);
        assertThat(shown(ReadingKind.SHAFT_LEAN)).isCloseTo(4, within(EXACT));
        put(Landmark.TRAIL_HIP, 0, 0, 0.9);
        put(Landmark.TRAIL_KNEE, 0, 0, 0.5);
        put(Landmark.TRAIL_ANKLE, 0, 0.4 * Math.sin(Math.toRadians(20)), 0.5 - 0.4 * Math.cos(Math.toRadians(20)));
        assertThat(shown(ReadingKind.KNEE_FLEX)).isCloseTo(20, within(EXACT));
        put(Landmark.LEAD_HEEL, 0, 1, 0);
        put(Landmark.LEAD_TOE, 0.27 * Math.sin(Math.toRadians(25)), 1 - 0.27 * Math.cos(Math.toRadians(25)), 0);
        put(Landmark.TRAIL_HEEL, -0.5, 1, 0);
        put(Landmark.TRAIL_TOE, -0.5 - 0.27 * Math.sin(Math.toRadians(10)), 1 - 0.27 * Math.cos(Math.toRadians(10)), 0);
        assertThat(shown(ReadingKind.LEAD_FOOT_FLARE)).isCloseTo(25, within(EXACT));
        assertThat(shown(ReadingKind.TRAIL_FOOT_FLARE)).isCloseTo(10, within(EXACT));
    }

    /** A leg of a 3-4-5 triangle: halfway down, the middle of the thigh is 15 cm before the hip, half of 9 cm / 0.8 thick. */
    @Test
    void handsHangBeforeTheThigh() {
        put(Landmark.TRAIL_HIP, -0.1, 1.1, 0.9);
        put(Landmark.TRAIL_KNEE, -0.2, 0.8, 0.5);
        put(Landmark.GRIP_END, 0.05, 0.7, 0.7);
        assertThat(shown(ReadingKind.HANDS_TO_BODY)).isCloseTo(95 - 9 / 0.8 - 70, within(EXACT));
    }
}

package org.toeline.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Map;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.util.Binary64;
import org.hipparchus.util.Binary64Field;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.toeline.geometry.ImagePoint;
import org.toeline.geometry.WorldPoint;
import org.toeline.mark.Landmark;
import org.toeline.mark.View;
import org.toeline.posture.Body;
import org.toeline.reading.ReadingKind;

/** The truth of each scenario is what the scenario asked for, and agrees with itself. */
class TruthTest {

    /** Round-off of the pose's arithmetic, in the unit of the reading. */
    private static final double EXACT = 1e-6;

    private static final double MILLIMETRE = 1e-3;
    /** The thigh's thickness is the scene's there and a grown-up's usual one here: 2.5 cm is two of its standard deviations. */
    private static final Map<String, Double> SAME = Map.of("hands-to-body", 2.5);

    static java.util.List<Scenario> scenarios() {
        return Scenarios.all();
    }

    /** Property: the pose is built from the wanted readings, and school formulas on its landmarks give them back. */
    @ParameterizedTest
    @MethodSource("scenarios")
    void theLandmarksGiveBackTheAddressThatWasAskedFor(Scenario scenario) {
        Address a = scenario.address();
        Map<String, Truth.Value> r = Truth.of(scenario).readings();
        assertThat(r.keySet())
                .as("every reading has its truth")
                .containsAll(
                        Arrays.stream(ReadingKind.values()).map(ReadingKind::id).toList());
        near(r, "ball-to-lead-shoulder", 100 * a.ballToLeadShoulderM());
        near(r, "lead-foot-outside-shoulder", 100 * a.footOutsideM());
        near(r, "ball-to-lead-heel", 100 * (a.ballToLeadShoulderM() - a.footOutsideM()));
        near(r, "stance-width", 100 * a.stanceM());
        near(r, "stance-to-shoulder-width", a.stanceM() / scenario.build().biacromialM());
        near(r, "feet-to-target", a.feetDeg());
        near(r, "shoulders-to-feet", a.shouldersToFeetDeg());
        near(r, "shoulders-to-target", a.feetDeg() + a.shouldersToFeetDeg());
        near(r, "shoulder-tilt", a.tiltDeg());
        near(r, "side-bend", a.sideBendDeg());
        near(r, "forward-bend", a.forwardBendDeg());
        near(r, "knee-flex", a.kneeFlexDeg());
        near(r, "shaft-lean", a.shaftLeanDeg());
        near(r, "ball-distance", 100 * a.ballDistanceM());
        near(r, "lead-foot-flare", a.leadFlareDeg());
        near(r, "trail-foot-flare", a.trailFlareDeg());
        near(r, "tee-height", 1000 * scenario.club().teeHeightM());
    }

    /** Reference: the program's formulas, given the landmarks as they are, find what the school formulas of the scene find. */
    @ParameterizedTest
    @MethodSource("scenarios")
    void theProgramsFormulasAgree(Scenario scenario) {
        Map<Landmark, WorldPoint> at = scenario.landmarks();
        Map<String, Truth.Value> truth = Truth.of(scenario).readings();
        Body<Binary64> body = new Body<>() {
            @Override
            public FieldVector3D<Binary64> at(Landmark landmark) {
                return vector(at.get(landmark));
            }

            @Override
            public FieldVector3D<Binary64> ball() {
                return vector(scenario.ball());
            }

            @Override
            public Binary64 ballDiameter() {
                return new Binary64(ClubModel.BALL_M);
            }
        };
        for (ReadingKind kind : ReadingKind.values()) {
            Truth.Value wanted = truth.get(kind.id());
            assertThat(kind.unit().id()).as(kind.id()).isEqualTo(wanted.unit());
            assertThat(kind.unit().fromInside(kind.of(body).getReal()))
                    .as(kind.id())
                    .isCloseTo(wanted.value(), within(SAME.getOrDefault(kind.id(), EXACT)));
        }
    }

    private static FieldVector3D<Binary64> vector(WorldPoint p) {
        return new FieldVector3D<>(Binary64Field.getInstance(), new Vector3D(p.t(), p.h(), p.u()));
    }

    private static void near(Map<String, Truth.Value> readings, String id, double wanted) {
        assertThat(readings.get(id).value()).as(id).isCloseTo(wanted, within(EXACT));
    }

    /** Property: limbs keep their lengths, at address and on the way. */
    @ParameterizedTest
    @MethodSource("scenarios")
    void limbsKeepTheirLengths(Scenario scenario) {
        Build b = scenario.build();
        for (double time : new double[] {0, 0.8, 2.25, 3.2}) {
            Map<Landmark, WorldPoint> m = scenario.landmarks(time);
            assertThat(between(m, Landmark.LEAD_SHOULDER, Landmark.TRAIL_SHOULDER))
                    .isCloseTo(b.biacromialM(), within(EXACT));
            assertThat(between(m, Landmark.TRAIL_HIP, Landmark.TRAIL_KNEE)).isCloseTo(b.thighM(), within(MILLIMETRE));
            assertThat(between(m, Landmark.TRAIL_KNEE, Landmark.TRAIL_ANKLE)).isCloseTo(b.shankM(), within(MILLIMETRE));
            assertThat(between(m, Landmark.LEAD_ELBOW, Landmark.LEAD_WRIST))
                    .isCloseTo(b.forearmM(), within(MILLIMETRE));
            assertThat(between(m, Landmark.TRAIL_ELBOW, Landmark.TRAIL_WRIST)).isCloseTo(b.forearmM(), within(0.01));
            assertThat(between(m, Landmark.CLUB_HEAD, Landmark.GRIP_END))
                    .isCloseTo(scenario.club().lengthM(), within(EXACT));
            assertThat(between(m, Landmark.LEAD_HEEL, Landmark.LEAD_TOE)).isCloseTo(b.shoeM(), within(EXACT));
        }
    }

    private static double between(Map<Landmark, WorldPoint> m, Landmark a, Landmark b) {
        return m.get(a).distance(m.get(b));
    }

    /** The player sways by a millimetre or two while still, and by centimetres before and after. */
    @ParameterizedTest
    @MethodSource("scenarios")
    void thePlayerIsStillWhenTheTruthSaysSo(Scenario scenario) {
        WorldPoint there = scenario.landmarks(Motion.addressS()).get(Landmark.LEAD_SHOULDER);
        WorldPoint head = scenario.landmarks(Motion.addressS()).get(Landmark.CLUB_HEAD);
        for (double time = Motion.STILL_FROM_S; time < Motion.STILL_TO_S; time += 0.05) {
            assertThat(scenario.landmarks(time).get(Landmark.LEAD_SHOULDER).distance(there))
                    .isLessThan(0.004);
            assertThat(scenario.landmarks(time).get(Landmark.CLUB_HEAD).distance(head))
                    .isLessThan(EXACT);
        }
        assertThat(scenario.landmarks(0.765).get(Landmark.CLUB_HEAD).distance(head))
                .isGreaterThan(0.15);
        assertThat(scenario.landmarks(3.6).get(Landmark.CLUB_HEAD).distance(head))
                .isGreaterThan(0.8);
    }

    /** Everything that a coach marks lies in the picture, well away from its edge. */
    @ParameterizedTest
    @MethodSource("scenarios")
    void everythingToBeMarkedIsInThePicture(Scenario scenario) {
        for (View view : new View[] {View.FACE_ON, View.DOWN_THE_LINE}) {
            Truth.of(scenario).landmarks().values().forEach(p -> inside(Truth.pixel(scenario, view, p)));
            scenario.floor()
                    .points()
                    .forEach(f -> inside(Truth.pixel(scenario, view, new WorldPoint(f.t(), f.h(), 0))));
            assertThat(Truth.ball(scenario, view).diameterPx()).isBetween(9.0, 22.0);
        }
        inside(Truth.pixel(scenario, View.TEE, Truth.of(scenario).landmarks().get(Landmark.CROWN)));
        inside(Truth.pixel(scenario, View.TEE, WorldPoint.ORIGIN));
        assertThat(Truth.ball(scenario, View.TEE).diameterPx()).isBetween(55.0, 90.0);
    }

    private static void inside(ImagePoint p) {
        assertThat(p.xPx()).isBetween(25.0, Scenario.WIDTH - 25.0);
        assertThat(p.yPx()).isBetween(25.0, Scenario.HEIGHT - 25.0);
    }

    /** Reference: a sphere straight ahead at distance d shows a disc of diameter 2·f·r/√(d² − r²). */
    @Test
    void theBallsOutlineIsThatOfASphere() {
        Scenario s = Scenarios.before();
        Vec eye = Vec.of(s.camera(View.TEE).pose().position());
        double d = eye.minus(Vec.of(s.ball())).length();
        double r = ClubModel.BALL_M / 2;
        double wanted = 2 * s.camera(View.TEE).lens().focalPx() * r / Math.sqrt(d * d - r * r);
        // off the axis the disc becomes an ellipse, longer by a few thousandths
        assertThat(Truth.ball(s, View.TEE).diameterPx()).isCloseTo(wanted, within(0.01 * wanted));
    }

    /** The world under a left-handed player is the mirror image: ball, target and door are on the other side. */
    @Test
    void aLeftHandedPlayersPictureIsMirrored() {
        Scenario left = Scenarios.leftHanded();
        WorldPoint towardsTarget = new WorldPoint(0.5, 0, 0);
        assertThat(Truth.pixel(left, View.FACE_ON, towardsTarget).xPx())
                .isLessThan(Truth.pixel(left, View.FACE_ON, WorldPoint.ORIGIN).xPx());
        Scenario right = Scenarios.after();
        assertThat(Truth.pixel(right, View.FACE_ON, towardsTarget).xPx())
                .isGreaterThan(
                        Truth.pixel(right, View.FACE_ON, WorldPoint.ORIGIN).xPx());
    }

    /** The stories that the sample lessons tell. */
    @Test
    void theLessonsTellTheirStory() {
        Map<String, Truth.Value> before = Truth.of(Scenarios.before()).readings();
        assertThat(before.get("ball-above-crown").value()).isBetween(8.0, 16.0);
        assertThat(before.get("ball-in-stance").value()).isGreaterThan(102);
        Map<String, Truth.Value> after = Truth.of(Scenarios.after()).readings();
        assertThat(after.get("ball-above-crown").value()).isBetween(46.0, 54.0);
        assertThat(after.get("ball-in-stance").value()).isBetween(85.0, 92.0);
        assertThat(Truth.of(Scenarios.leftHanded())
                        .readings()
                        .get("ball-in-stance")
                        .value())
                .isLessThan(40);
    }
}

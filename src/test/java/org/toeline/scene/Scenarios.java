package org.toeline.scene;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.toeline.camera.Camera;
import org.toeline.camera.Lens;
import org.toeline.camera.Pose;
import org.toeline.geometry.WorldPoint;
import org.toeline.mark.Club;
import org.toeline.mark.FloorLayout;
import org.toeline.mark.FloorReference;
import org.toeline.mark.Handedness;
import org.toeline.mark.View;

/** The sample lessons. Body sizes lie within ANSUR II (Gordon et al. 2014, NATICK/TR-15/007). */
public final class Scenarios {

    private static final Build TALL = new Build(1.79, 0.412, 0.335, 0.298, 1.0);
    private static final Build SHORT = new Build(1.68, 0.378, 0.330, 0.272, 0.97);
    private static final Build STURDY = new Build(1.75, 0.420, 0.345, 0.294, 1.10);
    private static final Outfit BLUE = new Outfit(
            0xC99A7C, 0x3A2C22, 0x3F6D9C, 0x2E5379, 0xC4B597, 0x4B3526, 0xF0EFEA, 0x6B7280, 0x24364D, Outfit.Legs.LONG);
    private static final Outfit TEAL = new Outfit(
            0x8D5F45, 0x1E1815, 0x3D8A86, 0xECEAE2, 0x3C434D, 0xD9D5CB, 0x3A3F47, 0xECEBE6, 0xE9E7E0, Outfit.Legs.LONG);
    private static final Outfit WINE = new Outfit(
            0xD8AC90,
            0x6A4A2C,
            0x9A4650,
            0xC98A86,
            0x2F3B52,
            0xC8C2B4,
            0xECEAE4,
            0x8A8F96,
            0xD9D4C8,
            Outfit.Legs.SHORT);
    private static final int WARM = 0xDAD6CC;
    private static final int SLATE = 0x88959A;

    private Scenarios() {}

    public static List<Scenario> all() {
        return List.of(before(), after(), leftHanded(), allGood());
    }

    public static Optional<Scenario> named(String id) {
        return all().stream().filter(s -> s.id().equals(id)).findFirst();
    }

    /** A driver teed too low, the ball off the lead toe, the shoulders pulled open and level. */
    public static Scenario before() {
        return new Scenario(
                "before",
                Handedness.RIGHT,
                TALL,
                new Address(0.112, 0.092, 0.500, 1.0, 9.0, 1.5, 2.5, 37, 18, 9, 0.86, 19, 0.258, -4.0),
                new ClubModel(Club.DRIVER, 1.125, 0.062, 0.0248),
                BLUE,
                rods(-0.26),
                Map.of(
                        View.FACE_ON,
                        camera(950, -0.62, -2.55, 1.12, -0.10, 0.60, 0.76, 1.4),
                        View.DOWN_THE_LINE,
                        camera(890, -2.60, -0.41, 1.07, -0.10, 0.43, 0.75, -1.8),
                        View.TEE,
                        camera(940, -0.02, -0.62, 0.085, -0.045, 0.03, 0.060, 1.1)),
                WARM,
                SLATE);
    }

    /** The same player after the lesson; the cameras stand elsewhere. */
    public static Scenario after() {
        return new Scenario(
                "after",
                Handedness.RIGHT,
                TALL,
                new Address(0.006, 0.060, 0.535, 0.5, 1.0, 9.0, 7.0, 33, 20, 8, 0.90, 20, 0.264, -0.5),
                new ClubModel(Club.DRIVER, 1.125, 0.062, 0.0409),
                BLUE,
                rods(-0.215),
                Map.of(
                        View.FACE_ON,
                        camera(1010, 0.14, -2.70, 0.98, -0.12, 0.55, 0.76, -1.2),
                        View.DOWN_THE_LINE,
                        camera(1000, -3.00, -0.16, 0.86, -0.05, 0.44, 0.76, 2.1),
                        View.TEE,
                        camera(960, -0.10, -0.60, 0.095, -0.035, 0.02, 0.066, -1.4)),
                WARM,
                SLATE);
    }

    /** A left-handed player with a mid-iron, the ball too far back. */
    public static Scenario leftHanded() {
        return new Scenario(
                "left-handed",
                Handedness.LEFT,
                STURDY,
                new Address(-0.245, 0.028, 0.445, -0.5, -2.0, 7.0, 4.0, 37, 22, 7, 0.64, 20, 0.250, 5.0),
                new ClubModel(Club.MID_IRON, 0.945, 0.052, 0),
                WINE,
                rods(0.055),
                Map.of(
                        View.FACE_ON,
                        camera(985, -0.40, -2.55, 1.05, 0.02, 0.45, 0.74, 2.0),
                        View.DOWN_THE_LINE,
                        camera(940, -3.20, 0.15, 1.20, 0.02, 0.52, 0.76, 1.2),
                        View.TEE,
                        camera(950, -0.06, -0.58, 0.080, -0.040, 0.02, 0.042, 1.0)),
                0xD3D5D2,
                0x7F8B80);
    }

    /** Another player with a driver and nothing to change. */
    public static Scenario allGood() {
        return new Scenario(
                "all-good",
                Handedness.RIGHT,
                SHORT,
                new Address(0.000, 0.065, 0.505, 0.0, 0.5, 9.5, 7.5, 31, 22, 8, 0.86, 20, 0.258, 0.0),
                new ClubModel(Club.DRIVER, 1.105, 0.060, 0.0389),
                TEAL,
                rods(-0.190),
                Map.of(
                        View.FACE_ON,
                        camera(985, -0.30, -2.60, 0.92, -0.08, 0.55, 0.74, 1.6),
                        View.DOWN_THE_LINE,
                        camera(970, -3.25, 0.40, 1.02, -0.06, 0.50, 0.74, -1.5),
                        View.TEE,
                        camera(930, 0.02, -0.62, 0.090, -0.035, 0.02, 0.064, 1.8)),
                WARM,
                0x9A9187);
    }

    /** A rod along the target line on the player's side of the ball, and one from it to the feet. */
    private static FloorLayout rods(double t) {
        return new FloorLayout(
                List.of(
                        new FloorReference("rod-near", -0.61, 0.170),
                        new FloorReference("rod-far", 0.61, 0.170),
                        new FloorReference("cross-ball", t, 0.200),
                        new FloorReference("cross-feet", t, 1.400)),
                0.003);
    }

    /** A camera at a place, looking through another. */
    private static Camera camera(
            double focalPx, double t, double h, double u, double atT, double atH, double atU, double rollDeg) {
        return new Camera(
                Lens.centred(focalPx, Scenario.WIDTH, Scenario.HEIGHT),
                Pose.looking(new WorldPoint(t, h, u), new WorldPoint(atT, atH, atU), Math.toRadians(rollDeg)));
    }
}

package org.toeline.scene;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.toeline.camera.Camera;
import org.toeline.camera.Lens;
import org.toeline.camera.Pose;
import org.toeline.geometry.WorldPoint;
import org.toeline.mark.Club;
import org.toeline.mark.FloorLayout;
import org.toeline.mark.FloorReference;
import org.toeline.mark.Handedness;
import org.toeline.mark.View;
import org.toeline.video.Frame;

/**
 * Lessons drawn by chance: bodies from children to tall people, clothes, clubs, places of the phone, light, noise and sizes
 * of the picture. A number always gives the same lesson. Ranges are wider than the sample lessons' and common practice.
 */
public final class RandomLessons {

    private static final Club[] CLUBS = {Club.DRIVER, Club.DRIVER, Club.HYBRID, Club.MID_IRON, Club.WEDGE};

    private RandomLessons() {}

    /**
     * How a picture comes out.
     *
     * @param gain   brightness, 1 as lit
     * @param warmth share by which red gains over blue
     * @param noise  standard deviation, grey levels
     * @param share  size of the picture against {@link Scenario#WIDTH}
     */
    public record Look(double gain, double warmth, double noise, double share) {}

    public static Scenario lesson(int number) {
        for (int attempt = 0; ; attempt++) {
            Scenario scenario = drawn(number, new SplittableRandom(number * 7919L + attempt));
            if (stands(scenario)) {
                return scenario;
            }
        }
    }

    public static Look look(int number) {
        SplittableRandom random = new SplittableRandom(number * 104729L);
        return new Look(
                random.nextDouble(0.45, 1.15),
                random.nextDouble(-0.12, 0.12),
                random.nextDouble(0.5, 5),
                number % 4 == 3 ? 0.667 : 1);
    }

    /** Frames of the still span, from one camera, with their grain. */
    public static List<Frame> frames(Scenario scenario, View view, Look look, int count) {
        int width = (int) Math.round(Scenario.WIDTH * look.share);
        int height = (int) Math.round(Scenario.HEIGHT * look.share);
        Stage stage = new Stage(scenario);
        Filming filming = new Filming(scenario, stage, view, width, height);
        SplittableRandom random = new SplittableRandom(scenario.id().hashCode() * 31L + view.ordinal());
        List<Frame> frames = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double at = momentS(i, count);
            BufferedImage image =
                    filming.frame(stage.moves(Motion.at(at)), (int) (at * 60)).image();
            frames.add(new Frame(i, at, width, height, developed(image, look, random)));
        }
        return frames;
    }

    /** When a frame of the still span is taken, seconds. */
    public static double momentS(int i, int count) {
        return Motion.STILL_FROM_S + (i + 0.5) / count * (Motion.STILL_TO_S - Motion.STILL_FROM_S - 0.1);
    }

    private static int[] developed(BufferedImage image, Look look, SplittableRandom random) {
        int[] argb = image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
        double[] gain = {look.gain * (1 + look.warmth), look.gain, look.gain * (1 - look.warmth)};
        for (int i = 0; i < argb.length; i++) {
            double grain = look.noise * (random.nextDouble() + random.nextDouble() + random.nextDouble() - 1.5) * 2;
            int p = 0xff;
            for (int c = 0; c < 3; c++) {
                double v = gain[c] * (argb[i] >> 16 - 8 * c & 255) + grain;
                p = p << 8 | (int) Math.round(Math.max(0, Math.min(255, v)));
            }
            argb[i] = p;
        }
        return argb;
    }

    /** The same of a picture that goes into a clip. */
    static Picture developed(Picture picture, Look look, SplittableRandom random) {
        int[] argb = developed(picture.image(), look, random);
        byte[] rgb = new byte[3 * argb.length];
        for (int i = 0; i < argb.length; i++) {
            for (int c = 0; c < 3; c++) {
                rgb[3 * i + c] = (byte) (argb[i] >> 16 - 8 * c);
            }
        }
        return new Picture(picture.width(), picture.height(), rgb);
    }

    private static boolean stands(Scenario scenario) {
        return scenario.landmarks().values().stream()
                .allMatch(p -> Double.isFinite(p.t()) && Double.isFinite(p.h()) && Double.isFinite(p.u()));
    }

    private static Scenario drawn(int number, SplittableRandom r) {
        double stature = r.nextDouble() < 0.15 ? r.nextDouble(1.25, 1.5) : r.nextDouble(1.55, 1.98);
        Build build = new Build(
                stature,
                stature * r.nextDouble(0.212, 0.240),
                stature * r.nextDouble(0.180, 0.205),
                stature * r.nextDouble(0.158, 0.174),
                r.nextDouble(0.92, 1.22));
        double k = build.scale();
        Club club = CLUBS[r.nextInt(CLUBS.length)];
        ClubModel model = club(club, k, r);
        double far = k
                * switch (club) {
                    case DRIVER -> r.nextDouble(0.80, 0.93);
                    case HYBRID -> r.nextDouble(0.66, 0.78);
                    case MID_IRON -> r.nextDouble(0.58, 0.68);
                    default -> r.nextDouble(0.46, 0.56);
                };
        double stance = k * (club == Club.DRIVER ? r.nextDouble(0.42, 0.60) : r.nextDouble(0.28, 0.48));
        Address address = new Address(
                k * (club == Club.DRIVER ? r.nextDouble(-0.05, 0.13) : r.nextDouble(-0.25, -0.05)),
                k * r.nextDouble(0.0, 0.10),
                stance,
                r.nextDouble(-5, 5),
                r.nextDouble(-8, 12),
                r.nextDouble(0, 12),
                r.nextDouble(0, 9),
                r.nextDouble(26, 42),
                r.nextDouble(5, 30),
                r.nextDouble(0, 20),
                far,
                r.nextDouble(12, 28),
                k * r.nextDouble(0.24, 0.28),
                r.nextDouble(-5, 6));
        return new Scenario(
                "random-" + number,
                r.nextDouble() < 0.25 ? Handedness.LEFT : Handedness.RIGHT,
                build,
                address,
                model,
                outfit(r),
                rods(r, k),
                cameras(r, k),
                shade(r, 0.45, 0.9, 0.12),
                shade(r, 0.25, 0.7, 0.25));
    }

    private static ClubModel club(Club club, double k, SplittableRandom r) {
        return switch (club) {
            case DRIVER ->
                new ClubModel(
                        club, k * r.nextDouble(1.08, 1.15), r.nextDouble(0.055, 0.064), r.nextDouble(0.018, 0.045));
            case HYBRID -> new ClubModel(club, k * r.nextDouble(0.98, 1.03), 0.040, r.nextDouble(0, 0.01));
            case MID_IRON -> new ClubModel(club, k * r.nextDouble(0.92, 0.96), 0.052, 0);
            default -> new ClubModel(club, k * r.nextDouble(0.87, 0.91), 0.055, 0);
        };
    }

    private static Outfit outfit(SplittableRandom r) {
        int[] skins = {0xC99A7C, 0x8D5F45, 0xD8AC90, 0x5C3B28, 0xE5C0A5};
        return new Outfit(
                skins[r.nextInt(skins.length)],
                shade(r, 0.05, 0.5, 0.3),
                shade(r, 0.1, 0.95, 0.9),
                shade(r, 0.1, 0.95, 0.9),
                shade(r, 0.08, 0.9, 0.5),
                shade(r, 0.1, 0.8, 0.3),
                r.nextDouble() < 0.5 ? shade(r, 0.85, 0.97, 0.05) : shade(r, 0.1, 0.6, 0.6),
                shade(r, 0.2, 0.9, 0.2),
                shade(r, 0.1, 0.97, 0.8),
                r.nextDouble() < 0.3 ? Outfit.Legs.SHORT : Outfit.Legs.LONG);
    }

    /** A colour of some brightness, 0 to 1, and some colourfulness. */
    private static int shade(SplittableRandom r, double from, double to, double colourful) {
        double v = r.nextDouble(from, to);
        return java.awt.Color.HSBtoRGB((float) r.nextDouble(), (float) (colourful * r.nextDouble()), (float) v)
                & 0xFFFFFF;
    }

    private static FloorLayout rods(SplittableRandom r, double k) {
        double cross = r.nextDouble(-0.3, 0.12);
        double near = r.nextDouble(0.13, 0.22);
        double slide = r.nextDouble(-0.15, 0.15);
        return new FloorLayout(
                List.of(
                        new FloorReference("rod-near", slide - 0.61, near),
                        new FloorReference("rod-far", slide + 0.61, near),
                        new FloorReference("cross-ball", cross, near + 0.03),
                        new FloorReference("cross-feet", cross, near + 1.23)),
                0.003);
    }

    /** Near where coaches put phones: common practice, as the sample lessons. */
    private static Map<View, Camera> cameras(SplittableRandom r, double k) {
        Map<View, Camera> all = new EnumMap<>(View.class);
        double u = 0.76 * k;
        all.put(
                View.FACE_ON,
                camera(
                        r,
                        new WorldPoint(r.nextDouble(-0.8, 0.5), r.nextDouble(-3.4, -2.3), r.nextDouble(0.7, 1.45)),
                        new WorldPoint(r.nextDouble(-0.2, 0.1), r.nextDouble(0.4, 0.6), u)));
        all.put(
                View.DOWN_THE_LINE,
                camera(
                        r,
                        new WorldPoint(r.nextDouble(-3.6, -2.5), r.nextDouble(-0.45, 0.55), r.nextDouble(0.7, 1.4)),
                        new WorldPoint(r.nextDouble(-0.15, 0.05), r.nextDouble(0.4, 0.55), u)));
        all.put(
                View.TEE,
                camera(
                        r,
                        new WorldPoint(r.nextDouble(-0.15, 0.1), r.nextDouble(-0.8, -0.5), r.nextDouble(0.07, 0.13)),
                        new WorldPoint(r.nextDouble(-0.07, 0.0), 0.02, r.nextDouble(0.045, 0.065))));
        return all;
    }

    private static Camera camera(SplittableRandom r, WorldPoint at, WorldPoint to) {
        return new Camera(
                Lens.centred(r.nextDouble(880, 1040), Scenario.WIDTH, Scenario.HEIGHT),
                Pose.looking(at, to, Math.toRadians(r.nextDouble(-2.5, 2.5))));
    }
}

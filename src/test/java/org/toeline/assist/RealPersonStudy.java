package org.toeline.assist;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.Handedness;
import org.toeline.mark.Landmark;
import org.toeline.mark.Mark;
import org.toeline.mark.View;
import org.toeline.video.Clip;

/**
 * How far suggested landmarks lie on a real person from points that others published, and whether sides are exchanged. It
 * takes a folder with the clips {@code balancing_cam01.mp4} and {@code balancing_cam02.mp4} of pose2sim's demonstration of
 * one person (BSD-3-Clause) and {@code openpose_cam01_cam02.csv}, its authors' points; none of it is part of the project.
 * He balances on one leg before both cameras, 25° to either side of his front, and leans up to 40°.
 *
 * <p>Their points are joint centres and ours are bony points, so that the mean of both sides of a landmark, in the axes of
 * his trunk, is taken off before the error is looked at; it is printed beside it. What a side or a camera has of its own
 * stays in the error. Errors are shares of the span from nose to soles. The second table learns a landmark's mean and spread on
 * half of the pictures and holds it against the error in the other half.
 */
final class RealPersonStudy {

    static final List<String> CAMERAS = List.of("cam_01", "cam_02");
    private static final Map<Landmark, String> THEIRS = new EnumMap<>(Landmark.class);
    /** What they are less sure of is no bar. */
    private static final double SURE = 0.4;

    /** The first of the second half of the frames. */
    static final int HALF = 50;
    /** From fewer nothing is learnt. */
    private static final int LEAST = 8;

    private record Off(String camera, int frame, double out, double up, double stated) {}

    private RealPersonStudy() {}

    public static void main(String[] arguments) throws Exception {
        Path folder = Path.of(arguments[0]);
        int step = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 4;
        Map<String, double[]> theirs = points(folder.resolve("openpose_cam01_cam02.csv"));
        Map<Landmark, List<Off>> offs = new EnumMap<>(Landmark.class);
        try (PoseModel model = PoseModel.open().orElseThrow()) {
            for (String camera : CAMERAS) {
                try (Clip clip = Clip.open(folder.resolve("balancing_" + camera.replace("_", "") + ".mp4"))) {
                    sides(camera, clip, model, theirs, step, offs);
                }
            }
        }
        System.out.println(
                "| landmark | pictures | mean out | mean up | error | stated | stated / error | cam 1 | cam 2 |");
        System.out.println("| --- | --- | --- | --- | --- | --- | --- | --- | --- |");
        offs.forEach((landmark, all) -> row(landmark, all, mean(offs, landmark)));
        System.out.println();
        System.out.println("| both sides | learnt on first frames | on last frames | on camera 1 | on camera 2 |");
        System.out.println("| --- | --- | --- | --- | --- |");
        Map<String, List<Off>> pooled = new TreeMap<>();
        offs.forEach((landmark, all) ->
                pooled.computeIfAbsent(both(landmark), k -> new ArrayList<>()).addAll(all));
        pooled.forEach((name, all) -> System.out.printf(
                Locale.ROOT,
                "| %s | %s | %s | %s | %s |%n",
                name,
                foretold(all, o -> o.frame < HALF),
                foretold(all, o -> o.frame >= HALF),
                foretold(all, o -> o.camera.equals(CAMERAS.get(0))),
                foretold(all, o -> o.camera.equals(CAMERAS.get(1)))));
    }

    /** The spread learnt on some pictures, with the mean taken off there too, over the error that the others have then. */
    private static String foretold(List<Off> all, Predicate<Off> learnt) {
        List<Off> from = all.stream().filter(learnt).toList();
        List<Off> held = all.stream().filter(learnt.negate()).toList();
        double[] mean = {
            from.stream().mapToDouble(Off::out).average().orElse(0),
            from.stream().mapToDouble(Off::up).average().orElse(0)
        };
        return from.size() < LEAST || held.size() < LEAST
                ? "too few"
                : String.format(Locale.ROOT, "%.2f", error(from, mean) / error(held, mean));
    }

    private static String both(Landmark landmark) {
        return landmark.id().replaceAll("^(lead|trail)-", "");
    }

    /** Of the landmark and its like on the other side. */
    private static double[] mean(Map<Landmark, List<Off>> offs, Landmark landmark) {
        String name = both(landmark);
        double[] sum = new double[3];
        offs.forEach((other, all) -> {
            if (both(other).equals(name)) {
                for (Off o : all) {
                    sum[0] += o.out;
                    sum[1] += o.up;
                    sum[2]++;
                }
            }
        });
        return new double[] {sum[0] / sum[2], sum[1] / sum[2]};
    }

    private static void sides(
            String camera,
            Clip clip,
            PoseModel model,
            Map<String, double[]> theirs,
            int step,
            Map<Landmark, List<Off>> offs)
            throws Exception {
        int pictures = 0;
        int refused = 0;
        int exchanged = 0;
        for (int f = 0; f < clip.frameCount(); f += step) {
            pictures++;
            Optional<List<Mark>> seen = new PoseSearch(model, clip.frame(f))
                    .person(List.of())
                    .flatMap(s -> Sides.of(s, View.FACE_ON, true))
                    .map(s -> BonyPoints.of(s, View.FACE_ON, Handedness.RIGHT));
            if (seen.isEmpty()) {
                refused++;
                continue;
            }
            exchanged += exchanged(camera + f, seen.get(), theirs) ? 1 : 0;
            add(camera, f, seen.get(), theirs, offs);
        }
        System.out.printf(
                Locale.ROOT,
                "%s: %d pictures, nothing suggested in %d, sides exchanged in %d%n",
                camera,
                pictures,
                refused,
                exchanged);
    }

    /** Whether shoulders, elbows, wrists, hips, knees and ankles lie nearer to the other side's points. */
    private static boolean exchanged(String key, List<Mark> marks, Map<String, double[]> theirs) {
        double own = 0;
        double other = 0;
        for (Mark mark : marks) {
            String name = THEIRS.get(mark.landmark());
            if (name == null || mark.landmark().ordinal() > Landmark.TRAIL_ANKLE.ordinal()) {
                continue;
            }
            double[] a = theirs.get(key + name);
            double[] b = theirs.get(key + (name.startsWith("L") ? "R" : "L") + name.substring(1));
            if (a != null && b != null) {
                own += mark.at().distancePx(new ImagePoint(a[0], a[1]));
                other += mark.at().distancePx(new ImagePoint(b[0], b[1]));
            }
        }
        return own > other;
    }

    private static void add(
            String camera, int frame, List<Mark> marks, Map<String, double[]> theirs, Map<Landmark, List<Off>> offs) {
        String key = camera + frame;
        double[] low = theirs.get(key + "Neck");
        double[] hips = middle(theirs, key, "Hip");
        double length = Math.hypot(low[0] - hips[0], low[1] - hips[1]);
        double upX = (low[0] - hips[0]) / length;
        double upY = (low[1] - hips[1]) / length;
        double span = span(theirs, key);
        for (Mark mark : marks) {
            Optional<double[]> found = theirs(theirs, key, mark.landmark());
            if (found.isEmpty()) {
                continue;
            }
            double[] at = found.get();
            double dx = (at[0] - mark.at().xPx()) / span;
            double dy = (at[1] - mark.at().yPx()) / span;
            boolean trunk = mark.landmark().ordinal() <= Landmark.TRAIL_HIP.ordinal()
                    || mark.landmark().side() == Landmark.Side.MIDDLE;
            double ux = trunk ? upX : 0;
            double uy = trunk ? upY : -1;
            // to the picture's right of "up" is where a right-handed player's lead side is, face-on
            double way = mark.landmark().side() == Landmark.Side.TRAIL ? -1 : 1;
            offs.computeIfAbsent(mark.landmark(), l -> new ArrayList<>())
                    .add(new Off(camera, frame, way * (-uy * dx + ux * dy), ux * dx + uy * dy, mark.sigmaPx() / span));
        }
    }

    /** Where a landmark is by others, when they are sure. */
    static Optional<double[]> theirs(Map<String, double[]> theirs, String key, Landmark landmark) {
        String name = THEIRS.get(landmark);
        double[] at = name == null
                ? null
                : name.startsWith("Mid") ? middle(theirs, key, name.substring(3)) : theirs.get(key + name);
        return Optional.ofNullable(at).filter(a -> a[2] >= SURE);
    }

    private static double[] middle(Map<String, double[]> theirs, String key, String name) {
        double[] a = theirs.get(key + "L" + name);
        double[] b = theirs.get(key + "R" + name);
        return new double[] {(a[0] + b[0]) / 2, (a[1] + b[1]) / 2, Math.min(a[2], b[2])};
    }

    private static double span(Map<String, double[]> theirs, String key) {
        double low = Double.NEGATIVE_INFINITY;
        for (String name : List.of("LHeel", "RHeel", "LBigToe", "RBigToe")) {
            low = Math.max(low, theirs.get(key + name)[1]);
        }
        return low - theirs.get(key + "Nose")[1];
    }

    private static void row(Landmark landmark, List<Off> offs, double[] mean) {
        double error = error(offs, mean);
        double stated = Math.sqrt(
                offs.stream().mapToDouble(o -> o.stated * o.stated).average().orElse(0));
        System.out.printf(
                Locale.ROOT,
                "| %s | %d | %+.4f | %+.4f | %.4f | %.4f | %.2f | %.4f | %.4f |%n",
                landmark.id(),
                offs.size(),
                mean[0],
                mean[1],
                error,
                stated,
                stated / error,
                error(of(offs, CAMERAS.get(0)), mean),
                error(of(offs, CAMERAS.get(1)), mean));
    }

    private static List<Off> of(List<Off> offs, String camera) {
        return offs.stream().filter(o -> o.camera.equals(camera)).toList();
    }

    /** Root mean square in each direction. */
    private static double error(List<Off> offs, double[] mean) {
        return Math.sqrt(offs.stream()
                .mapToDouble(o -> (Math.pow(o.out - mean[0], 2) + Math.pow(o.up - mean[1], 2)) / 2)
                .average()
                .orElse(0));
    }

    static Map<String, double[]> points(Path file) throws IOException {
        Map<String, double[]> points = new HashMap<>();
        for (String line : Files.readAllLines(file)) {
            String[] field = line.split(",");
            Optional<double[]> at = field[0].equals("frame")
                    ? Optional.empty()
                    : Optional.of(new double[] {
                        Double.parseDouble(field[3]), Double.parseDouble(field[4]), Double.parseDouble(field[5])
                    });
            at.ifPresent(p -> points.put(field[1] + field[0] + field[2], p));
        }
        return points;
    }

    private static void both(Landmark lead, Landmark trail, String joint) {
        // a right-handed player's lead side is the left
        THEIRS.put(lead, "L" + joint);
        THEIRS.put(trail, "R" + joint);
    }

    static {
        both(Landmark.LEAD_SHOULDER, Landmark.TRAIL_SHOULDER, "Shoulder");
        both(Landmark.LEAD_ELBOW, Landmark.TRAIL_ELBOW, "Elbow");
        both(Landmark.LEAD_WRIST, Landmark.TRAIL_WRIST, "Wrist");
        both(Landmark.LEAD_HIP, Landmark.TRAIL_HIP, "Hip");
        both(Landmark.LEAD_KNEE, Landmark.TRAIL_KNEE, "Knee");
        both(Landmark.LEAD_ANKLE, Landmark.TRAIL_ANKLE, "Ankle");
        both(Landmark.LEAD_HEEL, Landmark.TRAIL_HEEL, "Heel");
        both(Landmark.LEAD_TOE, Landmark.TRAIL_TOE, "BigToe");
        THEIRS.put(Landmark.HEAD_CENTRE, "MidEar");
        THEIRS.put(Landmark.NECK, "Neck");
    }
}

package org.toeline.study;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.toeline.geometry.WorldPoint;
import org.toeline.mark.Landmark;

/**
 * Joints of one person over time from a TRC file (metres, Y up), put before a ball: the target line along the hips, the
 * lowest of the feet on the ground, the ball before the middle of the toes. The right-handed player's lead side is the
 * left. The grip's end and the club's head, which the person does not hold, are left out.
 */
final class JointFile {

    private static final double TOES_TO_BALL_M = 0.85;
    private static final Map<Landmark, String> NAMES = new EnumMap<>(Map.ofEntries(
            Map.entry(Landmark.LEAD_SHOULDER, "LShoulder"),
            Map.entry(Landmark.TRAIL_SHOULDER, "RShoulder"),
            Map.entry(Landmark.LEAD_ELBOW, "LElbow"),
            Map.entry(Landmark.TRAIL_ELBOW, "RElbow"),
            Map.entry(Landmark.LEAD_WRIST, "LWrist"),
            Map.entry(Landmark.TRAIL_WRIST, "RWrist"),
            Map.entry(Landmark.LEAD_HIP, "LHip"),
            Map.entry(Landmark.TRAIL_HIP, "RHip"),
            Map.entry(Landmark.LEAD_KNEE, "LKnee"),
            Map.entry(Landmark.TRAIL_KNEE, "RKnee"),
            Map.entry(Landmark.LEAD_ANKLE, "LAnkle"),
            Map.entry(Landmark.TRAIL_ANKLE, "RAnkle"),
            Map.entry(Landmark.LEAD_HEEL, "LHeel"),
            Map.entry(Landmark.TRAIL_HEEL, "RHeel"),
            Map.entry(Landmark.LEAD_TOE, "LBigToe"),
            Map.entry(Landmark.TRAIL_TOE, "RBigToe"),
            Map.entry(Landmark.NECK, "Neck"),
            Map.entry(Landmark.HEAD_CENTRE, "Head")));

    private JointFile() {}

    static List<RandomScene.Player> players(Path file) throws IOException {
        List<String> lines = Files.readAllLines(file);
        String[] heads = lines.get(3).split("\t");
        Map<String, Integer> columns = new HashMap<>();
        for (int i = 2; i < heads.length; i++) {
            if (!heads[i].isBlank()) {
                columns.put(heads[i].strip(), i);
            }
        }
        List<RandomScene.Player> players = new ArrayList<>();
        for (String line : lines.subList(5, lines.size())) {
            if (!line.isBlank()) {
                String[] cells = line.split("\t");
                Map<Landmark, double[]> at = new EnumMap<>(Landmark.class);
                NAMES.forEach((landmark, name) -> at.put(landmark, point(cells, columns.get(name))));
                players.add(player(at));
            }
        }
        return players;
    }

    /** Level east, level north, up. */
    private static double[] point(String[] cells, int column) {
        double x = Double.parseDouble(cells[column]);
        double y = Double.parseDouble(cells[column + 1]);
        double z = Double.parseDouble(cells[column + 2]);
        return new double[] {z, x, y};
    }

    private static RandomScene.Player player(Map<Landmark, double[]> at) {
        double[] lead = at.get(Landmark.LEAD_HIP);
        double[] trail = at.get(Landmark.TRAIL_HIP);
        double heading = Math.atan2(lead[1] - trail[1], lead[0] - trail[0]);
        double floor = at.values().stream().mapToDouble(p -> p[2]).min().orElseThrow();
        Map<Landmark, WorldPoint> turned = new EnumMap<>(Landmark.class);
        at.forEach((landmark, p) -> turned.put(
                landmark,
                new WorldPoint(
                        p[0] * Math.cos(heading) + p[1] * Math.sin(heading),
                        -(p[1] * Math.cos(heading) - p[0] * Math.sin(heading)) * -1,
                        p[2] - floor)));
        WorldPoint a = turned.get(Landmark.LEAD_TOE);
        WorldPoint b = turned.get(Landmark.TRAIL_TOE);
        double t = (a.t() + b.t()) / 2;
        double h = (a.h() + b.h()) / 2 - TOES_TO_BALL_M;
        turned.replaceAll((landmark, p) -> p.plus(-t, -h, 0));
        double stature = turned.get(Landmark.HEAD_CENTRE).u() / 0.93;
        return new RandomScene.Player(turned, stature);
    }
}

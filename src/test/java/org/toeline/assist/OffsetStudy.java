package org.toeline.assist;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.toeline.assist.BonyPoints.Axes;
import org.toeline.assist.BonyPoints.From;
import org.toeline.assist.PoseModel.Seen;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.Handedness;
import org.toeline.mark.Landmark;
import org.toeline.mark.View;
import org.toeline.scene.RandomLessons;
import org.toeline.scene.Scenario;
import org.toeline.scene.Truth;
import org.toeline.video.Frame;

/**
 * Where bony points lie from the model's joint centres on the drawn players of {@link RandomLessons}: the offsets and spreads
 * of {@link BonyPoints}, as shares of the span. FOLDER FROM TO: pictures made by {@link org.toeline.scene.RandomPicture}.
 */
final class OffsetStudy {

    private record Off(double out, double up) {}

    private OffsetStudy() {}

    public static void main(String[] arguments) throws Exception {
        Path folder = Path.of(arguments[0]);
        try (PoseModel model = PoseModel.open().orElseThrow()) {
            for (View view : List.of(View.FACE_ON, View.DOWN_THE_LINE)) {
                Map<Landmark, List<Off>> offs = new EnumMap<>(Landmark.class);
                int[] counts = new int[5];
                for (int n = Integer.parseInt(arguments[1]); n < Integer.parseInt(arguments[2]); n++) {
                    File file = folder.resolve(n + "-" + view.id() + "-0.png").toFile();
                    if (Files.exists(file.toPath())) {
                        look(model, n, view, file, offs, counts);
                    }
                }
                System.out.printf(
                        "%s: %d pictures, nobody in %d, order unclear in %d, turned in %d, legs untrusted in %d%n",
                        view.id(), counts[0], counts[1], counts[2], counts[3], counts[4]);
                offs.forEach(OffsetStudy::row);
            }
        }
    }

    private static void look(PoseModel model, int n, View view, File file, Map<Landmark, List<Off>> offs, int[] counts)
            throws Exception {
        var image = ImageIO.read(file);
        int w = image.getWidth();
        Frame frame = new Frame(0, 0, w, image.getHeight(), image.getRGB(0, 0, w, image.getHeight(), null, 0, w));
        Scenario scenario = RandomLessons.lesson(n);
        boolean right = scenario.handedness() == Handedness.RIGHT;
        counts[0]++;
        Optional<Seen> person = new PoseSearch(model, frame).person(List.of());
        if (person.isEmpty()) {
            counts[1]++;
            return;
        }
        Optional<Sides> sides = Sides.of(person.get(), view, right);
        if (sides.isEmpty()) {
            counts[2]++;
            return;
        }
        counts[3] += sides.get().turned() ? 1 : 0;
        counts[4] += sides.get().legs() ? 0 : 1;
        Seen seen = sides.get().seen();
        double span = PoseSearch.span(seen);
        double share = (double) w / Scenario.WIDTH;
        BonyPoints.table(view).forEach((landmark, from) -> {
            ImagePoint truth = Truth.pixel(
                    scenario,
                    view,
                    scenario.landmarks(RandomLessons.momentS(0, 1)).get(landmark));
            ImagePoint at = new ImagePoint(truth.xPx() * share, truth.yPx() * share);
            offs.computeIfAbsent(landmark, l -> new ArrayList<>())
                    .add(off(seen, landmark, from, view, right, at, span));
        });
    }

    private static Off off(
            Seen seen, Landmark landmark, From from, View view, boolean right, ImagePoint truth, double span) {
        Axes axes = BonyPoints.turnsWithTrunk(landmark) ? Axes.ofTrunk(seen) : Axes.UPRIGHT;
        double[] d = axes.of(BonyPoints.joint(seen, landmark, from, right), truth);
        double way = (right ? 1 : -1) * (view == View.FACE_ON && landmark.side() == Landmark.Side.TRAIL ? -1 : 1);
        return new Off(way * d[0] / span, d[1] / span);
    }

    private static void row(Landmark landmark, List<Off> offs) {
        double out = offs.stream().mapToDouble(Off::out).average().orElse(0);
        double up = offs.stream().mapToDouble(Off::up).average().orElse(0);
        double squares = offs.stream()
                .mapToDouble(o -> (o.out - out) * (o.out - out) + (o.up - up) * (o.up - up))
                .sum();
        System.out.printf(
                Locale.ROOT,
                "| %s | %d | %+.4f | %+.4f | %.4f |%n",
                landmark.id(),
                offs.size(),
                out,
                up,
                Math.sqrt(squares / 2 / offs.size()));
    }
}

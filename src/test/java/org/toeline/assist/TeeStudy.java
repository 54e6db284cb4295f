package org.toeline.assist;

import java.io.File;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import javax.imageio.ImageIO;
import org.toeline.camera.UsualLens;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.Landmark;
import org.toeline.mark.Mark;
import org.toeline.mark.View;
import org.toeline.scene.RandomLessons;
import org.toeline.scene.Scenario;
import org.toeline.scene.Truth;
import org.toeline.video.Frame;

/**
 * The close view of the tee on drawn players: what is suggested of ball, crown and ground, and how far off. FOLDER FROM TO:
 * pictures made by {@link org.toeline.scene.RandomPicture}.
 */
final class TeeStudy {

    private static final Map<String, List<double[]>> OFF = new TreeMap<>();
    private static final Map<String, Integer> THERE = new TreeMap<>();

    private TeeStudy() {}

    public static void main(String[] arguments) throws Exception {
        Path folder = Path.of(arguments[0]);
        for (int n = Integer.parseInt(arguments[1]); n < Integer.parseInt(arguments[2]); n++) {
            File file = folder.resolve(n + "-tee-0.png").toFile();
            if (file.length() > 0) {
                look(n, file);
            }
        }
        System.out.println("| what | there | suggested | wrong | off up, mean mm | off up, sd mm | spread met |");
        System.out.println("| --- | --- | --- | --- | --- | --- | --- |");
        THERE.forEach((what, there) -> row(what, there, OFF.getOrDefault(what, List.of())));
    }

    private static void row(String what, int there, List<double[]> offs) {
        double mean = offs.stream().mapToDouble(o -> o[0]).average().orElse(Double.NaN);
        double sd = Math.sqrt(offs.stream()
                .mapToDouble(o -> (o[0] - mean) * (o[0] - mean))
                .average()
                .orElse(Double.NaN));
        System.out.printf(
                Locale.ROOT,
                "| %s | %d | %d | %d | %+.2f | %.2f | %.0f %% |%n",
                what,
                there,
                offs.size(),
                offs.stream().filter(o -> o[1] > 4).count(),
                mean,
                sd,
                100.0 * offs.stream().filter(o -> o[1] < 1.96).count() / Math.max(1, offs.size()));
    }

    private static void look(int n, File file) throws Exception {
        var image = ImageIO.read(file);
        int w = image.getWidth();
        int h = image.getHeight();
        Frame frame = new Frame(0, 0, w, h, image.getRGB(0, 0, w, h, null, 0, w));
        Scenario scenario = RandomLessons.lesson(n);
        double share = (double) w / Scenario.WIDTH;
        long start = System.nanoTime();
        ViewSuggestion seen = new TeeSuggester(
                        new Asked(frame, View.TEE, scenario.handedness(), List.of(), UsualLens.MAIN.focalPx(w, h)),
                        () -> false)
                .suggest();
        double seconds = (System.nanoTime() - start) / 1e9;
        Truth.Outline ball = Truth.ball(scenario, View.TEE);
        double mm = 42.67 / (ball.diameterPx() * share);
        boolean wood = scenario.club().club().ordinal() <= 2;
        StringBuilder told = new StringBuilder();
        count(
                told,
                "ball",
                seen.ball().map(b -> b.centre()),
                seen.ball().map(b -> b.sigmaPx()),
                at(ball.centre(), share),
                mm);
        if (seen.ball().isPresent()) {
            double wider = seen.ball().get().diameterPx().orElseThrow() - ball.diameterPx() * share;
            add("diameter", wider * mm, Math.abs(wider) / seen.ball().get().diameterSigmaPx());
        }
        for (Landmark landmark : List.of(Landmark.CROWN, Landmark.GROUND)) {
            Optional<Mark> mark = seen.landmarks().stream()
                    .filter(m -> m.landmark() == landmark)
                    .findFirst();
            ImagePoint truth = at(
                    Truth.pixel(
                            scenario,
                            View.TEE,
                            scenario.landmarks(RandomLessons.momentS(0, 1)).get(landmark)),
                    share);
            count(
                    told,
                    landmark.id() + (wood ? " wood" : " iron"),
                    mark.map(Mark::at),
                    mark.map(Mark::sigmaPx),
                    truth,
                    mm);
        }
        System.out.printf(
                Locale.ROOT,
                "%d %s, %d px, %.2f s: %s missing %s%n",
                n,
                scenario.club().club(),
                w,
                seconds,
                told,
                seen.missing());
    }

    private static ImagePoint at(ImagePoint p, double share) {
        return new ImagePoint(p.xPx() * share, p.yPx() * share);
    }

    private static void count(
            StringBuilder told,
            String what,
            Optional<ImagePoint> found,
            Optional<Double> sigma,
            ImagePoint truth,
            double mm) {
        THERE.merge(what, 1, Integer::sum);
        if (found.isPresent()) {
            double up = truth.yPx() - found.get().yPx();
            add(what, up * mm, Math.abs(up) / sigma.orElseThrow());
            told.append(String.format(
                    Locale.ROOT,
                    "%s %+.1f right %+.1f up px (%.1f), ",
                    what,
                    found.get().xPx() - truth.xPx(),
                    up,
                    sigma.orElseThrow()));
        }
    }

    private static void add(String what, double offMm, double shareOfSigma) {
        THERE.putIfAbsent(what, 0);
        OFF.computeIfAbsent(what, k -> new ArrayList<>()).add(new double[] {offMm, shareOfSigma});
    }
}

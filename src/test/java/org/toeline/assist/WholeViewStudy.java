package org.toeline.assist;

import java.io.File;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import javax.imageio.ImageIO;
import org.toeline.camera.UsualLens;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.FloorReference;
import org.toeline.mark.Landmark;
import org.toeline.mark.Mark;
import org.toeline.mark.View;
import org.toeline.geometry.WorldPoint;
import org.toeline.scene.RandomLessons;
import org.toeline.scene.Scenario;
import org.toeline.scene.Truth;
import org.toeline.video.Frame;

/**
 * One press on drawn players that nothing was tuned on: what is hit, how far off, and what is wrong. FOLDER FROM TO: pictures
 * made by {@link org.toeline.scene.RandomPicture} with one frame each. What is wrong is also told of each picture.
 */
final class WholeViewStudy {

    private static final class Tally {
        int there;
        int found;
        int doubtful;
        int wrong;
        int sureAndWrong;
        final List<Double> off = new ArrayList<>();
    }

    private static final Map<String, Tally> TALLIES = new TreeMap<>();

    private WholeViewStudy() {}

    public static void main(String[] arguments) throws Exception {
        Path folder = Path.of(arguments[0]);
        List<Double> seconds = new ArrayList<>();
        try (LandmarkSuggester suggester = LandmarkSuggester.load().orElseThrow()) {
            for (int n = Integer.parseInt(arguments[1]); n < Integer.parseInt(arguments[2]); n++) {
                for (View view : List.of(View.FACE_ON, View.DOWN_THE_LINE)) {
                    File file = folder.resolve(n + "-" + view.id() + "-0.png").toFile();
                    if (file.length() > 0) {
                        seconds.add(look(suggester, n, view, file));
                    }
                }
            }
        }
        System.out.println("| what | there | found | doubtful | wrong | sure and wrong | off, median | off, 95 % |");
        System.out.println("| --- | --- | --- | --- | --- | --- | --- | --- |");
        TALLIES.forEach((what, t) -> System.out.printf(
                Locale.ROOT,
                "| %s | %d | %d | %d | %d | %d | %.2f | %.2f |%n",
                what, t.there, t.found, t.doubtful, t.wrong, t.sureAndWrong, at(t.off, 0.5), at(t.off, 0.95)));
        System.out.printf(
                Locale.ROOT, "seconds a picture: median %.2f, most %.2f%n", at(seconds, 0.5), at(seconds, 1));
    }

    private static double at(List<Double> values, double share) {
        return values.isEmpty()
                ? Double.NaN
                : values.stream().sorted().toList().get((int) Math.min(values.size() - 1, share * values.size()));
    }

    private static double look(LandmarkSuggester suggester, int n, View view, File file) throws Exception {
        var image = ImageIO.read(file);
        int w = image.getWidth();
        int h = image.getHeight();
        Frame frame = new Frame(0, 0, w, h, image.getRGB(0, 0, w, h, null, 0, w));
        Scenario scenario = RandomLessons.lesson(n);
        long start = System.nanoTime();
        ViewSuggestion seen = suggester.whole(
                List.of(frame), view, scenario.handedness(), UsualLens.MAIN.focalPx(w, h), () -> false);
        double seconds = (System.nanoTime() - start) / 1e9;
        double share = (double) w / Scenario.WIDTH;
        String name = n + " " + view.id();
        told(name, view, scenario, seen);
        landmarks(name, view, scenario, share, seen);
        ball(name, view, scenario, share, seen);
        rods(name, view, scenario, share, seen);
        System.out.println(name + " " + w + " px missing " + seen.missing() + " doubtful " + seen.doubtful() + " uprights "
                + seen.uprights().size());
        return seconds;
    }

    private static void told(String name, View view, Scenario scenario, ViewSuggestion seen) {
        count(name, "view", seen.view().isPresent(), false, seen.view().filter(v -> v != view).isPresent() ? 9 : 0, 1);
        count(
                name,
                "hand " + view.id(),
                seen.hand().isPresent(),
                true,
                seen.hand().filter(v -> v != scenario.handedness()).isPresent() ? 9 : 0,
                1);
    }

    private static void landmarks(String name, View view, Scenario scenario, double share, ViewSuggestion seen) {
        double at = RandomLessons.momentS(0, 1);
        Map<Landmark, WorldPoint> truth = scenario.landmarks(at);
        boolean club = seen.landmarks().stream().anyMatch(m -> m.landmark() == Landmark.CLUB_HEAD);
        boolean bodyDoubt = seen.doubtful().containsKey(ViewSuggestion.Part.BODY);
        boolean shaftDoubt = seen.doubtful().containsKey(ViewSuggestion.Part.SHAFT)
                || seen.doubtful().containsKey(ViewSuggestion.Part.BALL);
        boolean shaft = false;
        for (Mark mark : seen.landmarks()) {
            boolean isClub = mark.landmark() == Landmark.CLUB_HEAD || mark.landmark() == Landmark.GRIP_END;
            shaft |= isClub;
            double off = mark.at().distancePx(pixel(scenario, view, truth.get(mark.landmark()), share));
            count(
                    name,
                    isClub ? mark.landmark().id() + " " + view.id() : "landmark " + view.id(),
                    true,
                    isClub ? shaftDoubt : bodyDoubt,
                    off / mark.sigmaPx(),
                    4);
        }
        if (!club) {
            count(name, "club-head " + view.id(), false, false, 0, 4);
        }
        if (!shaft) {
            count(name, "grip-end " + view.id(), false, false, 0, 4);
        }
    }

    private static void ball(String name, View view, Scenario scenario, double share, ViewSuggestion seen) {
        Truth.Outline ball = Truth.ball(scenario, view);
        ImagePoint centre = new ImagePoint(ball.centre().xPx() * share, ball.centre().yPx() * share);
        count(
                name,
                "ball, px " + view.id(),
                seen.ball().isPresent(),
                seen.doubtful().containsKey(ViewSuggestion.Part.BALL),
                seen.ball().map(b -> b.centre().distancePx(centre)).orElse(0.0),
                0.25 * ball.diameterPx() * share);
    }

    private static void rods(String name, View view, Scenario scenario, double share, ViewSuggestion seen) {
        List<FloorReference> ends = scenario.floor().points();
        boolean[] used = new boolean[seen.rods().size()];
        for (int r = 0; r + 1 < ends.size(); r += 2) {
            ImagePoint a = floor(scenario, view, ends.get(r), share);
            ImagePoint b = floor(scenario, view, ends.get(r + 1), share);
            double least = Double.MAX_VALUE;
            int which = -1;
            for (int i = 0; i < used.length; i++) {
                SnappedRod rod = seen.rods().get(i);
                StraightLine line = StraightLine.through(a, b);
                double across = Math.max(
                        Math.abs(line.place(rod.from().at()).t()), Math.abs(line.place(rod.to().at()).t()));
                if (across < 4 && !used[i]) {
                    which = i;
                    least = Math.min(
                            Math.max(rod.from().at().distancePx(a), rod.to().at().distancePx(b)),
                            Math.max(rod.from().at().distancePx(b), rod.to().at().distancePx(a)));
                }
            }
            if (which >= 0) {
                used[which] = true;
            }
            count(name, (r == 0 ? "rod along, ends px " : "rod across, ends px ") + view.id(), which >= 0, false, which < 0 ? 0 : least, 8);
        }
        for (int i = 0; i < used.length; i++) {
            if (!used[i]) {
                count(name + " " + seen.rods().get(i), "rod that is none", true, false, 99, 8);
            }
        }
    }

    private static ImagePoint floor(Scenario scenario, View view, FloorReference end, double share) {
        return pixel(scenario, view, new WorldPoint(end.t(), end.h(), 0.004), share);
    }

    private static ImagePoint pixel(Scenario scenario, View view, WorldPoint point, double share) {
        ImagePoint at = Truth.pixel(scenario, view, point);
        return new ImagePoint(at.xPx() * share, at.yPx() * share);
    }

    private static void count(String name, String what, boolean found, boolean doubtful, double off, double limit) {
        Tally tally = TALLIES.computeIfAbsent(what, k -> new Tally());
        tally.there++;
        if (!found) {
            return;
        }
        tally.found++;
        tally.off.add(off);
        tally.doubtful += doubtful ? 1 : 0;
        if (off > limit) {
            tally.wrong++;
            tally.sureAndWrong += doubtful ? 0 : 1;
            System.out.printf(Locale.ROOT, "wrong: %s %s %.1f%n", name, what, off);
        }
    }
}

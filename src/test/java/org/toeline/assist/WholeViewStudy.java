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
import org.toeline.geometry.WorldPoint;
import org.toeline.mark.BallMark;
import org.toeline.mark.FloorMark;
import org.toeline.mark.FloorReference;
import org.toeline.mark.Landmark;
import org.toeline.mark.Mark;
import org.toeline.mark.VerticalMark;
import org.toeline.mark.View;
import org.toeline.scene.RandomLessons;
import org.toeline.scene.Scenario;
import org.toeline.scene.Truth;
import org.toeline.video.Frame;

/**
 * One press on drawn players that nothing was tuned on: what is hit, how far off, and what is wrong. FOLDER FROM TO [FRAMES
 * [alone]]: pictures made by {@link org.toeline.scene.RandomPicture} with one frame each, or with an odd number of them, of which the
 * middle one is looked at; the first and the last are others of the still span, but for a look at it alone. What is wrong is also
 * told of each picture.
 */
final class WholeViewStudy {

    /** In two directions 95 % of a normal distribution lie within so many standard deviations. */
    private static final double MET = 2.45;
    /** Further off than chance has it once in thousands: something else was taken for it. */
    static final double WRONG = 4;

    static final double LEAST_WRONG_PX = 3;

    private static final class Tally {
        int there;
        int found;
        int met;
        int wrong;
        final List<Double> off = new ArrayList<>();
    }

    private static final Map<String, Tally> TALLIES = new TreeMap<>();

    private WholeViewStudy() {}

    public static void main(String[] arguments) throws Exception {
        Path folder = Path.of(arguments[0]);
        int frames = arguments.length > 3 ? Integer.parseInt(arguments[3]) : 1;
        boolean alone = arguments.length > 4;
        List<Double> seconds = new ArrayList<>();
        try (LandmarkSuggester suggester = LandmarkSuggester.load().orElseThrow()) {
            for (int n = Integer.parseInt(arguments[1]); n < Integer.parseInt(arguments[2]); n++) {
                for (View view : List.of(View.FACE_ON, View.DOWN_THE_LINE)) {
                    if (file(folder, n, view, frames - 1).length() > 0) {
                        Frame frame = frame(file(folder, n, view, frames / 2));
                        List<Frame> others = frames == 1 || alone
                                ? List.of()
                                : List.of(frame(file(folder, n, view, 0)), frame(file(folder, n, view, frames - 1)));
                        seconds.add(look(suggester, n, view, frame, others));
                    }
                }
            }
        }
        System.out.println(
                "| what | there | suggested | wrong | off, median px | off, rms px | off, 95 % px | spread met |");
        System.out.println("| --- | --- | --- | --- | --- | --- | --- | --- |");
        TALLIES.forEach((what, t) -> System.out.printf(
                Locale.ROOT,
                "| %s | %d | %d | %d | %.2f | %.2f | %.2f | %.0f %% |%n",
                what,
                t.there,
                t.found,
                t.wrong,
                at(t.off, 0.5),
                Math.sqrt(t.off.stream().mapToDouble(d -> d * d).average().orElse(0)),
                at(t.off, 0.95),
                100.0 * t.met / Math.max(1, t.found)));
        System.out.printf(Locale.ROOT, "seconds a picture: median %.2f, most %.2f%n", at(seconds, 0.5), at(seconds, 1));
    }

    private static File file(Path folder, int n, View view, int frame) {
        return folder.resolve(n + "-" + view.id() + "-" + frame + ".png").toFile();
    }

    private static Frame frame(File file) throws Exception {
        var image = ImageIO.read(file);
        int w = image.getWidth();
        int h = image.getHeight();
        return new Frame(0, 0, w, h, image.getRGB(0, 0, w, h, null, 0, w));
    }

    private static double at(List<Double> values, double share) {
        return values.isEmpty()
                ? Double.NaN
                : values.stream().sorted().toList().get((int) Math.min(values.size() - 1, share * values.size()));
    }

    private static double look(LandmarkSuggester suggester, int n, View view, Frame frame, List<Frame> others) {
        int w = frame.width();
        Scenario scenario = RandomLessons.lesson(n);
        Asked asked =
                new Asked(frame, view, scenario.handedness(), List.of(), UsualLens.MAIN.focalPx(w, frame.height()));
        long start = System.nanoTime();
        ViewSuggestion seen = suggester.suggest(asked.with(others), () -> false);
        double seconds = (System.nanoTime() - start) / 1e9;
        double share = (double) w / Scenario.WIDTH;
        String name = n + " " + view.id();
        told(name, view, scenario, seen);
        landmarks(name, view, scenario, share, seen);
        ball(name, view, scenario, share, seen);
        rods(name, view, scenario, share, seen);
        uprights(name, view, scenario, share, seen);
        System.out.printf(Locale.ROOT, "%s, %d px wide, %.2f s, missing %s%n", name, w, seconds, seen.missing());
        return seconds;
    }

    private static void told(String name, View view, Scenario scenario, ViewSuggestion seen) {
        count(
                name,
                "view",
                seen.view().isPresent(),
                seen.view().filter(v -> v != view).isPresent() ? 99 : 0,
                1);
        boolean other = seen.hand().filter(v -> v != scenario.handedness()).isPresent();
        count(name, "hand " + view.id(), seen.hand().isPresent(), other ? 99 : 0, 1);
    }

    private static void landmarks(String name, View view, Scenario scenario, double share, ViewSuggestion seen) {
        Map<Landmark, WorldPoint> truth = scenario.landmarks(RandomLessons.momentS(0, 1));
        for (Landmark landmark : Landmark.values()) {
            boolean club = landmark == Landmark.CLUB_HEAD || landmark == Landmark.GRIP_END;
            Optional<Mark> mark = seen.landmarks().stream()
                    .filter(m -> m.landmark() == landmark)
                    .findFirst();
            String what = (club ? landmark.id() : "landmark") + " " + view.id();
            if (mark.isPresent()) {
                double off = mark.get().at().distancePx(pixel(scenario, view, truth.get(landmark), share));
                count(name + " " + landmark.id(), what, true, off, mark.get().sigmaPx());
            } else if (club) {
                count(name, what, false, 0, 1);
            }
        }
    }

    private static void ball(String name, View view, Scenario scenario, double share, ViewSuggestion seen) {
        Truth.Outline ball = Truth.ball(scenario, view);
        ImagePoint centre =
                new ImagePoint(ball.centre().xPx() * share, ball.centre().yPx() * share);
        double off = seen.ball().map(b -> b.centre().distancePx(centre)).orElse(0.0);
        double sigma = seen.ball().map(BallMark::sigmaPx).orElse(1.0);
        count(name, "ball " + view.id(), seen.ball().isPresent(), off, sigma);
        double wider = seen.ball()
                .map(b -> Math.abs(b.diameterPx().orElseThrow() - ball.diameterPx() * share))
                .orElse(0.0);
        count(
                name,
                "ball's diameter " + view.id(),
                seen.ball().isPresent(),
                wider,
                seen.ball().map(BallMark::diameterSigmaPx).orElse(1.0));
    }

    /** Every end by the name it is given. */
    private static void rods(String name, View view, Scenario scenario, double share, ViewSuggestion seen) {
        String what = "rod end " + view.id();
        List<FloorMark> marks = RodNames.of(seen.rods(), scenario.floor(), view, scenario.handedness());
        for (FloorReference end : scenario.floor().points()) {
            Optional<FloorMark> mark =
                    marks.stream().filter(m -> m.pointId().equals(end.id())).findFirst();
            double off = mark.map(m -> m.at().distancePx(floor(scenario, view, end, share)))
                    .orElse(0.0);
            count(
                    name + " " + end.id(),
                    what,
                    mark.isPresent(),
                    off,
                    mark.map(FloorMark::sigmaPx).orElse(1.0));
        }
    }

    /** Whether what is called upright leads where uprights meet in the picture: how far its ends stand off, pixels. */
    private static void uprights(String name, View view, Scenario scenario, double share, ViewSuggestion seen) {
        StraightLine one = plumb(scenario, view, share, 1);
        StraightLine other = plumb(scenario, view, share, -1);
        for (VerticalMark mark : seen.uprights()) {
            double x = (mark.from().xPx() + mark.to().xPx()) / 2;
            double y = (mark.from().yPx() + mark.to().yPx()) / 2;
            double lean = between(one, other, x, y);
            StraightLine upright = new StraightLine(new ImagePoint(x, y), lean);
            double off = Math.max(
                    Math.abs(upright.place(mark.from()).t()),
                    Math.abs(upright.place(mark.to()).t()));
            count(name + " " + mark, "upright " + view.id(), true, off, mark.sigmaPx());
        }
        if (seen.uprights().isEmpty()) {
            count(name, "upright " + view.id(), false, 0, 1);
        }
    }

    /** The image of something that stands upright behind the ball, a metre to one side. */
    private static StraightLine plumb(Scenario scenario, View view, double share, double aside) {
        boolean faceOn = view == View.FACE_ON;
        double t = faceOn ? aside : 1;
        double h = faceOn ? 1 : aside;
        return StraightLine.through(
                pixel(scenario, view, new WorldPoint(t, h, 0), share),
                pixel(scenario, view, new WorldPoint(t, h, 1.5), share));
    }

    /** The direction from a place of the picture to where two lines meet. */
    private static double between(StraightLine a, StraightLine b, double x, double y) {
        double turn = Math.sin(b.angleRad() - a.angleRad());
        if (Math.abs(turn) < 1e-9) {
            return a.angleRad();
        }
        double s = b.place(a.origin()).t() / turn;
        ImagePoint meet = a.at(s, 0);
        return Math.atan2(meet.yPx() - y, meet.xPx() - x);
    }

    /** Where it touches the ground, which is what its place on the floor means. */
    static ImagePoint floor(Scenario scenario, View view, FloorReference end, double share) {
        return pixel(scenario, view, new WorldPoint(end.t(), end.h(), 0), share);
    }

    static ImagePoint pixel(Scenario scenario, View view, WorldPoint point, double share) {
        ImagePoint at = Truth.pixel(scenario, view, point);
        return new ImagePoint(at.xPx() * share, at.yPx() * share);
    }

    private static void count(String name, String what, boolean found, double offPx, double sigmaPx) {
        Tally tally = TALLIES.computeIfAbsent(what, k -> new Tally());
        tally.there++;
        if (!found) {
            return;
        }
        tally.found++;
        tally.off.add(offPx);
        tally.met += offPx < MET * sigmaPx ? 1 : 0;
        if (offPx > WRONG * sigmaPx && offPx > LEAST_WRONG_PX) {
            tally.wrong++;
            System.out.printf(Locale.ROOT, "wrong: %s %s %.1f px, stated %.2f%n", name, what, offPx, sigmaPx);
        }
    }
}

package org.toeline.assist;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.Handedness;
import org.toeline.mark.Landmark;
import org.toeline.mark.Mark;
import org.toeline.mark.View;
import org.toeline.video.Clip;
import org.toeline.video.Frame;

/**
 * How far suggested landmarks lie from the truth of the sample clips: what is still to be added to each offset, the
 * spread that is left when each lesson is judged by the offsets of the other three, time for a picture and memory.
 */
final class SuggestionStudy {

    private static final List<String> LESSONS = List.of("before", "after", "left-handed", "all-good");
    private static final int EVERY = 12;

    /** @param out away from the middle (face-on) or to the ball, and up, both as shares of the span */
    private record Error(String lesson, double out, double up, double px, double cm, double sigmas) {}

    private SuggestionStudy() {}

    public static void main(String[] args) throws Exception {
        try (PoseModel model = PoseModel.open().orElseThrow()) {
            for (View view : List.of(View.FACE_ON, View.DOWN_THE_LINE)) {
                Map<Landmark, List<Error>> errors = new EnumMap<>(Landmark.class);
                for (String lesson : LESSONS) {
                    add(model, lesson, view, errors);
                }
                System.out.println(
                        "| " + view.id() + " | seen in | add out | add up | spread | cm, rms | within 95 % |");
                errors.forEach(SuggestionStudy::row);
            }
        }
        try (LandmarkSuggester suggester = LandmarkSuggester.load().orElseThrow()) {
            times(suggester);
        }
    }

    private static void add(PoseModel model, String lesson, View view, Map<Landmark, List<Error>> errors)
            throws Exception {
        Path folder = Path.of("sample-media", lesson);
        JsonNode truth = new ObjectMapper()
                .readTree(folder.resolve(view.id() + ".truth.json").toFile());
        Handedness hand = truth.path("handedness").asText().equals("left") ? Handedness.LEFT : Handedness.RIGHT;
        double pxPerM = truth.path("camera").path("focal").asDouble() / distance(truth);
        try (Clip clip = Clip.open(folder.resolve(view.id() + ".mp4"))) {
            int i = 0;
            for (JsonNode moment : truth.path("moments")) {
                if (i++ % EVERY != 0
                        || moment.path("time").asDouble()
                                > truth.path("takeaway").asDouble()) {
                    continue;
                }
                PoseModel.Seen seen = new PoseSearch(
                                model, clip.frame(moment.path("frame").asInt()))
                        .person(List.of())
                        .orElseThrow();
                double span = PoseSearch.span(seen);
                BonyPoints.of(Sides.of(seen, view, hand == Handedness.RIGHT).orElseThrow(), view, hand)
                        .forEach(m -> errors.computeIfAbsent(m.landmark(), k -> new ArrayList<>())
                                .add(error(lesson, view, hand, m, moment.path("landmarks"), span, pxPerM)));
            }
        }
    }

    private static double distance(JsonNode truth) {
        JsonNode at = truth.path("camera").path("position");
        JsonNode hip = truth.path("landmarks").path("lead-hip");
        return Math.hypot(
                Math.hypot(
                        at.path(0).asDouble() - hip.path(0).asDouble(),
                        at.path(1).asDouble() - hip.path(1).asDouble()),
                at.path(2).asDouble() - hip.path(2).asDouble());
    }

    private static Error error(
            String lesson, View view, Handedness hand, Mark mark, JsonNode landmarks, double span, double pxPerM) {
        JsonNode l = landmarks.path(mark.landmark().id());
        double dx = l.path(3).asDouble() - mark.at().xPx();
        double dy = l.path(4).asDouble() - mark.at().yPx();
        double way = (hand == Handedness.RIGHT ? 1 : -1)
                * (view == View.FACE_ON && mark.landmark().side() == Landmark.Side.TRAIL ? -1 : 1);
        double off = Math.hypot(dx, dy);
        return new Error(lesson, way * dx / span, -dy / span, off, 100 * off / pxPerM, off / mark.sigmaPx());
    }

    private static void row(Landmark landmark, List<Error> errors) {
        double squares = 0;
        for (Error e : errors) {
            List<Error> others =
                    errors.stream().filter(o -> !o.lesson.equals(e.lesson)).toList();
            double out =
                    e.out - others.stream().mapToDouble(Error::out).average().orElse(0);
            double up = e.up - others.stream().mapToDouble(Error::up).average().orElse(0);
            squares += (out * out + up * up) / 2;
        }
        System.out.printf(
                Locale.ROOT,
                "| %s | %d | %+.4f | %+.4f | %.4f | %.1f | %.0f %% |%n",
                landmark.id(),
                errors.size(),
                errors.stream().mapToDouble(Error::out).average().orElse(0),
                errors.stream().mapToDouble(Error::up).average().orElse(0),
                Math.sqrt(squares / errors.size()),
                Math.sqrt(
                        errors.stream().mapToDouble(e -> e.cm * e.cm).average().orElse(0)),
                // two directions: 95 % of a normal distribution lie within 2.45 standard deviations
                100.0 * errors.stream().filter(e -> e.sigmas < 2.45).count() / errors.size());
    }

    private static void times(LandmarkSuggester suggester) throws Exception {
        try (Clip clip = Clip.open(Path.of("sample-media/before/face-on.mp4"))) {
            Frame frame = clip.frameAt(2.3);
            for (List<ImagePoint> hints : List.of(List.<ImagePoint>of(), List.of(new ImagePoint(715, 628)))) {
                long start = System.nanoTime();
                for (int i = 0; i < 10; i++) {
                    suggester.suggest(new Asked(frame, View.FACE_ON, Handedness.RIGHT, hints, 960), () -> false);
                }
                System.out.printf(
                        Locale.ROOT,
                        "%.0f ms a picture with %d hints%n",
                        (System.nanoTime() - start) / 1e7,
                        hints.size());
            }
        }
        Path status = Path.of("/proc/self/status");
        if (Files.exists(status)) {
            Files.readAllLines(status).stream()
                    .filter(l -> l.startsWith("VmHWM"))
                    .forEach(System.out::println);
        }
    }
}

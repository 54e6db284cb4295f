package org.toeline.assist;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.toeline.assist.PoseModel.Seen;
import org.toeline.assist.ShaftSearch.Shaft;
import org.toeline.assist.Strokes.Stroke;
import org.toeline.camera.UsualLens;
import org.toeline.mark.Handedness;
import org.toeline.mark.View;
import org.toeline.video.Clip;
import org.toeline.video.Frame;

/**
 * What memory the process holds, and how long it takes, while views are suggested (Linux, which tells both). {@code steps CLIP}:
 * one view, a step after the other; {@code views COUNT CLIP…}: whole views as the desk asks for them, one after the other, each
 * from a clip opened for it and closed again; {@code pictures COUNT CLIP…}: the same without any clip opened meanwhile. A clip shows a right-handed player who stands still until 2.9 s; its name is its
 * view's.
 */
final class SuggestionMemory {

    private static final Path STATUS = Path.of("/proc/self/status");
    /** Written there, the most that was resident is what is resident now: proc(5). */
    private static final Path CLEAR = Path.of("/proc/self/clear_refs");

    private SuggestionMemory() {}

    public static void main(String[] arguments) throws Exception {
        System.out.println(Files.readString(Path.of("/proc/loadavg")).strip());
        said("the program started", 0, held("VmHWM"));
        if (arguments[0].equals("steps")) {
            steps(Path.of(arguments[1]));
        } else {
            List<Path> clips = new ArrayList<>();
            for (int i = 2; i < arguments.length; i++) {
                clips.add(Path.of(arguments[i]));
            }
            views(Integer.parseInt(arguments[1]), clips, arguments[0].equals("views"));
        }
    }

    private static void steps(Path file) throws Exception {
        PoseModel model =
                step("the model loaded, with its libraries", PoseModel::open).orElseThrow();
        Frame frame = step("the picture decoded", () -> decoded(file, 1.5));
        for (int time = 0; time < 3; time++) {
            System.out.printf("%d x %d, time %d%n", frame.width(), frame.height(), time + 1);
            searched(model, frame, view(file));
        }
        model.close();
    }

    /** As {@link ViewSuggester} does it, but nothing side by side. */
    private static void searched(PoseModel model, Frame frame, View view) throws Exception {
        PoseSearch search = new PoseSearch(model, frame);
        Seen seen = step("the player", () -> search.person(List.of())).orElseThrow();
        step("whether another stands beside", () -> search.anotherBeside(seen));
        List<List<Stroke>> strokes = new ArrayList<>();
        for (Strokes.Of of : Strokes.Of.values()) {
            strokes.add(step("strokes of " + of, () -> Strokes.of(frame, of)));
        }
        List<Stroke> bright = strokes.get(Strokes.Of.BRIGHTNESS.ordinal());
        List<Stroke> coloured = new ArrayList<>(strokes.get(Strokes.Of.BLUE.ordinal()));
        coloured.addAll(strokes.get(Strokes.Of.RED.ordinal()));
        Optional<Shaft> shaft = step("the shaft", () -> new ShaftSearch(frame, seen).in(bright));
        step("rods", () -> new RodSearch(frame, seen, shaft).in(coloured));
        double focalPx = UsualLens.MAIN.focalPx(frame.width(), frame.height());
        step("the ball", () -> new BallSearch(frame, view, focalPx).near(shaft.orElseThrow(), seen, () -> false));
        step("uprights", () -> new UprightSearch(frame, seen).in(bright));
    }

    private static void views(int count, List<Path> clips, boolean opened) throws Exception {
        LandmarkSuggester suggester = step("the model loaded, with its libraries", LandmarkSuggester::load)
                .orElseThrow();
        List<Frame> before = new ArrayList<>();
        for (Path file : opened ? List.<Path>of() : clips) {
            before.add(step("a picture decoded", () -> decoded(file, 1.5)));
        }
        for (int n = 0; n < count; n++) {
            int which = n % clips.size();
            Path file = clips.get(which);
            double atS = 0.3 + 2.4 * n / count;
            View view = view(file);
            step("view " + (n + 1), () -> {
                Frame frame = opened ? decoded(file, atS) : before.get(which);
                double focalPx = UsualLens.MAIN.focalPx(frame.width(), frame.height());
                return suggester.suggest(new Asked(frame, view, Handedness.RIGHT, List.of(), focalPx), () -> false);
            });
        }
        suggester.close();
    }

    private static Frame decoded(Path file, double atS) throws Exception {
        try (Clip clip = Clip.open(file)) {
            return clip.frameAt(atS);
        }
    }

    private static View view(Path file) {
        return file.getFileName().toString().startsWith(View.FACE_ON.id()) ? View.FACE_ON : View.DOWN_THE_LINE;
    }

    private static <T> T step(String what, Callable<T> work) throws Exception {
        Files.writeString(CLEAR, "5");
        long start = System.nanoTime();
        T done = work.call();
        said(what, (System.nanoTime() - start) / 1e9, held("VmHWM"));
        return done;
    }

    private static void said(String what, double seconds, int mostMb) throws Exception {
        Runtime heap = Runtime.getRuntime();
        System.out.printf(
                Locale.ROOT,
                "%-40s %6.2f s, at most %5d MB, then %5d MB resident, heap %5d MB of %5d%n",
                what,
                seconds,
                mostMb,
                held("VmRSS"),
                heap.totalMemory() - heap.freeMemory() >> 20,
                heap.totalMemory() >> 20);
    }

    /** A figure of this process, MB. */
    private static int held(String what) throws Exception {
        String line = Files.readAllLines(STATUS).stream()
                .filter(l -> l.startsWith(what + ":"))
                .findFirst()
                .orElseThrow();
        return Integer.parseInt(line.replaceAll("\\D", "")) >> 10;
    }
}

package org.toeline.assist;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import org.toeline.assist.learn.Correction.Kind;
import org.toeline.assist.learn.CorrectionBook;
import org.toeline.assist.learn.Corrections;
import org.toeline.assist.learn.Shown;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.Handedness;
import org.toeline.mark.Landmark;
import org.toeline.mark.Mark;
import org.toeline.mark.View;
import org.toeline.video.Clip;

/**
 * Whether learning from half of the pictures of a real person brings suggestions nearer to others' points in the other half, and
 * whether the spread stated then is met. It takes the folder of {@link RealPersonStudy}; none of it is part of the project. The
 * points stand for a coach who marks joint centres where bony points are suggested; nothing is taken off.
 */
final class LearningStudy {

    private static final Handedness HAND = Handedness.RIGHT;

    /** What is suggested in one picture, and where others' points are. */
    private record Picture(String camera, int frame, ViewSuggestion seen, Map<Landmark, ImagePoint> theirs) {}

    /** Pictures to learn from; the others are held against it. */
    private record Half(String name, Predicate<Picture> learnt) {}

    private static final List<Half> HALVES = List.of(
            new Half("first frames", p -> p.frame < RealPersonStudy.HALF),
            new Half("last frames", p -> p.frame >= RealPersonStudy.HALF),
            new Half("camera 1", p -> p.camera.equals(RealPersonStudy.CAMERAS.get(0))),
            new Half("camera 2", p -> p.camera.equals(RealPersonStudy.CAMERAS.get(1))));

    /** Errors in each direction and spreads, shares of the span. */
    private static final class Met {

        private final List<double[]> all = new ArrayList<>();

        void add(Mark shown, ImagePoint at, double spanPx) {
            all.add(new double[] {(at.xPx() - shown.at().xPx()) / spanPx, shown.sigmaPx() / spanPx});
            all.add(new double[] {(at.yPx() - shown.at().yPx()) / spanPx, shown.sigmaPx() / spanPx});
        }

        void addAll(Met other) {
            all.addAll(other.all);
        }

        double error() {
            return Math.sqrt(
                    all.stream().mapToDouble(e -> e[0] * e[0]).average().orElse(0));
        }

        double stated() {
            return Math.sqrt(
                    all.stream().mapToDouble(e -> e[1] * e[1]).average().orElse(0));
        }

        double within(double sigmas) {
            return 100.0
                    * all.stream().filter(e -> Math.abs(e[0]) < sigmas * e[1]).count()
                    / Math.max(1, all.size());
        }

        String row() {
            return String.format(Locale.ROOT, "%.4f | %.4f | %.0f | %.0f", error(), stated(), within(1), within(2));
        }
    }

    private LearningStudy() {}

    public static void main(String[] arguments) throws Exception {
        Path folder = Path.of(arguments[0]);
        int step = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 2;
        List<Picture> pictures = pictures(folder, step);
        System.out.println(
                "| learnt on | places held against it | error | stated | in 1 | in 2 | error, learnt | stated |"
                        + " in 1 | in 2 | nearer |");
        System.out.println("| --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: |");
        Map<Landmark, Met> before = new EnumMap<>(Landmark.class);
        Map<Landmark, Met> after = new EnumMap<>(Landmark.class);
        Map<Landmark, int[]> counts = new EnumMap<>(Landmark.class);
        for (Half half : HALVES) {
            half(half, pictures, before, after, counts);
        }
        System.out.println();
        System.out.println(
                "| landmark, all four | moved | misses | error | stated | in 1 | in 2 | error, learnt | stated |"
                        + " in 1 | in 2 |");
        System.out.println("| --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: |");
        before.forEach((landmark, met) -> System.out.printf(
                Locale.ROOT,
                "| %s | %d | %d | %s | %s |%n",
                landmark.id(),
                counts.get(landmark)[0],
                counts.get(landmark)[1],
                met.row(),
                after.get(landmark).row()));
    }

    private static List<Picture> pictures(Path folder, int step) throws Exception {
        Map<String, double[]> theirs = RealPersonStudy.points(folder.resolve("openpose_cam01_cam02.csv"));
        List<Picture> pictures = new ArrayList<>();
        try (PoseModel model = PoseModel.open().orElseThrow()) {
            for (String camera : RealPersonStudy.CAMERAS) {
                try (Clip clip = Clip.open(folder.resolve("balancing_" + camera.replace("_", "") + ".mp4"))) {
                    for (int f = 0; f < clip.frameCount(); f += step) {
                        int frame = f;
                        new PoseSearch(model, clip.frame(f))
                                .person(List.of())
                                .flatMap(s -> Sides.of(s, View.FACE_ON, true))
                                .ifPresent(s -> pictures.add(picture(camera, frame, s, theirs)));
                    }
                }
            }
        }
        return pictures;
    }

    private static Picture picture(String camera, int frame, Sides sides, Map<String, double[]> theirs) {
        Map<Landmark, ImagePoint> at = new EnumMap<>(Landmark.class);
        List<Mark> marks = BonyPoints.of(sides, View.FACE_ON, HAND);
        for (Mark mark : marks) {
            RealPersonStudy.theirs(theirs, camera + frame, mark.landmark())
                    .ifPresent(p -> at.put(mark.landmark(), new ImagePoint(p[0], p[1])));
        }
        ViewSuggestion seen = new ViewSuggestion(
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.of(PoseSearch.span(sides.seen())),
                marks,
                Optional.empty(),
                List.of(),
                List.of(),
                Map.of());
        return new Picture(camera, frame, seen, at);
    }

    private static void half(
            Half half,
            List<Picture> pictures,
            Map<Landmark, Met> before,
            Map<Landmark, Met> after,
            Map<Landmark, int[]> counts) {
        CorrectionBook book = CorrectionBook.EMPTY;
        for (Picture picture : pictures) {
            book = half.learnt.test(picture) ? learnt(book, picture) : book;
        }
        for (Corrections c : book.all()) {
            int[] count = counts.computeIfAbsent(c.landmark(), l -> new int[2]);
            count[0] += c.count(Kind.MOVED);
            count[1] += c.misses();
        }
        Map<Landmark, Met> raw = new EnumMap<>(Landmark.class);
        Map<Landmark, Met> learnt = new EnumMap<>(Landmark.class);
        for (Picture picture : pictures) {
            if (!half.learnt.test(picture)) {
                held(picture, picture.seen, raw);
                held(picture, book.onto(picture.seen, View.FACE_ON, HAND), learnt);
            }
        }
        Met all = new Met();
        Met allLearnt = new Met();
        int nearer = 0;
        for (Map.Entry<Landmark, Met> entry : raw.entrySet()) {
            Met with = learnt.get(entry.getKey());
            all.addAll(entry.getValue());
            allLearnt.addAll(with);
            nearer += with.error() < entry.getValue().error() ? 1 : 0;
            before.computeIfAbsent(entry.getKey(), l -> new Met()).addAll(entry.getValue());
            after.computeIfAbsent(entry.getKey(), l -> new Met()).addAll(with);
        }
        System.out.printf(
                Locale.ROOT,
                "| %s | %d | %s | %s | %d of %d |%n",
                half.name,
                all.all.size() / 2,
                all.row(),
                allLearnt.row(),
                nearer,
                raw.size());
    }

    private static CorrectionBook learnt(CorrectionBook book, Picture picture) {
        CorrectionBook with = book;
        List<Mark> shown = book.onto(picture.seen, View.FACE_ON, HAND).landmarks();
        for (int i = 0; i < shown.size(); i++) {
            Mark mark = shown.get(i);
            Optional<ImagePoint> at = Optional.ofNullable(picture.theirs.get(mark.landmark()));
            if (at.isPresent()) {
                with = new Shown(
                                View.FACE_ON,
                                picture.seen.landmarks().get(i),
                                mark,
                                picture.seen.spanPx().orElseThrow(),
                                HAND)
                        .onto(with, Mark.placed(mark.landmark(), at.get(), 2), Shown.Look.ALONE);
            }
        }
        return with;
    }

    private static void held(Picture picture, ViewSuggestion shown, Map<Landmark, Met> met) {
        for (Mark mark : shown.landmarks()) {
            Optional.ofNullable(picture.theirs.get(mark.landmark()))
                    .ifPresent(at -> met.computeIfAbsent(mark.landmark(), l -> new Met())
                            .add(mark, at, picture.seen.spanPx().orElseThrow()));
        }
    }
}

package org.toeline.study;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.toeline.advice.Judge;
import org.toeline.advice.RangeBook;
import org.toeline.advice.Verdict;
import org.toeline.mark.Club;
import org.toeline.posture.PostureEstimator;
import org.toeline.reading.Reading;
import org.toeline.reading.ReadingKind;
import org.toeline.reading.Readings;

/**
 * The estimator on real bodies, whose data stay outside the project. Arguments: a folder in which this looks for joints of
 * a person over time ({@code *.trc}, metres, Y up) and for tables of golfers at address ({@code address*.csv}, columns
 * golfer, club, view, and medians and percentiles of picture angles), and the number of scenes of each kind.
 *
 * <p>A person's joints are marked as they come, frame by frame, before random cameras; golfers are drawn with the bend,
 * the tilt and the stance that the table has of them, between its 10th and 90th percentiles.
 */
public final class RealBodyStudy {

    private static final List<SceneKind> KINDS =
            List.of(SceneKind.BOTH_AND_RODS, SceneKind.BOTH, SceneKind.FACE_ON, SceneKind.DOWN_THE_LINE);

    private RealBodyStudy() {}

    public static void main(String[] args) throws IOException {
        if (args.length < 1) {
            System.err.println(
                    "RealBodyStudy needs a folder with *.trc or address*.csv, and a number of scenes if wanted");
            System.exit(2);
        }
        int count = args.length > 1 ? Integer.parseInt(args[1]) : 200;
        for (Path file : files(Path.of(args[0]), ".trc")) {
            List<RandomScene.Player> frames = JointFile.players(file);
            System.out.printf("%n## %s, %d frames%n%n", file.getFileName(), frames.size());
            for (SceneKind kind : KINDS) {
                Trial trial = new Trial(kind);
                for (int i = 0; i < count; i++) {
                    RandomScene.Player player = frames.get(i % frames.size());
                    trial.run(new RandomScene(50_000 + i, kind, List.of(Club.DRIVER), (club, random) -> player));
                }
                print(trial);
            }
        }
        for (Path file : files(Path.of(args[0]), ".csv")) {
            golfers(file, count);
        }
    }

    private static List<Path> files(Path folder, String end) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(p -> p.getFileName().toString().endsWith(end))
                    .filter(p ->
                            end.equals(".trc") || p.getFileName().toString().startsWith("address"))
                    .sorted()
                    .toList();
        }
    }

    /** What the table says of one golfer with one club; percentiles 10 and 90. */
    private record Golfer(Club club, double[] tilt, double[] ratio, double[] bend) {}

    private static void golfers(Path file, int count) throws IOException {
        List<Golfer> golfers = read(file);
        System.out.printf("%n## %s, %d golfers with a club%n%n", file.getFileName(), golfers.size());
        for (SceneKind kind : KINDS) {
            Trial trial = new Trial(kind);
            int[] low = new int[4];
            for (int i = 0; i < count; i++) {
                Golfer g = golfers.get(i % golfers.size());
                double[] bend = new double[1];
                RandomScene scene = new RandomScene(90_000 + i, kind, List.of(g.club), (club, random) -> {
                    bend[0] = random.nextDouble(g.bend[0], g.bend[1]);
                    return new RandomPlayer(
                                    random,
                                    club,
                                    new RandomPlayer.Build(
                                            OptionalDouble.of(bend[0]),
                                            OptionalDouble.of(random.nextDouble(g.tilt[0], g.tilt[1])),
                                            OptionalDouble.of(random.nextDouble(g.ratio[0], g.ratio[1]))))
                            .player();
                });
                trial.run(scene);
                low(scene, Math.toRadians(bend[0]), low);
            }
            print(trial);
            System.out.printf(
                    "forward bend truly below the range: %d; called in range %d, out %d, cannot tell or too close"
                            + " %d%n%n",
                    low[0], low[1], low[2], low[3]);
        }
    }

    /** Counts true bends below the range, and what they are called: in range, out of it, neither. */
    private static void low(RandomScene scene, double bendRad, int[] counts) {
        RangeBook ranges = RangeBook.shipped();
        var range = ranges.range(ReadingKind.FORWARD_BEND, scene.sheet.club());
        if (range.isEmpty() || bendRad >= range.get().low()) {
            return;
        }
        Reading reading = Readings.of(ReadingKind.FORWARD_BEND, PostureEstimator.estimate(scene.sheet))
                .orElseThrow();
        Verdict verdict = Judge.verdict(reading, range.get());
        counts[0]++;
        counts[verdict == Verdict.IN_RANGE ? 1 : verdict == Verdict.OUT_LOW || verdict == Verdict.OUT_HIGH ? 2 : 3]++;
    }

    private static List<Golfer> read(Path file) throws IOException {
        List<String[]> rows = Files.readAllLines(file).stream()
                .map(line -> line.split(",", -1))
                .toList();
        List<String> names = List.of(rows.get(0));
        int tilt = names.indexOf("0-SHOULDER-ANGLE p10");
        int ratio = names.indexOf("0-STANCE-RATIO p10");
        int spine = names.indexOf("0-SPINE-ANGLE p10");
        List<Golfer> golfers = new ArrayList<>();
        for (String[] face : rows) {
            for (String[] line : rows) {
                boolean same = face[0].equals(line[0]) && face[1].equals(line[1]);
                if (same
                        && face[2].equals("FACEON")
                        && line[2].equals("DTL")
                        && !face[tilt].isEmpty()
                        && !line[spine].isEmpty()) {
                    double[] trunk = pair(line, spine);
                    golfers.add(new Golfer(club(face[1]), pair(face, tilt), pair(face, ratio), new double[] {
                        90 - trunk[1], 90 - trunk[0]
                    }));
                }
            }
        }
        return golfers;
    }

    /** Percentiles 10 and 90, a little apart at least. */
    private static double[] pair(String[] row, int at) {
        double low = Double.parseDouble(row[at]);
        return new double[] {low, Math.max(low + 0.01, Double.parseDouble(row[at + 1]))};
    }

    private static Club club(String name) {
        return switch (name) {
            case "W1" -> Club.DRIVER;
            case "W3" -> Club.FAIRWAY_WOOD;
            case "I4" -> Club.LONG_IRON;
            case "I5", "I6", "I7" -> Club.MID_IRON;
            default -> Club.SHORT_IRON;
        };
    }

    private static void print(Trial trial) {
        System.out.printf(
                Locale.ROOT,
                "%s: %d scenes; false doubt in %.1f %%, heeded in %.1f %%; covered in %.1f %%; misfit at the median"
                        + " %.2f, at the 99th percentile %.2f%n",
                trial.kind.words,
                trial.scenes,
                100.0 * trial.falseDoubts / trial.scenes,
                100.0 * trial.falseDoubtsThatMove / trial.scenes,
                100 * trial.pooled.coverage(),
                trial.fitQuantile(0.5),
                trial.fitQuantile(0.99));
        trial.tallies.forEach((reading, t) -> {
            double unit = reading.unit().fromInside(1);
            System.out.printf(
                    Locale.ROOT,
                    "  %s: rms %.2f %s, ± %.2f, covered %.1f %%%n",
                    reading.id(),
                    t.rms() * unit,
                    reading.unit().id(),
                    t.meanWidth() * unit / 2,
                    100 * t.coverage());
        });
    }
}

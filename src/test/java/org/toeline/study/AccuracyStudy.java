package org.toeline.study;

import java.util.Locale;
import java.util.Map;
import org.toeline.reading.ReadingKind;

/**
 * Prints, for every kind of scene and every reading, how far off the tool is, how that compares with the bound, and how
 * often its 95 % interval holds the truth. Arguments: number of scenes of each kind (default 1000), then, if wanted,
 * the kinds.
 */
public final class AccuracyStudy {

    private AccuracyStudy() {}

    public static void main(String[] args) {
        int count = args.length > 0 ? Integer.parseInt(args[0]) : 1000;
        for (SceneKind kind : SceneKind.values()) {
            if (args.length > 1 && !java.util.List.of(args).contains(kind.name())) {
                continue;
            }
            Trial trial = new Trial(kind);
            trial.run(1_000_003L * (kind.ordinal() + 1), count);
            print(trial);
        }
    }

    private static void print(Trial trial) {
        System.out.printf(
                Locale.ROOT,
                "%n### %s%n%n%d scenes; %.1f ms each; ",
                trial.kind.words,
                trial.scenes,
                trial.millis / trial.scenes);
        if (trial.kind.wrongMarks > 0) {
            System.out.printf(
                    Locale.ROOT,
                    "wrong mark named in %.1f %%, readings of its landmark covered in %.1f %%; ",
                    100.0 * trial.named / trial.scenes,
                    100 * trial.ofTheWrong.coverage());
        }
        System.out.printf(
                Locale.ROOT,
                "false doubt in %.1f %%, heeded in %.1f %%; all readings covered in %.1f %%%n%n",
                100.0 * trial.falseDoubts / trial.scenes,
                100.0 * trial.falseDoubtsThatMove / trial.scenes,
                100 * trial.pooled.coverage());
        System.out.println(
                "| reading | unit | rms error | mean error | rms ÷ bound | mean 95 % interval | coverage % | rms"
                        + " turned ÷ rest | coverage % turned |");
        System.out.println("| --- | --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: |");
        for (Map.Entry<ReadingKind, Tally> e : trial.tallies.entrySet()) {
            double unit = e.getKey().unit().fromInside(1);
            Tally t = e.getValue();
            System.out.printf(
                    Locale.ROOT,
                    "| %s | %s | %.2f | %+.2f | %.2f | ± %.2f | %.1f | %.2f | %.1f |%n",
                    e.getKey().id(),
                    e.getKey().unit().id(),
                    t.rms() * unit,
                    t.bias() * unit,
                    t.overBound(),
                    t.meanWidth() * unit / 2,
                    100 * t.coverage(),
                    trial.turned.get(e.getKey()).rms()
                            / trial.square.get(e.getKey()).rms(),
                    100 * trial.turned.get(e.getKey()).coverage());
        }
        if (!trial.pictures.isEmpty()) {
            pictures(trial);
        }
    }

    /** The same scenes read with a protractor and a ruler. */
    private static void pictures(Trial trial) {
        System.out.printf("%nThe same scenes, the pictures read with a protractor and a ruler:%n%n");
        System.out.println("| reading | unit | tool, rms | picture, rms | picture, mean error |");
        System.out.println("| --- | --- | ---: | ---: | ---: |");
        trial.pictures.forEach((reading, t) -> {
            double unit = reading.unit().fromInside(1);
            System.out.printf(
                    Locale.ROOT,
                    "| %s | %s | %.2f | %.2f | %+.2f |%n",
                    reading.id(),
                    reading.unit().id(),
                    trial.tallies.get(reading).rms() * unit,
                    t.rms() * unit,
                    t.bias() * unit);
        });
    }
}

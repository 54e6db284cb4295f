package org.toeline.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.toeline.advice.Assessment;
import org.toeline.advice.Finding;
import org.toeline.mark.MarkSheet;

/**
 * Prints how many contradictory lessons are seen through and how often the likeliest slip is right, and how many good ones
 * are withheld. Arguments: number of lessons of each sort (default 100), then a first seed (default 7000000).
 */
public final class ContradictionStudy {

    private ContradictionStudy() {}

    /** What became of many lessons spoilt in one way. */
    static final class Count {
        int lessons;
        int spoken;
        int firsts;
        int right;
        final Map<String, Integer> likely = new TreeMap<>();
        final Map<String, Integer> clashes = new TreeMap<>();
        final List<Long> silent = new ArrayList<>();

        void add(long seed, Assessment a, String cause) {
            lessons++;
            if (a.advice().withheld().isEmpty()) {
                silent.add(seed);
                spoken += a.advice().findings().stream().anyMatch(Finding::isJudged) ? 1 : 0;
                firsts += a.advice().first().isPresent() ? 1 : 0;
                likely.merge("(none)", 1, Integer::sum);
            } else {
                String said = a.advice().withheld().get().likely().id();
                right += said.equals(cause) ? 1 : 0;
                likely.merge(said, 1, Integer::sum);
                clashes.merge(a.advice().withheld().get().clash().id(), 1, Integer::sum);
            }
        }
    }

    static Count spoilt(Nonsense nonsense, SceneKind kind, long firstSeed, int lessons) {
        Count count = new Count();
        for (int i = 0; i < lessons; i++) {
            MarkSheet sheet = new RandomScene(firstSeed + i, kind).sheet;
            MarkSheet other = new RandomScene(firstSeed + i + 500_000, kind).sheet;
            SplittableRandom random = new SplittableRandom(firstSeed + i);
            count.add(firstSeed + i, Assessment.of(nonsense.of(sheet, other, random)), nonsense.likely);
        }
        return count;
    }

    static Count good(SceneKind kind, long firstSeed, int lessons) {
        Count count = new Count();
        for (int i = 0; i < lessons; i++) {
            count.add(firstSeed + i, Assessment.of(new RandomScene(firstSeed + i, kind).sheet), "");
        }
        return count;
    }

    public static void main(String[] args) {
        int lessons = args.length > 0 ? Integer.parseInt(args[0]) : 100;
        long seed = args.length > 1 ? Long.parseLong(args[1]) : 7_000_000;
        System.out.println(
                "| lessons spoilt by | filmed | judged | with a first thing | cause right | said to be | clash |");
        for (SceneKind kind : List.of(SceneKind.BOTH_AND_RODS, SceneKind.SEPARATE_TAKES)) {
            for (Nonsense nonsense : Nonsense.values()) {
                print(nonsense.name(), kind, spoilt(nonsense, kind, seed, lessons));
            }
        }
        for (Nonsense nonsense : List.of(Nonsense.OTHER_HAND, Nonsense.VIEWS_EXCHANGED, Nonsense.MIRRORED)) {
            print(nonsense.name(), SceneKind.BOTH, spoilt(nonsense, SceneKind.BOTH, seed, lessons));
        }
        for (SceneKind kind : List.of(SceneKind.FACE_ON_AND_RODS, SceneKind.FACE_ON, SceneKind.DOWN_THE_LINE)) {
            for (Nonsense nonsense : Nonsense.values()) {
                boolean needsBoth = nonsense == Nonsense.SAME_CLIP_TWICE || nonsense == Nonsense.ANOTHER_CLIP;
                boolean needsRods = nonsense.ordinal() <= Nonsense.TARGET_REVERSED.ordinal();
                if (!needsBoth && !(needsRods && !kind.rods)) {
                    print(nonsense.name(), kind, spoilt(nonsense, kind, seed, lessons));
                }
            }
        }
        for (SceneKind kind : SceneKind.values()) {
            print("nothing", kind, good(kind, seed + 1_000_000, 2 * lessons));
        }
    }

    private static void print(String what, SceneKind kind, Count c) {
        System.out.printf(
                Locale.ROOT,
                "| %s | %s | %d of %d | %d | %d | %s | %s | %s%n",
                what,
                kind.words,
                c.spoken,
                c.lessons,
                c.firsts,
                c.right,
                c.likely,
                c.clashes,
                c.silent.size() > 5 ? "" : c.silent);
    }
}

package org.toeline.study;

import java.util.ArrayList;
import java.util.Collections;
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
 * are withheld. Arguments: number of lessons of each sort (default 100), a first
 * seed (default 7000000), then one kind of scene (default all).
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
        final List<Double> misfits = new ArrayList<>();
        int doubted;
        final List<Long> silent = new ArrayList<>();

        void add(long seed, Assessment a, String cause) {
            lessons++;
            misfits.add(a.posture().likeliestFit().perDegreeOfFreedom());
            doubted += a.posture().doubts().isEmpty() ? 0 : 1;
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
        List<SceneKind> kinds = args.length > 2 ? List.of(SceneKind.valueOf(args[2])) : List.of(SceneKind.values());
        System.out.println(
                "| lessons spoilt by | filmed | judged | with a first thing | cause right | said to be | clash |");
        for (SceneKind kind : kinds) {
            for (Nonsense nonsense : Nonsense.values()) {
                if (nonsense.isPossible(kind)) {
                    print(nonsense.name(), kind, spoilt(nonsense, kind, seed, lessons));
                }
            }
            print("nothing", kind, good(kind, seed + 1_000_000, 4 * lessons));
        }
    }

    private static void print(String what, SceneKind kind, Count c) {
        List<Double> misfits = new ArrayList<>(c.misfits);
        Collections.sort(misfits);
        System.out.printf(
                Locale.ROOT,
                "| %s | %s | %d of %d | %d | %d | %s | %s | %s misfit to %.2f, %.2f; %d with doubts%n",
                what,
                kind.words,
                c.spoken,
                c.lessons,
                c.firsts,
                c.right,
                c.likely,
                c.clashes,
                c.silent.size() > 5 ? "" : c.silent,
                misfits.get(misfits.size() * 98 / 100),
                misfits.get(misfits.size() - 1),
                c.doubted);
    }
}

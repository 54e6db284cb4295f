package org.toeline.advice;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.toeline.advice.Contradiction.Clash;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.View;
import org.toeline.posture.Posture;
import org.toeline.posture.PostureEstimator;

/**
 * Whether a sheet as a whole can be believed. One mark that the others contradict is doubted, named and put aside by the
 * estimator; past the limits here it is no longer one mark, and nothing is judged. A sheet that looks wrong is tried with
 * each of the usual slips undone, and the likeliest is offered.
 */
public final class Gate {

    /** Good sheets have a misfit per degree of freedom of 0.8 to 1.4 at the 99th percentile. */
    private static final double SUSPECT_MISFIT = 1.4;

    private static final double BROKEN_MISFIT = 2.2;
    private static final int SUSPECT_DOUBTS = 1;
    private static final int BROKEN_DOUBTS = 4;
    /** By so much a slip undone must lower the misfit before it is believed, squared standard deviations. */
    private static final double FAR_BETTER = 30;
    /**
     * The same where undoing it leaves no mark doubted and only calls rod ends by other names: one wrong mark counts for less than
     * what is far better, and a click that went amiss does not go where another end lies.
     */
    private static final double BETTER_WITHOUT_A_DOUBT = 15;
    /**
     * Misfits as near to each other as this tell nothing apart: then the floor is as the program's own layouts have it, and the slip
     * is the one named first.
     */
    private static final double AS_GOOD = 6;
    /** So many of the ways to undo a slip, those that fit best with every mark, are looked at more closely. */
    private static final int LOOKED_AT = 3;

    private Gate() {}

    /** What contradicts what; empty for a sheet that can be believed, which costs nothing. */
    static Optional<Contradiction> of(MarkSheet sheet, Posture posture) {
        Soundness now = Soundness.of(sheet, posture);
        boolean broken = !isSound(now);
        if (!broken && now.perDegree() < SUSPECT_MISFIT && now.doubts() < SUSPECT_DOUBTS) {
            return Optional.empty();
        }
        double better = broken ? 0 : FAR_BETTER;
        List<Mend> all = Arrays.stream(Slip.values())
                .flatMap(s -> s.mends(sheet).stream())
                .toList();
        Function<MarkSheet, Posture.Fit> fit = broken ? PostureEstimator::fit : PostureEstimator::directFit;
        List<Tried> sound = tried(all, fit, posture.fit().chiSquare() - better).stream()
                .filter(t -> isSound(t.soundness)
                        && t.soundness.misfit()
                                < now.misfit()
                                        - (leavesNoDoubt(t, now) ? Math.min(BETTER_WITHOUT_A_DOUBT, better) : better))
                .toList();
        Optional<Mend> best = best(sound);
        if (!broken && best.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Contradiction(clash(now), view(now), best));
    }

    private static boolean leavesNoDoubt(Tried tried, Soundness now) {
        return now.doubts() > 0
                && tried.soundness.doubts() == 0
                && tried.mend.slip().isOfNames();
    }

    /** A slip undone in the way that fits best; empty where it cannot have been made. */
    public static Optional<Mend> best(MarkSheet sheet, Slip slip) {
        List<Tried> all = tried(slip.mends(sheet), PostureEstimator::fit, Double.POSITIVE_INFINITY);
        List<Tried> sound = all.stream().filter(t -> isSound(t.soundness)).toList();
        return best(sound.isEmpty() ? all : sound);
    }

    /** The first of those that fit as well as any. */
    private static Optional<Mend> best(List<Tried> all) {
        double least = all.stream().mapToDouble(t -> t.soundness.misfit()).min().orElse(0);
        return all.stream()
                .filter(t -> t.soundness.misfit() <= least + AS_GOOD)
                .min(Comparator.comparing((Tried t) ->
                                !FloorLines.isAsUsual(t.mend.sheet().floor()))
                        .thenComparing(t -> t.mend.slip()))
                .map(Tried::mend);
    }

    private static boolean isSound(Soundness soundness) {
        return soundness.broken().isEmpty()
                && soundness.perDegree() < BROKEN_MISFIT
                && soundness.doubts() < BROKEN_DOUBTS;
    }

    private record Tried(Mend mend, Soundness soundness) {}

    /** Those few that fit best when every mark is taken for right, and better than the sheet does as it is. */
    private static List<Tried> tried(List<Mend> mends, Function<MarkSheet, Posture.Fit> fit, double below) {
        record Fitted(Mend mend, double misfit) {}
        return mends.stream()
                .map(m -> new Fitted(m, fit.apply(m.sheet()).chiSquare()))
                .filter(f -> f.misfit < below)
                .sorted(Comparator.comparingDouble(Fitted::misfit))
                .limit(LOOKED_AT)
                .map(Fitted::mend)
                .map(m -> new Tried(m, Soundness.of(m.sheet(), PostureEstimator.estimate(m.sheet()))))
                .toList();
    }

    private static Clash clash(Soundness now) {
        if (!now.broken().isEmpty()) {
            return now.broken().get(0).clash();
        }
        if (now.doubts() >= BROKEN_DOUBTS) {
            return Clash.TOO_MANY_DOUBTS;
        }
        return now.perDegree() >= BROKEN_MISFIT ? Clash.MISFIT : Clash.EXPLAINED_BETTER;
    }

    private static Optional<View> view(Soundness now) {
        return now.broken().stream().findFirst().flatMap(Soundness.Broken::view);
    }
}

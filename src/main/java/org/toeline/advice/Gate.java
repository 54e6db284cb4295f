package org.toeline.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
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
    private static final int SUSPECT_DOUBTS = 2;
    private static final int BROKEN_DOUBTS = 4;
    /** By so much a slip undone must lower the misfit before it is believed, squared standard deviations. */
    private static final double FAR_BETTER = 30;

    private Gate() {}

    /** What contradicts what; empty for a sheet that can be believed, which costs nothing. */
    static Optional<Contradiction> of(MarkSheet sheet, Posture posture) {
        Soundness now = Soundness.of(sheet, posture);
        boolean broken = !isSound(now);
        if (!broken && now.perDegree() < SUSPECT_MISFIT && now.doubts() < SUSPECT_DOUBTS) {
            return Optional.empty();
        }
        Optional<Tried> best = tried(sheet).stream()
                .filter(t -> isSound(t.soundness) && t.soundness.misfit() < now.misfit() - FAR_BETTER)
                .min(Comparator.comparingDouble(t -> t.soundness.misfit()));
        if (!broken && best.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Contradiction(clash(now), view(now), best.map(Tried::mend)));
    }

    /** A slip undone in the way that fits best; empty where it cannot have been made. */
    public static Optional<Mend> best(MarkSheet sheet, Slip slip) {
        return slip.mends(sheet).stream()
                .map(Gate::tried)
                .min(Comparator.comparing((Tried t) -> !isSound(t.soundness)).thenComparing(t -> t.soundness.misfit()))
                .map(Tried::mend);
    }

    private static Tried tried(Mend mend) {
        return new Tried(mend, Soundness.of(mend.sheet(), PostureEstimator.estimate(mend.sheet())));
    }

    private static boolean isSound(Soundness soundness) {
        return soundness.broken().isEmpty()
                && soundness.perDegree() < BROKEN_MISFIT
                && soundness.doubts() < BROKEN_DOUBTS;
    }

    private record Tried(Mend mend, Soundness soundness) {}

    private static List<Tried> tried(MarkSheet sheet) {
        List<Tried> all = new ArrayList<>();
        for (Slip slip : Slip.values()) {
            for (Mend mend : slip.mends(sheet)) {
                all.add(tried(mend));
            }
        }
        return all;
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

package org.toeline.assist;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.toeline.video.Clip;
import org.toeline.video.ClipException;
import org.toeline.video.Progress;
import org.toeline.video.SlowMotion;

/**
 * Finds the moments of address: the player stands still, and the next thing that moves is a club taken away. Motion
 * between two moments of standing still is told apart by its shape: a waggle stays where it is, a walk moves all of the
 * player at once, a swing sweeps over much in thin strokes and begins low. A clip may hold several swings or none. Where
 * the whole picture never comes to rest, somebody else may be moving in it, and its sides and middle are looked at alone.
 */
public final class AddressFinder {

    /** Motion below this share of the swing's (and above the noise) is standing still. */
    private static final double STILL_SHARE = 0.02;
    /** The same, for where exactly standing still begins and ends. */
    private static final double EXACT_SHARE = 0.006;
    /** Motion that a hand-held rest has anyway. */
    private static final double REST = 0.02;

    private static final double LEAST_STILL_S = 0.25;
    private static final double SURELY_STILL_S = 0.6;
    private static final double LEAST_SWING_S = 0.2;
    /** How much stronger than standing still a swing is at least. */
    private static final double SWING_OVER_STILL = 8;
    /** How long before the takeaway the suggested frame lies at most. */
    private static final double BEFORE_S = 0.30;
    /** A takeaway begins that much before it is seen, at most. */
    private static final double CREEP_S = 0.4;
    /** What looking at motion can never exceed: a practice swing looks like any other. */
    private static final double MOST_CONFIDENT = 0.95;

    private static final int WALKS = 4;
    private static final double PART_OF_PICTURE = 0.6;
    private static final double[][] PARTS = {{0.25, 0.75}, {0, 0.5}, {0.5, 1}};

    /** The first of equals is the greatest. */
    static final Comparator<StillSpan> CLEAREST = Comparator.comparingDouble(StillSpan::confidence)
            .thenComparing(Comparator.comparingDouble(StillSpan::startSeconds).reversed());

    private AddressFinder() {}

    /** The clearest moment; the first of equals. Empty when there is no swing, or when {@code progress} said to stop. */
    public static Optional<StillSpan> find(Clip clip, Progress progress) throws ClipException {
        return find(clip, clip.slowMotion(), progress);
    }

    /** The same for a clip whose rate of filming somebody knows better than the file. */
    public static Optional<StillSpan> find(Clip clip, SlowMotion filmed, Progress progress) throws ClipException {
        return moments(clip, filmed, progress).stream().max(CLEAREST);
    }

    /** Every moment of address, in order of time; empty as above. Reads the whole clip in a reader of its own. */
    public static List<StillSpan> moments(Clip clip, Progress progress) throws ClipException {
        return moments(clip, clip.slowMotion(), progress);
    }

    /** The same for a clip whose rate of filming somebody knows better than the file. */
    public static List<StillSpan> moments(Clip clip, SlowMotion filmed, Progress progress) throws ClipException {
        return movement(clip, filmed, progress).map(Movement::moments).orElse(List.of());
    }

    /** All that is known of how a clip moves; empty for a photograph, or when {@code progress} said to stop. */
    public static Optional<Movement> movement(Clip clip, SlowMotion filmed, Progress progress) throws ClipException {
        Optional<MotionTrace> whole =
                clip.frameCount() < 2 ? Optional.empty() : MotionTrace.of(clip, filmed.factor(), progress);
        return whole.map(trace -> movement(clip, filmed.factor(), trace));
    }

    private static Movement movement(Clip clip, double slowedDown, MotionTrace whole) {
        Look look = Look.at(whole);
        List<StillSpan> found = look.moments(clip, slowedDown, 1);
        for (int i = 0; look.stills.isEmpty() && found.isEmpty() && i < PARTS.length; i++) {
            found = Look.at(whole.columns(PARTS[i][0], PARTS[i][1])).moments(clip, slowedDown, PART_OF_PICTURE);
        }
        List<Movement.Amount> amounts = new ArrayList<>();
        for (int i = 0; i < whole.pictures(); i++) {
            amounts.add(new Movement.Amount(whole.seconds(i) * slowedDown, look.amounts[i]));
        }
        List<Movement.Still> stills = look.stills.stream()
                .map(s -> new Movement.Still(whole.seconds(s[0]) * slowedDown, whole.seconds(s[1]) * slowedDown))
                .toList();
        return new Movement(amounts, stills, found);
    }

    /** Moments of standing still and what follows each, walks left out of account. */
    private record Look(MotionTrace trace, double[] amounts, double quiet, List<int[]> stills, List<Burst> bursts) {

        static Look at(MotionTrace trace) {
            double[] amounts = trace.amounts();
            double quiet = Arrays.stream(amounts)
                    .sorted()
                    .skip(amounts.length / 20)
                    .findFirst()
                    .orElse(0);
            boolean[] walked = new boolean[amounts.length];
            List<int[]> stills = List.of();
            List<Burst> bursts = List.of();
            boolean more = true;
            for (int pass = 0; more && pass < WALKS; pass++) {
                stills = standing(trace, amounts, limit(quiet, peak(amounts, walked), STILL_SHARE));
                bursts = following(trace, amounts, stills);
                List<Burst> all = new ArrayList<>(bursts);
                int first = stills.isEmpty() ? amounts.length : stills.get(0)[0];
                if (first > 0) {
                    all.add(trace.burst(0, first - 1, amounts));
                }
                more = mask(all, walked);
            }
            return new Look(trace, amounts, quiet, stills, bursts);
        }

        List<StillSpan> moments(Clip clip, double slowedDown, double trust) {
            List<StillSpan> found = new ArrayList<>();
            for (int k = 0; k < bursts.size(); k++) {
                Burst burst = bursts.get(k);
                boolean lasts = trace.seconds(burst.to()) - trace.seconds(burst.from()) >= LEAST_SWING_S;
                if (burst.swing() && lasts && burst.peak() >= SWING_OVER_STILL * (quiet + REST)) {
                    found.add(span(
                            trace,
                            amounts,
                            stills.get(k),
                            limit(quiet, burst.peak(), EXACT_SHARE),
                            burst,
                            clip,
                            slowedDown,
                            trust));
                }
            }
            return found;
        }
    }

    private static double limit(double quiet, double peak, double share) {
        return quiet + Math.max(share * (peak - quiet), 0.5 * quiet + REST);
    }

    private static double peak(double[] amounts, boolean[] walked) {
        double peak = 0;
        for (int i = 0; i < amounts.length; i++) {
            peak = walked[i] ? peak : Math.max(peak, amounts[i]);
        }
        return peak;
    }

    /** Leaves walks out of account; whether there were any not left out before. */
    private static boolean mask(List<Burst> bursts, boolean[] walked) {
        boolean more = false;
        for (Burst burst : bursts) {
            for (int i = burst.from(); burst.walk() && i <= burst.to(); i++) {
                more |= !walked[i];
                walked[i] = true;
            }
        }
        return more;
    }

    private static List<int[]> standing(MotionTrace trace, double[] amounts, double limit) {
        List<int[]> all = new ArrayList<>();
        for (int i = 0; i < amounts.length; i++) {
            int from = i;
            while (i < amounts.length && amounts[i] <= limit) {
                i++;
            }
            if (i > from && trace.seconds(i - 1) - trace.seconds(from) >= LEAST_STILL_S) {
                all.add(new int[] {from, i - 1});
            }
        }
        return all;
    }

    /** What follows each moment of standing still. */
    private static List<Burst> following(MotionTrace trace, double[] amounts, List<int[]> stills) {
        List<Burst> all = new ArrayList<>();
        for (int k = 0; k < stills.size(); k++) {
            int from = stills.get(k)[1] + 1;
            int to = k + 1 < stills.size() ? stills.get(k + 1)[0] - 1 : amounts.length - 1;
            if (from <= to) {
                all.add(trace.burst(from, to, amounts));
            }
        }
        return all;
    }

    private static StillSpan span(
            MotionTrace trace,
            double[] amounts,
            int[] still,
            double limit,
            Burst burst,
            Clip clip,
            double slowedDown,
            double trust) {
        int end = still[1];
        while (amounts[end] > limit
                && trace.seconds(still[1]) - trace.seconds(end) < CREEP_S
                && trace.seconds(end - 1) - trace.seconds(still[0]) >= LEAST_STILL_S) {
            end--;
        }
        int start = end;
        while (start > still[0]
                && (amounts[start - 1] <= limit || trace.seconds(end) - trace.seconds(start) < LEAST_STILL_S)) {
            start--;
        }
        double from = trace.seconds(start);
        double to = trace.seconds(end);
        double address = clip.seconds(clip.indexAt(Math.max((from + to) / 2, to - BEFORE_S) * slowedDown));
        double clear = Math.min(burst.clearness(), Burst.share(to - from, LEAST_STILL_S, SURELY_STILL_S));
        return new StillSpan(
                from * slowedDown,
                to * slowedDown,
                Math.max(from * slowedDown, Math.min(to * slowedDown, address)),
                0.5 + (MOST_CONFIDENT - 0.5) * trust * clear);
    }
}

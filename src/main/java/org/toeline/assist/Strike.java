package org.toeline.assist;

import java.util.Arrays;
import java.util.Optional;
import org.toeline.video.Sound;

/**
 * The club on the ball, heard: the sharpest rise of the sound's short-time energy near the moment of most motion. Only where it
 * stands out: another rise half as strong in the same stretch makes it unsure, and then nothing is said; nor when the sharpest is
 * not near enough to that moment.
 *
 * @param seconds in the clip's presentation time
 */
public record Strike(double seconds) {

    /** What is listened to on either side of the moment of most motion. */
    private static final double NEAR_S = 0.6;
    /** Farther from that moment it is something else that was heard. */
    private static final double FARTHEST_S = 0.25;
    /** What is compared: so many steps after with so many before. */
    private static final int AFTER = 6;

    private static final int BEFORE = 30;
    /** The echo and the ring of one strike. */
    private static final int ITS_OWN = 90;

    private static final double STANDS_OUT = 2;
    private static final double ABOVE_USUAL = 6;

    /** @param mostMotionSeconds when most of the picture moves in the swing */
    public static Optional<Strike> heard(Sound sound, double mostMotionSeconds) {
        float[] all = sound.loudness();
        int from = Math.max(BEFORE, sound.step(mostMotionSeconds - NEAR_S));
        int to = Math.min(all.length - AFTER, sound.step(mostMotionSeconds + NEAR_S));
        if (to - from < BEFORE + AFTER) {
            return Optional.empty();
        }
        double[] rise = new double[to - from];
        int best = 0;
        for (int i = from; i < to; i++) {
            rise[i - from] = mean(all, i, i + AFTER) - mean(all, i - BEFORE, i);
            best = rise[i - from] > rise[best] ? i - from : best;
        }
        double rival = 0;
        for (int i = 0; i < rise.length; i++) {
            rival = Math.abs(i - best) > ITS_OWN ? Math.max(rival, rise[i]) : rival;
        }
        float[] stretch = Arrays.copyOfRange(all, from, to);
        Arrays.sort(stretch);
        double usual = stretch[stretch.length / 2];
        boolean clear = rise[best] > STANDS_OUT * rival && rise[best] > ABOVE_USUAL * usual;
        double heardS = sound.startSeconds() + (from + best) * Sound.STEP_S;
        return clear && Math.abs(heardS - mostMotionSeconds) <= FARTHEST_S
                ? Optional.of(new Strike(heardS))
                : Optional.empty();
    }

    private static double mean(float[] all, int from, int to) {
        double sum = 0;
        for (int i = from; i < to; i++) {
            sum += all[i];
        }
        return sum / (to - from);
    }
}

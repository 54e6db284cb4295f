package org.toeline.assist;

import java.util.Arrays;
import java.util.Optional;
import org.toeline.video.Clip;
import org.toeline.video.ClipException;
import org.toeline.video.Frame;

/**
 * Finds the moment of address: the last time the player stands still before the swing. Each frame is shrunk, and how
 * much changes from one to the next, beyond the picture's own noise, is its motion. The swing is the strongest motion;
 * going back from it, the still span is what lies before the takeaway. A waggle is motion, so a pause within it is no
 * address.
 */
public final class AddressFinder {

    private static final int ACROSS = 192;
    /** Motion below this share of the swing's (and above the noise) is standing still. */
    private static final double STILL_SHARE = 0.02;
    /** How long a player stands still at least, seconds. */
    private static final double LEAST_STILL_S = 0.25;
    /** How long motion lasts at least to be a swing, seconds. */
    private static final double LEAST_SWING_S = 0.2;
    /** How much stronger than standing still a swing is at least. */
    private static final double SWING_OVER_STILL = 8;
    /** How long before the takeaway the suggested frame lies at most, seconds. */
    private static final double BEFORE_S = 0.30;

    private AddressFinder() {
    }

    /** Empty when there is no swing in the clip, or when {@code progress} said to stop. Reads the whole clip. */
    public static Optional<StillSpan> find(Clip clip, Progress progress) throws ClipException {
        int n = clip.frameCount();
        double[] motion = new double[n];
        float[] before = null;
        int lost = 0;
        for (int i = 0; i < n; i++) {
            if (i % 8 == 0 && progress.at((double) i / n) == Progress.Step.STOP) {
                return Optional.empty();
            }
            try {
                float[] small = shrunk(clip.frame(i));
                motion[i] = before == null ? 0 : change(before, small);
                before = small;
            } catch (ClipException e) {
                if (++lost > n / 2) {
                    throw e;
                }
                motion[i] = i > 0 ? motion[i - 1] : 0;
            }
        }
        return span(clip, smooth(motion));
    }

    private static Optional<StillSpan> span(Clip clip, double[] motion) {
        int n = motion.length;
        double[] sorted = motion.clone();
        Arrays.sort(sorted);
        double quiet = sorted[n / 10];
        int peak = 0;
        for (int i = 0; i < n; i++) {
            peak = motion[i] > motion[peak] ? i : peak;
        }
        double limit = quiet + Math.max(STILL_SHARE * (motion[peak] - quiet), 0.5 * quiet + 0.02);
        if (motion[peak] < SWING_OVER_STILL * (quiet + 0.02)) {
            return Optional.empty();
        }
        int end = peak;
        int start = -1;
        while (end > 0) {
            while (end > 0 && motion[end] > limit) {
                end--;
            }
            start = end;
            while (start > 0 && motion[start] <= limit) {
                start--;
            }
            if (clip.seconds(end) - clip.seconds(start) >= LEAST_STILL_S) {
                break;
            }
            end = start;
        }
        if (end <= 0 || clip.seconds(peak) - clip.seconds(end) + after(clip, motion, peak, limit) < LEAST_SWING_S) {
            return Optional.empty();
        }
        double from = clip.seconds(start + 1);
        double to = clip.seconds(end);
        int address = clip.indexAt(Math.max((from + to) / 2, to - BEFORE_S));
        return Optional.of(new StillSpan(from, to, clip.seconds(address)));
    }

    private static double after(Clip clip, double[] motion, int peak, double limit) {
        int i = peak;
        while (i + 1 < motion.length && motion[i + 1] > limit) {
            i++;
        }
        return clip.seconds(i) - clip.seconds(peak);
    }

    /** The middle of three, then the mean of three: a single odd frame is no motion. */
    private static double[] smooth(double[] in) {
        double[] median = in.clone();
        for (int i = 1; i + 1 < in.length; i++) {
            median[i] = Math.max(Math.min(in[i - 1], in[i]), Math.min(Math.max(in[i - 1], in[i]), in[i + 1]));
        }
        double[] out = median.clone();
        for (int i = 1; i + 1 < in.length; i++) {
            out[i] = (median[i - 1] + median[i] + median[i + 1]) / 3;
        }
        return out;
    }

    /** The mean of what changes by more than the usual change, grey levels. */
    private static double change(float[] a, float[] b) {
        float[] d = new float[a.length];
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            d[i] = Math.abs(a[i] - b[i]);
            sum += d[i];
        }
        double noise = 3 * sum / a.length;
        double beyond = 0;
        double floor = Math.max(2.5, Math.min(noise, 6));
        for (float v : d) {
            beyond += Math.max(0, v - floor);
        }
        return 100 * beyond / a.length;
    }

    private static float[] shrunk(Frame frame) {
        int block = Math.max(1, Math.max(frame.width(), frame.height()) / ACROSS);
        int w = frame.width() / block;
        int h = frame.height() / block;
        float[] out = new float[w * h];
        int[] argb = frame.argb();
        for (int y = 0; y < h * block; y++) {
            int row = y * frame.width();
            int to = y / block * w;
            for (int x = 0; x < w * block; x++) {
                int p = argb[row + x];
                out[to + x / block] += (p >> 16 & 255) + 2 * (p >> 8 & 255) + (p & 255);
            }
        }
        for (int i = 0; i < out.length; i++) {
            out[i] /= 4f * block * block;
        }
        return out;
    }
}

package org.toeline.assist;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.toeline.video.Clip;
import org.toeline.video.ClipException;
import org.toeline.video.GreyScan;
import org.toeline.video.Progress;

/**
 * What moves in a clip: for each picture of a scan, by how much each of its few thousand pixels differs from the picture
 * before, beyond the noise. Columns narrower than the picture may be looked at alone. Immutable once made.
 */
final class MotionTrace {

    /** Pictures are some hundred pixels across: a hand is a pixel, a driver's head is one. */
    private static final int ACROSS = 128;

    private static final double STEP_S = 1 / 30.0;
    private static final int MOST_PICTURES = 18_000;
    /** Difference of mean grey levels that noise and coding do not reach. */
    private static final float NOISE_LEVELS = 4;

    private static final int MOVING_LEVELS = 2;

    private final double[] seconds;
    private final List<byte[]> beyond;
    private final int width;
    private final int height;
    private final int fromX;
    private final int toX;

    private MotionTrace(double[] seconds, List<byte[]> beyond, int width, int height, int fromX, int toX) {
        this.seconds = seconds;
        this.beyond = beyond;
        this.width = width;
        this.height = height;
        this.fromX = fromX;
        this.toX = toX;
    }

    /**
     * Scans the whole clip.
     *
     * @param slowedDown how many seconds of the clip one real second takes, 1 or more
     * @return empty when {@code progress} said to stop
     */
    static Optional<MotionTrace> of(Clip clip, double slowedDown, Progress progress) throws ClipException {
        List<Double> seconds = new ArrayList<>();
        List<byte[]> beyond = new ArrayList<>();
        int[] size = new int[2];
        float[][] before = new float[1][];
        double length = clip.info().durationSeconds();
        double[] reached = {0};
        boolean[] stopped = {progress.at(0) == Progress.Step.STOP};
        if (stopped[0]) {
            return Optional.empty();
        }
        GreyScan.of(clip, ACROSS, Math.max(STEP_S * slowedDown, length / MOST_PICTURES), picture -> {
            seconds.add(picture.seconds());
            size[0] = picture.width();
            size[1] = picture.height();
            beyond.add(before[0] == null ? new byte[picture.grey().length] : beyond(before[0], picture.grey()));
            before[0] = picture.grey();
            double share =
                    length > 0 ? Math.min(1, (picture.seconds() - clip.info().startSeconds()) / length) : 1;
            if (share - reached[0] >= 0.01) {
                reached[0] = share;
                stopped[0] = progress.at(share) == Progress.Step.STOP;
            }
            return stopped[0] ? GreyScan.Visitor.Step.STOP : GreyScan.Visitor.Step.GO_ON;
        });
        return stopped[0]
                ? Optional.empty()
                : Optional.of(new MotionTrace(
                        seconds.stream().mapToDouble(s -> s / slowedDown).toArray(),
                        beyond,
                        size[0],
                        size[1],
                        0,
                        size[0]));
    }

    private static byte[] beyond(float[] before, float[] now) {
        byte[] out = new byte[now.length];
        for (int i = 0; i < out.length && i < before.length; i++) {
            out[i] = (byte) Math.max(0, Math.min(255, Math.abs(now[i] - before[i]) - NOISE_LEVELS));
        }
        return out;
    }

    /** The same, looking only at the columns between two shares of the width. */
    MotionTrace columns(double fromShare, double toShare) {
        return new MotionTrace(seconds, beyond, width, height, (int) (fromShare * width), (int) (toShare * width));
    }

    int pictures() {
        return seconds.length;
    }

    /** Real seconds, however slowly the clip plays. */
    double seconds(int picture) {
        return seconds[picture];
    }

    /** Motion of each picture: hundred times the mean of what is beyond the noise, an odd picture smoothed away. */
    double[] amounts() {
        double[] all = new double[pictures()];
        for (int i = 0; i < all.length; i++) {
            byte[] picture = beyond.get(i);
            long sum = 0;
            for (int y = 0; y < height; y++) {
                for (int x = fromX; x < toX; x++) {
                    sum += picture[y * width + x] & 255;
                }
            }
            all[i] = 100.0 * sum / Math.max(1, height * (toX - fromX));
        }
        return smooth(all);
    }

    /** The middle of three, then the mean of three. */
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

    /** The shape of the motion from one picture to another, both included. */
    Burst burst(int from, int to, double[] amounts) {
        double peak = Arrays.stream(amounts, from, to + 1).max().orElse(0);
        boolean[] swept = new boolean[width * height];
        double[] first = new double[height];
        List<Integer> active = new ArrayList<>();
        for (int i = from; i <= to; i++) {
            boolean early = seconds[i] - seconds[from] <= Burst.BEGINNING_S;
            int moving = mark(beyond.get(i), swept, early ? first : new double[height]);
            if (amounts[i] > 0.3 * peak) {
                active.add(moving);
            }
        }
        active.sort(null);
        int[] rows = rows(swept);
        int sweptPixels = 0;
        for (boolean s : swept) {
            sweptPixels += s ? 1 : 0;
        }
        double tall = Math.max(1, rows[1] - rows[0] + 1);
        double weight = 0;
        double down = 0;
        for (int y = 0; y < height; y++) {
            weight += first[y];
            down += first[y] * (y - rows[0]) / tall;
        }
        return new Burst(
                from,
                to,
                peak,
                sweptPixels / (double) Math.max(1, height * (toX - fromX)),
                sweptPixels / (tall * tall),
                (active.isEmpty() ? 0 : active.get(active.size() / 2)) / (tall * tall),
                weight > 0 ? down / weight : 0);
    }

    private int mark(byte[] picture, boolean[] swept, double[] perRow) {
        int moving = 0;
        for (int y = 0; y < height; y++) {
            for (int x = fromX; x < toX; x++) {
                int value = picture[y * width + x] & 255;
                perRow[y] += value;
                if (value > MOVING_LEVELS) {
                    swept[y * width + x] = true;
                    moving++;
                }
            }
        }
        return moving;
    }

    /** First and last row of which at least a hundredth was swept. */
    private int[] rows(boolean[] swept) {
        int first = height;
        int last = -1;
        for (int y = 0; y < height; y++) {
            int count = 0;
            for (int x = fromX; x < toX; x++) {
                count += swept[y * width + x] ? 1 : 0;
            }
            if (count >= Math.max(1, 0.01 * width)) {
                first = Math.min(first, y);
                last = y;
            }
        }
        return last < 0 ? new int[] {0, height - 1} : new int[] {first, last};
    }
}

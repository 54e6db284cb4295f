package org.toeline.video;

import static org.bytedeco.ffmpeg.global.avcodec.AVDISCARD_ALL;
import static org.bytedeco.ffmpeg.global.avcodec.AVDISCARD_BIDIR;
import static org.bytedeco.ffmpeg.global.avcodec.AVDISCARD_NONREF;
import static org.bytedeco.ffmpeg.global.avutil.av_pix_fmt_desc_get;

import java.nio.ByteBuffer;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.ffmpeg.avutil.AVPixFmtDescriptor;
import org.bytedeco.javacpp.BytePointer;
import org.jspecify.annotations.Nullable;

/**
 * One pass over a clip as small grey pictures, as fast as it can be had: frames put in between others are not decoded
 * where enough are left, block edges are not smoothed, colours are not looked at. In a reader of its own, so that the clip
 * can be stepped meanwhile. What is seen is for finding moments, not for showing.
 */
public final class GreyScan {

    /** How many rows and columns of each pixel block are looked at, about. */
    private static final int LOOKED_AT = 5;
    /** Steps that much longer than asked for are short enough. */
    private static final double SLACK = 1.6;

    private final Clip clip;
    private final ClipReader reader;
    private final double leastSeconds;
    private final boolean sparse;
    private double last = Double.NEGATIVE_INFINITY;
    private boolean few;

    private GreyScan(Clip clip, ClipReader reader, double leastSeconds) {
        this.clip = clip;
        this.reader = reader;
        this.leastSeconds = leastSeconds;
        double rate = clip.info().rate();
        this.sparse = rate > 0 && 1 / rate < 0.75 * leastSeconds;
        this.few = sparse && clip.mostBetween() > 0 && (clip.mostBetween() + 1) / rate < SLACK * leastSeconds;
    }

    /** Told each picture in order of time. */
    public interface Visitor {

        /** What the scan should do next. */
        enum Step {
            GO_ON,
            STOP
        }

        Step next(GreyPicture picture);
    }

    /**
     * Scans a clip.
     *
     * @param across       length of the longer side of the small pictures, about
     * @param leastSeconds time between two pictures at least; the first frame comes always
     */
    public static void of(Clip clip, int across, double leastSeconds, Visitor visitor) throws ClipException {
        try (ClipReader reader = clip.another()) {
            new GreyScan(clip, reader, leastSeconds).run(across, visitor);
        }
    }

    private void run(int across, Visitor visitor) {
        reader.opened().codec().skip_loop_filter(AVDISCARD_ALL);
        reader.leaveOut(few ? AVDISCARD_BIDIR : AVDISCARD_NONREF);
        reader.seek(reader.pts(clip.seconds(0)));
        for (AVFrame frame = next(); frame != null; frame = next()) {
            double seconds = reader.seconds(ClipReader.time(frame));
            // a tenth of slack: times are rounded
            if (seconds - last < 0.9 * leastSeconds) {
                continue;
            }
            if (few && seconds - last > 2 * SLACK * leastSeconds && last > Double.NEGATIVE_INFINITY) {
                more();
                continue;
            }
            last = seconds;
            if (visitor.next(small(frame, seconds, across, clip.orientation())) == Visitor.Step.STOP) {
                return;
            }
        }
    }

    private @Nullable AVFrame next() {
        return reader.next(sparse ? Long.MAX_VALUE : Long.MIN_VALUE);
    }

    /** Too much was left out: some coders put everything in between. Goes back, and on with more of it. */
    private void more() {
        few = false;
        reader.leaveOut(AVDISCARD_NONREF);
        reader.seek(reader.pts(clip.seconds(clip.keyFrame(clip.indexAt(last)))));
    }

    private static GreyPicture small(AVFrame frame, double seconds, int across, Orientation orientation) {
        int block = Math.max(1, Math.round((float) Math.max(frame.width(), frame.height()) / across));
        int w = frame.width() / block;
        int h = frame.height() / block;
        Samples samples = Samples.of(av_pix_fmt_desc_get(frame.format()));
        int stride = frame.linesize(0);
        ByteBuffer luma = new BytePointer(frame.data(0))
                .capacity((long) stride * frame.height())
                .asByteBuffer();
        float[] small = new float[w * h];
        byte[] row = new byte[Math.min(stride, frame.width() * samples.step)];
        int by = Math.max(Math.min(2, block), block / LOOKED_AT);
        for (int y = 0; y < h * block; y += by) {
            luma.get(y * stride, row);
            for (int x = 0; x < w; x++) {
                small[y / block * w + x] += samples.sum(row, x * block, (x + 1) * block, by);
            }
        }
        int each = (block + by - 1) / by;
        for (int i = 0; i < small.length; i++) {
            small[i] /= each * each;
        }
        boolean turned = orientation.onItsSide();
        return new GreyPicture(seconds, turned ? h : w, turned ? w : h, orientation.applied(small, w, h));
    }

    /** Where in a row the samples of the first component stand; their upper eight bits count. */
    private record Samples(int step, int offset, int shift, int bytes) {

        static Samples of(AVPixFmtDescriptor format) {
            int bits = format.comp(0).depth() + format.comp(0).shift();
            return new Samples(format.comp(0).step(), format.comp(0).offset(), Math.max(0, bits - 8), bits > 8 ? 2 : 1);
        }

        int sum(byte[] row, int from, int to, int by) {
            int sum = 0;
            int last = Math.min(row.length - bytes, (to - 1) * step + offset);
            for (int i = from * step + offset; i <= last; i += by * step) {
                sum += bytes == 1 ? row[i] & 255 : ((row[i + 1] & 255) << 8 | row[i] & 255) >> shift;
            }
            return sum;
        }
    }
}

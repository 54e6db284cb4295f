package org.toeline.video;

import static org.bytedeco.ffmpeg.global.avutil.av_frame_clone;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_free;

import java.util.TreeMap;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.jspecify.annotations.Nullable;

/**
 * Decoded frames around the one last asked for, as they came from the decoder, bounded by the bytes they take. Not
 * thread-safe: its owner guards it.
 */
final class FrameCache implements AutoCloseable {

    private static final int LEAST = 4;
    private static final int PLANES = 8;

    private final TreeMap<Integer, AVFrame> frames = new TreeMap<>();
    private final long budgetBytes;
    private long frameBytes;

    /** @param frameBytes about how much one frame takes, until one is seen */
    FrameCache(long budgetBytes, long frameBytes) {
        this.budgetBytes = budgetBytes;
        this.frameBytes = Math.max(1, frameBytes);
    }

    /** How many frames may be kept. */
    int most() {
        return (int) Math.max(LEAST, Math.min(Integer.MAX_VALUE, budgetBytes / frameBytes));
    }

    boolean has(int index) {
        return frames.containsKey(index);
    }

    /** A reference of the caller's own, to be freed by it; null when the frame is not kept. */
    @Nullable
    AVFrame share(int index) {
        AVFrame kept = frames.get(index);
        return kept == null ? null : av_frame_clone(kept);
    }

    /** The first frame from {@code index} on, going by {@code step}, that is not kept. */
    int firstMissing(int index, int step) {
        int at = index;
        while (frames.containsKey(at)) {
            at += step;
        }
        return at;
    }

    /** Keeps a frame; when there are too many, those farthest from {@code centre} go. */
    void put(int index, AVFrame frame, int centre) {
        if (frames.containsKey(index)) {
            return;
        }
        frames.put(index, av_frame_clone(frame));
        frameBytes = Math.max(frameBytes, bytes(frame));
        while (frames.size() > most()) {
            int first = frames.firstKey();
            int last = frames.lastKey();
            AVFrame gone = frames.remove(centre - first > last - centre ? first : last);
            av_frame_free(gone);
        }
    }

    private static long bytes(AVFrame frame) {
        long all = 0;
        for (int i = 0; i < PLANES; i++) {
            var buffer = frame.buf(i);
            all += buffer == null || buffer.isNull() ? 0 : buffer.size();
        }
        return all;
    }

    @Override
    public void close() {
        frames.values().forEach(f -> av_frame_free(f));
        frames.clear();
    }
}

package org.toeline.video;

import static org.bytedeco.ffmpeg.global.avutil.av_frame_clone;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_free;

import java.util.TreeMap;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.jspecify.annotations.Nullable;

/** Decoded frames near the one last asked for, as they came from the decoder, bounded by bytes. */
final class FrameCache implements AutoCloseable {

    private final TreeMap<Integer, AVFrame> frames = new TreeMap<>();
    private final int most;

    /** @param frameBytes about how much one frame takes */
    FrameCache(long budgetBytes, long frameBytes) {
        this.most = (int) Math.max(4, Math.min(600, budgetBytes / Math.max(1, frameBytes)));
    }

    /** How many frames are kept. */
    int most() {
        return most;
    }

    @Nullable AVFrame get(int index) {
        return frames.get(index);
    }

    /** Keeps a frame; when there are too many, the one farthest from {@code wanted} goes. */
    void put(int index, AVFrame frame, int wanted) {
        if (frames.containsKey(index)) {
            return;
        }
        frames.put(index, av_frame_clone(frame));
        while (frames.size() > most) {
            int first = frames.firstKey();
            int last = frames.lastKey();
            AVFrame gone = frames.remove(wanted - first > last - wanted ? first : last);
            av_frame_free(gone);
        }
    }

    @Override
    public void close() {
        frames.values().forEach(f -> av_frame_free(f));
        frames.clear();
    }
}

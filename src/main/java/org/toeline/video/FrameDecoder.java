package org.toeline.video;

import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.jspecify.annotations.Nullable;

/**
 * Decodes towards a frame, one frame at a time, so that its caller may change its mind in between. Goes on from where it
 * stands when that is nearer than the key frame before the aim; when an aim is missed, it starts from earlier and earlier
 * key frames and at last from the beginning of the file. One thread at a time.
 */
final class FrameDecoder implements AutoCloseable {

    /** How many key frames farther back are tried before the whole clip is decoded up to the frame. */
    private static final int MOST_BACK = 3;
    /** A key frame that near ahead is decoded up to rather than jumped to, frames. */
    private static final int NEAR = 8;

    private final ClipReader reader;
    private final PacketIndex index;
    private int position = -1;
    private int aim = -1;
    private int tries;
    private long trustedFrom = Long.MIN_VALUE;

    FrameDecoder(ClipReader reader, PacketIndex index) {
        this.reader = reader;
        this.index = index;
    }

    /** Place of the frame decoded last, or −1. */
    int position() {
        return position;
    }

    /**
     * Whether the frame decoded last is whole: one that comes before the key frame started from may be put together from
     * frames that were never decoded.
     */
    boolean trusted() {
        return position >= 0 && index.pts(position) >= trustedFrom;
    }

    /**
     * The next frame on the way to {@code target}, owned by the reader; null when the target cannot be decoded.
     *
     * @param keepFrom frames before this place need not come
     */
    @Nullable
    AVFrame towards(int target, int keepFrom) {
        long wanted = index.pts(target);
        long neededFrom = index.pts(Math.max(0, Math.min(target, keepFrom)));
        if (target != aim || position >= target) {
            aim = target;
            tries = 0;
            if (!ahead(target)) {
                start(wanted);
            }
        }
        while (true) {
            AVFrame frame = reader.next(neededFrom);
            long time = frame == null ? Long.MAX_VALUE : ClipReader.time(frame);
            if (frame == null || time > wanted) {
                if (tries > MOST_BACK + 1) {
                    position = -1;
                    aim = -1;
                    return null;
                }
                start(wanted);
                continue;
            }
            int place = index.indexOf(time);
            if (place >= 0) {
                position = place;
                return frame;
            }
        }
    }

    private boolean ahead(int target) {
        return trusted()
                && position < target
                && (target - position <= NEAR || index.keyUpTo(index.pts(target), 0) <= index.pts(position));
    }

    private void start(long wanted) {
        boolean earliest = tries > 0 && index.keyUpTo(wanted, tries) <= index.begin();
        if (tries > MOST_BACK || earliest) {
            tries = MOST_BACK + 1;
            trustedFrom = Long.MIN_VALUE;
            reader.rewind();
        } else {
            trustedFrom = index.keyUpTo(wanted, tries);
            reader.seek(trustedFrom);
        }
        tries++;
        position = -1;
    }

    @Override
    public void close() {
        reader.close();
    }
}

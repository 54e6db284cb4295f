package org.toeline.video;

import static org.bytedeco.ffmpeg.global.avutil.av_frame_free;

import java.util.BitSet;
import java.util.Optional;
import java.util.TreeMap;
import org.bytedeco.ffmpeg.avutil.AVFrame;

/**
 * Pictures made before they are asked for: of the decoded frames next to the one looked at, those in the direction of
 * travel first, on a thread of its own. A step then takes what is there. What was made stays, the nearest of it, up to a
 * number of bytes of the heap. Any thread may call it.
 */
final class PreparedPictures implements AutoCloseable {

    /** What pictures of one clip may take of the heap, bytes, and which share of it at most. */
    private static final long MOST_BYTES = 192L << 20;

    private static final int SHARE_OF_HEAP = 12;
    /** The one looked at and one on either side. */
    private static final int LEAST = 3;
    /** How far ahead pictures are made, in the direction of travel. */
    private static final int AHEAD = 6;
    /** How long after a jump none is made: another jump may follow. */
    private static final long REST_MILLIS = 60;

    private final DecodingThread decoding;
    private final PictureConverter converter;
    private final int pixels;
    private final int most;
    private final TreeMap<Integer, int[]> ready = new TreeMap<>();
    private final BitSet failed = new BitSet();
    private final Thread thread;
    private int at = -1;
    private int direction;
    private int making = -1;
    private boolean rested;
    private boolean closed;

    /**
     * @param converter this thread's own; closed with it
     * @param pixels    of a picture
     */
    PreparedPictures(String name, DecodingThread decoding, PictureConverter converter, int pixels) {
        this.decoding = decoding;
        this.converter = converter;
        this.pixels = pixels;
        long bytes = Math.min(MOST_BYTES, Runtime.getRuntime().maxMemory() / SHARE_OF_HEAP);
        this.most = (int) Math.max(LEAST, Math.min(Integer.MAX_VALUE, bytes / Integer.BYTES / pixels));
        this.thread = new Thread(this::run, name);
        thread.setDaemon(true);
        thread.start();
    }

    /** That picture, if it is there or being made; whoever gets it does not write to it. */
    synchronized Optional<int[]> take(int frame) {
        Patience.until(this, () -> closed || making != frame);
        return Optional.ofNullable(ready.get(frame));
    }

    /** A picture that somebody else made. */
    synchronized void keep(int frame, int[] picture) {
        ready.put(frame, picture);
        while (ready.size() > most) {
            ready.remove(away(ready.firstKey()) > away(ready.lastKey()) ? ready.firstKey() : ready.lastKey());
        }
    }

    private int away(int frame) {
        return Math.abs(frame - at - direction);
    }

    /**
     * What is looked at now.
     *
     * @param travel 1 forwards, −1 backwards, 0 after a jump
     */
    synchronized void around(int frame, int travel) {
        at = frame;
        direction = travel;
        rested = travel != 0;
        notifyAll();
    }

    /** Another frame is decoded. */
    synchronized void news() {
        notifyAll();
    }

    private void run() {
        try {
            for (int frame = next(); frame >= 0; frame = next()) {
                make(frame);
            }
        } finally {
            synchronized (this) {
                closed = true;
                ready.clear();
                notifyAll();
            }
            converter.close();
        }
    }

    private void make(int frame) {
        Optional<AVFrame> decoded = decoding.kept(frame);
        int[] picture = new int[decoded.isPresent() ? pixels : 0];
        boolean made = false;
        try {
            if (decoded.isPresent()) {
                converter.convert(decoded.get(), picture);
                made = true;
            }
        } catch (ClipException e) {
            // whoever asks for this frame makes it anew and is told
            made = false;
        } finally {
            decoded.ifPresent(f -> av_frame_free(f));
            made(frame, picture, made, decoded.isPresent());
        }
    }

    private synchronized void made(int frame, int[] picture, boolean whole, boolean tried) {
        making = -1;
        if (whole) {
            keep(frame, picture);
        } else if (tried) {
            failed.set(frame);
        }
        notifyAll();
    }

    /** The frame to make a picture of; waits while there is none. Below 0 when closed. */
    private synchronized int next() {
        while (!closed) {
            int frame = at >= 0 && rested ? wanting() : -1;
            if (frame >= 0) {
                making = frame;
                return frame;
            }
            int seen = at;
            boolean resting = !rested && at >= 0;
            // nobody interrupts this thread but to end it
            if (!Patience.pause(this, resting ? REST_MILLIS : 0)) {
                closed = true;
            }
            rested |= resting && seen == at;
        }
        return -1;
    }

    private int wanting() {
        int onwards = direction < 0 ? -1 : 1;
        if (wanted(at + onwards)) {
            return at + onwards;
        }
        if (wanted(at - onwards)) {
            return at - onwards;
        }
        int reach = direction == 0 ? 1 : Math.min(AHEAD, most - 2);
        for (int k = 2; k <= reach; k++) {
            if (wanted(at + k * onwards)) {
                return at + k * onwards;
            }
        }
        return -1;
    }

    private boolean wanted(int frame) {
        boolean room = ready.size() < most || away(frame) < Math.max(away(ready.firstKey()), away(ready.lastKey()));
        return frame >= 0 && room && !ready.containsKey(frame) && !failed.get(frame) && decoding.keeps(frame);
    }

    @Override
    public void close() {
        synchronized (this) {
            closed = true;
            notifyAll();
        }
        Patience.end(thread);
    }
}

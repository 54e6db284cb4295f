package org.toeline.video;

import java.io.DataInput;
import java.io.DataOutput;
import java.io.IOException;
import java.util.Arrays;

/** The frames of a stream by presentation time, in units of the stream's time base, and which of them are key frames. */
final class PacketIndex {

    private static final int MOST_FRAMES = 4_000_000;

    private long[] pts = new long[1024];
    private long[] keys = new long[64];
    private int count;
    private int keyCount;
    private long longestEnd = Long.MIN_VALUE;
    private long latest = Long.MIN_VALUE;
    private int between;
    private int mostBetween;

    /** A place where decoding can start; its own frame need not be shown. */
    void key(long at) {
        if (keyCount == keys.length) {
            keys = Arrays.copyOf(keys, 2 * keyCount);
        }
        keys[keyCount++] = at;
    }

    /** A frame that is shown. False when there are more frames than any lesson could have. */
    boolean add(long at, long duration) {
        if (count == MOST_FRAMES) {
            return false;
        }
        if (count == pts.length) {
            pts = Arrays.copyOf(pts, 2 * count);
        }
        pts[count++] = at;
        between = at > latest ? 0 : between + 1;
        mostBetween = Math.max(mostBetween, between);
        latest = Math.max(latest, at);
        longestEnd = Math.max(longestEnd, at + Math.max(0, duration));
        return true;
    }

    void finish() {
        pts = distinct(pts, count);
        count = pts.length;
        keys = distinct(keys, keyCount);
        keyCount = keys.length;
    }

    private static long[] distinct(long[] values, int count) {
        long[] sorted = Arrays.copyOf(values, count);
        Arrays.sort(sorted);
        int kept = 0;
        for (int i = 0; i < count; i++) {
            if (i == 0 || sorted[i] != sorted[i - 1]) {
                sorted[kept++] = sorted[i];
            }
        }
        return Arrays.copyOf(sorted, kept);
    }

    /** The finished list, as {@link #read} takes it. */
    void write(DataOutput out) throws IOException {
        out.writeLong(longestEnd);
        out.writeInt(mostBetween);
        for (long[] times : new long[][] {pts, keys}) {
            out.writeInt(times.length);
            for (int i = 0; i < times.length; i++) {
                // steps pack better than times
                out.writeLong(i == 0 ? times[0] : times[i] - times[i - 1]);
            }
        }
    }

    static PacketIndex read(DataInput in) throws IOException {
        PacketIndex index = new PacketIndex();
        index.longestEnd = in.readLong();
        index.mostBetween = in.readInt();
        index.pts = times(in);
        index.keys = times(in);
        index.count = index.pts.length;
        index.keyCount = index.keys.length;
        if (index.count == 0) {
            throw new IOException("a list without a frame");
        }
        return index;
    }

    private static long[] times(DataInput in) throws IOException {
        int count = in.readInt();
        if (count < 0 || count > MOST_FRAMES) {
            throw new IOException(count + " times in a list");
        }
        long[] times = new long[count];
        for (int i = 0; i < count; i++) {
            times[i] = in.readLong() + (i == 0 ? 0 : times[i - 1]);
            if (i > 0 && times[i] <= times[i - 1]) {
                throw new IOException("times that do not rise");
            }
        }
        return times;
    }

    int frames() {
        return count;
    }

    /** How many frames at most stand in the file behind one that is shown later: those put in between. */
    int mostBetween() {
        return mostBetween;
    }

    long pts(int index) {
        return pts[index];
    }

    /** Where a frame of that time stands, or −1. */
    int indexOf(long at) {
        int i = Arrays.binarySearch(pts, at);
        return i >= 0 ? i : -1;
    }

    /** The last frame not later than {@code at}, or the first. */
    int lastUpTo(long at) {
        int i = Arrays.binarySearch(pts, at);
        return i >= 0 ? i : Math.max(0, -i - 2);
    }

    /** The key frame not later than {@code at}, {@code back} key frames earlier, or where the clip begins. */
    long keyUpTo(long at, int back) {
        int i = Arrays.binarySearch(keys, at);
        int k = (i >= 0 ? i : -i - 2) - back;
        return k >= 0 ? keys[k] : begin();
    }

    /** The earliest place where decoding can start. */
    long begin() {
        return keyCount > 0 ? Math.min(keys[0], pts[0]) : pts[0];
    }

    /** The end of the last frame; its length is the usual one where the stream does not tell. */
    long end() {
        long last = pts[count - 1];
        if (longestEnd > last) {
            return longestEnd;
        }
        return count > 1 ? last + (last - pts[0]) / (count - 1) : last;
    }
}

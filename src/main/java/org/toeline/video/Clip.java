package org.toeline.video;

import java.nio.file.Files;
import java.nio.file.Path;
import org.bytedeco.ffmpeg.avutil.AVFrame;

/**
 * A clip as a list of frames. Frames are addressed by their place or by presentation time, and the frame asked for is
 * the frame returned: the list comes from reading every packet once, and a frame is found by decoding from the key
 * frame before it until its own time comes up. Frames near the last one asked for are kept, so that a step either way is
 * a conversion, not a decoding.
 *
 * <p>Any thread may call it; calls wait for one another. Native memory is released by {@link #close}, once.
 */
public final class Clip implements AutoCloseable {

    /** What decoded frames may take, bytes. */
    private static final long CACHE_BYTES = 256L << 20;
    /** A time is written with three digits: it means the frame that begins up to this much later. */
    private static final double ROUNDING_S = 0.0005;
    /** How many frames before the one asked for are kept when the clip is stepped backwards. */
    private static final int BEHIND = 40;

    /** How many key frames farther back are tried when a frame does not come up. */
    private static final int MOST_BACK = 3;

    private final Path file;
    private final ClipReader reader;
    private final PacketIndex index;
    private final FrameCache cache;
    private final PictureConverter converter;
    private final ClipInfo info;
    private int decoded = -1;
    private boolean closed;

    private Clip(Path file, ClipReader reader, PacketIndex index) {
        this.file = file;
        this.reader = reader;
        this.index = index;
        this.cache = new FrameCache(CACHE_BYTES, (long) reader.width() * reader.height() * 3 / 2);
        this.converter = new PictureConverter(reader.width(), reader.height(), reader.rotation());
        boolean turned = reader.rotation() % 180 != 0;
        double start = reader.seconds(index.pts(0));
        this.info = new ClipInfo(turned ? reader.height() : reader.width(), turned ? reader.width() : reader.height(),
                reader.rotation(), index.frames(), start, reader.seconds(index.end()) - start, reader.codecName());
    }

    /** Opens a clip and lists its frames; takes about as long as reading the file. */
    public static Clip open(Path file) throws ClipException {
        if (!Files.exists(file)) {
            throw new ClipException(file + ": there is no such file");
        }
        if (Files.isDirectory(file)) {
            throw new ClipException(file + ": this is a folder, not a clip");
        }
        if (!Files.isReadable(file)) {
            throw new ClipException(file + ": the file may not be read by this user");
        }
        ClipReader reader = new ClipReader(file);
        try {
            return new Clip(file, reader, reader.index());
        } catch (ClipException e) {
            reader.close();
            throw e;
        }
    }

    public Path file() {
        return file;
    }

    public ClipInfo info() {
        return info;
    }

    public int frameCount() {
        return index.frames();
    }

    /** Presentation time of a frame, seconds. */
    public double seconds(int frame) {
        return reader.seconds(index.pts(frame));
    }

    /** The frame shown at a time: the last that begins not later, to half a millisecond; the first before all. */
    public int indexAt(double seconds) {
        int i = index.lastUpTo(reader.pts(seconds));
        while (i + 1 < index.frames() && seconds(i + 1) <= seconds + Math.min(ROUNDING_S, gap(i) / 4)) {
            i++;
        }
        return i;
    }

    private double gap(int i) {
        return seconds(i + 1) - seconds(i);
    }

    /** Exactly that frame. */
    public synchronized Frame frame(int at) throws ClipException {
        if (closed) {
            throw new IllegalStateException(file + " is closed");
        }
        if (at < 0 || at >= index.frames()) {
            throw new IllegalArgumentException("frame " + at + " of " + index.frames());
        }
        AVFrame kept = cache.get(at);
        if (kept == null) {
            kept = decode(at);
        }
        return new Frame(at, seconds(at), info.width(), info.height(), converter.convert(kept));
    }

    /** The frame shown at a time. */
    public Frame frameAt(double seconds) throws ClipException {
        return frame(indexAt(seconds));
    }

    private AVFrame decode(int at) throws ClipException {
        long wanted = index.pts(at);
        boolean ahead = decoded >= 0 && decoded < at && index.keyUpTo(wanted, 0) <= index.pts(decoded);
        int back = 0;
        if (!ahead) {
            reader.seek(index.keyUpTo(wanted, back));
        }
        long neededFrom = index.pts(Math.max(0, at - Math.min(BEHIND, cache.most() / 2)));
        while (true) {
            AVFrame frame = reader.next(neededFrom);
            long time = frame == null ? Long.MAX_VALUE : frame.best_effort_timestamp();
            if (frame == null || time > wanted) {
                // started too late, or the frame is lost: try from one key frame earlier
                if (back == MOST_BACK || index.keyUpTo(wanted, back) <= index.begin()) {
                    decoded = -1;
                    throw new ClipException(String.format(java.util.Locale.ROOT,
                            "%s: the frame at %.3f s cannot be decoded; the file is damaged there", file, seconds(at)));
                }
                back++;
                reader.seek(index.keyUpTo(wanted, back));
                continue;
            }
            int place = index.indexOf(time);
            if (place >= 0) {
                decoded = place;
                cache.put(place, frame, at);
            }
            if (time == wanted) {
                AVFrame kept = cache.get(at);
                return kept != null ? kept : frame;
            }
        }
    }

    @Override
    public synchronized void close() {
        if (!closed) {
            closed = true;
            cache.close();
            converter.close();
            reader.close();
        }
    }
}

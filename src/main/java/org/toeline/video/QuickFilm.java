package org.toeline.video;

import java.io.IOException;
import java.util.Locale;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.toeline.language.Sentences;

/**
 * A clip made quick to look at: every frame as a small picture, made once from the beginning to the end on a thread of its own,
 * and then to be had in a millisecond, in any order. For playing, for dragging along the clip and for small frames; what is marked
 * is always the exact frame of the {@link Clip}. Pictures are drawn by one thread, its owner; the rest may be asked by any.
 */
public final class QuickFilm implements AutoCloseable {

    private static final Sentences SENTENCES = Sentences.of(QuickFilm.class);
    private static final Logger LOG = Logger.getLogger(QuickFilm.class.getName());
    /** Of the longer side: what a pane on a usual screen shows of one of two views. */
    private static final int LONGER_PX = 720;
    /** Some forty seconds of sixty frames; what is beyond goes to a file. */
    private static final long MOST_BYTES = 64L << 20;

    private final Clip clip;
    private final SmallFrames frames;
    private final QuickPictures pictures;
    private final JpegPictures drawing;
    private final Thread thread;
    private volatile int ready;
    private volatile boolean ended;
    private volatile boolean closed;
    private volatile Optional<String> fault = Optional.empty();

    /** Begins to make it. */
    public QuickFilm(Clip clip) throws ClipException {
        this(clip, MOST_BYTES);
    }

    QuickFilm(Clip clip, long mostBytes) throws ClipException {
        this.clip = clip;
        this.frames = new SmallFrames(clip, LONGER_PX);
        this.pictures = new QuickPictures(clip.frameCount(), mostBytes);
        this.drawing = new JpegPictures(JpegPictures.Way.FROM_JPEG, frames.widthPx(), frames.heightPx());
        this.thread = new Thread(this::make, "quick film of " + clip.file().getFileName());
        thread.setDaemon(true);
        // what the hand waits for goes before
        thread.setPriority(Thread.MIN_PRIORITY);
        thread.start();
    }

    public int widthPx() {
        return frames.widthPx();
    }

    public int heightPx() {
        return frames.heightPx();
    }

    /** How many frames from the first on are ready. */
    public int ready() {
        return ready;
    }

    /** Whether no more will come: all are ready, or the file ends before its time or cannot be read on. */
    public boolean ended() {
        return ended;
    }

    /** Why it ended before the clip's end, in a sentence; empty where it did not. */
    public Optional<String> fault() {
        return fault;
    }

    /** What the pictures take of the memory. */
    public long bytes() {
        return pictures.inMemoryBytes();
    }

    /**
     * That frame's small picture.
     *
     * @param argb as many pixels as it has
     * @return whether it is ready
     */
    public boolean draw(int frame, int[] argb) {
        if (closed || frame < 0 || frame >= ready) {
            return false;
        }
        try {
            return drawing.decode(pictures.get(frame), argb);
        } catch (IOException e) {
            fault = Optional.of(e.toString());
            return false;
        }
    }

    private void make() {
        try (frames;
                JpegPictures coding = new JpegPictures(JpegPictures.Way.TO_JPEG, frames.widthPx(), frames.heightPx())) {
            int[] pixels = new int[frames.widthPx() * frames.heightPx()];
            frames.seek(0);
            for (int place = frames.next(pixels); place >= 0 && !closed; place = frames.next(pixels)) {
                if (place >= ready) {
                    pictures.put(place, coding.encode(pixels));
                    upTo(place);
                }
            }
            if (ready < clip.frameCount() && !closed) {
                fault = Optional.of(SENTENCES.of(
                        "clip.ends-early",
                        clip.file(),
                        String.format(Locale.ROOT, "%.2f", clip.seconds(Math.max(0, ready - 1)))));
            }
        } catch (ClipException e) {
            fault = Optional.ofNullable(e.getMessage());
        } catch (IOException | RuntimeException | Error e) {
            LOG.log(Level.WARNING, "a quick film ended", e);
            fault = Optional.ofNullable(ClipException.unexpected(clip.file(), e).getMessage());
        } finally {
            ended = true;
        }
    }

    private void upTo(int place) {
        for (int missing = ready; missing < place; missing++) {
            pictures.repeat(missing, ready == 0 ? place : ready - 1);
        }
        ready = place + 1;
    }

    /** Ends the making of it. */
    @Override
    public void close() {
        closed = true;
        pictures.close();
        drawing.close();
    }
}

package org.toeline.video;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import java.util.logging.Level;
import java.util.logging.Logger;

/**
 * Fetches frames on a thread of its own; the latest request wins, and the answer to an earlier one is dropped. After a
 * jump the nearest key frame comes first, at once, and the exact frame as soon as it is there. The callbacks run on that
 * thread. Owns the clip and closes it.
 */
public final class FrameFetcher implements AutoCloseable {

    /** Nearer than this nothing is shown on the way, frames. */
    private static final int JUMP = 12;

    private static final Logger LOG = Logger.getLogger(FrameFetcher.class.getName());

    private final Clip clip;
    private final ExecutorService thread;
    private final AtomicLong latest = new AtomicLong();
    private int last = -1;

    public FrameFetcher(Clip clip) {
        this.clip = clip;
        this.thread = Executors.newSingleThreadExecutor(r -> {
            Thread t = new Thread(r, "frames of " + clip.file().getFileName());
            t.setDaemon(true);
            return t;
        });
    }

    public Clip clip() {
        return clip;
    }

    /**
     * Asks for a frame; {@code shown} or {@code failed} is called unless another is asked for meanwhile.
     *
     * @param near told of the key frame before it, which is not the one asked for, when that one takes its time
     */
    public void fetch(int index, Consumer<Frame> near, Consumer<Frame> shown, Consumer<ClipException> failed) {
        long ticket = latest.incrementAndGet();
        thread.execute(() -> {
            if (ticket != latest.get()) {
                return;
            }
            try {
                first(index, near, ticket);
                if (ticket == latest.get()) {
                    Frame frame = clip.frame(index);
                    last = index;
                    answer(ticket, shown, frame);
                }
            } catch (ClipException e) {
                answer(ticket, failed, e);
            } catch (RuntimeException | Error e) {
                // a fault of the decoder's or of this program, or no memory: the person is told, and the next frame is
                // tried
                LOG.log(Level.WARNING, "no frame could be fetched", e);
                answer(ticket, failed, ClipException.unexpected(clip.file(), e));
            }
        });
    }

    /** What was asked for is not wanted any more. */
    public void forget() {
        latest.incrementAndGet();
    }

    /** Asks for the key frame at or before a frame, which is there at once. */
    public void near(int index, Consumer<Frame> shown) {
        fetch(clip.keyFrame(index), near -> {}, shown, failed -> {});
    }

    /** The key frame before, of a jump to a frame that is neither kept nor near where the clip stands. */
    private void first(int index, Consumer<Frame> near, long ticket) throws ClipException {
        int key = clip.keyFrame(index);
        boolean jump = last >= 0 && Math.abs(index - last) > JUMP && index - key > JUMP;
        if (jump && !clip.kept(index)) {
            answer(ticket, near, clip.frame(key));
        }
    }

    private <T> void answer(long ticket, Consumer<T> then, T result) {
        if (ticket == latest.get()) {
            then.accept(result);
        }
    }

    @Override
    public void close() {
        latest.incrementAndGet();
        thread.execute(clip::close);
        thread.shutdown();
    }
}

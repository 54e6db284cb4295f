package org.toeline.video;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;

/**
 * Fetches frames on a thread of its own; the latest request wins, and the answer to an earlier one is dropped. The
 * callbacks run on that thread. Owns the clip and closes it.
 */
public final class FrameFetcher implements AutoCloseable {

    private final Clip clip;
    private final ExecutorService thread;
    private final AtomicLong latest = new AtomicLong();

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

    /** Asks for a frame; {@code shown} or {@code failed} is called unless another is asked for meanwhile. */
    public void fetch(int index, Consumer<Frame> shown, Consumer<ClipException> failed) {
        long ticket = latest.incrementAndGet();
        thread.execute(() -> {
            if (ticket != latest.get()) {
                return;
            }
            try {
                Frame frame = clip.frame(index);
                if (ticket == latest.get()) {
                    shown.accept(frame);
                }
            } catch (ClipException e) {
                if (ticket == latest.get()) {
                    failed.accept(e);
                }
            }
        });
    }

    @Override
    public void close() {
        latest.incrementAndGet();
        thread.execute(clip::close);
        thread.shutdown();
    }
}

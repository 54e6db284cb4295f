package org.toeline.video;

import java.util.BitSet;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.jspecify.annotations.Nullable;

/**
 * Decodes on a thread of its own: first what somebody waits for, then, in the direction of travel, what is likely to be
 * asked for next. Stepping backwards, the frames before those kept are decoded while the kept ones are looked at, so that
 * a key frame is crossed without waiting. Any thread may ask; the decoder is used by this thread only.
 */
final class DecodingThread implements AutoCloseable {

    /** How far apart two requests are at most to be steps in a direction, frames. */
    private static final int STRIDE = 12;
    /** How long after a jump nothing is decoded ahead: another jump may follow, or the clip be closed. */
    private static final long REST_MILLIS = 60;
    /** How many frames before one jumped to are kept on the way there. */
    private static final int BEHIND = 24;

    private final FrameDecoder decoder;
    private final FrameCache cache;
    private final int frames;
    private final AtomicReference<Runnable> news = new AtomicReference<>(() -> {});
    private final BitSet lost = new BitSet();
    private final Thread thread;
    private int wanted = -1;
    private int last = -1;
    private int direction;
    private boolean rested;
    private boolean closed;
    private @Nullable Throwable failure;

    /** A stretch to be decoded: up to {@code target}, keeping the frames from {@code keepFrom} on. */
    private record Goal(int target, int keepFrom) {

        boolean holds(int frame) {
            return frame >= keepFrom && frame <= target;
        }
    }

    DecodingThread(String name, FrameDecoder decoder, FrameCache cache, int frames) {
        this.decoder = decoder;
        this.cache = cache;
        this.frames = frames;
        this.thread = new Thread(this::run, name);
        thread.setDaemon(true);
        thread.start();
    }

    /** Who is told, on this thread, that another frame is decoded. */
    void tell(Runnable listener) {
        news.set(listener);
    }

    /** That frame is looked at: what is decoded ahead lies around it. The direction of travel: 1, −1, or 0 after a jump. */
    synchronized int look(int at) {
        int step = at - last;
        direction = last < 0 || Math.abs(step) > STRIDE ? 0 : step == 0 ? direction : Integer.signum(step);
        last = at;
        rested = direction != 0;
        notifyAll();
        return direction;
    }

    /**
     * That frame, as a reference of the caller's own; empty when it cannot be decoded. Waits for it. One caller at a time;
     * {@link #close} may come from another thread and ends the wait.
     */
    synchronized Optional<AVFrame> frame(int at) {
        wanted = at;
        notifyAll();
        Patience.until(this, () -> closed || cache.has(at) || lost.get(at));
        if (closed) {
            throw new IllegalStateException(thread.getName() + ": closed while a frame was waited for", failure);
        }
        wanted = -1;
        return Optional.ofNullable(cache.share(at));
    }

    /** That frame as above if it is kept, without waiting. */
    synchronized Optional<AVFrame> kept(int at) {
        return closed ? Optional.empty() : Optional.ofNullable(cache.share(at));
    }

    synchronized boolean keeps(int at) {
        return cache.has(at);
    }

    private void run() {
        try {
            work();
        } catch (RuntimeException | Error e) {
            synchronized (this) {
                failure = e;
                closed = true;
                notifyAll();
            }
        } finally {
            cache.close();
            decoder.close();
        }
    }

    private void work() {
        for (Goal goal = next(); goal != null; goal = next()) {
            while (goes(goal)) {
                AVFrame frame = decoder.towards(goal.target, goal.keepFrom);
                took(goal, frame);
                Objects.requireNonNull(news.get()).run();
                if (frame == null || decoder.position() == goal.target) {
                    break;
                }
            }
        }
    }

    private synchronized boolean goes(Goal goal) {
        return !closed && (wanted < 0 || cache.has(wanted) || lost.get(wanted) || goal.holds(wanted));
    }

    private synchronized void took(Goal goal, @Nullable AVFrame frame) {
        if (frame == null) {
            lost.set(goal.target);
        } else if (decoder.trusted() && decoder.position() >= goal.keepFrom) {
            cache.put(decoder.position(), frame, centre());
        }
        notifyAll();
    }

    /** The middle of what is to be kept: a quarter of it lies behind the direction of travel. */
    private int centre() {
        int near = wanted >= 0 ? wanted : last;
        return near + direction * cache.most() / 4;
    }

    /** What to decode next; waits while there is nothing. Null when closed. */
    private synchronized @Nullable Goal next() {
        while (!closed) {
            Goal goal = goal();
            if (goal != null) {
                return goal;
            }
            int seen = last;
            boolean resting = !rested && last >= 0;
            // nobody interrupts this thread but to end it
            if (!Patience.pause(this, resting ? REST_MILLIS : 0)) {
                closed = true;
            }
            rested |= resting && seen == last;
        }
        return null;
    }

    private @Nullable Goal goal() {
        if (wanted >= 0 && !cache.has(wanted) && !lost.get(wanted)) {
            int behind = direction < 0 ? chunk() : behind();
            return new Goal(wanted, wanted - behind);
        }
        if (last < 0) {
            return null;
        }
        if (direction < 0) {
            return before();
        }
        Goal group = atItsBeginning();
        if (direction == 0 && group != null) {
            return group;
        }
        Goal first = rested ? after() : null;
        return first == null && rested ? direction == 0 ? before() : group : first;
    }

    /**
     * Close behind a key frame, and nothing kept from before it: the group before takes longest to be had, and a step back
     * may be the next thing asked for.
     */
    private @Nullable Goal atItsBeginning() {
        int missing = present(last, -1);
        int behind = behind();
        return missing >= 0 && last - missing < behind
                ? new Goal(missing, direction == 0 ? missing - chunk() + 1 : last - behind)
                : null;
    }

    private int behind() {
        return Math.min(BEHIND, cache.most() / 4);
    }

    private int chunk() {
        return Math.max(1, cache.most() * 3 / 8);
    }

    private @Nullable Goal after() {
        int missing = present(last, 1);
        int reach = cache.most() * (direction == 0 ? 1 : 2) / 4;
        return missing < frames && missing - last <= reach ? new Goal(missing, missing) : null;
    }

    private @Nullable Goal before() {
        int missing = present(last, -1);
        boolean near = last - missing <= Math.max(1, cache.most() * (direction == 0 ? 1 : 3) / 8);
        return missing >= 0 && near ? new Goal(missing, missing - chunk() + 1) : null;
    }

    /** The first frame from there that is neither kept nor lost. */
    private int present(int from, int step) {
        int at = cache.firstMissing(from, step);
        while (at >= 0 && lost.get(at)) {
            at = cache.firstMissing(at + step, step);
        }
        return at;
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

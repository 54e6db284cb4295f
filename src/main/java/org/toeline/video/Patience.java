package org.toeline.video;

import java.util.function.BooleanSupplier;

/** Waiting for other threads, in spite of interruptions where these mean nothing. */
final class Patience {

    private Patience() {}

    /** Waits until that is so; the caller holds the monitor, and whoever makes it so notifies it. */
    static void until(Object monitor, BooleanSupplier so) {
        boolean interrupted = false;
        while (!so.getAsBoolean()) {
            interrupted |= !pause(monitor, 0);
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    /**
     * Waits until the monitor, which the caller holds, is notified, or for so long.
     *
     * @param millis 0 for as long as it takes
     * @return false when interrupted
     */
    static boolean pause(Object monitor, long millis) {
        try {
            monitor.wait(millis);
            return true;
        } catch (InterruptedException e) {
            return false;
        }
    }

    /** Waits for the end of a thread, unless it is this one. */
    static void end(Thread thread) {
        boolean interrupted = false;
        while (thread.isAlive() && Thread.currentThread() != thread) {
            try {
                thread.join();
            } catch (InterruptedException e) {
                interrupted = true;
            }
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
    }
}

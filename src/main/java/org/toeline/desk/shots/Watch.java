package org.toeline.desk.shots;

import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;

/** How far a reckoning of many shots has come; it can be stopped. Any thread. */
final class Watch {

    private final int all;
    private final AtomicInteger done = new AtomicInteger();
    private final AtomicBoolean stopped = new AtomicBoolean();

    /** @param all how many shots there are to be done */
    Watch(int all) {
        this.all = all;
    }

    <T> T done(T one) {
        done.incrementAndGet();
        return one;
    }

    void stop() {
        stopped.set(true);
    }

    boolean stopped() {
        return stopped.get();
    }

    int all() {
        return all;
    }

    int done() {
        return done.get();
    }
}

package org.toeline.desk.work;

import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.Platform;
import org.toeline.desk.text.Texts;

/**
 * Work off the interface thread. Results and failures come back on it; of work that replaces earlier work of its kind
 * only the latest is answered.
 */
public final class Background {

    private static final Logger LOG = Logger.getLogger(Background.class.getName());

    private final ExecutorService threads = Executors.newFixedThreadPool(3, r -> {
        Thread thread = new Thread(r, "desk work");
        thread.setDaemon(true);
        return thread;
    });
    private final Consumer<String> report;

    /** @param report takes one sentence for the person, on the interface thread */
    public Background(Consumer<String> report) {
        this.report = report;
    }

    /** Work of one kind: a later call makes the answer to an earlier one void, and skips it if it has not begun. */
    public final class Lane {

        private final AtomicLong latest = new AtomicLong();
        private final ExecutorService thread = Executors.newSingleThreadExecutor(r -> {
            Thread t = new Thread(r, "desk lane");
            t.setDaemon(true);
            return t;
        });

        private Lane() {}

        public <T> void run(Callable<T> work, Consumer<T> then) {
            long ticket = latest.incrementAndGet();
            thread.execute(() -> {
                if (ticket == latest.get()) {
                    perform(work, result -> {
                        if (ticket == latest.get()) {
                            then.accept(result);
                        }
                    });
                }
            });
        }
    }

    public Lane lane() {
        return new Lane();
    }

    /** Does the work on another thread and hands its result to {@code then} on the interface thread. */
    public <T> void run(Callable<T> work, Consumer<T> then) {
        threads.execute(() -> perform(work, then));
    }

    private <T> void perform(Callable<T> work, Consumer<T> then) {
        try {
            T result = work.call();
            Platform.runLater(() -> guarded(() -> then.accept(result)));
        } catch (Exception | Error e) {
            // no work may end without a word, whatever ends it
            LOG.log(Level.WARNING, "background work failed", e);
            Platform.runLater(() -> report.accept(sentence(e)));
        }
    }

    private void guarded(Runnable then) {
        try {
            then.run();
        } catch (RuntimeException | Error e) {
            LOG.log(Level.WARNING, "an answer could not be shown", e);
            report.accept(sentence(e));
        }
    }

    private static String sentence(Throwable e) {
        String message = e.getMessage();
        return message == null
                ? Texts.of("work.failed", e.getClass().getSimpleName())
                : message.lines().findFirst().orElse(message);
    }
}

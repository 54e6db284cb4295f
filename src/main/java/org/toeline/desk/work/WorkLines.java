package org.toeline.desk.work;

import java.util.concurrent.Callable;
import javafx.animation.PauseTransition;
import javafx.application.Platform;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import javafx.util.Duration;
import org.toeline.video.Progress;

/**
 * Work that takes its time, a line each: what it is, how far it has come, and a button that stops it. What is done within
 * a moment shows no line. Begun and looked at on the interface thread.
 */
public final class WorkLines extends VBox {

    private static final Duration MOMENT = Duration.millis(400);
    private static final double BAR_PX = 220;

    private final String stop;

    /** @param stop what the stopping button says */
    public WorkLines(String stop) {
        this.stop = stop;
        setId("work-lines");
    }

    /** One piece of work; told from its own thread how far it is. */
    public final class Work implements Progress {

        private final String what;
        private final Runnable stopped;
        private final Label text = new Label();
        private final ProgressBar bar = new ProgressBar(ProgressBar.INDETERMINATE_PROGRESS);
        private final Button button = new Button(stop);
        private final HBox line = new HBox(12, text, bar, button);
        private volatile boolean stopping;
        private volatile boolean ended;

        private Work(String what, Runnable stopped) {
            this.what = what;
            this.stopped = stopped;
            text.setText(what);
            bar.setPrefWidth(BAR_PX);
            bar.setAccessibleText(what);
            button.setId("work-stop");
            button.setMinWidth(USE_PREF_SIZE);
            button.setAccessibleText(stop + ": " + what);
            button.setOnAction(e -> {
                stop();
                this.stopped.run();
            });
            line.setAlignment(Pos.CENTER_LEFT);
            line.getStyleClass().add("work");
        }

        @Override
        public Step at(double share) {
            Platform.runLater(() -> {
                bar.setProgress(share);
                text.setText(what + String.format(java.util.Locale.ROOT, " %.0f %%", 100 * share));
            });
            return stopping ? Step.STOP : Step.GO_ON;
        }

        /** Ends it without a word: its result is not wanted any more. */
        public void stop() {
            stopping = true;
            ended();
        }

        /** Whether it was told to stop, so that its result counts for nothing. */
        public boolean stopped() {
            return stopping;
        }

        /** Does the work, on any thread, and takes the line away whatever comes of it. */
        public <T> T during(Callable<T> work) throws Exception {
            try {
                return work.call();
            } finally {
                Platform.runLater(this::ended);
            }
        }

        private void ended() {
            ended = true;
            getChildren().remove(line);
        }

        private void show() {
            if (!ended) {
                getChildren().add(line);
            }
        }
    }

    /**
     * Begins a line.
     *
     * @param stopped done on the interface thread when a person presses the button
     */
    public Work begin(String what, Runnable stopped) {
        Work work = new Work(what, stopped);
        PauseTransition moment = new PauseTransition(MOMENT);
        moment.setOnFinished(e -> work.show());
        moment.play();
        return work;
    }
}

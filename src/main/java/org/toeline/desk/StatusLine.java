package org.toeline.desk;

import java.util.EnumMap;
import java.util.Map;
import java.util.function.LongSupplier;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import org.toeline.desk.work.Report;

/**
 * The line at the bottom that says what happened; once it was read, it goes with the next gesture, which it says nothing of. What
 * lasts then stands there again.
 */
final class StatusLine extends Label implements Report {

    /** A sentence of two lines is read by then, also by somebody who looked elsewhere first. */
    static final long READ_NANOS = 6_000_000_000L;

    private final LongSupplier nanos;
    private final Map<Trouble, String> troubles = new EnumMap<>(Trouble.class);
    private long saidAt;

    /** @param nanos a clock that only runs on */
    StatusLine(LongSupplier nanos) {
        this.nanos = nanos;
        getStyleClass().add("status");
        setId("status");
        setMaxWidth(Double.MAX_VALUE);
    }

    @Override
    public void accept(String sentence) {
        setText(sentence);
        saidAt = nanos.getAsLong();
    }

    @Override
    public void lasting(Trouble trouble, String sentence) {
        boolean shown = getText().equals(lasting());
        if (sentence.isEmpty()) {
            troubles.remove(trouble);
        } else {
            troubles.put(trouble, sentence);
        }
        if (!sentence.isEmpty()) {
            accept(sentence);
        } else if (shown) {
            setText(lasting());
        }
    }

    private String lasting() {
        return troubles.values().stream().findFirst().orElse("");
    }

    /** Notices what is done in a window, before it is done. */
    void listenTo(Scene scene) {
        scene.addEventFilter(KeyEvent.KEY_PRESSED, e -> done());
        scene.addEventFilter(MouseEvent.MOUSE_PRESSED, e -> done());
    }

    private void done() {
        if (nanos.getAsLong() - saidAt > READ_NANOS) {
            setText(lasting());
        }
    }
}

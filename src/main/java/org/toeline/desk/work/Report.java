package org.toeline.desk.work;

import java.util.function.Consumer;

/** Takes sentences for the line at the bottom of the window, on the JavaFX thread. */
@FunctionalInterface
public interface Report extends Consumer<String> {

    /** What may last, the worst first. */
    enum Trouble {
        /** What was marked could not be written into the ledger. */
        NOT_KEPT,
        /** The lesson's document could not be written. */
        NO_DOCUMENT,
        /** The ledger could not be opened, or not for writing. */
        NO_LEDGER
    }

    /**
     * Says what is the matter, which stands until it is over.
     *
     * @param sentence empty when it is over
     */
    default void lasting(Trouble trouble, String sentence) {
        if (!sentence.isEmpty()) {
            accept(sentence);
        }
    }
}

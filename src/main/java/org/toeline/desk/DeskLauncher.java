package org.toeline.desk;

import javafx.application.Application;
import org.toeline.desk.text.Texts;

/** Starts the desk; kept apart from the application class, which the class path could not start. */
public final class DeskLauncher {

    private DeskLauncher() {}

    /** Opens the desk and returns when it is closed. */
    public static void launch(String[] args) {
        try {
            Application.launch(Desk.class, args);
        } catch (UnsupportedOperationException | LinkageError e) {
            throw new IllegalStateException(Texts.of("no-screen"), e);
        }
    }
}

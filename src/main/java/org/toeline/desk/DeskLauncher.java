package org.toeline.desk;

import javafx.application.Application;

/** Starts the desk; kept apart from the application class, which the class path could not start. */
public final class DeskLauncher {

    private DeskLauncher() {}

    /** Opens the desk and returns when it is closed. */
    public static void launch(String[] args) {
        try {
            Application.launch(Desk.class, args);
        } catch (UnsupportedOperationException | LinkageError e) {
            throw new IllegalStateException(
                    "the desk needs a screen and, on Linux, GTK 3 (Debian: apt-get install " + "libgtk-3-0 libgl1)", e);
        }
    }
}

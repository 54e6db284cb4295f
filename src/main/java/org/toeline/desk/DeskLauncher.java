package org.toeline.desk;

import java.util.prefs.Preferences;
import javafx.application.Application;
import org.toeline.desk.text.Texts;

/** Starts the desk; kept apart from the application class, which the class path could not start. */
public final class DeskLauncher {

    private DeskLauncher() {}

    /** Opens the desk and returns when it is closed. */
    public static void launch(String[] args) {
        // read from their file while the toolkit starts
        Preferences left = Preferences.userNodeForPackage(DeskLauncher.class);
        Thread reader = new Thread(() -> left.get("width", ""), "reads what was left");
        reader.setDaemon(true);
        reader.start();
        try {
            Drawing.choose();
            Application.launch(Desk.class, args);
        } catch (UnsupportedOperationException | LinkageError e) {
            throw new IllegalStateException(Texts.of("no-screen"), e);
        }
    }
}

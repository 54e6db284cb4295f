package org.toeline.desk;

import java.io.File;
import javafx.stage.FileChooser;
import javafx.stage.Window;

/** Writes the still where the coach wants it. */
final class StillExport {

    private StillExport() {
    }

    static void choose(Sheet sheet, Window window) {
        FileChooser chooser = new FileChooser();
        chooser.setInitialFileName("still.png");
        File file = chooser.showSaveDialog(window);
        if (file != null) {
            write(sheet, file.toPath());
        }
    }

    static void write(Sheet sheet, java.nio.file.Path file) {
        sheet.say(file.toString());
    }
}

package org.toeline.desk;

import java.awt.image.BufferedImage;
import java.io.File;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Map;
import javafx.stage.FileChooser;
import javafx.stage.Window;
import org.toeline.advice.Assessment;
import org.toeline.advice.Words;
import org.toeline.handout.Handout;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.WholeFile;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.View;

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

    static void write(Sheet sheet, Path file) {
        Lesson lesson = sheet.model().lesson();
        MarkSheet marked = lesson.sheet();
        Map<View, BufferedImage> pictures = new EnumMap<>(View.class);
        for (View view : View.values()) {
            if (marked.view(view).isPresent()) {
                sheet.clips().frame(view).ifPresent(f -> pictures.put(view, f.toImage()));
            }
        }
        Words words = sheet.words();
        sheet.background().run(() -> {
            WholeFile.write(file, Handout.of(lesson, Assessment.of(marked), pictures, words).png());
            return file;
        }, done -> sheet.say(Texts.of("still.kept", done)));
    }
}

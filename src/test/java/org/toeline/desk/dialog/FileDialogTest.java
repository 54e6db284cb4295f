package org.toeline.desk.dialog;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.prefs.Preferences;
import java.util.stream.Stream;
import javafx.stage.FileChooser;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** The system's dialogs are titled, and open where something of their kind was chosen last. */
@ExtendWith(ApplicationExtension.class)
class FileDialogTest {

    private final Preferences left = Preferences.userRoot().node("/org/toeline/desk");
    private String before = "";

    @TempDir
    Path folder;

    @Start
    void start(Stage stage) {
        stage.show();
    }

    @BeforeEach
    void remember() {
        before = left.get("rangesFolder", "");
    }

    @AfterEach
    void restore() {
        left.put("rangesFolder", before);
    }

    private static FileChooser ranges() {
        return new FileDialog(FileDialog.Kind.RANGES, "ranges.take-in").files();
    }

    @Test
    void itIsTitledByWhatWasPressed() {
        assertThat(ranges().getTitle()).isEqualTo("Import ranges");
    }

    @Test
    void itOpensWhereAFileWasChosenLast() {
        FileDialog first = new FileDialog(FileDialog.Kind.RANGES, "ranges.give-out");
        first.remembered(folder.resolve("mine.json").toFile());
        assertThat(ranges().getInitialDirectory()).isEqualTo(folder.toFile());
    }

    /** A folder that is not there would keep the system's dialog from opening. */
    @Test
    void aFolderThatIsGoneIsForgotten() {
        left.put("rangesFolder", folder.resolve("gone").toString());
        assertThat(ranges().getInitialDirectory()).isNull();
    }

    @Test
    void nobodyAsksTheSystemBesides() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("src/main/java/org/toeline"))) {
            assertThat(files.filter(f -> f.toString().endsWith(".java"))
                            .filter(f -> !f.endsWith("FileDialog.java"))
                            .filter(f -> read(f).matches("(?s).*\\b(FileChooser|DirectoryChooser)\\b.*")))
                    .isEmpty();
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

package org.toeline.desk.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.toeline.desk.DrivenDesk;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.LessonDocument;
import org.toeline.ledger.store.exchange.LessonArchive;
import org.toeline.mark.Club;
import org.toeline.mark.Handedness;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.View;

/** A file that is opened by the usual key, dropped or double-clicked is taken for what it is: a lesson's, or a clip. */
class OpenedFilesTest extends DrivenDesk {

    private static final Path SAMPLE = Path.of("sample-media", "before").toAbsolutePath();

    @Start
    void start(Stage stage) {
        open(stage);
    }

    private void nothingOpen(FxRobot robot) {
        robot.interact(() -> model().open(Lesson.of(MarkSheet.empty(Handedness.RIGHT, Club.DRIVER)), Optional.empty()));
    }

    @Test
    void aClipIsOpenedForTheLargeView(FxRobot robot) throws Exception {
        nothingOpen(robot);
        robot.interact(() -> {
            model().show(View.DOWN_THE_LINE);
            sheet.open(SAMPLE.resolve("down-the-line.mp4"));
        });
        until(() -> sheet.clips().shown(View.DOWN_THE_LINE).isPresent());
        assertThat(sheet.clips().shown(View.FACE_ON)).isEmpty();
    }

    @Test
    void aDocumentAmongWhatIsDroppedOrChosenAsAClipIsOpened(FxRobot robot) throws Exception {
        nothingOpen(robot);
        robot.interact(
                () -> ((SheetView) sheet.root()).arrived(List.of(SAMPLE.resolve("before.lesson.json")), View.FACE_ON));
        until(() -> sheet.clips().shown(View.FACE_ON).isPresent());
        assertThat(model().sheet().view(View.FACE_ON)).isPresent();
        assertThat(model().lesson().clips()).containsKeys(View.FACE_ON, View.DOWN_THE_LINE, View.TEE);
    }

    /** As the dialog leaves it where no ending was typed. */
    @Test
    void aDocumentOfAnyNameIsOpened(FxRobot robot) throws Exception {
        nothingOpen(robot);
        Path plain = folder.resolve("monday");
        Files.copy(SAMPLE.resolve("before.lesson.json"), plain);
        robot.interact(() -> sheet.open(plain));
        until(() -> model().sheet().view(View.FACE_ON).isPresent());
        assertThat(model().lesson().clips()).containsKeys(View.FACE_ON, View.DOWN_THE_LINE, View.TEE);
    }

    @Test
    void anArchiveIsTakenIntoTheLedgerAndOpened(FxRobot robot) throws Exception {
        nothingOpen(robot);
        Path archive = folder.resolve("tuesday.lesson.zip");
        LessonArchive.write(
                LessonDocument.read(SAMPLE.resolve("before.lesson.json")),
                UUID.randomUUID().toString(),
                List.of(),
                Map.of(),
                List.of(),
                archive);
        robot.interact(() -> sheet.open(archive));
        until(() -> model().sheet().view(View.FACE_ON).isPresent());
    }
}

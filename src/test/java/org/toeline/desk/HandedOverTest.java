package org.toeline.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.atomic.AtomicReference;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.input.Clipboard;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.toeline.desk.text.Texts;
import org.toeline.desk.work.Report;
import org.toeline.mark.Handedness;
import org.toeline.mark.View;

/** The handout by one key, from the lesson: copied, printed, shown to the player on the whole screen. */
class HandedOverTest extends DrivenDesk {

    @Start
    void start(Stage stage) {
        open(stage);
    }

    @BeforeEach
    void sample(FxRobot robot) throws Exception {
        robot.interact(() -> sheet.desk().sample());
        until(() -> sheet.assessment().filter(a -> a.advice().isJudged()).isPresent()
                && sheet.clips().frames().size() == model().sheet().views().size());
        robot.interact(picture::requestFocus);
    }

    private static String status(FxRobot robot) {
        return robot.lookup("#status").queryAs(Label.class).getText();
    }

    @Test
    void theStillIsCopied(FxRobot robot) throws Exception {
        robot.interact(() -> Clipboard.getSystemClipboard().clear());
        robot.push(KeyCode.CONTROL, KeyCode.C);
        until(() -> status(robot).equals(Texts.of("copied")));
        AtomicReference<Image> copied = new AtomicReference<>();
        robot.interact(() -> copied.set(Clipboard.getSystemClipboard().getImage()));
        assertThat(copied.get().getWidth()).isEqualTo(1080);
        robot.interact(() -> screens.go("hand-over"));
        robot.interact(() -> robot.lookup("#shown-large")
                .queryAs(javafx.scene.control.RadioButton.class)
                .fire());
        until(() ->
                shown(robot) != null && shown(robot).getHeight() == copied.get().getHeight());
        for (int y = 5; y < copied.get().getHeight(); y += 37) {
            for (int x = 5; x < copied.get().getWidth(); x += 41) {
                assertThat(copied.get().getPixelReader().getArgb(x, y))
                        .isEqualTo(shown(robot).getPixelReader().getArgb(x, y));
            }
        }
    }

    private static Image shown(FxRobot robot) {
        return robot.lookup("#handout").queryAs(ImageView.class).getImage();
    }

    @Test
    void aFieldCopiesItsOwnWords(FxRobot robot) throws Exception {
        TextField time = robot.lookup("#time").queryAs(TextField.class);
        robot.interact(() -> {
            Clipboard.getSystemClipboard().clear();
            time.requestFocus();
            time.selectAll();
        });
        robot.push(KeyCode.CONTROL, KeyCode.C);
        AtomicReference<String> copied = new AtomicReference<>();
        robot.interact(() -> copied.set(Clipboard.getSystemClipboard().getString()));
        assertThat(copied.get()).isEqualTo(time.getText());
        assertThat(status(robot)).isNotEqualTo(Texts.of("copied"));
    }

    /** Where no printer is set up it is said; where there is one, it is asked about. */
    @Test
    void thePageIsPrinted(FxRobot robot) throws Exception {
        robot.push(KeyCode.CONTROL, KeyCode.P);
        until(() -> status(robot).equals(Texts.of("print.none"))
                || robot.lookup("#print-now").tryQuery().isPresent());
        robot.lookup("#dialog-leave").tryQuery().ifPresent(robot::clickOn);
    }

    @Test
    void theWholeScreenIsThePlayers(FxRobot robot) throws Exception {
        double marked = sheet.clips().marked(View.FACE_ON).orElseThrow();
        robot.push(KeyCode.F11);
        until(() -> robot.lookup("#large-picture").tryQuery().isPresent()
                && robot.lookup("#large-picture").queryAs(ImageView.class).getImage() != null);
        ImageView large = robot.lookup("#large-picture").queryAs(ImageView.class);
        assertThat(large.getScene().getWindow()).isNotSameAs(picture.getScene().getWindow());
        assertThat(large.getAccessibleText()).contains("ball");
        until(() -> sheet.films().player().plays()
                || sheet.clips().reel(model().large()).isPresent());
        robot.push(KeyCode.SPACE);
        until(() -> robot.lookup("#large-film").query().getParent().isVisible());
        robot.push(KeyCode.SPACE);
        until(() -> !robot.lookup("#large-film").query().getParent().isVisible());
        robot.push(KeyCode.ESCAPE);
        until(() -> robot.lookup("#large-picture").tryQuery().isEmpty());
        assertThat(sheet.clips().marked(View.FACE_ON).orElseThrow()).isEqualTo(marked);
        robot.push(KeyCode.F11);
        until(() -> robot.lookup("#large-picture").tryQuery().isPresent());
        robot.push(KeyCode.F11);
        until(() -> robot.lookup("#large-picture").tryQuery().isEmpty());
    }

    @Test
    void whatWasReadGoesWithTheNextGesture(FxRobot robot) {
        AtomicLong now = new AtomicLong();
        StatusLine line = new StatusLine(now::get);
        robot.interact(() -> {
            line.listenTo(picture.getScene());
            line.accept("done");
        });
        robot.push(KeyCode.O);
        assertThat(line.getText()).isEqualTo("done");
        now.set(StatusLine.READ_NANOS + 1);
        assertThat(line.getText()).isEqualTo("done");
        robot.push(KeyCode.O);
        assertThat(line.getText()).isEmpty();
    }

    @Test
    void whatLastsStandsThereAgainUntilItIsOver(FxRobot robot) {
        AtomicLong now = new AtomicLong();
        StatusLine line = new StatusLine(now::get);
        robot.interact(() -> {
            line.listenTo(picture.getScene());
            line.lasting(Report.Trouble.NO_LEDGER, "no ledger");
            line.lasting(Report.Trouble.NOT_KEPT, "not kept yet");
            line.accept("something else");
        });
        now.set(StatusLine.READ_NANOS + 1);
        robot.push(KeyCode.O);
        assertThat(line.getText()).isEqualTo("not kept yet");
        robot.push(KeyCode.O);
        assertThat(line.getText()).isEqualTo("not kept yet");
        robot.interact(() -> line.lasting(Report.Trouble.NOT_KEPT, ""));
        assertThat(line.getText()).isEqualTo("no ledger");
        robot.interact(() -> line.lasting(Report.Trouble.NO_LEDGER, ""));
        assertThat(line.getText()).isEmpty();
    }

    private static String waits() {
        return Texts.of("document.waits", "").substring(2);
    }

    /** Where the lesson's document should go, and cannot: its folder is a file. Said, and waited for. */
    private Path blocked(FxRobot robot, String name, String notes) throws Exception {
        Path blocked = folder.resolve(name);
        Files.writeString(blocked, "");
        robot.interact(() -> {
            model().keepIn(blocked.resolve("a.lesson.json"));
            model().describe(l -> l.withNotes(notes));
        });
        until(() -> status(robot).endsWith(waits()));
        return blocked;
    }

    /** The ledger has it, the document that it was opened from has not. */
    @Test
    void itIsNotSaidThatAllIsKeptWhileADocumentWaits(FxRobot robot) throws Exception {
        Path blocked = blocked(robot, "blocked-three", "not in the document");
        robot.interact(sheet::kept);
        until(() -> status(robot).equals(Texts.of("kept.waits")));
        Files.delete(blocked);
        robot.interact(() -> model().describe(l -> l.withNotes("in both")));
        until(() -> Files.exists(blocked.resolve("a.lesson.json")));
        until(() -> {
            robot.interact(sheet::kept);
            return status(robot)
                    .equals(Texts.of("kept.in-ledger", screens.records().place()));
        });
    }

    @Test
    void aDocumentThatCannotBeWrittenIsSaidToBeSoUntilItIs(FxRobot robot) throws Exception {
        Label line = robot.lookup("#status").queryAs(Label.class);
        Path blocked = blocked(robot, "blocked", "first");
        Files.delete(blocked);
        robot.interact(() -> model().describe(l -> l.withNotes("second")));
        until(() ->
                Files.exists(blocked.resolve("a.lesson.json")) && line.getText().isEmpty());
    }

    /** Opening another lesson does not make the first one's document written. */
    @Test
    void aDocumentThatCannotBeWrittenIsNotForgottenForTheNext(FxRobot robot) throws Exception {
        Label line = robot.lookup("#status").queryAs(Label.class);
        Path blocked = blocked(robot, "blocked-too", "the first one's last word");
        String waits = waits();
        robot.interact(() -> model().keepIn(folder.resolve("b.lesson.json")));
        until(() -> Files.exists(folder.resolve("b.lesson.json")));
        assertThat(line.getText()).endsWith(waits);
        Files.delete(blocked);
        robot.interact(() -> model().describe(l -> l.withNotes("of the second")));
        until(() ->
                Files.exists(blocked.resolve("a.lesson.json")) && line.getText().isEmpty());
        assertThat(Files.readString(blocked.resolve("a.lesson.json"))).contains("the first one's last word");
    }

    /** The other hand makes other findings, or none; until they are there nothing is handed over, and the advice of before least of all. */
    @Test
    void whatIsHandedOverIsOfTheMarksThatAreThere(FxRobot robot) throws Exception {
        robot.interact(() -> {
            model().handedness(Handedness.LEFT);
            assertThat(sheet.findings()).isEmpty();
            screens.go("hand-over");
        });
        until(() -> sheet.findings().isPresent());
        assertThat(sheet.findings().orElseThrow().advice().withheld()).isPresent();
        assertThat(shown(robot)).isNull();
        robot.interact(() -> model().handedness(Handedness.RIGHT));
        until(() -> shown(robot) != null);
        assertThat(sheet.findings().orElseThrow().advice().isJudged()).isTrue();
    }
}

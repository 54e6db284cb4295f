package org.toeline.desk.handover;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javafx.embed.swing.SwingFXUtils;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.ListCell;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.input.KeyCode;
import javafx.scene.text.Text;
import javafx.stage.Stage;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import org.toeline.advice.Phrases;
import org.toeline.desk.ScreenUnderTest;
import org.toeline.desk.dialog.ShownDialog;
import org.toeline.desk.records.Settings;
import org.toeline.handout.Handout;
import org.toeline.ledger.ClipMoment;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.LessonDocument;
import org.toeline.ledger.store.Ledger;
import org.toeline.ledger.store.rows.KeptLesson;
import org.toeline.mark.Handedness;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;
import org.toeline.video.Clip;
import org.toeline.video.Frame;

/** The screen over the sample lesson: what is shown is what is written. */
class HandOverScreenTest extends ScreenUnderTest {

    private HandOverScreen screen;
    private Stage window;

    @Start
    void start(Stage stage) {
        window = stage;
        screen = show(stage, s -> new HandOverScreen(s, folder.resolve("phrases.json")));
    }

    private static Lesson sample(String id) throws Exception {
        Path media = Path.of("sample-media", id).toAbsolutePath();
        Lesson lesson = LessonDocument.read(media.resolve(id + ".lesson.json"));
        for (var clip : Map.copyOf(lesson.clips()).entrySet()) {
            lesson = lesson.withClip(
                    clip.getKey(),
                    new ClipMoment(
                            media.resolve(clip.getValue().clip()).toString(),
                            clip.getValue().seconds()));
        }
        return lesson;
    }

    private void openSample(FxRobot robot) throws Exception {
        open(robot, sample("before"));
    }

    private void open(FxRobot robot, Lesson lesson) throws Exception {
        Map<View, Frame> frames = new EnumMap<>(View.class);
        for (var clip : lesson.clips().entrySet()) {
            try (Clip open = Clip.open(Path.of(clip.getValue().clip()))) {
                frames.put(clip.getKey(), open.frameAt(clip.getValue().seconds().orElseThrow()));
            }
        }
        robot.interact(() -> {
            studio.open(lesson, frames);
            screen.entered();
        });
        until(() -> shown(robot) != null);
    }

    private static Image shown(FxRobot robot) {
        return robot.lookup("#handout").queryAs(ImageView.class).getImage();
    }

    /** What is chosen is shown in a moment: another picture than the one before. */
    private void changes(FxRobot robot, Runnable choice) throws Exception {
        Image before = shown(robot);
        robot.interact(choice);
        until(() -> shown(robot) != before);
    }

    @SuppressWarnings("unchecked")
    private static <T> void choose(FxRobot robot, String box, T value) {
        robot.lookup(box).queryAs(ComboBox.class).setValue(value);
    }

    @Test
    void withoutALessonItSaysWhatIsMissing(FxRobot robot) {
        robot.interact(screen::entered);
        assertThat(robot.lookup("#hand-over-nothing").query().isVisible()).isTrue();
        assertThat(robot.lookup("#keep-all").query().isDisabled()).isTrue();
    }

    @Test
    void whatContradictsItselfIsNeitherShownNorWritten(FxRobot robot) throws Exception {
        openSample(robot);
        Lesson before = sample("before");
        robot.interact(() -> {
            studio.open(before.withSheet(before.sheet().withHandedness(Handedness.LEFT)), Map.of());
            screen.entered();
        });
        until(() -> robot.lookup("#hand-over-nothing").query().isVisible());
        assertThat(robot.lookup("#hand-over-nothing")
                        .queryAs(javafx.scene.control.Label.class)
                        .getText())
                .contains("below the ground");
        assertThat(shown(robot)).isNull();
        assertThat(robot.lookup("#keep-all").query().isDisabled()).isTrue();
        robot.interact(() -> screen.writeAll(folder.resolve("contradictory")));
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(folder.resolve("contradictory")).doesNotExist();

        robot.interact(() -> {
            studio.open(before.withSheet(withoutMarks(before)), Map.of());
            screen.entered();
        });
        assertThat(robot.lookup("#hand-over-nothing").query().isVisible())
                .as("nothing marked, nothing handed over")
                .isTrue();
    }

    private static MarkSheet withoutMarks(Lesson lesson) {
        MarkSheet sheet = lesson.sheet();
        for (ViewMarks view : lesson.sheet().views()) {
            sheet = sheet.withoutView(view.view());
        }
        return sheet;
    }

    /** Where there is no more room nothing is typed, and nothing that stands there goes. */
    @Test
    void wordsThatDoNotFitAreNotTypedAtTheCostOfOthers(FxRobot robot) throws Exception {
        openSample(robot);
        TextArea words = robot.lookup("#hand-over-words").queryAs(TextArea.class);
        String most = "a".repeat(Handout.MOST_COACHS_WORDS - 4) + "ends";
        robot.interact(() -> words.setText(most));
        robot.interact(() -> words.insertText(3, "x"));
        assertThat(words.getText()).isEqualTo(most);
        robot.interact(() -> words.deleteText(0, 2));
        robot.interact(() -> words.insertText(1, "bcd"));
        assertThat(words.getText()).startsWith("abca").endsWith("ends").hasSize(Handout.MOST_COACHS_WORDS);
        assertThat(words.getCaretPosition()).isEqualTo(3);
    }

    @Test
    void whatIsShownIsWhatIsWritten(FxRobot robot) throws Exception {
        openSample(robot);
        assertThat(robot.lookup("#handout").queryAs(ImageView.class).getFitWidth())
                .as("as wide as a phone")
                .isEqualTo(360);
        picture(robot, "hand-over-phone");
        robot.clickOn("#hand-over-words").write("Good grip today.");
        changes(
                robot,
                () -> ((javafx.scene.control.RadioButton)
                                robot.lookup("#shown-paper").query())
                        .fire());
        picture(robot, "hand-over-paper");
        robot.interact(() -> screen.writeAll(folder.resolve("out")));
        until(() -> said().stream().anyMatch(s -> s.contains("page.html")));

        List<String> names;
        try (var files = Files.list(folder.resolve("out"))) {
            names = files.map(f -> f.getFileName().toString()).sorted().toList();
        }
        assertThat(names)
                .containsExactly("AS-2026-05-14-page.html", "AS-2026-05-14-page.pdf", "AS-2026-05-14-still.png");
        BufferedImage still = javax.imageio.ImageIO.read(
                folder.resolve("out/AS-2026-05-14-still.png").toFile());
        changes(
                robot,
                () -> ((javafx.scene.control.RadioButton)
                                robot.lookup("#shown-large").query())
                        .fire());
        BufferedImage onScreen = SwingFXUtils.fromFXImage(shown(robot), null);
        assertThat(onScreen.getWidth()).isEqualTo(still.getWidth());
        for (int y = 0; y < still.getHeight(); y += 7) {
            for (int x = 0; x < still.getWidth(); x += 7) {
                assertThat(onScreen.getRGB(x, y)).isEqualTo(still.getRGB(x, y));
            }
        }
        try (PDDocument page =
                Loader.loadPDF(folder.resolve("out/AS-2026-05-14-page.pdf").toFile())) {
            assertThat(new PDFTextStripper().getText(page)).contains("Good grip today.");
        }
    }

    @Test
    void everyChoiceIsSeenAtOnce(FxRobot robot) throws Exception {
        openSample(robot);
        changes(robot, () -> choose(robot, "#hand-over-lines", org.toeline.handout.StillOptions.Lines.ALL));
        changes(robot, () -> choose(robot, "#hand-over-view", Optional.of(View.DOWN_THE_LINE)));
        changes(robot, () -> choose(robot, "#hand-over-language", Locale.GERMAN));
        changes(robot, () -> choose(robot, "#hand-over-signed", org.toeline.handout.Signed.NOT));
        changes(
                robot,
                () -> ((javafx.scene.control.CheckBox)
                                robot.lookup("#hand-over-face").query())
                        .fire());
        picture(robot, "hand-over-choices");
    }

    @Test
    @SuppressWarnings("unchecked")
    void anEarlierLessonStandsBesideThisOneAtTheSameScale(FxRobot robot) throws Exception {
        KeptLesson after;
        try (Ledger ledger = Ledger.open(Settings.usual(folder).place(), "the test")) {
            ledger.takeIn(sample("before"), List.of(), Optional.empty());
            after = ledger.lesson(ledger.takeIn(sample("after"), List.of(), Optional.empty())
                            .lessonId())
                    .orElseThrow();
        }
        robot.interact(() -> studio.records().opened(after));
        open(robot, after.lesson());
        until(() -> robot.lookup("#hand-over-beside")
                        .queryAs(ComboBox.class)
                        .getItems()
                        .size()
                == 2);
        Image alone = shown(robot);
        changes(
                robot,
                () -> choose(
                        robot,
                        "#hand-over-beside",
                        robot.lookup("#hand-over-beside")
                                .queryAs(ComboBox.class)
                                .getItems()
                                .get(1)));
        assertThat(shown(robot).getHeight())
                .as("another picture than the one still")
                .isNotEqualTo(alone.getHeight());
        picture(robot, "hand-over-before-after");
        changes(robot, () -> choose(robot, "#hand-over-beside", Optional.empty()));
        assertThat(shown(robot).getHeight()).isEqualTo(alone.getHeight());
    }

    @Test
    void aKeptTextIsThereNextTime(FxRobot robot) throws Exception {
        openSample(robot);
        robot.clickOn("#hand-over-words").write("See you in two weeks.");
        robot.clickOn("#hand-over-keep-sentence");
        assertThat(Phrases.read(Files.readAllBytes(folder.resolve("phrases.json")), "")
                        .phrases()
                        .own())
                .containsExactly("See you in two weeks.");
    }

    @Test
    void theWordingIsEditedAndNotLostUnasked(FxRobot robot) throws Exception {
        openSample(robot);
        robot.interact(() -> robot.lookup("#hand-over-edit").queryButton().fire());
        Stage dialog = ShownDialog.wellMade(window);
        assertThat(dialog.getWidth()).as("room for a sentence").isGreaterThan(600);
        assertThat(dialog.getHeight()).isGreaterThan(400);
        String field = "#phrase-handout-first";
        type(robot, field, "Begin with {7}");
        robot.clickOn("#phrases-keep");
        assertThat(dialog.isShowing()).as("nothing is filled in for {7}").isTrue();
        assertThat(robot.lookup(field + "-fault").query().isVisible()).isTrue();
        type(robot, field, "Begin with this");
        robot.type(KeyCode.ESCAPE);
        robot.type(KeyCode.ESCAPE);
        assertThat(dialog.isShowing()).as("what was typed is still there").isTrue();
        changes(robot, () -> robot.lookup("#phrases-keep").queryButton().fire());
        assertThat(dialog.isShowing()).isFalse();
        assertThat(Phrases.read(Files.readAllBytes(folder.resolve("phrases.json")), "")
                        .phrases()
                        .byLanguage()
                        .get("en"))
                .containsEntry("handout.first", "Begin with this");
    }

    private static void type(FxRobot robot, String field, String text) {
        robot.interact(() -> robot.lookup(field).queryAs(TextField.class).setText(text));
    }

    @Test
    @SuppressWarnings("unchecked")
    void noChoiceIsCutShort(FxRobot robot) throws Exception {
        openSample(robot);
        for (Node node : window.getScene().getRoot().lookupAll(".combo-box")) {
            ComboBox<Object> box = (ComboBox<Object>) node;
            for (Object item : List.copyOf(box.getItems())) {
                robot.interact(() -> box.setValue(item));
                WaitForAsyncUtils.waitForFxEvents();
                Node chosen = box.getChildrenUnmodifiable().stream()
                        .filter(ListCell.class::isInstance)
                        .findFirst()
                        .orElseThrow();
                assertThat(((Text) chosen.lookup(".text")).getText())
                        .as(box.getId())
                        .isEqualTo(box.getConverter().toString(item));
            }
        }
    }
}

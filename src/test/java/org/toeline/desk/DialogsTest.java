package org.toeline.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.MenuButton;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import org.toeline.assist.learn.SomeCorrections;
import org.toeline.desk.dialog.ShownDialog;
import org.toeline.desk.records.Settings;
import org.toeline.desk.records.SettingsFile;
import org.toeline.desk.sheet.OtherBay;
import org.toeline.ledger.store.rows.KeptLesson;
import org.toeline.ledger.store.rows.Saved;
import org.toeline.mark.Landmark;

/** The dialogs of the desk's own window: settings, keys, what is known, the other bay's version, why this first. */
class DialogsTest extends DrivenDesk {

    private Stage stage;

    @Start
    void start(Stage window) {
        stage = window;
        open(window);
    }

    @AfterEach
    void close(FxRobot robot) {
        robot.interact(() -> ShownDialog.over(stage).forEach(Stage::hide));
    }

    private Stage opened() {
        WaitForAsyncUtils.waitForFxEvents();
        return ShownDialog.wellMade(stage);
    }

    private void menu(FxRobot robot, String item) {
        robot.interact(() -> ((MenuButton) stage.getScene().lookup("#menu"))
                .getItems().stream()
                        .filter(i -> item.equals(i.getId()))
                        .findFirst()
                        .orElseThrow()
                        .fire());
    }

    private void sample(FxRobot robot) throws Exception {
        robot.interact(() -> sheet.desk().sample());
        until(() -> isJudged());
    }

    private org.toeline.desk.records.Records records() {
        return screens.records();
    }

    private String status() {
        WaitForAsyncUtils.waitForFxEvents();
        return ((javafx.scene.control.Label) stage.getScene().lookup("#status")).getText();
    }

    private static void type(FxRobot robot, String field, String text) {
        robot.interact(() -> robot.lookup(field).queryAs(TextField.class).setText(text));
    }

    @Test
    void settingsSayWhatIsWrongBesideTheField(FxRobot robot) {
        menu(robot, "menu-settings");
        Stage dialog = opened();
        type(robot, "#settings-bay", " ");
        type(robot, "#settings-server", "mysql://elsewhere");
        robot.clickOn("#settings-keep");
        assertThat(dialog.isShowing()).isTrue();
        assertThat(robot.lookup("#settings-bay-fault").query().isVisible()).isTrue();
        assertThat(robot.lookup("#settings-server-fault").query().isVisible()).isTrue();
        assertThat(robot.lookup("#settings-folder-fault").query().isVisible()).isFalse();
        assertThat(robot.lookup("#settings-bay").query().isFocused())
                .as("the first that is wrong")
                .isTrue();
        type(robot, "#settings-bay", "Bay 4");
        type(robot, "#settings-server", "");
        robot.clickOn("#settings-keep");
        assertThat(dialog.isShowing()).isFalse();
        assertThat(new SettingsFile(folder.resolve("settings.json"), Settings.usual(folder))
                        .read()
                        .value()
                        .bay())
                .isEqualTo("Bay 4");
    }

    @Test
    void settingsThatWereChangedAreNotLostUnasked(FxRobot robot) {
        menu(robot, "menu-settings");
        Stage dialog = opened();
        type(robot, "#settings-password", "secret");
        robot.type(KeyCode.ESCAPE);
        assertThat(dialog.isShowing()).isTrue();
        robot.clickOn("#dialog-lose");
        assertThat(dialog.isShowing()).isFalse();
    }

    @Test
    void theKeySheetResetsNothingUnasked(FxRobot robot) {
        menu(robot, "menu-keys");
        opened();
        assertThat(robot.lookup("#dialog-leave").query().isFocused()).isTrue();
        robot.clickOn("#keys-restore");
        assertThat(robot.lookup("#dialog-keep-on").queryButton().isDefaultButton())
                .isTrue();
        robot.type(KeyCode.ESCAPE);
        assertThat(ShownDialog.over(stage)).as("the sheet is still there").hasSize(1);
        robot.clickOn("#dialog-leave");
        assertThat(ShownDialog.over(stage)).isEmpty();
    }

    @Test
    void correctionsAreShownAndForgottenOnlyWhenAskedTwice(FxRobot robot) throws Exception {
        robot.interact(() -> {
            try {
                learning()
                        .own()
                        .add(b ->
                                SomeCorrections.of(List.of(Landmark.LEAD_SHOULDER, Landmark.TRAIL_TOE, Landmark.NECK)));
            } catch (java.io.IOException e) {
                throw new java.io.UncheckedIOException(e);
            }
        });
        menu(robot, "menu-corrections");
        opened();
        assertThat(robot.lookup("#corrections-face-on-lead-shoulder")
                        .queryLabeled()
                        .getText())
                .as("five were moved")
                .isEqualTo("not yet");
        assertThat(robot.lookup("#corrections-face-on-trail-toe").queryLabeled().getText())
                .matches("3\\.\\d\u00a0cm away from the target, 0\\.\\d\u00a0cm down");
        assertThat(robot.lookup("#corrections-down-the-line-neck")
                        .queryLabeled()
                        .getText())
                .contains("the ball");
        robot.clickOn("#corrections-forget");
        robot.type(KeyCode.ESCAPE);
        assertThat(folder.resolve("corrections.json")).exists();
        robot.clickOn("#corrections-forget");
        robot.clickOn("#dialog-lose");
        assertThat(robot.lookup("#corrections-none").query().isVisible()).isTrue();
        assertThat(robot.lookup("#corrections").tryQuery()).isEmpty();
        assertThat(folder.resolve("corrections.json")).doesNotExist();
        assertThat(status()).contains("forgotten");
        robot.clickOn("#dialog-leave");
    }

    @Test
    void whereNothingWasLearntNothingCanBeForgotten(FxRobot robot) {
        menu(robot, "menu-corrections");
        opened();
        assertThat(robot.lookup("#corrections-none").query().isVisible()).isTrue();
        assertThat(robot.lookup("#corrections-forget").tryQuery()).isEmpty();
        robot.clickOn("#dialog-leave");
    }

    private org.toeline.desk.sheet.Learning learning() {
        return sheet.assistant().learning();
    }

    @Test
    void whatIsKnownFitsAndSaysWhichFieldIsWrong(FxRobot robot) throws Exception {
        sample(robot);
        robot.interact(() -> ((Button) stage.getScene().lookup("#known")).fire());
        Stage dialog = opened();
        type(robot, "#floor-rod-far-t", "far");
        type(robot, "#height", "18");
        robot.clickOn("#known-keep");
        assertThat(dialog.isShowing()).isTrue();
        assertThat(robot.lookup("#floor-rod-far-t-fault").query().isVisible()).isTrue();
        assertThat(robot.lookup("#height-fault").query().isVisible()).isTrue();
        assertThat(robot.lookup("#floor-rod-near-t-fault").query().isVisible()).isFalse();
        type(robot, "#height", "");
        TextField t = robot.lookup("#floor-rod-near-t").queryAs(TextField.class);
        TextField h = robot.lookup("#floor-rod-near-h").queryAs(TextField.class);
        type(robot, "#floor-rod-far-t", t.getText());
        type(robot, "#floor-rod-far-h", h.getText());
        robot.clickOn("#known-keep");
        assertThat(robot.lookup("#floor-rod-far-h-fault").queryLabeled().getText())
                .contains("rod, back end");
        robot.type(KeyCode.ESCAPE);
        assertThat(dialog.isShowing())
                .as("what was measured is not lost unasked")
                .isTrue();
    }

    @Test
    void anEndGoesAlongWithTheOtherUntilItIsTypedItself(FxRobot robot) throws Exception {
        sample(robot);
        robot.interact(() -> ((Button) stage.getScene().lookup("#known")).fire());
        opened();
        TextField ball = robot.lookup("#floor-cross-ball-t").queryAs(TextField.class);
        TextField feet = robot.lookup("#floor-cross-feet-t").queryAs(TextField.class);
        assertThat(feet.getText()).isEqualTo(ball.getText());
        typeByHand(robot, "#floor-cross-ball-t", "-26");
        assertThat(feet.getText()).isEqualTo("-26");
        typeByHand(robot, "#floor-cross-feet-t", "-25");
        assertThat(ball.getText()).as("typed before").isEqualTo("-26");
        typeByHand(robot, "#floor-cross-ball-t", "-20");
        assertThat(feet.getText()).as("typed before").isEqualTo("-25");
    }

    /** As a person does: the field has the focus. */
    private static void typeByHand(FxRobot robot, String field, String text) {
        robot.interact(() -> robot.lookup(field).queryAs(TextField.class).requestFocus());
        type(robot, field, text);
    }

    @Test
    void neitherVersionIsTakenByEnterOrEsc(FxRobot robot) {
        StudioForTests studio = new StudioForTests(folder.resolve("other-bay"), sentence -> {});
        KeptLesson theirs = new KeptLesson(
                4,
                "0f8fad5b-d9cb-469f-a165-70867728950e",
                1,
                7,
                model().lesson(),
                List.of(),
                "2026-05-14T10:42:00Z",
                "bay 2");
        OtherBay otherBay = new OtherBay(studio.studio(), screens.root());
        Runnable conflict = () -> otherBay.conflict(new Saved.Conflict(theirs, 3));
        for (KeyCode key : List.of(KeyCode.ENTER, KeyCode.ESCAPE)) {
            robot.interact(conflict);
            Stage dialog = opened();
            assertThat(robot.lookup("#dialog-leave").queryButton().isDefaultButton())
                    .isTrue();
            assertThat(dialog.getScene().getRoot().lookupAll(".button"))
                    .as("decide later, mine, theirs")
                    .hasSize(3);
            assertThat(robot.lookup("#other-bay-own").query().getStyleClass())
                    .as("saved over theirs")
                    .contains("destroys");
            robot.type(key);
            assertThat(dialog.isShowing()).isFalse();
            assertThat(studio.asked()).as("decided later").isEmpty();
        }
        robot.interact(conflict);
        opened();
        robot.clickOn("#other-bay-theirs");
        assertThat(studio.asked()).containsExactly("lesson 4");
        studio.close();
    }

    @Test
    void whyThisFirstIsShownWhole(FxRobot robot) throws Exception {
        sample(robot);
        robot.interact(() -> ((Button) stage.getScene().lookup("#why-first")).fire());
        opened();
        robot.type(KeyCode.ESCAPE);
        assertThat(ShownDialog.over(stage)).isEmpty();
    }

    @Test
    void theSameSetupOnceMoreIsALessonOfTheSamePlayer(FxRobot robot) throws Exception {
        menu(robot, "menu-same-setup");
        assertThat(status()).contains("Mark this lesson first");
        sample(robot);
        until(() -> records().lessonId().isPresent());
        int first = records().lessonId().getAsInt();
        int player = records().playerId().orElseThrow();
        var floor = sheet.model().sheet().floor();
        menu(robot, "menu-same-setup");
        until(() -> records().lessonId().isEmpty());
        assertThat(records().playerId()).hasValue(player);
        assertThat(status()).contains("change nothing");
        String setup = sheet.model().lesson().setup();
        assertThat(setup).isNotEmpty();
        assertThat(sheet.model().sheet().views()).isEmpty();
        assertThat(sheet.model().sheet().floor())
                .as("the rods lie where they lay")
                .isEqualTo(floor);
        robot.interact(() -> sheet.desk().sameSetup(first));
        until(() -> sheet.model().lesson().setup().equals(setup));
        List<String> setups = new java.util.concurrent.CopyOnWriteArrayList<>();
        records().ask(l -> l.lesson(first).orElseThrow().lesson().setup(), setups::add);
        until(() -> !setups.isEmpty());
        assertThat(setups).as("the first one says so too").containsExactly(setup);
    }

    @Test
    void aBackupTakesThePlaceOnlyWhenThatIsSure(FxRobot robot) throws Exception {
        menu(robot, "menu-go-back");
        until(() -> !ShownDialog.over(stage).isEmpty());
        opened();
        robot.clickOn("#dialog-leave");
        sample(robot);
        until(() -> records().lessonId().isPresent());
        menu(robot, "menu-back-up");
        until(() -> status().contains("backed up"));
        for (boolean sure : new boolean[] {false, true}) {
            menu(robot, "menu-go-back");
            until(() -> robot.lookup("#back-0").tryQuery().isPresent());
            opened();
            robot.clickOn("#back-go-on");
            until(() -> robot.lookup("#sure-back").tryQuery().isPresent());
            opened();
            if (sure) {
                robot.clickOn("#sure-back");
            } else {
                robot.type(KeyCode.ENTER);
                assertThat(ShownDialog.over(stage)).isEmpty();
            }
        }
        until(() -> status().contains("in place of the ledger now; what was there is"));
        assertThat(records().lessonId()).isEmpty();
        until(records()::keeps);
    }
}

package org.toeline.desk.ranges;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.toeline.desk.ScreenUnderTest;
import org.toeline.desk.dialog.ShownDialog;
import org.toeline.desk.records.OwnRanges;
import org.toeline.mark.Club;
import org.toeline.reading.ReadingKind;

/** The screen, by mouse and key, over a real document. */
class RangesScreenTest extends ScreenUnderTest {

    private RangesScreen screen;
    private Stage window;

    @Start
    void start(Stage stage) {
        window = stage;
        screen = show(stage, RangesScreen::new);
        screen.entered();
    }

    private static void type(FxRobot robot, String field, String text) {
        robot.doubleClickOn(field).write(text).type(KeyCode.ENTER);
    }

    private static String word(FxRobot robot, String reading) {
        return robot.lookup("#range-" + reading + "-word").queryAs(Label.class).getText();
    }

    @Test
    void aTypedRangeCountsIsKeptAndCanBeTakenBack(FxRobot robot) throws Exception {
        assertThat(word(robot, "tee-height")).startsWith("Common practice:");
        type(robot, "#range-tee-height-high", "60");
        assertThat(studio.ranges().own(ReadingKind.TEE_HEIGHT, Club.DRIVER))
                .hasValueSatisfying(r -> assertThat(r.shownHigh()).isEqualTo(60));
        assertThat(word(robot, "tee-height")).isEqualTo("Your own. The program comes with 30 to 55.");
        assertThat(new OwnRanges(folder.resolve("ranges.json")).all())
                .as("another start finds it")
                .isEqualTo(studio.ranges().all());
        picture(robot, "ranges");
        robot.clickOn("#range-tee-height-restore");
        assertThat(studio.ranges().own().ranges()).isEmpty();
        assertThat(robot.lookup("#range-tee-height-high")
                        .queryAs(TextField.class)
                        .getText())
                .isEqualTo("55");
        assertThat(robot.lookup("#range-tee-height-restore")
                        .queryAs(Button.class)
                        .isDisabled())
                .isTrue();
    }

    @Test
    void ownRangesGoOnlyWhenThatIsSure(FxRobot robot) {
        type(robot, "#range-tee-height-high", "60");
        robot.clickOn("#ranges-restore-all");
        ShownDialog.wellMade(window);
        robot.type(KeyCode.ENTER);
        assertThat(ShownDialog.over(window)).isEmpty();
        assertThat(studio.ranges().own().ranges()).hasSize(1);
        robot.clickOn("#ranges-restore-all").clickOn("#sure-restore-all");
        assertThat(studio.ranges().own().ranges()).isEmpty();
    }

    @Test
    void whatIsNoRangeIsSaidAndChangesNothing(FxRobot robot) {
        type(robot, "#range-tee-height-high", "ten");
        assertThat(robot.lookup("Three numbers are needed: from, aim, to. Nothing was changed.")
                        .tryQuery())
                .isPresent();
        type(robot, "#range-tee-height-high", "10");
        assertThat(robot.lookup("They must rise: from, aim, to. Nothing was changed.")
                        .tryQuery())
                .isPresent();
        assertThat(studio.ranges().own().ranges()).isEmpty();
        type(robot, "#range-tee-height-high", "57,5");
        assertThat(studio.ranges().own(ReadingKind.TEE_HEIGHT, Club.DRIVER))
                .hasValueSatisfying(r -> assertThat(r.shownHigh()).isEqualTo(57.5));
    }

    /** Row after row by Tab alone: what is kept of one takes neither the focus nor what is typed, and is no range yet, in another. */
    @Test
    void rowsAreTypedOneAfterTheOther(FxRobot robot) {
        type(robot, "#range-ball-to-lead-shoulder-high", "ten");
        robot.doubleClickOn("#range-tee-height-high").write("60").type(KeyCode.TAB);
        assertThat(studio.ranges().own(ReadingKind.TEE_HEIGHT, Club.DRIVER))
                .hasValueSatisfying(r -> assertThat(r.shownHigh()).isEqualTo(60));
        assertThat(window.getScene().getFocusOwner().getId()).isEqualTo("range-ball-to-lead-shoulder-low");
        robot.interact(() -> robot.lookup("#range-tee-height-restore").query().requestFocus());
        robot.type(KeyCode.SPACE);
        assertThat(studio.ranges().own(ReadingKind.TEE_HEIGHT, Club.DRIVER))
                .as("the button is pressed")
                .isEmpty();
        assertThat(robot.lookup("#range-ball-to-lead-shoulder-high")
                        .queryAs(TextField.class)
                        .getText())
                .isEqualTo("ten");
        type(robot, "#range-tee-height-high", "60");
        robot.write("1").type(KeyCode.ENTER);
        assertThat(studio.ranges().own(ReadingKind.TEE_HEIGHT, Club.DRIVER))
                .as("the field goes on after Enter")
                .hasValueSatisfying(r -> assertThat(r.shownHigh()).isEqualTo(601));
    }

    @Test
    @SuppressWarnings("unchecked")
    void everyClubHasItsRanges(FxRobot robot) {
        for (Club club : Club.values()) {
            robot.interact(
                    () -> robot.lookup("#ranges-club").queryAs(ComboBox.class).setValue(club));
            for (ReadingKind kind : ReadingKind.values()) {
                boolean judged = !robot.lookup("#range-" + kind.id() + "-low")
                        .queryAs(TextField.class)
                        .getText()
                        .isEmpty();
                assertThat(judged)
                        .as("%s, %s", kind, club)
                        .isEqualTo(studio.ranges().all().range(kind, club).isPresent());
            }
        }
    }
}

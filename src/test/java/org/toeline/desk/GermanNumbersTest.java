package org.toeline.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.toeline.mark.View;

/** Times of a clip as they are written in German, with a comma; both ways of writing them are read. */
class GermanNumbersTest extends DrivenDesk {

    private final Locale before = Locale.getDefault(Locale.Category.DISPLAY);

    @Start
    void start(Stage stage) {
        Locale.setDefault(Locale.Category.DISPLAY, Locale.GERMANY);
        open(stage);
    }

    @AfterEach
    void back() {
        Locale.setDefault(Locale.Category.DISPLAY, before);
    }

    @Test
    void timesHaveAComma(FxRobot robot) throws Exception {
        robot.interact(() -> sheet.desk().sample());
        until(() -> sheet.clips().shown(View.FACE_ON).isPresent());
        TextField time = robot.lookup("#time").queryAs(TextField.class);
        assertThat(time.getText()).isEqualTo("2,500");
        for (String typed : new String[] {"2,4", "2.4"}) {
            robot.doubleClickOn(time).eraseText(8).write(typed).push(KeyCode.ENTER);
            until(() -> time.getText().equals("2,400"));
            assertThat(robot.lookup("#away-text").queryAs(Label.class).getText())
                    .contains("0,10", "2,500")
                    .doesNotContain("2.500");
            robot.push(KeyCode.PERIOD);
            until(() -> !time.getText().equals("2,400"));
        }
    }
}

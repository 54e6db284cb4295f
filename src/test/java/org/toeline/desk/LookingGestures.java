package org.toeline.desk;

import java.util.Random;
import javafx.scene.input.KeyCode;
import org.testfx.api.FxRobot;
import org.testfx.util.WaitForAsyncUtils;
import org.toeline.desk.picture.PicturePane;
import org.toeline.desk.sheet.Sheet;

/** What a coach does who looks and does not mark: stepping, jumping and views changed, in an order drawn by lot. */
final class LookingGestures {

    private static final KeyCode[] KEYS = {
        KeyCode.COMMA, KeyCode.PERIOD, KeyCode.DIGIT1, KeyCode.DIGIT2, KeyCode.DIGIT3, KeyCode.F
    };
    private static final String[] BUTTONS = {"#step-back10", "#step-back", "#step-on", "#step-on10"};

    private LookingGestures() {}

    static void play(FxRobot robot, Sheet sheet, PicturePane picture, Random lot, int gestures) {
        robot.interact(picture::requestFocus);
        for (int i = 0; i < gestures; i++) {
            if (lot.nextInt(4) == 0) {
                robot.clickOn(BUTTONS[lot.nextInt(BUTTONS.length)]);
                robot.interact(picture::requestFocus);
            } else if (lot.nextInt(12) == 0) {
                double to = 5 * lot.nextDouble();
                robot.interact(() -> sheet.clips().seek(sheet.model().large(), to));
            } else {
                robot.push(KEYS[lot.nextInt(KEYS.length)]);
            }
            WaitForAsyncUtils.waitForFxEvents();
        }
    }
}

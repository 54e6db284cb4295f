package org.toeline.desk;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import javafx.geometry.VerticalDirection;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;
import org.toeline.advice.Verdict;
import org.toeline.desk.sheet.Sheet;
import org.toeline.ledger.Lesson;
import org.toeline.mark.View;
import org.toeline.reading.ReadingKind;
import org.toeline.video.Clip;
import org.toeline.video.Frame;

/**
 * What a coach does who looks and does not mark, in an order drawn by lot: steps, jumps, plays at any pace and either way, drags
 * along the strip, turns the wheel, changes views and watches both in step. {@code LookingGestures SCRIPTS GESTURES FROM} plays so
 * many scripts of so many gestures on the sample lesson, from the numbered one on where a number is given (the first is 0), and says
 * of each whether the lesson is what it was.
 */
final class LookingGestures {

    private static final KeyCode[] STEPS = {KeyCode.COMMA, KeyCode.PERIOD};
    private static final KeyCode[] VIEWS = {KeyCode.DIGIT1, KeyCode.DIGIT2, KeyCode.DIGIT3, KeyCode.F};
    private static final KeyCode[] PLAYS = {
        KeyCode.SPACE, KeyCode.SPACE, KeyCode.R, KeyCode.D, KeyCode.U, KeyCode.L, KeyCode.V, KeyCode.P
    };
    private static final String[] BUTTONS = {"#step-back10", "#step-back", "#step-on", "#step-on10", "#find-address"};

    private final FxRobot robot;
    private final Sheet sheet;
    private final Node picture;

    LookingGestures(FxRobot robot, Sheet sheet, Node picture) {
        this.robot = robot;
        this.sheet = sheet;
        this.picture = picture;
    }

    /** What looking must not change; the marked frames are among the lesson's clips. */
    record Said(Lesson lesson, List<Found> findings, boolean undoable) {}

    record Found(ReadingKind kind, double low, double value, double high, Optional<Verdict> verdict) {}

    static Said said(Sheet sheet) {
        return new Said(
                sheet.model().lesson(),
                sheet.assessment().orElseThrow().advice().findings().stream()
                        .map(f -> new Found(
                                f.kind(),
                                f.reading().shownLow(),
                                f.reading().shownValue(),
                                f.reading().shownHigh(),
                                f.verdict()))
                        .toList(),
                sheet.model().canUndo());
    }

    void play(Random lot, int gestures) {
        robot.interact(picture::requestFocus);
        for (int i = 0; i < gestures; i++) {
            switch (lot.nextInt(8)) {
                case 0 -> press(BUTTONS[lot.nextInt(BUTTONS.length)]);
                case 1 -> strip(lot);
                case 2 ->
                    robot.moveTo(picture)
                            .scroll(
                                    1 + lot.nextInt(4),
                                    lot.nextBoolean() ? VerticalDirection.UP : VerticalDirection.DOWN);
                case 3, 4 -> robot.push(PLAYS[lot.nextInt(PLAYS.length)]);
                case 5 -> robot.push(VIEWS[lot.nextInt(VIEWS.length)]);
                default -> robot.push(STEPS[lot.nextInt(STEPS.length)]);
            }
            WaitForAsyncUtils.waitForFxEvents(1);
        }
        if (sheet.films().player().plays()) {
            robot.push(KeyCode.SPACE);
        }
        WaitForAsyncUtils.waitForFxEvents();
    }

    private void press(String button) {
        robot.clickOn(button);
        robot.interact(picture::requestFocus);
    }

    private void strip(Random lot) {
        Node strip = robot.lookup("#strip").query();
        double far = strip.getLayoutBounds().getWidth() * (lot.nextDouble() - 0.5) / 1.2;
        if (strip.isVisible() && sheet.clips().reel(sheet.model().large()).isPresent()) {
            robot.moveTo(strip).moveBy(far, 0).drag().moveBy(-far / 2, 0).drop();
            robot.interact(picture::requestFocus);
        }
    }

    /** The pictures that stills are made of, which are not those of their clips' marked frames. */
    List<View> otherPictures(Sheet of) throws Exception {
        List<View> others = new ArrayList<>();
        for (Map.Entry<View, Frame> frame : of.clips().frames().entrySet()) {
            double marked = of.model().markedAt(frame.getKey()).orElseThrow();
            try (Clip clip = Clip.open(of.clips().file(frame.getKey()).orElseThrow())) {
                if (!Arrays.equals(clip.frameAt(marked).argb(), frame.getValue().argb())) {
                    others.add(frame.getKey());
                }
            }
        }
        return others;
    }

    public static void main(String[] args) throws Exception {
        int scripts = Integer.parseInt(args[0]);
        int gestures = Integer.parseInt(args[1]);
        int from = args.length > 2 ? Integer.parseInt(args[2]) : 0;
        Path folder = Files.createTempDirectory("looking");
        FxToolkit.registerPrimaryStage();
        Sheet sheet =
                WaitForAsyncUtils.asyncFx(() -> new OpenDesk(folder).sheet()).get();
        FxRobot robot = new FxRobot();
        robot.interact(() -> sheet.desk().sample());
        WaitForAsyncUtils.waitFor(
                60,
                TimeUnit.SECONDS,
                () -> sheet.assessment().isPresent()
                        && Optional.of(sheet.clips().frames())
                                .filter(f -> f.size() == 3)
                                .isPresent());
        Said before = said(sheet);
        LookingGestures looking =
                new LookingGestures(robot, sheet, robot.lookup("#picture").query());
        int changed = 0;
        for (int script = from; script < from + scripts; script++) {
            long begun = System.nanoTime();
            looking.play(new Random(script), gestures);
            boolean same = said(sheet).equals(before);
            List<View> others = looking.otherPictures(sheet);
            changed += same && others.isEmpty() ? 0 : 1;
            System.out.printf(
                    Locale.ROOT,
                    "script %d: %s, other pictures %s, %.0f s%n",
                    script,
                    same ? "nothing changed" : "CHANGED",
                    others,
                    (System.nanoTime() - begun) / 1e9);
        }
        System.out.printf("%d scripts of %d gestures: %d changed anything%n", scripts, gestures, changed);
        System.exit(changed);
    }
}

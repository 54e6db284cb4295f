package org.toeline.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.MenuButton;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import org.toeline.desk.dialog.ShownDialog;
import org.toeline.desk.look.Look;
import org.toeline.desk.records.Settings;
import org.toeline.desk.sheet.Sheet;
import org.toeline.language.Language;

/**
 * Every dialog that a menu or a button opens, in both languages, at the usual size of text and at the largest, on light and dark
 * paper: nothing cut, nothing over one another, all text to be read.
 */
@ExtendWith(ApplicationExtension.class)
class DialogLookTest {

    private static final String MENU = "menu-";

    @TempDir
    Path folder;

    private final Locale before = Language.now();
    private Stage stage;
    private Screens screens;
    private Scene scene;

    @Start
    void start(Stage window) {
        stage = window;
        stage.setX(0);
        stage.setY(0);
    }

    @AfterEach
    void asBefore(FxRobot robot) {
        robot.interact(() -> ShownDialog.over(stage).forEach(Stage::hide));
        Look.choose(Look.USUAL);
        Locale.setDefault(Locale.Category.DISPLAY, before);
    }

    /** By the screen they are opened on. */
    private static Map<String, List<String>> openers() {
        Map<String, List<String>> openers = new LinkedHashMap<>();
        openers.put(
                Sheet.ID,
                List.of(MENU + "settings", MENU + "keys", MENU + "about", MENU + "go-back", "known", "why-first"));
        openers.put("players", List.of("edit-player", "delete-lesson", "delete-player"));
        openers.put("hand-over", List.of("hand-over-edit"));
        openers.put("ranges", List.of("ranges-restore-all"));
        return openers;
    }

    @Test
    void everyDialogIsWholeAndReadable(FxRobot robot) throws Exception {
        List<String> faults = new ArrayList<>();
        for (Locale language : Language.all()) {
            for (int percent : new int[] {100, 175}) {
                Language.choose(language);
                open(robot, language.getLanguage() + "-" + percent, percent);
                for (Look.Paper paper : Look.Paper.values()) {
                    Look look = new Look(percent, paper);
                    robot.interact(() -> {
                        Look.choose(look);
                        look.dress(scene);
                    });
                    look(robot, language.getLanguage() + "-" + percent + "-" + paper, faults);
                }
                robot.interact(screens::close);
            }
        }
        assertThat(String.join("\n", faults)).isEmpty();
    }

    /** A desk with a lesson of the ledger, whose clips are not looked for. */
    private void open(FxRobot robot, String name, int percent) throws Exception {
        Path document = folder.resolve(name).resolve("one.lesson.json");
        Files.createDirectories(document.getParent());
        Files.copy(Path.of("sample-media", "before", "before.lesson.json"), document);
        Settings usual =
                Settings.usual(folder.resolve(name).resolve("ledger")).withLook(new Look(percent, Look.Paper.LIGHT));
        robot.interact(() -> {
            screens = new Screens(folder.resolve(name), usual);
            scene = new Scene(screens.root(), 1366, 748);
            stage.setScene(scene);
            stage.setWidth(1366);
            stage.setHeight(748);
            stage.show();
            screens.open(document);
        });
        until(() ->
                screens.sheet().findings().filter(a -> a.advice().isJudged()).isPresent()
                        && screens.records().lessonId().isPresent());
    }

    private void look(FxRobot robot, String name, List<String> faults) throws Exception {
        for (Map.Entry<String, List<String>> screen : openers().entrySet()) {
            robot.interact(() -> screens.go(screen.getKey()));
            for (String opener : screen.getValue()) {
                until(() -> press(robot, opener));
                until(() -> ShownDialog.over(stage).size() == 1);
                WaitForAsyncUtils.waitForFxEvents(3);
                Stage dialog = ShownDialog.over(stage).get(0);
                robot.interact(
                        () -> faults.addAll(new Looked(dialog.getScene().getRoot(), opener + "-" + name).faults()));
                ScreenPicture.keep(robot, dialog.getScene(), "dialog-" + opener + "-" + name);
                robot.interact(dialog::hide);
                until(() -> ShownDialog.over(stage).isEmpty());
            }
        }
    }

    /** Whether there was something to be pressed. */
    private boolean press(FxRobot robot, String opener) {
        boolean[] pressed = {false};
        robot.interact(() -> {
            if (opener.startsWith(MENU)) {
                ((MenuButton) scene.lookup("#menu"))
                        .getItems().stream()
                                .filter(i -> opener.equals(i.getId()))
                                .findFirst()
                                .orElseThrow()
                                .fire();
                pressed[0] = true;
            } else if (scene.lookup("#" + opener) instanceof Button button && !button.isDisabled()) {
                button.fire();
                pressed[0] = true;
            }
        });
        return pressed[0];
    }

    private static void until(java.util.concurrent.Callable<Boolean> so) throws Exception {
        WaitForAsyncUtils.waitFor(180, TimeUnit.SECONDS, so);
    }
}

package org.toeline.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import org.toeline.assist.learn.SomeCorrections;
import org.toeline.desk.dialog.ShownDialog;
import org.toeline.desk.look.Look;
import org.toeline.desk.records.Settings;
import org.toeline.document.WholeFile;
import org.toeline.language.Language;

/**
 * Every dialog that a lesson leads to, over a small window, with the smallest and the largest text, on both papers, in both
 * languages: nothing is cut, nothing lies over another, and all text can be read.
 */
@ExtendWith(ApplicationExtension.class)
class DialogLookTest {

    private static final double WIDTH = 1100;
    private static final double HEIGHT = 700;

    /** A screen and what opens a dialog there: an item of the menu or a button. */
    private record Way(String screen, String id) {}

    private static final List<Way> WAYS = List.of(
            new Way("lesson", "menu-settings"),
            new Way("lesson", "menu-keys"),
            new Way("lesson", "menu-corrections"),
            new Way("lesson", "menu-about"),
            new Way("lesson", "menu-go-back"),
            new Way("lesson", "known"),
            new Way("lesson", "why-first"),
            new Way("players", "edit-player"),
            new Way("players", "delete-lesson"),
            new Way("players", "delete-player"),
            new Way("hand-over", "hand-over-edit"),
            new Way("ranges", "ranges-restore-all"));

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
        stage.setWidth(WIDTH);
        stage.setHeight(HEIGHT);
    }

    @AfterEach
    void asBefore(FxRobot robot) {
        robot.interact(() -> ShownDialog.over(stage).forEach(Stage::hide));
        Look.choose(Look.USUAL);
        Locale.setDefault(Locale.Category.DISPLAY, before);
    }

    @Test
    void everyDialogIsWholeAndReadable(FxRobot robot) throws Exception {
        List<String> faults = new ArrayList<>();
        for (Locale language : Language.all()) {
            for (int percent : new int[] {100, 175}) {
                Language.choose(language);
                desk(robot, language.getLanguage() + "-" + percent, percent, faults);
            }
        }
        assertThat(String.join("\n", faults)).isEmpty();
    }

    private void desk(FxRobot robot, String name, int percent, List<String> faults) throws Exception {
        Settings usual =
                Settings.usual(folder.resolve(name).resolve("ledger")).withLook(new Look(percent, Look.Paper.LIGHT));
        WholeFile.write(
                folder.resolve(name).resolve("corrections.json"),
                SomeCorrections.all().json());
        robot.interact(() -> {
            Look.choose(new Look(percent, Look.Paper.LIGHT));
            screens = new Screens(folder.resolve(name), usual);
            scene = new Scene(screens.root(), WIDTH, HEIGHT);
            stage.setScene(scene);
            stage.show();
            screens.sheet().desk().sample();
        });
        WaitForAsyncUtils.waitFor(
                180,
                TimeUnit.SECONDS,
                () -> screens.sheet()
                                .findings()
                                .filter(a -> a.advice().isJudged())
                                .isPresent()
                        && screens.records().lessonId().isPresent());
        for (Way way : WAYS) {
            for (Look.Paper paper : Look.Paper.values()) {
                Look look = new Look(percent, paper);
                robot.interact(() -> {
                    Look.choose(look);
                    look.dress(scene);
                    screens.go(way.screen());
                });
                open(robot, way);
                Stage dialog = ShownDialog.over(stage).get(0);
                String where = way.id() + "-" + name + "-" + paper.name().toLowerCase(Locale.ROOT);
                robot.interact(() -> faults.addAll(new Looked(dialog.getScene().getRoot(), where).faults()));
                ScreenPicture.keep(robot, dialog.getScene(), where);
                robot.interact(dialog::hide);
                WaitForAsyncUtils.waitForFxEvents();
            }
        }
        robot.interact(screens::close);
    }

    private void open(FxRobot robot, Way way) throws Exception {
        WaitForAsyncUtils.waitFor(
                60,
                TimeUnit.SECONDS,
                () -> way.id().startsWith("menu-")
                        || scene.lookup("#" + way.id()) instanceof Button b && b.isVisible() && !b.isDisabled());
        robot.interact(() -> {
            if (scene.lookup("#" + way.id()) instanceof Button button) {
                button.fire();
            } else {
                ((MenuButton) scene.lookup("#menu"))
                        .getItems().stream()
                                .filter(i -> way.id().equals(i.getId()))
                                .forEach(MenuItem::fire);
            }
        });
        WaitForAsyncUtils.waitFor(
                60, TimeUnit.SECONDS, () -> !ShownDialog.over(stage).isEmpty());
        // what is laid out by its width comes to rest in the second pulse
        WaitForAsyncUtils.waitForFxEvents(3);
    }
}

package org.toeline.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import javafx.scene.Scene;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import org.toeline.desk.look.Look;
import org.toeline.desk.records.Settings;
import org.toeline.desk.sheet.Sheet;
import org.toeline.language.Language;

/**
 * Every screen with the sample on it at three sizes of the window, two of the text, on both papers, in both languages: nothing is
 * cut, nothing lies over another, and all text can be read.
 */
@ExtendWith(ApplicationExtension.class)
class LookTest {

    private static final int[][] SIZES = {{1920, 1080}, {1366, 768}, {1100, 700}};
    /** All is laid out as in a window of its size, and hardly any of it drawn: drawing is what takes time, and is not looked at. */
    private static final int SEEN = 16;

    private static final List<String> SCREENS = List.of("lesson", "players", "across", "shots", "hand-over", "ranges");

    @TempDir
    Path folder;

    private final Locale before = Language.now();
    private Stage stage;

    @Start
    void start(Stage window) {
        stage = window;
        stage.setX(0);
        stage.setY(0);
    }

    @AfterEach
    void asBefore() {
        Look.choose(Look.USUAL);
        Locale.setDefault(Locale.Category.DISPLAY, before);
    }

    @Test
    void everyScreenIsWholeAndReadable(FxRobot robot) throws Exception {
        List<String> faults = new ArrayList<>();
        for (Locale language : Language.all()) {
            for (int percent : new int[] {100, 175}) {
                Language.choose(language);
                Desktop desk = new Desktop(robot, language.getLanguage() + "-" + percent, percent);
                desk.look(faults);
                desk.close();
            }
        }
        assertThat(String.join("\n", faults)).isEmpty();
    }

    /** One desk in one language and size of text; a window that is made smaller and changes its paper. */
    private final class Desktop {

        private final FxRobot robot;
        private final String name;
        private final int percent;
        private Screens screens;
        private Scene scene;
        private Region shown;

        Desktop(FxRobot robot, String name, int percent) throws Exception {
            this.robot = robot;
            this.name = name;
            this.percent = percent;
            Settings usual = Settings.usual(folder.resolve(name).resolve("ledger"))
                    .withLook(new Look(percent, Look.Paper.LIGHT));
            robot.interact(() -> {
                screens = new Screens(folder.resolve(name), usual);
                shown = (Region) screens.root();
                shown.setManaged(false);
                scene = new Scene(new Pane(shown), SEEN, SEEN);
                stage.setScene(scene);
                stage.show();
                screens.sheet().welcome();
            });
        }

        void look(List<String> faults) throws Exception {
            all(List.of(Sheet.ID), "-welcome", faults);
            robot.interact(() -> screens.sheet().desk().sample());
            WaitForAsyncUtils.waitFor(180, TimeUnit.SECONDS, this::isJudged);
            all(SCREENS, "", faults);
        }

        private boolean isJudged() {
            return screens.sheet().findings().filter(a -> a.advice().isJudged()).isPresent()
                    && screens.sheet().clips().frames().size()
                            == screens.sheet().model().sheet().views().size();
        }

        private void all(List<String> which, String state, List<String> faults) throws Exception {
            for (Look.Paper paper : Look.Paper.values()) {
                Look look = new Look(percent, paper);
                robot.interact(() -> {
                    Look.choose(look);
                    look.dress(scene);
                });
                for (int[] size : SIZES) {
                    robot.interact(() -> shown.resize(size[0], size[1]));
                    for (String screen : which) {
                        robot.interact(() -> screens.go(screen));
                        String where = screen + state + "-" + name + "-" + size[0] + "-"
                                + paper.name().toLowerCase(Locale.ROOT);
                        // two pulses: what is laid out by its width comes to rest in the second
                        WaitForAsyncUtils.waitForFxEvents(3);
                        robot.interact(() -> faults.addAll(new Looked(shown, where).faults()));
                        ScreenPicture.keep(robot, shown, where);
                    }
                }
            }
        }

        void close() {
            robot.interact(screens::close);
        }
    }
}

package org.toeline.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ComboBox;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TableRow;
import javafx.scene.control.TableView;
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
import org.toeline.desk.shots.ShotsScreen;
import org.toeline.language.Language;

/** What is worked on stands in sight on the screen of the shots: the row to type into, and the top of what is to be read. */
@ExtendWith(ApplicationExtension.class)
class ShotsInSightTest {

    /** A row must not be cut by more: a line of a grid. */
    private static final double PIXEL = 1.01;

    @TempDir
    Path folder;

    private final Locale before = Language.now();
    private Stage stage;
    private final List<Screens> closing = new ArrayList<>();
    private Screens screens;
    private Region shown;

    @Start
    void start(Stage window) {
        stage = window;
    }

    @AfterEach
    void asBefore(FxRobot robot) {
        robot.interact(() -> closing.forEach(Screens::close));
        Look.choose(Look.USUAL);
        Locale.setDefault(Locale.Category.DISPLAY, before);
    }

    private void open(FxRobot robot, Locale language, int percent) throws Exception {
        Language.choose(language);
        Look look = new Look(percent, Look.Paper.LIGHT);
        Settings usual =
                Settings.usual(folder.resolve(language + "-" + percent)).withLook(look);
        robot.interact(() -> {
            Look.choose(look);
            screens = new Screens(folder.resolve(language + "-" + percent + "-desk"), usual);
            closing.add(screens);
            shown = (Region) screens.root();
            shown.setManaged(false);
            Scene scene = new Scene(new Pane(shown), 16, 16);
            look.dress(scene);
            stage.setScene(scene);
            stage.show();
            shown.resize(1366, 768);
            screens.sheet().desk().sample();
        });
        WaitForAsyncUtils.waitFor(
                180, TimeUnit.SECONDS, () -> screens.records().lessonId().isPresent());
        robot.interact(() -> screens.go("shots"));
        ShotsScreen shots = (ShotsScreen) screens.screen("shots");
        WaitForAsyncUtils.waitFor(180, TimeUnit.SECONDS, () -> shots.root().lookup("#says-launch-angle") != null);
    }

    /** In windows of many heights, since a row is cut where the table's height is no whole number of rows. */
    @Test
    void theRowToTypeIntoIsWhole(FxRobot robot) throws Exception {
        List<String> cut = new ArrayList<>();
        for (Locale language : Language.all()) {
            for (int percent : new int[] {100, 150}) {
                open(robot, language, percent);
                for (int width : new int[] {1366, 1100}) {
                    for (int height = 768; height >= 660; height -= 9) {
                        int tall = height;
                        robot.interact(() -> {
                            screens.go("lesson");
                            shown.resize(width, tall);
                        });
                        robot.interact(() -> screens.go("shots"));
                        WaitForAsyncUtils.waitForFxEvents(3);
                        robot.interact(() -> {
                            double hidden = hidden();
                            if (hidden > PIXEL) {
                                cut.add(language + " " + percent + " % " + width + " x " + tall + ": " + hidden);
                            }
                            double unsaid = unsaid();
                            if (unsaid > PIXEL) {
                                cut.add(language + " " + percent + " % " + width + ": " + unsaid
                                        + " of what a change says");
                            }
                        });
                    }
                }
                robot.interact(screens::close);
                closing.clear();
            }
        }
        assertThat(cut).isEmpty();
    }

    /** How much of what a change says is hidden at the right, in pixels. */
    private double unsaid() {
        Node sight = shown.lookup("#shots-differences-scroll").lookup(".viewport");
        double right = sight.localToScene(sight.getLayoutBounds()).getMaxX();
        return shown.lookupAll("Label").stream()
                .filter(n -> n.getId() != null && n.getId().startsWith("says-"))
                .mapToDouble(n -> n.localToScene(n.getLayoutBounds()).getMaxX() - right)
                .max()
                .orElse(Double.MAX_VALUE);
    }

    /** How much of the row at the end is hidden, in pixels; all of it where there is no such row. */
    private double hidden() {
        TableView<?> table = (TableView<?>) shown.lookup("#shots-table");
        Node seen = table.lookup(".clipped-container");
        Bounds sight = seen.localToScene(seen.getLayoutBounds());
        return table.lookupAll(".table-row-cell").stream()
                .filter(n -> n.isVisible()
                        && ((TableRow<?>) n).getIndex() == table.getItems().size() - 1)
                .map(n -> n.localToScene(n.getLayoutBounds()))
                .mapToDouble(b -> Math.max(b.getMaxY() - sight.getMaxY(), sight.getMinY() - b.getMinY()))
                .findFirst()
                .orElse(Double.MAX_VALUE);
    }

    /** What changed is read from its top when it is another lesson's or of other setups; what is typed leaves it where it is. */
    @Test
    void whatChangedBeginsAtItsTop(FxRobot robot) throws Exception {
        open(robot, Locale.ENGLISH, 100);
        ShotsScreen shots = (ShotsScreen) screens.screen("shots");
        ScrollPane pane = (ScrollPane) shots.root().lookup("#shots-differences-scroll");
        robot.interact(() -> pane.setVvalue(pane.getVmax()));
        robot.write("65.1\t");
        WaitForAsyncUtils.waitFor(60, TimeUnit.SECONDS, () -> shots.root().lookup("#cell-11-launch-angle") != null);
        WaitForAsyncUtils.waitForFxEvents(3);
        assertThat(pane.getVvalue()).as("typing leaves it").isEqualTo(pane.getVmax());
        ComboBox<?> with = (ComboBox<?>) shots.root().lookup("#shots-compare");
        robot.interact(() -> with.getSelectionModel().select(0));
        WaitForAsyncUtils.waitForFxEvents(3);
        assertThat(pane.getVvalue()).as("other setups").isZero();

        robot.interact(() -> {
            with.getSelectionModel().select(1);
            pane.setVvalue(pane.getVmax());
            int now = screens.records().lessonId().orElseThrow();
            screens.sheet().desk().open(now == 1 ? 2 : 1);
        });
        WaitForAsyncUtils.waitFor(60, TimeUnit.SECONDS, () -> pane.getVvalue() == 0);
    }
}

package org.toeline.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import org.toeline.desk.shots.ShotsScreen;
import org.toeline.flight.Shot;
import org.toeline.flight.ShotFigure;
import org.toeline.ledger.store.Ledger;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.place.LedgerPlace;

/** The screen of the shots, driven as a coach drives it: five typed, ten taken in, two setups compared, the picture kept. */
class ShotsScreenTest extends DrivenDesk {

    private static final String[][] FIVE = {
        {"65.1", "11.2", "1.3R", "2950", "8R", "44"},
        {"64,8", "10.4", "0", "3010", "6.5 R", "44.2"},
        {"66", "9.9", "2.2L", "3120", "12R", "44.6"},
        {"65.7", "10.8", "1.7L", "2800", "14R", ""},
        {"64.5", "8.9", "2R", "2980", "3R", ""}
    };

    private ShotsScreen shots;

    @Start
    void start(Stage stage) {
        open(stage);
        shots = (ShotsScreen) screens.screen("shots");
    }

    private List<Shot> inLedger() throws LedgerException {
        if (screens.records().lessonId().isEmpty()) {
            return List.of();
        }
        try (Ledger ledger = Ledger.open(new LedgerPlace.Folder(folder.resolve("ledger")), "the test")) {
            return ledger.shots(screens.records().lessonId().getAsInt());
        }
    }

    private void typeFive(FxRobot robot) {
        for (String[] row : FIVE) {
            for (int i = 0; i < row.length; i++) {
                robot.write(row[i], 0);
                robot.type(i < row.length - 1 ? KeyCode.TAB : KeyCode.ENTER);
            }
        }
        WaitForAsyncUtils.waitForFxEvents();
    }

    private String text(FxRobot robot, String query) {
        return robot.lookup(query).queryAs(Label.class).getText();
    }

    @Test
    void typesFiveShotsByKeyboard(FxRobot robot) throws Exception {
        robot.interact(() -> screens.go("shots"));
        until(() -> robot.lookup("#cell-1-ball-speed").tryQuery().isPresent());
        robot.write("6");
        until(() -> robot.lookup("#cell-1-ball-speed")
                .queryAs(TextField.class)
                .getText()
                .equals("6"));
        robot.type(KeyCode.ESCAPE);
        typeFive(robot);
        until(() -> inLedger().size() == 5);
        List<Shot> kept = inLedger();
        assertThat(kept.get(0).figure(ShotFigure.BALL_SPEED).orElseThrow()).isEqualTo(65.1);
        assertThat(Math.toDegrees(
                        kept.get(0).figure(ShotFigure.LAUNCH_DIRECTION).orElseThrow()))
                .isEqualTo(-1.3);
        assertThat(kept.get(1).figure(ShotFigure.BALL_SPEED).orElseThrow()).isEqualTo(64.8);
        assertThat(robot.lookup("#cell-6-ball-speed").tryQuery())
                .as("ready for the sixth")
                .isPresent();

        robot.write("6x");
        robot.type(KeyCode.TAB);
        until(() -> text(robot, "#shots-said").contains("“6x” is not in a unit"));
        until(() -> inLedger().size() == 6);
        robot.press(KeyCode.CONTROL).type(KeyCode.Z).release(KeyCode.CONTROL);
        until(() -> inLedger().size() == 5);
    }

    /** What means the same as before stands as it is typed: “20.0” on the way to “20.05”, and an emptied field. */
    @Test
    void theAirIsTypedAsItIsTyped(FxRobot robot) throws Exception {
        robot.interact(() -> screens.go("shots"));
        until(() -> robot.lookup("#air-temperature").tryQuery().isPresent());
        TextField air = robot.lookup("#air-temperature").queryAs(TextField.class);
        robot.interact(() -> {
            air.requestFocus();
            air.deleteText(0, air.getLength());
        });
        until(() -> air.getText().isEmpty());
        for (String key : List.of("2", "0", ".", "0", "5")) {
            robot.write(key, 0);
            WaitForAsyncUtils.waitForFxEvents();
        }
        assertThat(air.getText()).isEqualTo("20.05");
        for (String key : List.of("3", "0", "0")) {
            robot.write(key, 0);
            WaitForAsyncUtils.waitForFxEvents();
        }
        assertThat(air.getText()).isEqualTo("20.05300");
        robot.interact(() -> {
            robot.lookup("#air-humidity").queryAs(TextField.class).requestFocus();
            robot.lookup("#air-humidity").queryAs(TextField.class).setText("51");
        });
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(air.getText()).isEqualTo("20.05300");
    }

    /** Keys that come faster than the next cell does lose nothing: all of two rows between two pulses. */
    @Test
    void typesInBursts(FxRobot robot) throws Exception {
        robot.interact(() -> screens.go("shots"));
        until(() -> robot.lookup("#cell-1-ball-speed").tryQuery().isPresent());
        String[] meanwhile = {"", ""};
        robot.interact(() -> {
            burst(shots.root().getScene(), "65.1\t16.1\t-4\t2950\t\t\t\t\t\n64.8\t10.4\t");
            meanwhile[0] = text(robot, "#shots-differences-help");
            meanwhile[1] = text(robot, "#shots-picture-empty");
        });
        assertThat(meanwhile).as("there are shots, and nothing is reckoned yet").containsOnly("Reckoning …");
        until(() -> inLedger().size() == 2);
        until(() -> inLedger().get(1).figure(ShotFigure.LAUNCH_ANGLE).isPresent());
        List<Shot> kept = inLedger();
        assertThat(kept.get(0).figure(ShotFigure.BALL_SPEED).orElseThrow()).isEqualTo(65.1);
        assertThat(Math.toDegrees(kept.get(0).figure(ShotFigure.LAUNCH_ANGLE).orElseThrow()))
                .isCloseTo(16.1, org.assertj.core.api.Assertions.within(1e-9));
        assertThat(kept.get(1).figure(ShotFigure.BALL_SPEED).orElseThrow()).isEqualTo(64.8);
        assertThat(Math.toDegrees(kept.get(1).figure(ShotFigure.LAUNCH_ANGLE).orElseThrow()))
                .isCloseTo(10.4, org.assertj.core.api.Assertions.within(1e-9));
    }

    private static void burst(javafx.scene.Scene scene, String keys) {
        for (char key : keys.toCharArray()) {
            KeyCode code = key == '\t' ? KeyCode.TAB : key == '\n' ? KeyCode.ENTER : KeyCode.UNDEFINED;
            fire(scene, javafx.scene.input.KeyEvent.KEY_PRESSED, "", code);
            fire(scene, javafx.scene.input.KeyEvent.KEY_TYPED, String.valueOf(key), KeyCode.UNDEFINED);
        }
    }

    private static void fire(
            javafx.scene.Scene scene,
            javafx.event.EventType<javafx.scene.input.KeyEvent> type,
            String text,
            KeyCode code) {
        javafx.event.EventTarget to = scene.getFocusOwner() == null ? scene.getRoot() : scene.getFocusOwner();
        javafx.event.Event.fireEvent(
                to, new javafx.scene.input.KeyEvent(type, text, text, code, false, false, false, false));
    }

    /** A table of two clubs: nothing is taken in before one of them is chosen. */
    @Test
    void asksWhichClubIsWanted(FxRobot robot) throws Exception {
        Path mixed = Files.writeString(
                folder.resolve("mixed.csv"),
                "Club,Ball speed (m/s),Carry (m),Dynamic loft (deg)\n"
                        + "Driver,65.2,210.5,14.2\n7 iron,50.3,150.1,24.0\nDriver,64.8,208.3,13.9\n");
        robot.interact(() -> screens.go("shots"));
        robot.interact(() -> shots.takeIn(mixed));
        until(() -> robot.lookup("#import-only-0").tryQuery().isPresent());
        assertThat(robot.lookup("#import-take").queryButton().isDisabled()).isTrue();
        robot.interact(() -> {
            ComboBox<?> clubs = robot.lookup("#import-only-0").queryAs(ComboBox.class);
            assertThat(clubs.getItems()).as("clubs are no setups").hasSize(2);
            clubs.getSelectionModel().select(1);
        });
        until(() -> !robot.lookup("#import-take").queryButton().isDisabled());
        robot.interact(() -> robot.lookup("#import-take").queryButton().fire());
        until(() -> inLedger().size() == 2);
        assertThat(inLedger())
                .extracting(s -> s.figure(ShotFigure.CARRY).orElseThrow())
                .containsExactly(210.5, 208.3);
        assertThat(robot.lookup("#shots-table").queryAs(TableView.class).getColumns())
                .as("what came has a column")
                .extracting(c -> ((TableColumn<?, ?>) c).getId())
                .contains("column-dynamic-loft");
    }

    /** Two setups hit in turns, said under a heading of the table: compared at once, in the order hit. */
    @Test
    void takesInTwoSetupsHitInTurns(FxRobot robot) throws Exception {
        java.util.Random random = new java.util.Random(5);
        StringBuilder lines = new StringBuilder("Nr,Setup,Ball speed (m/s),Carry (m)\n");
        for (int i = 0; i < 24; i++) {
            boolean second = i / 3 % 2 == 1;
            lines.append(i + 1).append(second ? ",forward," : ",usual,");
            lines.append(65 + random.nextInt(10) / 10.0).append(',');
            lines.append((second ? 211 : 205) + random.nextInt(30) / 10.0).append('\n');
        }
        Path turns = Files.writeString(folder.resolve("turns.csv"), lines);
        robot.interact(() -> screens.go("shots"));
        robot.interact(() -> shots.takeIn(turns));
        until(() -> robot.lookup("#import-take").tryQuery().isPresent());
        assertThat(robot.lookup("#import-take").queryButton().isDisabled())
                .as("there is nothing to ask")
                .isFalse();
        ComboBox<Object> setup = robot.lookup("#import-meaning-1").query();
        assertThat(setup.getConverter().toString(setup.getValue()))
                .as("what is chosen above is not said to be left out")
                .isEqualTo("chosen above");
        robot.interact(() -> robot.lookup("#import-take").queryButton().fire());
        until(() -> robot.lookup("#says-carry").tryQuery().isPresent());
        assertThat(text(robot, "#says-carry")).isEqualTo("● real");
        assertThat(text(robot, "#shots-differences-help")).contains("in turns, 8 runs");
        assertThat(text(robot, "#shots-sentence")).startsWith("With “forward” the ball carried ");
        until(() -> inLedger().size() == 24);
        assertThat(inLedger()).extracting(Shot::setup).startsWith("usual", "usual", "usual", "forward");
        Path back = folder.resolve("back.csv");
        robot.interact(() -> shots.exportTable(back));
        until(() -> Files.exists(back));
        assertThat(Files.readAllLines(back).get(0)).contains("Setup");
        robot.interact(() -> robot.lookup("#shots-compare")
                .queryAs(ComboBox.class)
                .getSelectionModel()
                .select(0));
        until(() -> text(robot, "#shots-sentence").endsWith("shots of 2 setups, taken together."));

        robot.press(KeyCode.CONTROL).type(KeyCode.Z).release(KeyCode.CONTROL);
        until(() -> robot.lookup("#says-carry").tryQuery().isEmpty());
        assertThat(robot.lookup("#shots-compare").queryAs(ComboBox.class).getItems())
                .as("without shots there are no setups to compare")
                .hasSize(1);
    }

    /** Going down the list of meanings by keys passes other columns' meanings without taking them away. */
    @Test
    void whatIsPassedByKeysIsNotChosen(FxRobot robot) throws Exception {
        Path table = Files.writeString(
                folder.resolve("keys.csv"),
                "Nr,Club speed (mph),Ball speed (mph),Odd\n1,100.2,146.1,0.3\n2,101.0,147.0,0.5\n3,99.4,145.2,0.4\n");
        robot.interact(() -> screens.go("shots"));
        robot.interact(() -> shots.takeIn(table));
        until(() -> robot.lookup("#import-meaning-3").tryQuery().isPresent());
        robot.interact(
                () -> robot.lookup("#import-meaning-3").queryAs(ComboBox.class).requestFocus());
        robot.type(KeyCode.DOWN);
        // past a remark, club speed and ball speed
        robot.type(KeyCode.DOWN, 4).type(KeyCode.ENTER);
        until(() -> robot.lookup("#import-unit-3").tryQuery().isPresent());
        assertThat(robot.lookup("#import-unit-1").tryQuery())
                .as("club speed stays")
                .isPresent();
        assertThat(robot.lookup("#import-unit-2").tryQuery())
                .as("ball speed stays")
                .isPresent();
        robot.interact(() -> robot.lookup("#import-cancel").queryButton().fire());
    }

    /** Before and after of the sample player: ten shots each, one of them a mishit. */
    @Test
    void takesTenInAndComparesTwoSetups(FxRobot robot) throws Exception {
        robot.interact(() -> sheet.desk().sample());
        until(() -> screens.records().lessonId().isPresent());
        robot.interact(() -> screens.go("shots"));
        until(() -> robot.lookup("#says-launch-angle").tryQuery().isPresent());
        assertThat(text(robot, "#says-launch-angle")).isEqualTo("● real");
        assertThat(text(robot, "#shots-sentence"))
                .startsWith("In the later lesson the ball started ")
                .doesNotContain("together");
        assertThat(robot.lookup("#shots-compare").queryAs(ComboBox.class).getItems())
                .hasSize(2);

        robot.interact(() -> shots.takeIn(Path.of("sample-media/shots/after.csv")));
        until(() -> robot.lookup("#import-take").tryQuery().isPresent());
        assertThat(robot.lookup("#import-unit-1").queryAs(ComboBox.class).getValue())
                .hasToString("KILOMETRES_PER_HOUR");
        robot.interact(
                () -> robot.lookup("#import-name").queryAs(TextField.class).setText("the German table"));
        robot.clickOn("#import-take");
        until(() -> inLedger().size() == 20);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(inLedger())
                .as("the cell that waited to be typed into takes nothing from the rows that came")
                .allSatisfy(s -> assertThat(s.figure(ShotFigure.BALL_SPEED)).isPresent());
        try (var kept = Files.list(folder.resolve("ledger/shot-templates"))) {
            assertThat(kept).hasSize(1);
        }

        Path picture = folder.resolve("shots.png");
        Path page = folder.resolve("shots.pdf");
        Path table = folder.resolve("shots.csv");
        robot.interact(() -> {
            shots.exportPicture(picture);
            shots.exportPicture(page);
            shots.exportTable(table);
        });
        until(() -> Files.exists(picture) && Files.exists(page) && Files.exists(table));
        assertThat(Files.size(picture)).isGreaterThan(30_000);
        assertThat(Files.readAllBytes(page)).startsWith("%PDF".getBytes());
        assertThat(Files.readAllLines(table)).hasSize(21);

        robot.press(KeyCode.CONTROL).type(KeyCode.Z).release(KeyCode.CONTROL);
        until(() -> inLedger().size() == 10);
        robot.interact(() -> robot.lookup("#shots-compare")
                .queryAs(ComboBox.class)
                .getSelectionModel()
                .select(0));
        until(() -> robot.lookup("#says-launch-angle").tryQuery().isEmpty());
        assertThat(Optional.of(text(robot, "#shots-differences-help")))
                .get()
                .asString()
                .contains("choose another lesson");
    }
}

package org.toeline.desk.dialog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.control.TextFormatter;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.text.Text;
import javafx.stage.Screen;
import javafx.stage.Stage;
import javafx.stage.Window;
import javafx.stage.WindowEvent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import org.toeline.desk.Desk;

/** The frame by key and mouse: where it opens, what is the default, what is asked before something is lost. */
@ExtendWith(ApplicationExtension.class)
class DialogFrameTest {

    /** Rounding to whole pixels. */
    private static final double ROUNDED = 1.5;

    private final List<String> done = new ArrayList<>();
    private TextField field;
    private Stage owner;

    @Start
    void start(Stage stage) {
        owner = stage;
        field = new TextField("at first");
        field.setId("field");
        field.setId("field");
        stage.setScene(new Scene(new Pane(), 900, 600));
        stage.getScene().getStylesheets().add(Desk.class.getResource("desk.css").toExternalForm());
        stage.setX(500);
        stage.setY(300);
        stage.setWidth(900);
        stage.setHeight(600);
        stage.show();
    }

    @AfterEach
    void close(FxRobot robot) {
        robot.interact(() -> dialogs().forEach(Window::hide));
    }

    private List<Window> dialogs() {
        return Window.getWindows().stream()
                .filter(w -> w instanceof Stage s && s.getOwner() == owner)
                .toList();
    }

    private Stage dialog() {
        assertThat(dialogs()).hasSize(1);
        return (Stage) dialogs().get(0);
    }

    private static void show(FxRobot robot, Supplier<DialogFrame> frame) {
        robot.interact(() -> frame.get().show());
        WaitForAsyncUtils.waitForFxEvents();
    }

    private DialogFrame form() {
        return new DialogFrame(owner, "A form")
                .middle(new FieldRows().row("What it is called in full", field))
                .leave("Cancel")
                .act("keep", "Keep", () -> done.add("kept"))
                .asksBeforeLosing(field::getText);
    }

    private DialogFrame question() {
        return new DialogFrame(owner, "A question")
                .heading("Shall it go?")
                .text("It cannot be undone.")
                .leave("Cancel")
                .destroy("delete", "Delete", () -> done.add("deleted"));
    }

    @Test
    void whatIsPressedTwiceBeforeItGoesIsDoneOnce(FxRobot robot) {
        show(robot, this::question);
        robot.interact(() -> {
            Button delete = (Button) dialog().getScene().lookup("#delete");
            Button leave = (Button) dialog().getScene().lookup("#dialog-leave");
            delete.fire();
            delete.fire();
            leave.fire();
        });
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(done).containsExactly("deleted");
        assertThat(dialogs()).isEmpty();
    }

    @Test
    void itIsInTheMiddleOfItsWindowAndAsLargeAsItsWords(FxRobot robot) {
        show(robot, this::form);
        Stage dialog = dialog();
        assertThat(dialog.getX() + dialog.getWidth() / 2)
                .isCloseTo(owner.getX() + owner.getWidth() / 2, within(ROUNDED));
        assertThat(dialog.getY() + dialog.getHeight() / 2)
                .isCloseTo(owner.getY() + owner.getHeight() / 2, within(ROUNDED));
        assertThat(dialog.getWidth()).isBetween(400.0, 700.0);
        assertThat(dialog.getHeight()).isBetween(90.0, 220.0);
        for (Node label : dialog.getScene().getRoot().lookupAll(".label")) {
            assertThat(((Text) label.lookup(".text")).getText()).as("whole").isEqualTo(((Label) label).getText());
        }
    }

    @Test
    void whatIsHigherThanTheScreenScrolls(FxRobot robot) {
        VBox rows = new VBox(8);
        for (int i = 0; i < 100; i++) {
            rows.getChildren().add(new TextField("row " + i));
        }
        show(
                robot,
                () -> new DialogFrame(owner, "Long")
                        .middle(rows)
                        .leave("Cancel")
                        .act("keep", "Keep", () -> done.add("kept")));
        assertThat(dialog().getHeight())
                .isLessThanOrEqualTo(Screen.getPrimary().getVisualBounds().getHeight());
        assertThat(dialog().getY()).isGreaterThanOrEqualTo(0);
        Node keep = robot.lookup("#keep").query();
        assertThat(keep.localToScreen(keep.getBoundsInLocal()).getMaxY())
                .as("the buttons are in reach")
                .isLessThan(Screen.getPrimary().getVisualBounds().getHeight());
        robot.clickOn("#keep");
        assertThat(done).containsExactly("kept");
    }

    @Test
    void itGrowsWithItsMiddle(FxRobot robot) {
        VBox rows = new VBox(
                8, field, DialogFrame.wrapped("Words that need more lines where there is less room. ".repeat(6)));
        rows.setPrefWidth(240);
        show(robot, () -> new DialogFrame(owner, "Growing").middle(rows).leave("Close"));
        double before = dialog().getHeight();
        assertThat(isScrolled(rows)).isFalse();
        robot.interact(() -> rows.getChildren().addAll(new TextField(), new TextField()));
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(dialog().getHeight()).isGreaterThan(before + 40);
        assertThat(isScrolled(rows)).isFalse();
    }

    private boolean isScrolled(Region middle) {
        ScrollPane scroll = (ScrollPane) dialog().getScene().getRoot().lookup(".scroll-pane");
        return middle.getHeight() > scroll.getViewportBounds().getHeight() + ROUNDED;
    }

    @Test
    void nothingThatDestroysIsTheDefault(FxRobot robot) {
        show(robot, this::question);
        assertThat(robot.lookup("#delete").queryButton().isDefaultButton()).isFalse();
        assertThat(robot.lookup("#dialog-leave").queryButton().isFocused()).isTrue();
        robot.type(KeyCode.ENTER);
        assertThat(dialogs()).isEmpty();
        assertThat(done).isEmpty();
        show(robot, this::question);
        robot.type(KeyCode.ESCAPE);
        assertThat(dialogs()).isEmpty();
        assertThat(done).isEmpty();
        show(robot, this::question);
        robot.clickOn("#delete");
        assertThat(done).containsExactly("deleted");
    }

    @Test
    void enterPressesTheButtonThatHasTheFocus(FxRobot robot) {
        show(robot, this::form);
        robot.interact(() -> robot.lookup("#dialog-leave").query().requestFocus());
        robot.type(KeyCode.ENTER);
        assertThat(dialogs()).isEmpty();
        assertThat(done).isEmpty();
    }

    /** The toolkit's field keeps the key to itself where it has a formatter. */
    @Test
    void escLeavesAFieldOfLimitedLength(FxRobot robot) {
        robot.interact(() -> field.setTextFormatter(new TextFormatter<>(c -> c)));
        show(robot, this::form);
        assertThat(field.isFocused()).isTrue();
        robot.targetWindow(dialog()).type(KeyCode.ESCAPE);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(dialogs()).isEmpty();
        show(robot, this::form);
        robot.targetWindow(dialog()).write("now").type(KeyCode.ESCAPE);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(robot.lookup("#dialog-question").tryQuery()).as("asks first").isPresent();
        robot.interact(field::requestFocus);
        robot.targetWindow(dialog()).type(KeyCode.ESCAPE);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(dialogs()).as("goes on").hasSize(1);
        assertThat(robot.lookup("#dialog-question").tryQuery()).isEmpty();
        assertThat(done).isEmpty();
    }

    @Test
    void enterInAFieldKeeps(FxRobot robot) {
        show(robot, this::form);
        assertThat(field.isFocused()).isTrue();
        robot.targetWindow(dialog()).write("now");
        assertThat(field.getText()).contains("now");
        robot.type(KeyCode.ENTER);
        assertThat(done).containsExactly("kept");
        assertThat(dialogs()).isEmpty();
    }

    @Test
    void whatWasTypedIsNotLostUnasked(FxRobot robot) {
        show(robot, this::form);
        robot.targetWindow(dialog()).write("typed");
        assertThat(field.getText()).contains("typed");
        robot.type(KeyCode.ESCAPE);
        assertThat(robot.lookup("#dialog-question").queryLabeled().getText()).contains("not kept");
        assertThat(isScrolled((Region) field.getParent().getParent()))
                .as("room for the question")
                .isFalse();
        robot.type(KeyCode.ESCAPE);
        assertThat(robot.lookup("#dialog-question").tryQuery())
                .as("Esc goes on, twice or not")
                .isEmpty();
        assertThat(dialog().isShowing()).isTrue();
        robot.write(" on");
        assertThat(field.getText()).as("goes on where it was").isEqualTo("typed on");
        robot.interact(() -> dialog().fireEvent(new WindowEvent(dialog(), WindowEvent.WINDOW_CLOSE_REQUEST)));
        assertThat(robot.lookup("#dialog-question").tryQuery())
                .as("the window’s own cross")
                .isPresent();
        robot.type(KeyCode.ENTER);
        assertThat(dialog().isShowing()).as("the default goes on").isTrue();
        assertThat(field.getText()).contains("typed");
        robot.type(KeyCode.ESCAPE);
        robot.clickOn("#dialog-lose");
        assertThat(dialogs()).isEmpty();
        assertThat(done).isEmpty();
    }

    @Test
    void whatWasNotTouchedIsLeftUnasked(FxRobot robot) {
        show(robot, this::form);
        robot.type(KeyCode.ESCAPE);
        assertThat(dialogs()).isEmpty();
    }

    @Test
    void aFaultIsSaidBesideItsFieldAndNothingIsKept(FxRobot robot) {
        TextField second = new TextField();
        Fault fault = new Fault(
                field, () -> field.getText().length() > 3 ? Optional.of("Three letters at most.") : Optional.empty());
        show(
                robot,
                () -> new DialogFrame(owner, "A form")
                        .middle(new FieldRows().row("Short", field, fault).row("Another", second))
                        .leave("Cancel")
                        .act("keep", "Keep", () -> done.add("kept")));
        assertThat(fault.isVisible())
                .as("nothing is said before anything is done")
                .isFalse();
        robot.interact(second::requestFocus);
        assertThat(fault.isVisible()).as("the field was left").isTrue();
        robot.clickOn("#keep");
        assertThat(done).isEmpty();
        assertThat(field.isFocused()).isTrue();
        assertThat(robot.lookup("#field-fault").queryLabeled().getText()).isEqualTo("Three letters at most.");
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(isScrolled((Region) field.getParent().getParent()))
                .as("room for what is wrong")
                .isFalse();
        assertThat(fault.localToScene(0, 0).getY())
                .as("below its field, above the next")
                .isBetween(
                        field.localToScene(0, 0).getY(),
                        second.localToScene(0, 0).getY());
        robot.interact(() -> field.setText("abc"));
        assertThat(fault.isVisible()).as("mended").isFalse();
        robot.clickOn("#keep");
        assertThat(done).containsExactly("kept");
    }

    @Test
    void aDialogWithoutAWayOutIsRefused(FxRobot robot) {
        robot.interact(() -> assertThatThrownBy(() -> new DialogFrame(owner, "A trap").show())
                .isInstanceOf(IllegalStateException.class));
    }
}

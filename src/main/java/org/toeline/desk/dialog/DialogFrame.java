package org.toeline.desk.dialog;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.geometry.Insets;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonBar;
import javafx.scene.control.ButtonBar.ButtonData;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.Modality;
import javafx.stage.Stage;
import javafx.stage.Window;
import org.toeline.desk.look.Look;
import org.toeline.desk.text.Texts;

/**
 * A dialog: words on top, a middle that scrolls where the screen is too low for it, buttons below. One button is the safe way
 * out; Esc and the window's own cross take it too, and what was typed is not lost unasked. The default button keeps what was
 * typed or, where nothing is to be typed, is the safe one; a button that destroys never is.
 */
public final class DialogFrame {

    private static final double PADDING = 16;
    private static final double TEXT_WIDTH = 480;

    private final Stage stage = new Stage();
    private final DialogPlace place;
    private final VBox head = new VBox(8);
    /** As high as its words are at the width there is, not at the one they would like. */
    private final ScrollPane middle = new ScrollPane() {
        @Override
        public Orientation getContentBias() {
            return Orientation.HORIZONTAL;
        }
    };

    private final ButtonBar buttons = new ButtonBar();
    private final VBox foot = new VBox(10, buttons);
    private Optional<Button> act = Optional.empty();
    private Optional<Button> safe = Optional.empty();
    private Optional<Button> keepOn = Optional.empty();
    private Supplier<?> typed = () -> "";
    private Object typedAtFirst = "";
    /** Something was decided; another key or click comes too late. */
    private boolean closing;

    /** @param title what the dialog's window is called */
    public DialogFrame(Window owner, String title) {
        head.setPadding(new Insets(PADDING, PADDING, 0, PADDING));
        foot.setPadding(new Insets(PADDING));
        shown(head, false);
        shown(middle, false);
        middle.setFitToWidth(true);
        middle.getStyleClass().add("edge-to-edge");
        VBox.setVgrow(middle, Priority.ALWAYS);
        VBox root = new VBox(head, middle, foot);
        root.getStyleClass().add("paper");
        Scene scene = new Scene(root);
        scene.getStylesheets().setAll(owner.getScene().getStylesheets());
        scene.setUserAgentStylesheet(owner.getScene().getUserAgentStylesheet());
        stage.initOwner(owner);
        stage.initModality(Modality.WINDOW_MODAL);
        stage.setTitle(title);
        stage.setScene(scene);
        stage.setOnCloseRequest(e -> {
            e.consume();
            leave();
        });
        // a field with a formatter would keep the key to itself
        scene.addEventFilter(KeyEvent.KEY_PRESSED, e -> {
            if (e.getCode() == KeyCode.ESCAPE && e.getTarget() instanceof TextInputControl) {
                e.consume();
                wayOut().fire();
            }
        });
        place = new DialogPlace(stage, root);
    }

    /** What Esc presses: the button that keeps on while something is asked, else the safe one. */
    private Button wayOut() {
        return keepOn.or(() -> safe).orElseThrow(() -> new IllegalStateException("a dialog needs a safe way out"));
    }

    private static void shown(Node node, boolean is) {
        node.setVisible(is);
        node.setManaged(is);
    }

    /** Words that wrap, for a middle. */
    public static Label wrapped(String words) {
        Label label = new Label(words);
        label.setWrapText(true);
        label.setPrefWidth(Look.px(TEXT_WIDTH));
        label.setMaxWidth(Double.MAX_VALUE);
        label.setMinHeight(Region.USE_PREF_SIZE);
        return label;
    }

    /** What is asked, large. */
    public DialogFrame heading(String words) {
        Label label = wrapped(words);
        label.setId("dialog-heading");
        label.getStyleClass().add("next");
        return above(label);
    }

    /** Words that stay while the middle scrolls. */
    public DialogFrame text(String words) {
        return above(wrapped(words));
    }

    private DialogFrame above(Label label) {
        head.getChildren().add(label);
        shown(head, true);
        return this;
    }

    public DialogFrame middle(Region content) {
        content.setPadding(new Insets(PADDING, PADDING, 4, PADDING));
        middle.setContent(content);
        shown(middle, true);
        content.heightProperty().addListener((o, before, now) -> place.grow());
        return this;
    }

    /** The safe way out, which changes nothing. */
    public DialogFrame leave(String words) {
        safe = Optional.of(add(DialogButtons.button("dialog-leave", words, ButtonData.CANCEL_CLOSE, this::leave)));
        return this;
    }

    /** The default: closes and acts, once no field has a fault. */
    public DialogFrame act(String id, String words, Runnable action) {
        act = Optional.of(add(DialogButtons.button(id, words, ButtonData.OK_DONE, () -> {
            if (isWell()) {
                close(action);
            }
        })));
        return this;
    }

    /** One of several ways to go on, none of which is the default: closes and acts. */
    public DialogFrame choice(String id, String words, Runnable action) {
        add(DialogButtons.button(id, words, ButtonData.OTHER, () -> close(action)));
        return this;
    }

    /** Closes and does what cannot be undone; never the default. */
    public DialogFrame destroy(String id, String words, Runnable action) {
        add(DialogButtons.destroying(id, words, () -> close(action)));
        return this;
    }

    /** A button apart from the others, which leaves the dialog open. */
    public DialogFrame apart(String id, String words, Runnable action) {
        add(DialogButtons.button(id, words, ButtonData.LEFT, action));
        return this;
    }

    private Button add(Button button) {
        buttons.getButtons().add(button);
        return button;
    }

    /** @param what what the fields hold, to be compared: once it has changed, leaving asks first */
    public DialogFrame asksBeforeLosing(Supplier<?> what) {
        typed = what;
        return this;
    }

    /** @param action run when the dialog is gone, whatever was pressed */
    public DialogFrame closed(Runnable action) {
        stage.setOnHidden(e -> action.run());
        return this;
    }

    /**
     * Shows the dialog and returns at once.
     *
     * @throws IllegalStateException when it has no way out
     */
    public void show() {
        Button way = wayOut();
        way.setCancelButton(true);
        Button first = act.orElse(way);
        first.setDefaultButton(true);
        typedAtFirst = typed.get();
        place.open();
        (act.isPresent() ? firstField(middle.getContent()).orElse(first) : first).requestFocus();
    }

    /** Asks in place of the buttons before something is lost; not to do it is the default, and what Esc says. */
    public void ask(String question, String safeWords, String words, Runnable action) {
        if (!foot.getChildren().contains(buttons)) {
            return;
        }
        Optional<Node> focus = Optional.ofNullable(stage.getScene().getFocusOwner());
        Label label = wrapped(question);
        label.setId("dialog-question");
        Button not = DialogButtons.button("dialog-keep-on", safeWords, ButtonData.CANCEL_CLOSE, () -> asked(focus));
        not.setDefaultButton(true);
        not.setCancelButton(true);
        keepOn = Optional.of(not);
        ButtonBar answers = new ButtonBar();
        answers.getButtons().setAll(not, DialogButtons.destroying("dialog-lose", words, () -> {
            asked(focus);
            action.run();
        }));
        foot.getChildren().setAll(label, answers);
        place.grow();
        not.requestFocus();
    }

    private void asked(Optional<Node> focus) {
        foot.getChildren().setAll(buttons);
        keepOn = Optional.empty();
        focus.ifPresent(Node::requestFocus);
        // a field that gets the focus selects all it holds, and the next key would replace it
        focus.filter(TextInputControl.class::isInstance)
                .map(TextInputControl.class::cast)
                .ifPresent(TextInputControl::end);
    }

    private void leave() {
        if (typed.get().equals(typedAtFirst)) {
            close(() -> {});
        } else {
            ask(Texts.of("dialog.unkept"), Texts.of("dialog.go-on"), Texts.of("dialog.lose"), () -> close(() -> {}));
        }
    }

    /** Once, and after the key that asked for it: a window that goes while it is told of a key takes the program with it on Linux. */
    private void close(Runnable action) {
        if (closing) {
            return;
        }
        closing = true;
        Platform.runLater(() -> {
            stage.hide();
            action.run();
        });
    }

    /** Looks at every field again, and goes to the first that has a fault. */
    private boolean isWell() {
        List<Fault> wrong =
                faults(middle.getContent()).stream().filter(f -> !f.isWell()).toList();
        wrong.stream().findFirst().ifPresent(Fault::goTo);
        return wrong.isEmpty();
    }

    private static List<Fault> faults(Node node) {
        List<Fault> found = new ArrayList<>();
        if (node instanceof Fault fault) {
            found.add(fault);
        } else if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(child -> found.addAll(faults(child)));
        }
        return found;
    }

    private static Optional<Node> firstField(Node node) {
        if (node instanceof Control control && control.isFocusTraversable() && !control.isDisabled()) {
            return Optional.of(control);
        }
        return node instanceof Parent parent
                ? parent.getChildrenUnmodifiable().stream()
                        .flatMap(child -> firstField(child).stream())
                        .findFirst()
                : Optional.empty();
    }
}

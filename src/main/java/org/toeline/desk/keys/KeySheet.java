package org.toeline.desk.keys;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Insets;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.Window;
import org.toeline.desk.dialog.DialogFrame;
import org.toeline.desk.look.Look;
import org.toeline.desk.text.Texts;

/** All keys on one sheet; a click on a key and the next press change it. */
public final class KeySheet {

    private static final int COLUMNS = 3;
    /** Of text from this size on, in percent. */
    private static final int LARGE = 130;

    private static final int COLUMNS_OF_LARGE_TEXT = 2;
    private static final double NAME_WIDTH = 220;
    private static final double APART = 16;

    private final KeyBook book;
    private final Label said = new Label(Texts.of("keys.text"));
    private final List<Runnable> shown = new ArrayList<>();

    private KeySheet(KeyBook book) {
        this.book = book;
    }

    public static void show(KeyBook book, Window window) {
        KeySheet sheet = new KeySheet(book);
        sheet.said.setId("keys-said");
        DialogFrame frame = new DialogFrame(window, Texts.of("keys.title"))
                .middle(new VBox(10, sheet.said, sheet.grid()))
                .leave(Texts.of("dialog.close"));
        frame.apart(
                        "keys-restore",
                        Texts.of("keys.restore"),
                        () -> frame.ask(
                                Texts.of("keys.restore.sure"),
                                Texts.of("keys.restore.not"),
                                Texts.of("keys.restore.yes"),
                                sheet::restore))
                .show();
    }

    private void restore() {
        book.restore();
        shown.forEach(Runnable::run);
        said.setText(Texts.of("keys.text"));
    }

    private GridPane grid() {
        GridPane grid = new GridPane();
        grid.setHgap(12);
        grid.setVgap(1);
        int columns = Look.now().textPercent() < LARGE ? COLUMNS : COLUMNS_OF_LARGE_TEXT;
        int rows = (Act.values().length + columns - 1) / columns;
        for (Act act : Act.values()) {
            Button key = new Button();
            key.setId("key-" + act.id());
            key.setPrefWidth(Look.px(130));
            key.setAccessibleText(Texts.of("key." + act.id()));
            Runnable show = () -> key.setText(book.key(act).getDisplayText());
            show.run();
            shown.add(show);
            key.setOnAction(e -> listen(key, act, show));
            int column = 2 * (act.ordinal() / rows);
            key.setMinWidth(Look.px(130));
            Label name = new Label(Texts.of("key." + act.id()));
            name.setWrapText(true);
            name.setMinHeight(Region.USE_PREF_SIZE);
            name.setMinWidth(Look.px(NAME_WIDTH));
            name.setPrefWidth(Look.px(NAME_WIDTH));
            name.setPadding(new Insets(0, 0, 0, column == 0 ? 0 : APART));
            grid.add(name, column, act.ordinal() % rows);
            grid.add(key, column + 1, act.ordinal() % rows);
        }
        return grid;
    }

    private void listen(Button key, Act act, Runnable show) {
        key.setText(Texts.of("keys.press"));
        key.setOnKeyPressed(e -> {
            e.consume();
            if (e.getCode().isModifierKey()) {
                return;
            }
            key.setOnKeyPressed(null);
            if (e.getCode() != KeyCode.ESCAPE) {
                KeyCombination pressed = combination(e);
                said.setText(
                        book.give(act, pressed)
                                ? Texts.of("keys.text")
                                : Texts.of(
                                        "keys.taken",
                                        pressed.getDisplayText(),
                                        Texts.of("key."
                                                + book.holder(pressed)
                                                        .orElseThrow()
                                                        .id())));
            }
            show.run();
        });
    }

    private static KeyCombination combination(KeyEvent e) {
        List<KeyCombination.Modifier> held = new ArrayList<>();
        if (e.isShiftDown()) {
            held.add(KeyCombination.SHIFT_DOWN);
        }
        if (e.isAltDown()) {
            held.add(KeyCombination.ALT_DOWN);
        }
        if (e.isShortcutDown()) {
            held.add(KeyCombination.SHORTCUT_DOWN);
        }
        return new KeyCodeCombination(e.getCode(), held.toArray(new KeyCombination.Modifier[0]));
    }
}

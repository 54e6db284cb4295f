package org.toeline.desk;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ComboBoxBase;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.stage.Window;
import org.jspecify.annotations.Nullable;
import org.toeline.desk.across.AcrossScreen;
import org.toeline.desk.bodymap.Chip;
import org.toeline.desk.handover.HandOverActs;
import org.toeline.desk.handover.HandOverScreen;
import org.toeline.desk.keys.Act;
import org.toeline.desk.look.Look;
import org.toeline.desk.players.PlayersScreen;
import org.toeline.desk.ranges.RangesScreen;
import org.toeline.desk.records.OwnCorrections;
import org.toeline.desk.records.OwnRanges;
import org.toeline.desk.records.Records;
import org.toeline.desk.records.Settings;
import org.toeline.desk.records.SettingsFile;
import org.toeline.desk.screen.Screen;
import org.toeline.desk.screen.Studio;
import org.toeline.desk.sheet.LessonName;
import org.toeline.desk.sheet.OtherBay;
import org.toeline.desk.sheet.Sheet;
import org.toeline.desk.shots.ShotsScreen;
import org.toeline.desk.text.Texts;
import org.toeline.desk.work.Background;
import org.toeline.document.OwnDocument;
import org.toeline.language.Language;

/** The window: a row of screens, one of which is shown, and a line at the bottom that says what happened. */
public final class Screens {

    private final BorderPane root = new BorderPane();
    private final StatusLine status = new StatusLine(System::nanoTime);
    private final Background background = new Background(this::say);
    private final HandOverActs handOver;
    private final Records records;
    private final Sheet sheet;
    private final DeskMenu menu;
    private final Map<String, Supplier<Screen>> makers = new LinkedHashMap<>();
    /** Each is made when it is first asked for: the window is there the sooner. */
    private final Map<String, Screen> screens = new HashMap<>();

    private final Map<String, ToggleButton> buttons = new LinkedHashMap<>();
    private String shown = "";

    /**
     * @param folder where documents, lenses and settings are kept
     * @param usual  what counts where the settings say nothing
     */
    Screens(Path folder, Settings usual) {
        SettingsFile file = new SettingsFile(folder.resolve("settings.json"), usual);
        OwnDocument.Read<Settings> read = file.read();
        read.value().language().ifPresent(Language::choose);
        Look.choose(read.value().look());
        OwnRanges ranges = new OwnRanges(folder.resolve("ranges.json"));
        OwnCorrections corrections = new OwnCorrections(folder.resolve("corrections.json"));
        say(Stream.of(read.remark(), ranges.remark(), corrections.remark())
                .filter(r -> !r.isEmpty())
                .collect(Collectors.joining(" ")));
        records = new Records(read.value(), ranges::all, status);
        sheet = new Sheet(folder, records, ranges, corrections, background, status, this::go);
        Studio studio = new Studio(
                sheet.model(),
                sheet.desk(),
                records,
                background,
                sheet::findings,
                sheet.clips()::frames,
                ranges,
                sheet::words,
                this::say,
                this::go);
        makers.put(Sheet.ID, () -> sheet);
        makers.put("players", () -> new PlayersScreen(studio));
        makers.put("across", () -> new AcrossScreen(studio));
        makers.put("shots", () -> new ShotsScreen(studio));
        makers.put(HandOverScreen.ID, () -> new HandOverScreen(studio, folder.resolve("phrases.json")));
        makers.put("ranges", () -> new RangesScreen(studio));
        handOver = new HandOverActs(
                studio,
                () -> (HandOverScreen) screen(HandOverScreen.ID),
                sheet.films(),
                sheet.clips()::reel,
                this::whileLarge);
        sheet.assessed(() -> {
            if (shown.equals(HandOverScreen.ID)) {
                screen(HandOverScreen.ID).entered();
            }
        });
        menu = new DeskMenu(studio, sheet, file);
        root.setTop(row(menu, new LessonName(studio)));
        root.setBottom(status);
        records.listen(new OtherBay(studio, root));
        go(Sheet.ID);
    }

    /** In more than one line where the window is narrow and the text large. */
    private HBox row(Node menu, Node name) {
        FlowPane row = new FlowPane(4, 2, menu);
        row.setAlignment(Pos.CENTER_LEFT);
        row.getStyleClass().add("screens-row");
        makers.keySet().forEach(id -> {
            ToggleButton button = new ToggleButton(Texts.of("screen." + id));
            button.setId("go-" + id);
            button.setMinWidth(Region.USE_PREF_SIZE);
            button.setTooltip(new Tooltip(Texts.of("screen." + id + ".hint")));
            button.setOnAction(e -> go(id));
            buttons.put(id, button);
            row.getChildren().add(button);
        });
        HBox whole = new HBox(4, row, name);
        whole.setAlignment(Pos.CENTER_LEFT);
        HBox.setHgrow(row, Priority.ALWAYS);
        whole.getStyleClass().add("screens");
        return whole;
    }

    Parent root() {
        return root;
    }

    Sheet sheet() {
        return sheet;
    }

    Records records() {
        return records;
    }

    /** @throws IllegalArgumentException when there is none of that id */
    Screen screen(String id) {
        Supplier<Screen> maker = Optional.ofNullable(makers.get(id))
                .orElseThrow(() -> new IllegalStateException("there is no screen “" + id + "”"));
        return screens.computeIfAbsent(id, i -> maker.get());
    }

    /** A lesson's file that was double-clicked. */
    void open(Path file) {
        go(Sheet.ID);
        sheet.desk().open(file);
    }

    void go(String id) {
        Screen next = screen(id);
        buttons.forEach((other, button) -> button.setSelected(other.equals(id)));
        if (!id.equals(shown)) {
            Optional.ofNullable(screens.get(shown)).ifPresent(Screen::left);
            shown = id;
            root.setCenter(next.root());
        }
        next.entered();
    }

    void say(String sentence) {
        status.accept(sentence);
    }

    /** Keys that work wherever the focus is, except in a field. */
    void keys(Scene scene) {
        status.listenTo(scene);
        scene.addEventFilter(KeyEvent.KEY_PRESSED, e -> {
            Node owner = scene.getFocusOwner();
            if (e.getCode() == KeyCode.SPACE && owner instanceof ComboBoxBase<?> box && !box.isShowing()) {
                // the toolkit's own key for it is a screen's
                box.show();
                e.consume();
                return;
            }
            boolean field = owner instanceof TextInputControl;
            if (sheet.keyBook()
                    .asked(e)
                    .filter(act -> !isForControl(act, owner))
                    .filter(act -> done(act, field))
                    .isPresent()) {
                e.consume();
            }
        });
    }

    /** What the keyboard has come to is pressed with the space bar or Enter, as everywhere; an open list has all of its keys. */
    private static boolean isForControl(Act act, @Nullable Node owner) {
        if (owner instanceof ComboBoxBase<?> box) {
            return act == Act.PLAY || box.isShowing() && !act.screen().isPresent();
        }
        return owner instanceof ButtonBase
                && (act == Act.PLAY || act == Act.ACCEPT && (owner.isFocusVisible() || owner instanceof Chip));
    }

    private boolean done(Act act, boolean inField) {
        Optional<String> screen = act.screen().filter(makers::containsKey);
        if (screen.isPresent()) {
            go(screen.get());
            return true;
        }
        if (doneAnywhere(act)) {
            return true;
        }
        boolean sheets = shown.equals(Sheet.ID);
        // in a field the key copies what is chosen there
        if ((sheets || shown.equals(HandOverScreen.ID)) && !(inField && act == Act.COPY) && handedOver(act)) {
            return true;
        }
        if (inField || !sheets) {
            return false;
        }
        sheet.act(act);
        return true;
    }

    private boolean doneAnywhere(Act act) {
        switch (act) {
            case NEW -> sheet.desk().fresh();
            case OPEN -> menu.open();
            case KEPT -> sheet.kept();
            case KEYS -> menu.keys();
            default -> {
                return false;
            }
        }
        return true;
    }

    private boolean handedOver(Act act) {
        Window window = root.getScene().getWindow();
        switch (act) {
            case COPY -> handOver.copy();
            case PRINT -> handOver.print(window);
            case KEEP_STILL -> handOver.keepStill();
            case FULL_SCREEN -> handOver.large(window);
            default -> {
                return false;
            }
        }
        return true;
    }

    /** While the player is shown the picture large, keys play the film and nothing else. */
    private boolean whileLarge(KeyEvent key) {
        Optional<Act> act = sheet.keyBook().asked(key);
        act.filter(Act::plays).ifPresent(sheet::act);
        return act.filter(a -> a == Act.FULL_SCREEN).isEmpty();
    }

    void close() {
        try {
            screens.values().forEach(Screen::close);
        } finally {
            records.close();
        }
    }
}

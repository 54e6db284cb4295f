package org.toeline.desk;

import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.control.CheckMenuItem;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.control.TextArea;
import javafx.scene.control.TitledPane;
import javafx.scene.layout.VBox;
import org.toeline.across.StatedFindings;
import org.toeline.desk.dialog.DialogFrame;
import org.toeline.desk.dialog.FileDialog;
import org.toeline.desk.keys.Act;
import org.toeline.desk.keys.KeySheet;
import org.toeline.desk.players.Said;
import org.toeline.desk.records.SettingsDialog;
import org.toeline.desk.records.SettingsFile;
import org.toeline.desk.screen.Studio;
import org.toeline.desk.sheet.CorrectionsDialog;
import org.toeline.desk.sheet.Sheet;
import org.toeline.desk.text.Texts;
import org.toeline.document.WholeFile;
import org.toeline.language.Version;
import org.toeline.ledger.DocumentException;
import org.toeline.ledger.store.Ledger;
import org.toeline.ledger.store.exchange.LessonImport;
import org.toeline.ledger.store.exchange.ReadingsCsv;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.rows.LessonLine;
import org.toeline.ledger.store.rows.Search;

/** What is needed once in a while: new lessons, documents, taking in and giving out, settings and keys. */
final class DeskMenu extends MenuButton {

    private static final int RECENT = 8;
    private static final Map<String, Act> KEYS =
            Map.of("new", Act.NEW, "open", Act.OPEN, "kept", Act.KEPT, "find", Act.FIND, "keys", Act.KEYS);

    private final Menu recent = new Menu(Texts.of("menu.recent"));
    private final CheckMenuItem suggests = new CheckMenuItem(Texts.of("menu.suggests"));
    private final Studio studio;
    private final Sheet sheet;
    private final SettingsFile settings;

    DeskMenu(Studio studio, Sheet sheet, SettingsFile settings) {
        super(Texts.of("menu"));
        this.studio = studio;
        this.sheet = sheet;
        this.settings = settings;
        setId("menu");
        setMinWidth(USE_PREF_SIZE);
        recent.setId("menu-recent");
        suggests.setId("menu-suggests");
        suggests.setOnAction(e -> sheet.assistant().drafts().want(suggests.isSelected()));
        setOnShowing(e -> {
            suggests.setSelected(sheet.assistant().drafts().wanted());
            showKeys();
            recentLessons();
        });
        setOnHidden(e -> hideKeys());
        getItems()
                .addAll(
                        item("new", sheet.desk()::fresh),
                        item("same-setup", sheet.desk()::sameSetup),
                        recent,
                        item("find", () -> studio.go().accept("players")),
                        new SeparatorMenuItem(),
                        item("open", this::open),
                        item("keep", this::keep),
                        item("kept", sheet::kept),
                        item("sample", sheet.desk()::sample),
                        new SeparatorMenuItem(),
                        item("take-in", this::takeIn),
                        item("table", this::table),
                        item("back-up", this::backUp),
                        item("go-back", () -> GoingBack.ask(studio, getScene().getWindow())),
                        new SeparatorMenuItem(),
                        item("settings", this::settings),
                        suggests,
                        item("corrections", this::corrections),
                        item(
                                "guide",
                                () -> new GuideWindow(studio).show(getScene().getWindow())),
                        item("keys", this::keys),
                        item("about", this::about));
    }

    /** The keys as they are now, whichever screen is shown. */
    void keys() {
        KeySheet.show(sheet.keyBook(), getScene().getWindow());
    }

    /** Beside the items that have one: the coach may have changed them since. */
    private void showKeys() {
        KEYS.forEach((id, act) -> getItems().stream()
                .filter(i -> ("menu-" + id).equals(i.getId()))
                .forEach(i -> i.setAccelerator(sheet.keyBook().key(act))));
    }

    /** The key filter of the window is what presses them. */
    private void hideKeys() {
        getItems().forEach(i -> i.setAccelerator(null));
    }

    private void recentLessons() {
        studio.records()
                .ask(
                        l -> l.find(Search.RECENT.withMost(RECENT)),
                        lines -> recent.getItems()
                                .setAll(lines.stream().map(this::recent).toList()));
    }

    private MenuItem recent(LessonLine line) {
        MenuItem item =
                new MenuItem(Said.player(line.playerName(), line.playerId()) + " · " + Said.day(line.recorded()));
        item.setMnemonicParsing(false);
        item.setOnAction(e -> studio.desk().open(line.id()));
        return item;
    }

    private static MenuItem item(String id, Runnable action) {
        MenuItem item = new MenuItem(Texts.of("menu." + id));
        item.setId("menu-" + id);
        item.setOnAction(e -> action.run());
        return item;
    }

    private static FileDialog lessons(String pressed) {
        return new FileDialog(FileDialog.Kind.LESSONS, pressed);
    }

    void open() {
        lessons("menu.open")
                .showing(Texts.of("menu.lessons"), "*.lesson.json")
                .showing(Texts.of("shots.any-file"), "*.*")
                .open(getScene().getWindow())
                .ifPresent(sheet::open);
    }

    private void keep() {
        lessons("menu.keep")
                .showing(Texts.of("menu.lessons"), "*.lesson.json")
                .save(getScene().getWindow())
                .ifPresent(file -> {
                    studio.model().keepIn(file);
                    studio.say().accept(Texts.of("kept", file));
                });
    }

    private void takeIn() {
        List<Path> paths = lessons("menu.take-in")
                .showing(Texts.of("menu.lessons"), "*.json", "*.zip")
                .openSeveral(getScene().getWindow());
        if (!paths.isEmpty()) {
            studio.records().ask(l -> takeIn(l, paths), said -> {
                studio.say().accept(said);
                studio.go().accept("players");
            });
        }
    }

    private String takeIn(Ledger ledger, List<Path> files) throws LedgerException {
        LessonImport imports =
                new LessonImport(ledger, studio.records().settings().folder(), StatedFindings::of);
        List<String> faults = new ArrayList<>();
        for (Path file : files) {
            try {
                imports.take(file, Optional.empty());
            } catch (DocumentException e) {
                faults.add(e.getMessage());
            }
        }
        return Texts.of("menu.taken-in", files.size() - faults.size(), files.size())
                + (faults.isEmpty() ? "" : "; " + String.join("; ", faults));
    }

    private void table() {
        new FileDialog(FileDialog.Kind.PAGES, "menu.table")
                .showing(Texts.of("menu.tables"), "*.csv")
                .save(getScene().getWindow())
                .ifPresent(file -> studio.records()
                        .ask(
                                l -> {
                                    StringWriter table = new StringWriter();
                                    ReadingsCsv.write(l, table);
                                    WholeFile.write(file, table.toString().getBytes(StandardCharsets.UTF_8));
                                    return file;
                                },
                                done -> studio.say().accept(Texts.of("kept", done))));
    }

    private void backUp() {
        studio.say().accept(Texts.of("menu.backing-up"));
        studio.records()
                .ask(
                        l -> l.backUp(studio.records().settings().folder()),
                        file -> studio.say().accept(Texts.of("menu.backed-up", file)));
    }

    private void settings() {
        SettingsDialog.ask(settings, settings.read().value(), getScene().getWindow(), studio.say());
    }

    private void corrections() {
        CorrectionsDialog.show(
                sheet.assistant().learning(), sheet.words(), getScene().getWindow(), studio.say());
    }

    private void about() {
        TextArea licences = new TextArea();
        licences.setId("licences");
        licences.setEditable(false);
        licences.setPrefRowCount(14);
        licences.setWrapText(true);
        TitledPane folded = new TitledPane(Texts.of("about.licences"), licences);
        folded.setExpanded(false);
        folded.setAnimated(false);
        folded.setId("about-licences");
        folded.expandedProperty().addListener((o, before, open) -> {
            if (open && licences.getText().isEmpty()) {
                studio.background().run(LicenceTexts::all, licences::setText);
            }
        });
        new DialogFrame(getScene().getWindow(), Texts.of("about.title"))
                .middle(new VBox(
                        12,
                        DialogFrame.wrapped(
                                Texts.of("about.text", Version.words(), System.getProperty("java.version"))),
                        folded))
                .leave(Texts.of("dialog.close"))
                .show();
    }
}

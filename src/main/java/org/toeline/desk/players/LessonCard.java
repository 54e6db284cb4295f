package org.toeline.desk.players;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.UnaryOperator;
import javafx.animation.PauseTransition;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import javafx.util.Duration;
import org.toeline.desk.look.Look;
import org.toeline.desk.screen.Controls;
import org.toeline.desk.screen.KeptFocus;
import org.toeline.desk.screen.Studio;
import org.toeline.desk.text.Texts;
import org.toeline.desk.text.TypedNumber;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.store.rows.Aside;
import org.toeline.ledger.store.rows.LessonLine;
import org.toeline.ledger.store.rows.PlayerDetails;
import org.toeline.ledger.store.rows.Saved;
import org.toeline.ledger.store.rows.StatedFinding;
import org.toeline.ledger.store.rows.Take;

/** What is known of the chosen lesson and its player, and what can be done with them. */
final class LessonCard extends VBox {

    private static final double TEXT_WIDTH = 560;
    private static final Duration REST = Duration.seconds(1.5);

    private final Studio studio;
    private final Runnable changed;
    private final ShelfActions actions;
    private final AtomicInteger latest = new AtomicInteger();
    /** What is written is kept when a field is left, and when the hand rests. */
    private final PauseTransition rest = new PauseTransition(REST);

    /** What the card shows, with what is written in its fields as it was kept last. */
    private Optional<Shelf> shown = Optional.empty();

    private final TextField place = new TextField();
    private final TextArea notes = Controls.tabbed(new TextArea());
    /** It stays while all around it is shown anew: whoever is writing, or on the way there by Tab, writes on. */
    private final VBox written = new VBox(6, place, notes);

    private final VBox above = new VBox(14);
    private final VBox below = new VBox(14);

    /** @param changed called when something in the ledger was changed from here */
    LessonCard(Studio studio, Runnable changed) {
        super(14);
        this.studio = studio;
        this.changed = changed;
        this.actions = new ShelfActions(studio, this, changed);
        setId("lesson-card");
        setPadding(new Insets(16, 24, 16, 16));
        rest.setOnFinished(e -> note());
        writable(place, "place");
        writable(notes, "notes");
        notes.setPrefRowCount(4);
        notes.setWrapText(true);
    }

    private void writable(TextInputControl field, String id) {
        field.setId(id);
        field.setPromptText(Texts.of("players." + id));
        field.setAccessibleText(Texts.of("players." + id));
        field.setMaxWidth(Look.px(TEXT_WIDTH));
        field.textProperty().addListener((o, before, now) -> rest.playFromStart());
        field.focusedProperty().addListener((o, before, now) -> {
            if (!now) {
                note();
            }
        });
    }

    void clear() {
        note();
        shown = Optional.empty();
        latest.incrementAndGet();
        getChildren().clear();
    }

    void show(LessonLine line) {
        int own = latest.incrementAndGet();
        studio.records().ask(l -> Shelf.of(l, studio.records().settings().folder(), line.id()), shelf -> {
            if (own == latest.get()) {
                shelf.ifPresentOrElse(this::show, this::clear);
            }
        });
    }

    /** The lesson that is shown already is shown anew only where more than its words has changed: somebody may be writing. */
    private void show(Shelf shelf) {
        boolean writing = shown.filter(s -> s.kept().id() == shelf.kept().id()).isPresent()
                && (place.isFocused() || notes.isFocused());
        if (writing && shown.filter(s -> s.isButForWords(shelf)).isPresent()) {
            return;
        }
        if (!writing) {
            note();
            place.setText(shelf.kept().lesson().place());
            notes.setText(shelf.kept().lesson().notes());
        }
        shown = Optional.of(shelf);
        KeptFocus.over(this, () -> {
            above.getChildren().setAll(player(shelf), lesson(shelf), findings(shelf));
            below.getChildren().setAll(clips(shelf));
            shelf.asides().forEach(aside -> below.getChildren().add(aside(shelf, aside)));
            below.getChildren().add(actions.row(shelf));
            if (getChildren().isEmpty()) {
                getChildren().setAll(above, written, below);
            }
        });
    }

    private VBox player(Shelf shelf) {
        PlayerDetails details = shelf.player().details();
        Label name = new Label(Said.player(details.name(), shelf.player().id()));
        name.getStyleClass().add("first-title");
        name.setId("card-player");
        name.setWrapText(true);
        StringBuilder about =
                new StringBuilder(Texts.of("hand." + details.handedness().id()));
        details.heightM()
                .ifPresent(h -> about.append(" · ").append(Texts.of("players.height", TypedNumber.shown(h, "0.00"))));
        details.bornYear().ifPresent(y -> about.append(" · ").append(Texts.of("players.born", Integer.toString(y))));
        Label line = new Label(about.toString());
        line.getStyleClass().add("first-follows");
        Label note = new Label(details.note());
        note.setWrapText(true);
        note.setMaxWidth(Look.px(TEXT_WIDTH));
        note.setVisible(!details.note().isBlank());
        note.setManaged(note.isVisible());
        FlowPane row = new FlowPane(
                8,
                6,
                Controls.button("edit-player", "players.edit", () -> actions.edit(shelf.player())),
                Controls.button(
                        "new-lesson", "players.new-for", () -> studio.desk().fresh(shelf.player())));
        Button one = Controls.button("one-with", "one.with", () -> {});
        one.setOnAction(e -> OnePerson.ask(studio, one, shelf.player(), changed));
        row.getChildren().addAll(one, actions.deletesPlayer(shelf.player()));
        return new VBox(4, name, line, note, row);
    }

    private VBox lesson(Shelf shelf) {
        Lesson lesson = shelf.kept().lesson();
        Label when = new Label(Said.day(lesson.recorded().map(Object::toString)) + " · "
                + Said.club(studio.words().get(), lesson.sheet().club().id()));
        when.getStyleClass().addAll("larger", "strong");
        Button open = Controls.button(
                "open-lesson",
                "players.open",
                () -> studio.desk().open(shelf.kept().id()));
        open.setDefaultButton(false);
        open.getStyleClass().add("strong");
        Button again = Controls.button(
                "same-setup",
                "setup.again",
                () -> studio.desk().sameSetup(shelf.kept().id()));
        again.setTooltip(new Tooltip(Texts.of("setup.again.hint")));
        FlowPane row = new FlowPane(16, 6, when, open, again);
        row.setAlignment(Pos.CENTER_LEFT);
        VBox box = new VBox(6, row);
        if (!lesson.setup().isEmpty()) {
            Label one = new Label(Texts.of("setup.one-of-several"));
            one.getStyleClass().add("hint");
            HBox of = new HBox(
                    8,
                    one,
                    Controls.button("other-setup", "setup.another", () -> describe(shelf, l -> l.withSetup(""))));
            of.setAlignment(Pos.CENTER_LEFT);
            box.getChildren().add(of);
        }
        return box;
    }

    private static Label wrapped(String text) {
        Label label = new Label(text);
        label.setWrapText(true);
        label.setMinHeight(USE_PREF_SIZE);
        return label;
    }

    private VBox findings(Shelf shelf) {
        VBox box = new VBox(3);
        List<StatedFinding> out = shelf.kept().findings().stream()
                .filter(f -> f.verdict().filter(v -> v.startsWith("out")).isPresent())
                .toList();
        if (shelf.kept().findings().stream().noneMatch(f -> f.verdict().isPresent())) {
            box.getChildren().add(wrapped(Texts.of("players.no-findings")));
        } else if (out.isEmpty()) {
            box.getChildren().add(wrapped(Texts.of("players.nothing-out")));
        }
        for (StatedFinding finding : out) {
            Label line = wrapped((finding.place() == StatedFinding.Place.FIRST ? "◆ " : "◇ ")
                    + Said.reading(studio.words().get(), finding.reading()) + ": "
                    + Said.figure(studio.words().get(), finding)
                    + (finding.place() == StatedFinding.Place.FIRST ? " " + Texts.of("players.was-first") : ""));
            line.getStyleClass().add("warns");
            box.getChildren().add(line);
        }
        return box;
    }

    /** Keeps what is written in the fields, where it is not what was kept last. */
    void note() {
        Optional<Shelf> of = shown.filter(s -> !s.kept().lesson().place().equals(place.getText())
                || !s.kept().lesson().notes().equals(notes.getText()));
        of.ifPresent(shelf -> {
            String where = place.getText();
            String what = notes.getText();
            shown = Optional.of(shelf.with(l -> l.withPlace(where).withNotes(what)));
            describe(shelf, l -> l.withPlace(where).withNotes(what));
        });
    }

    /** Keeps what was said of a lesson: through the desk when that has it, so that neither overwrites the other. */
    private void describe(Shelf shelf, UnaryOperator<Lesson> change) {
        int id = shelf.kept().id();
        if (studio.records().lessonId().equals(java.util.OptionalInt.of(id))) {
            studio.model().describe(change);
            changed.run();
            return;
        }
        studio.records()
                .ask(
                        l -> {
                            var now = l.lesson(id).orElseThrow();
                            return l.save(id, now.version(), change.apply(now.lesson()), now.findings());
                        },
                        saved -> {
                            if (saved instanceof Saved.Conflict conflict) {
                                studio.say().accept(conflict.sentence());
                            }
                            changed.run();
                        });
    }

    private VBox clips(Shelf shelf) {
        VBox box = new VBox(3);
        for (Take take : shelf.takes()) {
            boolean there = shelf.clips().containsKey(take.view());
            Label line = wrapped(Texts.of(
                    there ? "players.clip" : "players.clip-missing",
                    Texts.of("view." + take.view().id()),
                    java.nio.file.Path.of(take.path()).getFileName()));
            line.getStyleClass().add(there ? "hint" : "doubt");
            line.setTooltip(new Tooltip(take.path()));
            box.getChildren().add(line);
        }
        return box;
    }

    private HBox aside(Shelf shelf, Aside aside) {
        Label label = new Label(Texts.of("players.aside", aside.keptBy(), Said.day(Optional.of(aside.keptAt()))));
        label.getStyleClass().add("doubt");
        HBox row = new HBox(
                8,
                label,
                Controls.button("aside-take", "players.aside-take", () -> actions.take(shelf, aside)),
                Controls.button("aside-drop", "players.aside-drop", () -> actions.drop(aside)));
        row.setAlignment(Pos.CENTER_LEFT);
        return row;
    }
}

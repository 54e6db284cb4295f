package org.toeline.desk.handover;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.RadioButton;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.control.TextFormatter;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.toeline.advice.Words;
import org.toeline.desk.players.Said;
import org.toeline.desk.screen.Controls;
import org.toeline.desk.text.Texts;
import org.toeline.handout.FaceCover;
import org.toeline.handout.Handout;
import org.toeline.handout.Paper;
import org.toeline.handout.Signed;
import org.toeline.handout.StillOptions;
import org.toeline.language.Language;
import org.toeline.ledger.store.rows.LessonLine;
import org.toeline.mark.View;

/** What can be chosen about a handout; every change is shown at once. */
final class ChoicesPane extends VBox {

    private final HandOver handOver;
    private final OwnWords own;
    private final Runnable changed;
    private final ComboBox<Optional<View>> view = new ComboBox<>();
    private final ComboBox<Optional<LessonLine>> beside = new ComboBox<>();
    private final TextArea words = Controls.tabbed(new TextArea());
    private final MenuButton sentences = new MenuButton(Texts.of("hand-over.sentences"));
    private final GridPane grid = new GridPane();

    ChoicesPane(HandOver handOver, OwnWords own, Runnable changed) {
        super(12);
        this.handOver = handOver;
        this.own = own;
        this.changed = changed;
        grid.setHgap(10);
        grid.setVgap(8);
        ColumnConstraints boxes = new ColumnConstraints();
        boxes.setHgrow(Priority.ALWAYS);
        grid.getColumnConstraints().setAll(new ColumnConstraints(), boxes);
        getChildren().addAll(shown(), grid, face(), coachsWords(), contact());
        view.setConverter(Controls.names(
                v -> v.map(k -> Texts.of("view." + k.id())).orElse(Texts.of("hand-over.best-view"))));
        view.setOnAction(e -> Optional.ofNullable(view.getValue()).ifPresent(v -> choose(c -> c.withView(v))));
        row("hand-over-view", "hand-over.view", view);
        beside.setConverter(Controls.names(
                b -> b.map(l -> Said.day(l.recorded()) + " (" + l.id() + ")").orElse(Texts.of("hand-over.alone"))));
        beside.getItems().setAll(Optional.empty());
        beside.setValue(Optional.empty());
        beside.setOnAction(e -> Optional.ofNullable(beside.getValue()).ifPresent(b -> handOver.beside(b, changed)));
        row("hand-over-beside", "hand-over.beside", beside);
        row(
                "hand-over-lines",
                "hand-over.lines",
                combo(
                        List.of(StillOptions.Lines.values()),
                        l -> Texts.of("hand-over.lines." + low(l)),
                        StillOptions.Lines.THAT_MATTER,
                        Choices::withLines));
        row(
                "hand-over-signed",
                "hand-over.signed",
                combo(
                        List.of(Signed.values()),
                        s -> Texts.of("hand-over.signed." + low(s)),
                        Signed.INITIALS_AND_DATE,
                        Choices::withSigned));
        row(
                "hand-over-language",
                "hand-over.language",
                combo(Words.languages(), l -> l.getDisplayLanguage(l), Language.spoken(), Choices::withLanguage));
        row(
                "hand-over-paper",
                "hand-over.paper",
                combo(
                        List.of(Paper.values()),
                        p -> Texts.of("hand-over.paper." + low(p)),
                        handOver.choices().paper(),
                        Choices::withPaper));
    }

    private static String low(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private void choose(Function<Choices, Choices> change) {
        Choices now = change.apply(handOver.choices());
        if (!now.equals(handOver.choices())) {
            handOver.choose(now);
            changed.run();
        }
    }

    private FlowPane shown() {
        ToggleGroup group = new ToggleGroup();
        FlowPane row = new FlowPane(12, 6);
        for (Choices.Shown shown : Choices.Shown.values()) {
            RadioButton button = new RadioButton(Texts.of("hand-over.shown." + low(shown)));
            button.setId("shown-" + low(shown));
            button.setToggleGroup(group);
            button.setSelected(shown == handOver.choices().shown());
            button.setOnAction(e -> choose(c -> c.withShown(shown)));
            row.getChildren().add(button);
        }
        return row;
    }

    private <T> ComboBox<T> combo(
            List<T> all, Function<T, String> name, T first, BiFunction<Choices, T, Choices> change) {
        ComboBox<T> box = new ComboBox<>();
        box.getItems().setAll(all);
        box.setConverter(Controls.names(name));
        box.setValue(first);
        box.setOnAction(e -> choose(c -> change.apply(c, box.getValue())));
        return box;
    }

    private void row(String id, String key, ComboBox<?> box) {
        box.setId(id);
        box.setMaxWidth(Double.MAX_VALUE);
        Label label = new Label(Texts.of(key));
        label.setMinWidth(USE_PREF_SIZE);
        label.setLabelFor(box);
        grid.addRow(grid.getRowCount(), label, box);
    }

    private CheckBox face() {
        CheckBox face = new CheckBox(Texts.of("hand-over.face"));
        face.setId("hand-over-face");
        face.setOnAction(e -> choose(c -> c.withFace(face.isSelected() ? FaceCover.headMark() : FaceCover.none())));
        return face;
    }

    /** What is typed or pasted ends where there is no more room; what stands there already stays. */
    private static TextFormatter.@Nullable Change asFarAsItFits(TextFormatter.Change change) {
        int over = change.getControlNewText().length() - Handout.MOST_COACHS_WORDS;
        if (over > 0) {
            int fits = change.getText().length() - over;
            if (fits < 0) {
                return null;
            }
            change.setText(change.getText().substring(0, fits));
            int caret = change.getRangeStart() + fits;
            change.selectRange(caret, caret);
        }
        return change;
    }

    private VBox coachsWords() {
        Label label = new Label(Texts.of("hand-over.words"));
        label.setLabelFor(words);
        words.setId("hand-over-words");
        words.setWrapText(true);
        words.setPrefRowCount(4);
        Label left = new Label();
        left.getStyleClass().add("hint");
        words.textProperty().addListener((o, before, now) -> {
            left.setText(Texts.of("hand-over.words-left", Handout.MOST_COACHS_WORDS - now.length()));
            choose(c -> c.withCoachsWords(now));
        });
        words.setTextFormatter(new TextFormatter<>(ChoicesPane::asFarAsItFits));
        sentences.setId("hand-over-sentences");
        Button keep = new Button(Texts.of("hand-over.keep-sentence"));
        keep.setId("hand-over-keep-sentence");
        keep.disableProperty().bind(words.textProperty().isEmpty());
        keep.setOnAction(e -> {
            own.keepSentence(words.getText().strip());
            fill();
        });
        Button edit = new Button(Texts.of("hand-over.edit"));
        edit.setId("hand-over-edit");
        edit.setOnAction(e -> {
            PhrasesDialog.edit(own, handOver.choices().language(), getScene().getWindow(), () -> {
                handOver.phrases(own.phrases());
                changed.run();
            });
        });
        fill();
        return new VBox(6, label, words, left, new FlowPane(8, 8, sentences, keep, edit));
    }

    /** The coach's name and how to reach them, kept for all players when the field is left. */
    private VBox contact() {
        TextField contact = new TextField(own.phrases().contact());
        contact.setId("hand-over-contact");
        Label label = new Label(Texts.of("hand-over.contact"));
        label.setLabelFor(contact);
        contact.setTextFormatter(
                new TextFormatter<>(c -> c.getControlNewText().length() <= StillOptions.LONGEST_CONTACT ? c : null));
        Runnable kept = () -> {
            own.keepContact(contact.getText().strip());
            handOver.phrases(own.phrases());
            changed.run();
        };
        contact.setOnAction(e -> kept.run());
        contact.focusedProperty().addListener((o, before, now) -> {
            if (!now) {
                kept.run();
            }
        });
        return new VBox(6, label, contact);
    }

    /** The sentences that were kept, one click each. */
    private void fill() {
        List<MenuItem> items = new ArrayList<>();
        for (String sentence : own.phrases().own()) {
            MenuItem item = new MenuItem(sentence.length() > 60 ? sentence.substring(0, 60) + "…" : sentence);
            item.setMnemonicParsing(false);
            item.setOnAction(e -> words.setText((words.getText() + " " + sentence).strip()));
            items.add(item);
        }
        sentences.getItems().setAll(items);
        sentences.setDisable(items.isEmpty());
    }

    /** Brings the views to choose from up to date with the lesson. */
    void update() {
        Optional<View> before = Optional.ofNullable(view.getValue()).orElse(Optional.empty());
        List<Optional<View>> all = new ArrayList<>();
        all.add(Optional.empty());
        handOver.views().forEach(v -> all.add(Optional.of(v)));
        view.getItems().setAll(all);
        view.setValue(all.contains(before) ? before : Optional.empty());
        handOver.earlierLessons(lines -> {
            Optional<LessonLine> chosen = Optional.ofNullable(beside.getValue()).orElse(Optional.empty());
            List<Optional<LessonLine>> choices = new ArrayList<>();
            choices.add(Optional.empty());
            lines.forEach(l -> choices.add(Optional.of(l)));
            beside.getItems().setAll(choices);
            beside.setValue(choices.contains(chosen) ? chosen : Optional.empty());
            beside.setDisable(lines.isEmpty());
        });
    }
}

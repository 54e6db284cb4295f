package org.toeline.desk.shots;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.toeline.desk.text.Texts;
import org.toeline.desk.work.Background;
import org.toeline.flight.table.DecimalMark;
import org.toeline.flight.table.Imported;
import org.toeline.flight.table.LeftOut;
import org.toeline.flight.table.Separator;
import org.toeline.flight.table.Template;

/** A table from a file before it is taken in: its columns and what they are taken to mean, and what cannot be read. */
final class ImportPane extends BorderPane {

    /** More lines nobody reads, and making them takes long. */
    private static final int SAID = 150;

    private final Background.Lane reading;
    private final ImportGrid grid = new ImportGrid(this::change);
    private final FlowPane filters = new FlowPane(8, 4);
    private final ComboBox<Template> templates = new ComboBox<>();
    private final ComboBox<Separator> separator = new ComboBox<>();
    private final ComboBox<DecimalMark> mark = new ComboBox<>();
    private final VBox read = new VBox(3);
    private final TextField name = new TextField();
    private final Button take = new Button();
    private ImportModel model;
    /** What was corrected since that one. */
    private UnaryOperator<ImportModel> corrections = UnaryOperator.identity();

    private boolean filling;

    /**
     * @param reading reads the table anew after each correction
     * @param done    given what is to be taken in, or nothing
     */
    ImportPane(ImportModel model, Background.Lane reading, Consumer<Optional<ImportModel.Taken>> done) {
        this.model = model;
        this.reading = reading;
        setId("shots-import-pane");
        getStyleClass().add("paper");
        setPadding(new Insets(12));
        filters.setId("import-filters");
        filters.setAlignment(Pos.CENTER_LEFT);
        setTop(new VBox(8, title(), choices(), filters));
        ScrollPane columns = new ScrollPane(grid);
        columns.setFitToHeight(true);
        columns.setMinHeight(300);
        ScrollPane below = new ScrollPane(read);
        below.setFitToWidth(true);
        below.setMinHeight(80);
        VBox.setVgrow(below, javafx.scene.layout.Priority.ALWAYS);
        VBox center = new VBox(8, columns, below);
        center.setPadding(new Insets(8, 0, 8, 0));
        setCenter(center);
        setBottom(buttons(done));
        update();
    }

    private static Label title(String text) {
        Label label = new Label(text);
        label.getStyleClass().add("next");
        return label;
    }

    private Label title() {
        return title(Texts.of("shots.import.title", model.file().getFileName()));
    }

    private HBox choices() {
        templates.getItems().setAll(model.templates());
        templates.setConverter(new ShownAs<>(Template::name));
        templates.setId("import-template");
        templates.setOnAction(e -> change(m -> m.use(templates.getValue())));
        separator.getItems().setAll(Separator.values());
        separator.setConverter(new ShownAs<>(s -> Texts.of("shots.separator." + s.id())));
        separator.setId("import-separator");
        separator.setOnAction(e -> change(m -> m.cutAt(separator.getValue(), mark.getValue())));
        mark.getItems().setAll(DecimalMark.values());
        mark.setConverter(new ShownAs<>(d -> Texts.of("shots.decimal." + d.id())));
        mark.setId("import-decimal");
        mark.setOnAction(e -> change(m -> m.cutAt(separator.getValue(), mark.getValue())));
        HBox row = new HBox(
                8,
                labelled("shots.import.template", templates),
                templates,
                labelled("shots.import.separator", separator),
                separator,
                labelled("shots.import.decimal", mark),
                mark);
        row.setAlignment(Pos.CENTER_LEFT);
        return row;
    }

    private static Label labelled(String key, javafx.scene.control.Control of) {
        Label label = new Label(Texts.of(key));
        label.setLabelFor(of);
        of.setAccessibleText(label.getText());
        return label;
    }

    private HBox buttons(Consumer<Optional<ImportModel.Taken>> done) {
        name.setId("import-name");
        name.setPrefColumnCount(22);
        name.setPromptText(Texts.of("shots.import.name.hint"));
        take.setId("import-take");
        take.setDefaultButton(true);
        take.setOnAction(e -> done.accept(Optional.of(model.taken(name.getText()))));
        Button cancel = new Button(Texts.of("shots.import.cancel"));
        cancel.setId("import-cancel");
        cancel.setCancelButton(true);
        cancel.setOnAction(e -> done.accept(Optional.empty()));
        HBox row = new HBox(8, labelled("shots.import.name", name), name, take, cancel);
        row.setAlignment(Pos.CENTER_LEFT);
        return row;
    }

    /** Reads the table as it is corrected; until that is done nothing can be taken in. */
    private void change(UnaryOperator<ImportModel> correction) {
        if (filling) {
            return;
        }
        UnaryOperator<ImportModel> earlier = corrections;
        UnaryOperator<ImportModel> all = m -> correction.apply(earlier.apply(m));
        ImportModel from = model;
        corrections = all;
        take.setDisable(true);
        reading.run(() -> all.apply(from), read -> {
            model = read;
            corrections = UnaryOperator.identity();
            update();
        });
    }

    private void update() {
        filling = true;
        templates.setValue(model.templates().stream()
                .filter(t -> t.name().equals(model.template().name()))
                .findFirst()
                .orElse(model.templates().get(0)));
        separator.setValue(model.template().separator());
        mark.setValue(model.template().decimalMark());
        filling = false;
        grid.update(model);
        showFilters();
        Imported imported = model.imported();
        int n = imported.shots().size();
        take.setText(Texts.of("shots.import.take", n));
        take.setDisable(n == 0 || !model.chosen());
        read.getChildren().clear();
        say("shots-head", n == 0 ? Texts.of("shots.import.none") : Texts.of("shots.import.read", n, figures()));
        model.filters().keySet().stream()
                .filter(heading -> model.wanted(heading).isEmpty()
                        && model.setups().filter(heading::equals).isEmpty())
                .forEach(heading -> say("shots-head", "? " + Texts.of("shots.import.mixed", name(heading))));
        model.setups()
                .filter(heading -> model.wanted(heading).isEmpty())
                .ifPresent(heading -> say(
                        "shots-line", Texts.of("shots.import.in-setups", heading, Imported.unnamed(imported.shots()))));
        model.asked()
                .forEach(a -> say(
                        "shots-head",
                        "? "
                                + Texts.of(
                                        "shots.import.asked",
                                        a.heading(),
                                        a.perhaps()
                                                .map(c -> Texts.of("shots.figure."
                                                        + c.meaning().id()))
                                                .orElse("–"),
                                        a.why(),
                                        String.join(" · ", a.values()))));
        imported.notes().forEach(s -> say("shots-line", "! " + s));
        for (LeftOut out :
                imported.leftOut().subList(0, Math.min(SAID, imported.leftOut().size()))) {
            say(
                    "shots-line",
                    Texts.of(
                            out.extent() == LeftOut.Extent.ROW ? "shots.import.row-out" : "shots.import.cell-out",
                            out.line(),
                            out.reason()));
        }
        if (imported.leftOut().size() > SAID) {
            say("shots-line", Texts.of("shots.import.more", imported.leftOut().size() - SAID));
        }
    }

    /** One of those under a heading, or all of them as setups that are compared. */
    private record Wanted(Optional<String> value, String words) {}

    /** Of several clubs, players or days one is chosen; they are never mixed. Setups may all be taken in. */
    private void showFilters() {
        filters.getChildren().clear();
        model.filters().forEach((heading, values) -> {
            ComboBox<Wanted> box = new ComboBox<>();
            if (Imported.mayNameSetups(heading)) {
                long setups =
                        values.keySet().stream().filter(Imported::namesASetup).count();
                box.getItems().add(new Wanted(Optional.empty(), Texts.of("shots.import.setups", setups)));
            }
            values.forEach((value, shots) -> box.getItems()
                    .add(new Wanted(
                            Optional.of(value), Texts.of("shots.import.group", LessonNames.line(value), shots))));
            box.setConverter(new ShownAs<>(Wanted::words));
            box.setPromptText(Texts.of("shots.import.choose"));
            box.getItems().stream()
                    .filter(w -> w.value.isPresent()
                            ? w.value.equals(model.wanted(heading))
                            : model.wanted(heading).isEmpty()
                                    && model.setups().filter(heading::equals).isPresent())
                    .findFirst()
                    .ifPresent(box::setValue);
            box.setId("import-only-" + filters.getChildren().size() / 2);
            box.setOnAction(e -> {
                Optional<String> value = box.getValue().value;
                change(m -> value.map(v -> m.only(heading, v)).orElseGet(() -> m.inSetups(heading)));
            });
            Label label = new Label(Texts.of("shots.import.only", name(heading)));
            label.setLabelFor(box);
            box.setAccessibleText(label.getText());
            filters.getChildren().addAll(label, box);
        });
        filters.setManaged(!filters.getChildren().isEmpty());
    }

    private static String name(String heading) {
        return heading.equals(Imported.TITLE) ? Texts.of("shots.import.title-group") : heading;
    }

    private String figures() {
        return model.figures().stream()
                .map(f -> Texts.of("shots.figure." + f.id()))
                .collect(Collectors.joining(", "));
    }

    private void say(String style, String text) {
        Label label = new Label(text);
        label.setWrapText(true);
        label.setMinHeight(USE_PREF_SIZE);
        label.getStyleClass().add(style);
        read.getChildren().add(label);
    }
}

package org.toeline.desk.shots;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.GridPane;
import org.toeline.desk.look.Look;
import org.toeline.desk.text.Texts;
import org.toeline.flight.FigureUnit;
import org.toeline.flight.table.Column;
import org.toeline.flight.table.Meaning;
import org.toeline.flight.table.PositiveSide;

/** The columns of a table side by side: heading, what it means, its unit, which side a plus is, and the first rows. */
final class ImportGrid extends GridPane {

    private static final double WIDTH = 150;

    private final Consumer<UnaryOperator<ImportModel>> change;

    /** What a column can be taken for. */
    private record Use(Optional<Meaning> meaning, String words, String id) {}

    private static final Use NOTHING = new Use(Optional.empty(), Texts.of("shots.import.nothing"), "nothing");
    /** It says of each shot which club, player, day or setup it is of: which of them are wanted is chosen above the columns. */
    private static final Use ABOVE = new Use(Optional.empty(), Texts.of("shots.import.above"), "above");
    /** It says the same setup of each shot: there is nothing to choose. */
    private static final Use SETUP = new Use(Optional.empty(), Texts.of("shots.import.setup"), "setup");
    /** What a person has to decide yet; leaving it out is a decision too. */
    private static final Use UNDECIDED = new Use(Optional.empty(), Texts.of("shots.import.undecided"), "undecided");

    private static final Use REMARK = new Use(Optional.empty(), Texts.of("shots.import.remark"), "remark");

    /** @param change given what the coach corrects */
    ImportGrid(Consumer<UnaryOperator<ImportModel>> change) {
        this.change = change;
        setHgap(6);
        setVgap(4);
        setPadding(new Insets(6));
    }

    /** Only what is not shown yet is made anew: the focus stays where it was when nothing moved. */
    void update(ImportModel model) {
        Optional<String> focused =
                getChildren().stream().filter(Node::isFocused).map(Node::getId).findFirst();
        getChildren().clear();
        List<String> headings = model.look().headings();
        if (headings.isEmpty()) {
            add(new Label(Texts.of("shots.import.empty")), 0, 0);
        }
        for (int i = 0; i < headings.size(); i++) {
            column(model, i, headings.get(i));
        }
        focused.ifPresent(id -> getChildren().stream()
                .filter(n -> id.equals(n.getId()))
                .findFirst()
                .ifPresent(Node::requestFocus));
    }

    private void column(ImportModel model, int place, String heading) {
        Label head = new Label(heading);
        head.setWrapText(true);
        head.setMaxWidth(Look.px(WIDTH));
        head.setMinHeight(Look.px(38));
        head.getStyleClass().add("shots-head");
        add(head, place, 0);
        if (!heading.isEmpty()) {
            choices(model, place, heading);
        }
        List<List<String>> rows = model.look().rows();
        for (int r = 0; r < rows.size(); r++) {
            Label cell = new Label(rows.get(r).get(place));
            cell.setMaxWidth(Look.px(WIDTH));
            cell.getStyleClass().add("shots-line");
            add(cell, place, r + 4);
        }
    }

    private void choices(ImportModel model, int place, String heading) {
        Optional<Column> column = model.column(heading);
        boolean asked = model.asked().stream().anyMatch(a -> a.heading().equals(heading));
        Use nothing = model.filters().containsKey(heading)
                ? ABOVE
                : model.setups().filter(heading::equals).isPresent() ? SETUP : NOTHING;
        List<Use> uses = new ArrayList<>(asked ? List.of(UNDECIDED, nothing, REMARK) : List.of(nothing, REMARK));
        for (Meaning meaning : Meaning.values()) {
            uses.add(new Use(Optional.of(meaning), Texts.of("shots.figure." + meaning.id()), meaning.id()));
        }
        ComboBox<Use> meaning = box(
                uses,
                column.flatMap(c -> uses.stream()
                                .filter(u -> u.meaning().equals(Optional.of(c.meaning())))
                                .findFirst())
                        .orElse(model.remark(heading) ? REMARK : asked ? UNDECIDED : nothing),
                Use::words,
                use -> m -> means(m, heading, use));
        put(meaning, "import-meaning-" + place, "shots.import.meaning", heading, place, 1);
        column.ifPresent(c -> {
            ComboBox<FigureUnit> unit =
                    box(FigureUnit.of(c.meaning().quantity()), c.unit(), FigureUnit::id, u -> m -> m.in(heading, u));
            put(unit, "import-unit-" + place, "shots.import.unit", heading, place, 2);
            if (c.meaning().sided()) {
                ComboBox<PositiveSide> side = box(
                        List.of(PositiveSide.values()),
                        c.positiveSide(),
                        s -> Texts.of("shots.import.plus." + s.id()),
                        s -> m -> m.plusIs(heading, s));
                put(side, "import-plus-" + place, "shots.import.plus", heading, place, 3);
            }
        });
    }

    private static ImportModel means(ImportModel model, String heading, Use use) {
        if (use.meaning().isPresent()) {
            return model.means(heading, use.meaning().get());
        }
        return use.equals(REMARK) ? model.meansRemark(heading) : model.meansNothing(heading);
    }

    private <T> ComboBox<T> box(
            List<T> choices, T now, Function<T, String> words, Function<T, UnaryOperator<ImportModel>> act) {
        ComboBox<T> box = new ComboBox<>();
        box.getItems().setAll(choices);
        box.setConverter(new ShownAs<>(words));
        box.setValue(now);
        box.setPrefWidth(Look.px(WIDTH));
        Runnable chosen = () -> {
            if (!box.getValue().equals(now)) {
                change.accept(act.apply(box.getValue()));
            }
        };
        // who goes down the list by keys has chosen nothing on the way
        box.setOnAction(e -> {
            if (!box.isShowing()) {
                chosen.run();
            }
        });
        box.setOnHidden(e -> chosen.run());
        box.addEventFilter(KeyEvent.KEY_PRESSED, e -> {
            if (!box.isShowing() && (e.getCode() == KeyCode.UP || e.getCode() == KeyCode.DOWN)) {
                box.show();
                e.consume();
            }
        });
        return box;
    }

    private void put(ComboBox<?> box, String id, String words, String heading, int column, int row) {
        box.setId(id);
        box.setAccessibleText(Texts.of(words, heading));
        add(box, column, row);
    }
}

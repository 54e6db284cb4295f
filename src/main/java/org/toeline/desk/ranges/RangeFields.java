package org.toeline.desk.ranges;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.toeline.advice.Citations;
import org.toeline.advice.Provenance;
import org.toeline.advice.Range;
import org.toeline.advice.Words;
import org.toeline.desk.look.Look;
import org.toeline.desk.text.Texts;

/** One row: three fields, on whose word the range stands, and the way back. */
final class RangeFields {

    /** With larger text there is no room for who says so beside the fields. */
    private static final double ABREAST = 1.2;

    private static final double NUMBER = 76;
    private static final double WORD = 460;

    private final RangeRow row;
    private final Words words;
    private final Consumer<Range> put;
    private final Consumer<RangeRow> restore;
    private final TextField low = new TextField();
    private final TextField aim = new TextField();
    private final TextField high = new TextField();
    private final Label wrong = new Label();
    private final Label name;
    private final Label unit;
    private final VBox said;
    private final Button back;

    RangeFields(RangeRow row, Words words, Consumer<Range> put, Consumer<RangeRow> restore) {
        this.row = row;
        this.words = words;
        this.put = put;
        this.restore = restore;
        name = new Label(words.name(row.kind()));
        name.getStyleClass().add("strong");
        name.setMinWidth(Region.USE_PREF_SIZE);
        field(low, "low", row.counts().map(Range::shownLow));
        field(aim, "aim", row.counts().map(Range::shownAim));
        field(high, "high", row.counts().map(Range::shownHigh));
        wrong.getStyleClass().add("doubt");
        wrong.setVisible(false);
        wrong.setManaged(false);
        unit = new Label(
                switch (row.kind().unit()) {
                    case PERCENT -> "%";
                    case DEGREE -> "°";
                    case RATIO -> "×";
                    default -> row.kind().unit().id();
                });
        unit.setMinWidth(Region.USE_PREF_SIZE);
        said = new VBox(2, word(), wrong);
        back = back();
    }

    /** Whether these are a row's fields, whatever is typed in them. */
    boolean isOf(RangeRow other) {
        return row.equals(other);
    }

    void into(GridPane grid, int line) {
        grid.addRow(2 * line, name, low, aim, high, unit);
        grid.add(back, 6, 2 * line);
        if (isAbreast()) {
            grid.add(said, 5, 2 * line);
        } else {
            grid.add(said, 0, 2 * line + 1, 7, 1);
        }
    }

    /** Whether who says so stands beside the numbers, and not below. */
    static boolean isAbreast() {
        return Look.scale() <= ABREAST;
    }

    private void field(TextField field, String what, Optional<Double> value) {
        field.setText(value.map(RangeRow::shown).orElse(""));
        field.setPrefWidth(Look.px(NUMBER));
        field.setMinWidth(Look.px(NUMBER));
        field.setId("range-" + row.kind().id() + "-" + what);
        field.setAccessibleText(words.name(row.kind()) + ", " + Texts.of("ranges." + what));
        field.setOnAction(e -> take());
        field.focusedProperty().addListener((o, before, now) -> {
            if (!now && List.of(low, aim, high).stream().noneMatch(TextField::isFocused)) {
                take();
            }
        });
    }

    private Label word() {
        Label word = new Label(row.counts().map(this::word).orElse(Texts.of("ranges.none")));
        word.getStyleClass().add("hint");
        word.setWrapText(true);
        word.setPrefWidth(Look.px(WORD));
        word.setMinHeight(Region.USE_PREF_SIZE);
        word.setId("range-" + row.kind().id() + "-word");
        row.counts()
                .filter(r -> !r.note().isBlank())
                .ifPresent(r -> word.setTooltip(new Tooltip(Citations.in(words, r.note()))));
        return word;
    }

    private String word(Range range) {
        String shipped = row.shipped()
                .map(s -> " "
                        + Texts.of("ranges.instead-of", RangeRow.shown(s.shownLow()), RangeRow.shown(s.shownHigh())))
                .orElse("");
        if (range.provenance() == Provenance.COACHS_OWN) {
            return Texts.of("ranges.own") + shipped;
        }
        // the source of what no study says begins with just that
        String source = Citations.in(words, range.source());
        return range.provenance() == Provenance.COMMON_PRACTICE
                ? Words.sentenceCase(source)
                : Texts.of("ranges.by.published") + " " + source;
    }

    private Button back() {
        Button back = new Button(Texts.of("ranges.restore"));
        back.setId("range-" + row.kind().id() + "-restore");
        back.setMinWidth(Region.USE_PREF_SIZE);
        back.setDisable(row.own().isEmpty());
        back.setOnAction(e -> restore.accept(row));
        return back;
    }

    private void take() {
        try {
            Optional<Range> typed = row.typed(low.getText(), aim.getText(), high.getText(), Texts.of("ranges.own"));
            shown(Optional.empty());
            typed.ifPresent(put);
        } catch (IllegalArgumentException e) {
            shown(Optional.of(Texts.of(String.valueOf(e.getMessage()))));
        }
    }

    private void shown(Optional<String> fault) {
        wrong.setText(fault.orElse(""));
        wrong.setVisible(fault.isPresent());
        wrong.setManaged(fault.isPresent());
    }
}

package org.toeline.desk.shots;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import org.toeline.desk.look.Look;

/**
 * Lines of text in columns, shown anew at every key: labels that are there already only change their words, since making and
 * styling new ones takes longer than all the figures in them.
 */
final class TextGrid extends GridPane {

    /** Of a column that may be broken into lines, beside usual text: a word or two. */
    private static final double LEAST_BROKEN = 96;

    private final IntPredicate broken;
    private final List<List<Label>> rows = new ArrayList<>();

    /**
     * One cell.
     *
     * @param styles of the style sheet
     * @param id     empty when nobody looks for it
     */
    record Cell(String text, List<String> styles, String id) {

        static Cell of(String text, String style) {
            return new Cell(text, List.of(style), "");
        }
    }

    /** @param broken which columns may be broken into lines, counted from 0 */
    TextGrid(IntPredicate broken) {
        this.broken = broken;
        setHgap(10);
        setVgap(3);
    }

    void show(List<List<Cell>> lines) {
        while (rows.size() > lines.size()) {
            getChildren().removeAll(rows.remove(rows.size() - 1));
        }
        for (int line = 0; line < lines.size(); line++) {
            if (line == rows.size()) {
                rows.add(new ArrayList<>());
            }
            show(line, lines.get(line));
        }
    }

    private void show(int line, List<Cell> cells) {
        List<Label> labels = rows.get(line);
        while (labels.size() > cells.size()) {
            getChildren().remove(labels.remove(labels.size() - 1));
        }
        for (int i = 0; i < cells.size(); i++) {
            if (i == labels.size()) {
                labels.add(added(i, line));
            }
            Label label = labels.get(i);
            Cell cell = cells.get(i);
            label.setText(cell.text());
            label.setId(cell.id().isEmpty() ? null : cell.id());
            if (!label.getStyleClass().equals(styled(cell))) {
                label.getStyleClass().setAll(styled(cell));
            }
        }
    }

    private static List<String> styled(Cell cell) {
        List<String> all = new ArrayList<>(List.of("label"));
        all.addAll(cell.styles());
        return all;
    }

    private Label added(int column, int line) {
        Label label = new Label();
        label.setWrapText(true);
        label.setMinHeight(USE_PREF_SIZE);
        label.setMinWidth(broken.test(column) ? Look.px(LEAST_BROKEN) : USE_PREF_SIZE);
        add(label, column, line);
        return label;
    }
}

package org.toeline.desk.across;

import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import javafx.scene.canvas.Canvas;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.toeline.across.Comparison;
import org.toeline.advice.Words;
import org.toeline.desk.look.Look;
import org.toeline.desk.text.Texts;
import org.toeline.paint.AcrossHeader;
import org.toeline.paint.AcrossRow;

/** The readings as rows, painted as they come into view, below the days of the lessons. */
final class RowList extends VBox {

    private static final double ROW = 104;
    private static final double GAP = 14;
    /** What a row leaves to the list's edge and its bar. */
    private static final double BESIDE = 48;

    private static final double HEADER = 26;
    /** Beside usual text. */
    private static final double LEAST_ROW = 260;

    private final Canvas header = new Canvas(10, HEADER);
    private final ListView<Comparison.Row> list = new ListView<>();
    private Optional<Comparison> shown = Optional.empty();
    private Optional<AcrossRow> painter = Optional.empty();
    private List<String> days = List.of();

    RowList() {
        list.setId("across-rows");
        list.setAccessibleText(Texts.of("across.rows"));
        list.setCellFactory(l -> new Cell());
        list.getStyleClass().addAll("edge-to-edge", "across-rows");
        list.widthProperty().addListener((o, a, b) -> header());
        VBox.setVgrow(list, Priority.ALWAYS);
        // a canvas is never narrower than it was, and would keep the list so wide
        Pane days = new Pane(header);
        days.setMinSize(0, USE_PREF_SIZE);
        days.setPrefWidth(0);
        getChildren().addAll(days, list);
    }

    void takeFocus() {
        list.requestFocus();
    }

    private double rowWidth() {
        return Math.max(200, list.getWidth() - BESIDE);
    }

    void show(Optional<Comparison> comparison, List<String> called, Words in) {
        shown = comparison;
        painter = comparison.map(c -> new AcrossRow(in, c));
        days = called;
        list.getItems()
                .setAll(comparison
                        .map(c -> c.rows().stream().filter(AcrossRow::isKnown).toList())
                        .orElse(List.of()));
        header();
    }

    /** As large as the text, but never so large that a row has no room for its words. */
    private double scale() {
        return Math.max(1, Math.min(Look.scale(), rowWidth() / LEAST_ROW));
    }

    private void header() {
        header.setWidth(rowWidth() + BESIDE);
        header.setHeight(HEADER * scale());
        header.setVisible(shown.filter(c -> !c.lessons().isEmpty()).isPresent());
        shown.filter(c -> !c.lessons().isEmpty())
                .ifPresent(c -> AcrossHeader.paint(
                        Look.now().ink(header, scale()),
                        c,
                        days,
                        new Rectangle2D.Double(12 / scale(), 0, rowWidth() / scale(), HEADER),
                        ROW));
    }

    private final class Cell extends ListCell<Comparison.Row> {

        private final Canvas canvas = new Canvas(10, ROW + GAP);

        private Cell() {
            list.widthProperty().addListener((o, a, b) -> paint());
        }

        /** A row may be the same, and the lessons that are compared or the units others. */
        @Override
        protected boolean isItemChanged(Comparison.@Nullable Row before, Comparison.@Nullable Row now) {
            return true;
        }

        @Override
        protected void updateItem(Comparison.Row row, boolean empty) {
            super.updateItem(row, empty);
            setGraphic(empty ? null : canvas);
            setStyle("-fx-padding: 2 12 2 12;");
            paint();
        }

        private void paint() {
            Comparison.Row row = getItem();
            if (row == null || painter.isEmpty()) {
                return;
            }
            canvas.setWidth(rowWidth());
            double width = rowWidth() / scale();
            double above = painter.get().above(width, ROW);
            canvas.setHeight((ROW + GAP + above) * scale());
            painter.get()
                    .paint(
                            Look.now().ink(canvas, scale()),
                            row,
                            new Rectangle2D.Double(0, GAP / 2 + above, width, ROW));
            setAccessibleText(painter.get().spoken(row));
        }
    }
}

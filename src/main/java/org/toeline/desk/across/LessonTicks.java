package org.toeline.desk.across;

import java.util.List;
import java.util.SortedSet;
import java.util.function.IntConsumer;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.toeline.desk.look.Look;
import org.toeline.desk.text.Texts;
import org.toeline.ledger.store.rows.LessonLine;

/** The lessons, the latest on top, each with a box to tick; Space ticks the one that has the focus. */
final class LessonTicks extends VBox {

    private static final double WIDTH = 204;

    private final ListView<LessonLine> list = new ListView<>();
    private final IntConsumer turned;
    private SortedSet<Integer> ticked = new java.util.TreeSet<>();
    private List<Integer> order = List.of();

    /** @param turned is told the number of the lesson whose tick was changed */
    LessonTicks(IntConsumer turned) {
        this.turned = turned;
        Label title = new Label(Texts.of("across.lessons"));
        title.getStyleClass().add("next");
        Label hint = new Label(Texts.of("across.lessons.hint"));
        hint.getStyleClass().add("hint");
        hint.setWrapText(true);
        hint.setMinHeight(USE_PREF_SIZE);
        list.setId("across-lessons");
        list.setAccessibleText(Texts.of("across.lessons"));
        list.setCellFactory(l -> new Cell());
        list.getStyleClass().add("edge-to-edge");
        list.setOnKeyPressed(e -> {
            LessonLine line = list.getFocusModel().getFocusedItem();
            if (e.getCode() == KeyCode.SPACE && line != null) {
                turned.accept(line.id());
                e.consume();
            }
        });
        VBox.setVgrow(list, Priority.ALWAYS);
        setSpacing(6);
        setPrefWidth(Look.px(WIDTH));
        setMinWidth(Look.px(WIDTH));
        getChildren().addAll(title, hint, list);
    }

    void show(List<LessonLine> lines, SortedSet<Integer> tickedNow) {
        ticked = tickedNow;
        order = lines.stream().map(LessonLine::id).toList();
        List<LessonLine> latestFirst = new java.util.ArrayList<>(lines);
        java.util.Collections.reverse(latestFirst);
        if (list.getItems().equals(latestFirst)) {
            list.refresh();
        } else {
            list.getItems().setAll(latestFirst);
        }
    }

    private final class Cell extends ListCell<LessonLine> {

        private final CheckBox box = new CheckBox();
        private final Label where = new Label();
        private final VBox both = new VBox(1, box, where);

        private Cell() {
            where.getStyleClass().add("hint");
            where.setMaxWidth(Look.px(WIDTH - 40));
            box.setFocusTraversable(false);
            box.setOnAction(e -> turned.accept(getItem().id()));
        }

        @Override
        protected void updateItem(LessonLine line, boolean empty) {
            super.updateItem(line, empty);
            setGraphic(empty || line == null ? null : both);
            if (empty || line == null) {
                return;
            }
            box.setText(AcrossModel.day(line.id(), line.recorded()));
            box.setSelected(ticked.contains(line.id()));
            box.setId("across-lesson-" + line.id());
            String words = (line.place().isBlank() ? "" : line.place() + " · ") + line.notes();
            where.setText(words.isBlank() ? Texts.of("across.nth", order.indexOf(line.id()) + 1, order.size()) : words);
            setAccessibleText(box.getText() + ", " + where.getText() + ", "
                    + Texts.of(box.isSelected() ? "across.ticked" : "across.not-ticked"));
        }
    }
}

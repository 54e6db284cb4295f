package org.toeline.desk.shots;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntConsumer;
import java.util.function.IntFunction;
import java.util.stream.Stream;
import javafx.application.Platform;
import javafx.beans.binding.Bindings;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.css.PseudoClass;
import javafx.geometry.Bounds;
import javafx.scene.control.Label;
import javafx.scene.control.TableCell;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.control.skin.VirtualFlow;
import javafx.scene.layout.Region;
import javafx.scene.text.Text;
import javafx.scene.text.TextAlignment;
import org.toeline.desk.look.Look;
import org.toeline.desk.text.Texts;
import org.toeline.flight.ShotFigure;
import org.toeline.flight.table.Meaning;

/**
 * The table of shots, a row a shot and an empty one at the end: columns to type into, beside a measured figure the computed
 * one, at the end what is odd. One cell at a time is being typed into.
 */
final class ShotTable extends TableView<Integer> {

    /** Where columns to type into stand, in their order; those of the flight stand beside the computed figures. */
    static final List<Meaning> LAUNCH = List.of(
            Meaning.BALL_SPEED,
            Meaning.LAUNCH_ANGLE,
            Meaning.LAUNCH_DIRECTION,
            Meaning.SPIN_RATE,
            Meaning.SPIN_AXIS,
            Meaning.BACK_SPIN,
            Meaning.SIDE_SPIN,
            Meaning.CLUB_SPEED);

    static final List<Meaning> FLIGHT =
            List.of(Meaning.CARRY, Meaning.APEX, Meaning.SIDE, Meaning.DESCENT_ANGLE, Meaning.HANG_TIME, Meaning.TOTAL);

    /** How the club came to the ball. */
    static final List<Meaning> DELIVERY = List.of(
            Meaning.ATTACK_ANGLE, Meaning.CLUB_PATH, Meaning.FACE_TO_PATH, Meaning.DYNAMIC_LOFT, Meaning.SMASH_FACTOR);

    private static final List<Meaning> BEFORE_FLIGHT =
            Stream.concat(LAUNCH.stream(), DELIVERY.stream()).toList();
    /** All columns to type into, in their order. */
    static final List<Meaning> ALL =
            Stream.concat(BEFORE_FLIGHT.stream(), FLIGHT.stream()).toList();

    /** Room for six digits and a sign. */
    private static final double NUMBER = 68;

    private static final double NARROW = 66;
    /** So much more than its longest word, in the font of a text that stands alone, a heading needs. */
    private static final double AROUND = 4;

    private static final double WIDE = 84;
    private static final double SETUP = 120;
    /** One below a heading that is made for several. */
    private static final double ALONE = 124;

    private static final double ROW = 28;
    /** What is odd needs at least so much room; it has all that is left. */
    private static final double NOTES = 330;

    private static final double SCROLL_BAR = 20;
    /** The toolkit goes through all rows several times in the layout that first knows of them, unless they come bit by bit. */
    private static final int MOST_AT_ONCE = 4000;

    /** The first brings a far row near, the second all of it into sight; one more since the table's height may settle late. */
    private static final int LOOKS = 3;

    private final ShotsModel model;
    private final IntConsumer picked;
    private final List<Runnable> liveCells = new ArrayList<>();
    private final List<ShotCell> typedCells = new ArrayList<>();
    private final RowNumbers numbers = new RowNumbers();
    private List<Meaning> typed = List.of();
    private int cursorRow;
    private Meaning cursorColumn = Meaning.BALL_SPEED;
    private final ShotEditor editor = new ShotEditor(this);
    private final Runnable afterLayout = this::laidOut;
    /** After so many layouts more it is looked whether the cursor's row is in sight. */
    private int looks;

    static final PseudoClass ASIDE = PseudoClass.getPseudoClass("aside");

    /** @param picked told of the row that is being typed into */
    ShotTable(ShotsModel model, IntConsumer picked) {
        this.model = model;
        this.picked = picked;
        setId("shots-table");
        numbers.resize(1);
        setItems(numbers);
        setFixedCellSize(Look.px(ROW));
        getSelectionModel().setCellSelectionEnabled(false);
        getStyleClass().add("shots-table");
        setAccessibleText(Texts.of("shots.table"));
        getChildren().add(editor);
        sceneProperty().addListener((o, before, now) -> {
            if (before != null) {
                before.removePostLayoutPulseListener(afterLayout);
            }
            if (now != null) {
                now.addPostLayoutPulseListener(afterLayout);
            }
        });
        heightProperty().addListener((o, before, now) -> looks = LOOKS);
        model.listen(this::update);
    }

    /** Sets up the columns; the cursor goes where it was, if that column is still there. */
    void columns(Set<Meaning> wanted, Setups setups, ComputedCells computed) {
        liveCells.clear();
        typedCells.clear();
        typed = ALL.stream().filter(wanted::contains).toList();
        if (!typed.contains(cursorColumn)) {
            cursorColumn = typed.get(0);
        }
        List<TableColumn<Integer, Integer>> all = new ArrayList<>();
        all.add(shown(
                Texts.of("shots.column.number"),
                NUMBER,
                row -> row < model.rows().size() ? (row + 1) + computed.sign(row) : "+"));
        if (setups == Setups.NAMED) {
            all.add(shown(
                    Texts.of("shots.column.setup"),
                    SETUP,
                    row -> LessonNames.line(model.row(row).shot().setup())));
        }
        BEFORE_FLIGHT.stream().filter(wanted::contains).forEach(m -> all.add(typed(m, headed(m, "\n"))));
        for (Meaning meaning : FLIGHT) {
            TableColumn<Integer, Integer> group = new TableColumn<>(headed(meaning, ", "));
            if (wanted.contains(meaning)) {
                group.getColumns().add(typed(meaning, Texts.of("shots.column.measured")));
            }
            computed.columns(meaning).forEach(c -> group.getColumns().add(shown(c.heading(), WIDE, c.text())));
            if (group.getColumns().size() == 1) {
                TableColumn<Integer, ?> only = group.getColumns().get(0);
                only.setPrefWidth(Math.max(only.getPrefWidth(), Look.px(ALONE)));
            }
            if (!group.getColumns().isEmpty()) {
                group.setSortable(false);
                group.setReorderable(false);
                all.add(group);
            }
        }
        TableColumn<Integer, Integer> notes = shown(Texts.of("shots.column.notes"), NOTES, computed::note);
        notes.setId("column-notes");
        double others = all.stream().mapToDouble(ShotTable::width).sum();
        notes.prefWidthProperty()
                .bind(Bindings.max(Look.px(NOTES), widthProperty().subtract(others + SCROLL_BAR)));
        all.add(notes);
        getColumns().setAll(all);
    }

    private static double width(TableColumn<Integer, ?> column) {
        return column.getColumns().isEmpty()
                ? column.getPrefWidth()
                : column.getColumns().stream().mapToDouble(ShotTable::width).sum();
    }

    private String headed(Meaning meaning, String between) {
        return Texts.of("shots.figure." + meaning.id())
                + between
                + model.units().of(meaning).id();
    }

    private TableColumn<Integer, Integer> typed(Meaning meaning, String heading) {
        double longest = Arrays.stream(heading.split("\\s"))
                .mapToDouble(w -> new Text(w).getLayoutBounds().getWidth())
                .max()
                .orElse(0);
        TableColumn<Integer, Integer> column = column(heading, Math.max(NARROW, longest + AROUND));
        column.setId("column-" + meaning.id());
        column.setCellFactory(c -> new ShotCell(this, meaning));
        return column;
    }

    private TableColumn<Integer, Integer> shown(String heading, double width, IntFunction<String> text) {
        TableColumn<Integer, Integer> column = column(heading, width);
        column.setCellFactory(c -> new ShownCell(text));
        return column;
    }

    private static TableColumn<Integer, Integer> column(String heading, double usualWidth) {
        double width = Look.px(usualWidth);
        TableColumn<Integer, Integer> column = new TableColumn<>();
        Label label = new Label(heading);
        label.setWrapText(true);
        label.setTextAlignment(TextAlignment.CENTER);
        label.setMaxWidth(width - 4);
        label.setMinHeight(USE_PREF_SIZE);
        column.setGraphic(label);
        column.setPrefWidth(width);
        column.setMinWidth(width * 0.8);
        column.setSortable(false);
        column.setReorderable(false);
        column.setCellValueFactory(data -> new ReadOnlyObjectWrapper<>(data.getValue()));
        return column;
    }

    /** A cell that only shows. */
    private final class ShownCell extends TableCell<Integer, Integer> {

        private final IntFunction<String> text;

        ShownCell(IntFunction<String> text) {
            this.text = text;
            getStyleClass().add("shots-shown");
            liveCells.add(this::show);
        }

        @Override
        protected void updateItem(Integer row, boolean empty) {
            super.updateItem(row, empty);
            show();
        }

        private void show() {
            String now = isEmpty() || getItem() == null ? "" : text.apply(getItem());
            if (!now.equals(getText())) {
                setText(now);
            }
            pseudoClassStateChanged(ASIDE, !isEmpty() && getItem() != null && aside(getItem()));
        }
    }

    ShotsModel model() {
        return model;
    }

    /** Whether a row's shot was put aside. */
    boolean aside(int row) {
        return !model.row(row).shot().aside().isEmpty();
    }

    /**
     * A cell that may be typed into.
     *
     * @param show brings it up to date
     */
    void live(Runnable show, ShotCell cell) {
        liveCells.add(show);
        typedCells.add(cell);
    }

    /** Where a cell is in the table, if it is on the screen. */
    Optional<Bounds> boundsOf(int row, Meaning meaning) {
        return typedCells.stream()
                .filter(c -> c.shows(row, meaning))
                .findFirst()
                .map(c -> sceneToLocal(c.localToScene(c.getBoundsInLocal())));
    }

    int row() {
        return cursorRow;
    }

    private void update() {
        // rows that are there already stay: the one that is typed into must not lose the focus
        numbers.resize(Math.min(model.rows().size() + 1, numbers.size() + MOST_AT_ONCE));
        refreshCells();
    }

    /** After a layout: the editor lies over its cell; if more rows are to come, some more do. */
    private void laidOut() {
        if (looks > 0) {
            looks--;
            bringIntoSight();
            // at once, not when whoever scrolls by hand makes the next pulse
            Platform.requestNextPulse();
        }
        editor.place();
        if (numbers.size() <= model.rows().size()) {
            Platform.runLater(this::grow);
        }
    }

    private void grow() {
        boolean waiting = cursorRow >= numbers.size();
        update();
        if (waiting && cursorRow < numbers.size()) {
            getSelectionModel().clearAndSelect(cursorRow);
            looks = LOOKS;
            bringIntoSight();
        }
    }

    /** Brings what is seen up to date. */
    void refreshCells() {
        liveCells.forEach(Runnable::run);
    }

    /** The cursor to a cell. */
    void go(int row, Meaning meaning) {
        editor.finish();
        cursorRow = Math.max(0, Math.min(row, model.rows().size()));
        cursorColumn = meaning;
        getSelectionModel().clearAndSelect(cursorRow);
        looks = LOOKS;
        bringIntoSight();
        editor.begin(cursorRow, cursorColumn);
        picked.accept(cursorRow);
    }

    /** The focus came back. */
    void resume() {
        go(cursorRow, cursorColumn);
    }

    /** To the first empty row, ready to be typed into. */
    void goToEnd() {
        go(model.rows().size(), typed.get(0));
    }

    /** Other rows are to come: what is being typed belongs to none of them. */
    void forget() {
        editor.drop();
    }

    /** Finishes what is being typed. */
    void settle() {
        requestFocus();
    }

    /** Gives up what is being typed; the cursor stays and the cell holds what it held before. */
    void giveUp() {
        forget();
        model.abandon();
        go(cursorRow, cursorColumn);
    }

    void nextRow() {
        go(cursorRow + 1, typed.get(0));
    }

    /** @param rows how many down, below zero up */
    void moveRow(int rows) {
        go(cursorRow + rows, cursorColumn);
    }

    /** @param columns how many to the right, below zero to the left; past the ends into the next or the previous row */
    void moveColumn(int columns) {
        int place = typed.indexOf(cursorColumn) + columns;
        int row = cursorRow + Math.floorDiv(place, typed.size());
        if (row >= 0) {
            go(row, typed.get(Math.floorMod(place, typed.size())));
        }
    }

    private void bringIntoSight() {
        if (lookup(".virtual-flow") instanceof VirtualFlow<?> flow
                && flow.lookup(".clipped-container") instanceof Region sight
                && flow.getFirstVisibleCell() != null
                && flow.getLastVisibleCell() != null) {
            int first = flow.getFirstVisibleCell().getIndex();
            int last = flow.getLastVisibleCell().getIndex();
            if (cursorRow < first) {
                scrollTo(cursorRow);
            } else if (cursorRow > last) {
                scrollTo(Math.max(0, cursorRow - (last - first) + 1));
            } else {
                double top = flow.getCell(cursorRow).getLayoutY();
                double below = top + flow.getCell(cursorRow).getHeight() - sight.getHeight();
                if (top < 0 || below > 0) {
                    flow.scrollPixels(top < 0 ? top : Math.min(top, below));
                }
            }
        }
    }

    /** Whether any shot says with which setup it was hit. */
    enum Setups {
        NAMED,
        NOBODY_SAYS
    }

    /** Columns that are not typed into. */
    interface ComputedCells {

        /** Those beside a figure that may be measured. */
        List<ComputedColumn> columns(Meaning meaning);

        /** What is to be said of a row. */
        String note(int row);

        /** A sign beside the row's number when it holds something odd; else nothing. */
        String sign(int row);
    }

    /**
     * A computed column.
     *
     * @param heading names the model
     * @param text    of a row; empty when it cannot be computed
     */
    record ComputedColumn(String heading, IntFunction<String> text) {}

    static ShotFigure figure(Meaning meaning) {
        return meaning.figure().orElseThrow();
    }
}

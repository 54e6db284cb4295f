package org.toeline.desk.bodymap;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import javafx.beans.binding.Bindings;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.toeline.advice.Words;
import org.toeline.desk.lesson.Item;
import org.toeline.desk.lesson.LessonModel;
import org.toeline.desk.lesson.MarkOrder;
import org.toeline.desk.lesson.Marking;
import org.toeline.desk.lesson.Rods;
import org.toeline.desk.lesson.Spread;
import org.toeline.desk.look.Look;
import org.toeline.desk.text.Texts;
import org.toeline.ledger.LensBook.Profile;
import org.toeline.ledger.Unfinished;
import org.toeline.mark.FloorLayout;
import org.toeline.mark.Handedness;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;

/** What to mark next, in words and on the body map, and the things that are not on the body: ball, rods, uprights. */
public final class MarkingPane extends VBox {

    private static final double WIDTH = 262;
    private static final double EDGE = 14;
    /** What larger text needs of a narrow window, beside text of the usual size. */
    private static final double TIGHT = 220;

    /** Of four lines: what stands below it must not move while one marks. */
    private static final double ANNOUNCED_HEIGHT = 91;

    private final Helps helping;
    private final LessonModel model;
    private Words words;
    private final BodyMap map;
    private final Label next = new Label();
    private final Label hint = new Label(Texts.of("next.hint"));
    private final GroundQuestion ground;
    private final Chips others;
    private final FlowPane helps = new FlowPane(6, 6);
    private final Chip again;
    private final Runnable back;
    private @Nullable Shown shown;

    /** What the desk does for the coach in the large view. */
    public interface Helps {

        /** Suggests landmarks. */
        void suggest();

        /** Puts the marks where they are on the average while the player stands still. */
        void steady();

        /** Has words pinned to the picture. */
        void pin();

        /** Begins or ends marking it again. */
        void again();

        /** Whether a cross is moved over the picture by keys. */
        boolean aims();
    }

    /**
     * @param profiles the lenses that were calibrated
     * @param back     gives the keys to the picture
     */
    public MarkingPane(LessonModel model, Words words, Supplier<List<Profile>> profiles, Helps helping, Runnable back) {
        this.back = back;
        this.helping = helping;
        this.model = model;
        this.words = words;
        this.map = new BodyMap(model, words);
        this.ground = new GroundQuestion(
                model,
                () -> this.words,
                floor -> KnownDialog.show(
                        model, this.words, profiles.get(), getScene().getWindow(), floor),
                back);
        this.others = new Chips(
                model,
                () -> KnownDialog.show(
                        model,
                        this.words,
                        profiles.get(),
                        getScene().getWindow(),
                        model.sheet().floor()),
                back);
        this.again = help("again", "again", helping::again);
        getStyleClass().add("paper");
        setPadding(new Insets(EDGE));
        next.getStyleClass().add("next");
        next.setId("next");
        next.setWrapText(true);
        // none of it is ever cut off, and a shorter sentence leaves what is below in its place
        next.setMinHeight(USE_PREF_SIZE);
        StackPane announced = new StackPane(next);
        announced.minHeightProperty().bind(Bindings.max(Look.px(ANNOUNCED_HEIGHT), next.heightProperty()));
        announced.setAlignment(Pos.TOP_LEFT);
        hint.getStyleClass().add("hint");
        hint.setWrapText(true);
        hint.setMinHeight(USE_PREF_SIZE);
        room(Room.USUAL);
        helps.getChildren()
                .setAll(
                        help("skip", "next.skip", model::skip),
                        help("suggest", "suggest", helping::suggest),
                        help("accept", "suggest.accept-one", model.suggestions()::accept),
                        help("refuse", "suggest.refuse", model.suggestions()::refuse),
                        help("accept-all", "suggest.accept", model.suggestions()::acceptAll),
                        help("pin", "pin", helping::pin),
                        hinted(help("steady", "steady", helping::steady), "steady.hint"),
                        hinted(again, "again.hint"));
        getChildren().addAll(announced, helps, new StackPane(map, ground), others, hint);
    }

    /** How much room there is for it. */
    public enum Room {
        USUAL(0, 1, 12),
        /** Low, and wide enough: the figure is smaller, and what else the keys do is left to the sheet of keys. */
        LOW(52, 0.76, 8);

        private final double wider;
        private final double figure;
        private final double gap;

        Room(double wider, double figure, double gap) {
            this.wider = wider;
            this.figure = figure;
            this.gap = gap;
        }
    }

    /** Lays it out in the room there is. */
    public void room(Room room) {
        double least = Math.max(WIDTH, Look.px(TIGHT)) + room.wider;
        setSpacing(room.gap);
        setMinWidth(least + 2 * EDGE);
        setPrefWidth(Look.px(WIDTH) + room.wider + 2 * EDGE);
        helps.setPrefWrapLength(least);
        others.setPrefWrapLength(least);
        map.sized(room.figure);
        ground.setMinHeight(room.figure * BodyFigure.HEIGHT);
        hint.setVisible(room == Room.USUAL);
        hint.setManaged(room == Room.USUAL);
        shown = null;
    }

    /** Other words, in another unit. */
    public void words(Words changed) {
        words = changed;
        shown = null;
    }

    /** Gives the keys to the answers to what lies on the ground; answers whether that is asked. */
    public boolean answerGround() {
        return ground.takeKeys();
    }

    private Chip help(String id, String key, Runnable action) {
        return Chip.of(id, key, action, back);
    }

    private static Chip hinted(Chip button, String key) {
        button.setTooltip(new Tooltip(Texts.of(key)));
        return button;
    }

    /** Brings words, rings and buttons up to date. */
    public void update(Set<String> doubted) {
        model.suggestions().doubted(doubted);
        String text = announced();
        if (!text.equals(next.getText())) {
            next.setText(text);
        }
        Optional<ViewMarks> view = model.marks(model.large());
        Shown now = new Shown(
                model.large(),
                model.selected(),
                view.map(Marking::marked).orElse(List.of()),
                view.map(v -> Marking.marked(v).stream()
                                .map(i -> Spread.of(v, i))
                                .toList())
                        .orElse(List.of()),
                model.sheet().floor(),
                doubted,
                model.sheet().handedness(),
                model.repeating(),
                model.lesson().unfinished(),
                model.suggestions().left());
        if (!now.equals(shown)) {
            shown = now;
            map.update(doubted);
            ground.update(view.isPresent());
            helps.lookup("#accept").setDisable(model.suggestions().suggestion().isEmpty());
            helps.lookup("#refuse").setDisable(model.suggestions().suggestion().isEmpty());
            helps.lookup("#accept-all").setDisable(now.suggested().isEmpty());
            again.setText(
                    Texts.of(model.repeating() ? "again.end" : model.canGoOnRepeating() ? "again.go-on" : "again"));
            others.update();
        }
    }

    /** What rings and buttons depend on: moving a mark changes none of it. */
    private record Shown(
            View large,
            Optional<Item> selected,
            List<Item> marked,
            List<Optional<String>> spreads,
            FloorLayout floor,
            Set<String> doubted,
            Handedness handedness,
            boolean repeating,
            Unfinished unfinished,
            List<Item> suggested) {}

    private String announced() {
        Optional<ViewMarks> view = model.marks(model.large());
        if (view.isEmpty()) {
            return Texts.of("next.no-clip");
        }
        if (model.selected().isEmpty()) {
            return Texts.of(
                    model.repeating()
                            ? "next.done-again"
                            : model.lesson().unfinished().unseen(model.large()).isEmpty()
                                    ? "next.done"
                                    : "next.done-unseen");
        }
        Item item = model.selected().get();
        if (MarkOrder.suggested(view.get(), item)) {
            return suggested(item);
        }
        Optional<String> spread = Spread.of(view.get(), item);
        if (spread.isPresent()) {
            return Texts.of(
                    "next.again",
                    item instanceof Item.OfLandmark l ? words.where(l.landmark()) : ItemNames.of(item),
                    spread.get());
        }
        if (item instanceof Item.OfLandmark l) {
            return Texts.of("next.landmark", words.where(l.landmark()));
        }
        if (item instanceof Item.OfFloor f) {
            return Rods.otherEnd(model.sheet().floor(), view.get(), f.pointId())
                    .map(other -> Texts.of("next.floor", ItemNames.of(item), ItemNames.ofFloor(other)))
                    .orElse(Texts.of("next.floor-point", ItemNames.of(item)));
        }
        if (item instanceof Item.OfGround) {
            return Texts.of("next.ground");
        }
        return Texts.of(item instanceof Item.OfBall ? "next.ball" : "next.vertical");
    }

    private String suggested(Item item) {
        String where = item instanceof Item.OfLandmark l ? words.where(l.landmark()) : ItemNames.of(item);
        if (helping.aims()) {
            return Texts.of("next.aimed", where);
        }
        return Texts.of(
                model.suggestions().doubtful(item) ? "next.doubtful" : "next.suggested",
                where,
                model.suggestions().left().size());
    }
}

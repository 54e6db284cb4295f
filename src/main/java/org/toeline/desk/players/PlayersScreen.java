package org.toeline.desk.players;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.text.TextAlignment;
import org.toeline.advice.Words;
import org.toeline.desk.look.Look;
import org.toeline.desk.screen.Controls;
import org.toeline.desk.screen.Screen;
import org.toeline.desk.screen.Studio;
import org.toeline.desk.text.Texts;
import org.toeline.ledger.store.rows.LessonLine;
import org.toeline.mark.Club;
import org.toeline.reading.ReadingKind;

/** Players and lessons: type two letters and press Enter. */
public final class PlayersScreen implements Screen {

    private static final double LIST = 460;
    /** What larger text needs, so that the card beside it keeps its room. */
    private static final double TIGHT = 366;

    private final Studio studio;
    private final LessonSearch search;
    private final Thumbnails thumbnails;
    private final TextField text = new TextField();
    private final ObservableList<LessonLine> lines = FXCollections.observableArrayList();
    private final ListView<LessonLine> list = new ListView<>(lines);
    private final Label count = new Label();
    private final LessonCard card;
    private final HBox root;
    /** While lines are put in place of lines, nothing is chosen. */
    private boolean refreshed;

    public PlayersScreen(Studio studio) {
        this.studio = studio;
        this.thumbnails = new Thumbnails(studio.records(), studio.background());
        this.search = new LessonSearch(studio.records(), this::found);
        this.card = new LessonCard(studio, this::again);
        text.setId("find");
        text.setAccessibleText(Texts.of("players.find"));
        text.getStyleClass().add("large");
        text.textProperty().addListener((o, before, now) -> search.text(now));
        text.addEventFilter(KeyEvent.KEY_PRESSED, this::key);
        list.setId("lessons");
        list.setAccessibleText(Texts.of("screen.players"));
        list.setCellFactory(l -> new LessonCell(studio.words(), thumbnails));
        list.setPlaceholder(placeholder());
        list.getSelectionModel().selectedItemProperty().addListener((o, before, line) -> {
            if (!refreshed) {
                Optional.ofNullable(line).ifPresentOrElse(card::show, card::clear);
            }
        });
        list.setOnMouseClicked(e -> {
            if (e.getClickCount() == 2) {
                open();
            }
        });
        list.setOnKeyPressed(e -> {
            if (e.getCode() == KeyCode.ENTER) {
                open();
            }
        });
        VBox.setVgrow(list, Priority.ALWAYS);
        count.getStyleClass().add("hint");
        count.setId("lessons-count");
        Label what = new Label(Texts.of("players.find"));
        what.getStyleClass().add("hint");
        what.setLabelFor(text);
        what.setWrapText(true);
        what.setMinHeight(Region.USE_PREF_SIZE);
        VBox left = new VBox(10, what, text, filters(), list, count);
        left.setPadding(new Insets(16));
        left.setMinWidth(listWidth());
        left.setPrefWidth(listWidth());
        ScrollPane right = new ScrollPane(card);
        right.setFitToWidth(true);
        right.getStyleClass().addAll("paper", "edge-to-edge");
        HBox.setHgrow(right, Priority.ALWAYS);
        root = new HBox(left, right);
        root.getStyleClass().add("paper");
    }

    private static double listWidth() {
        return Math.max(LIST, Look.px(TIGHT));
    }

    private VBox placeholder() {
        Label label = new Label(Texts.of("players.none"));
        label.setWrapText(true);
        label.setTextAlignment(TextAlignment.CENTER);
        Button fresh = new Button(Texts.of("players.new-lesson"));
        fresh.setOnAction(e -> studio.desk().fresh());
        VBox box = new VBox(12, label, fresh);
        box.setAlignment(Pos.CENTER);
        box.setPadding(new Insets(20));
        return box;
    }

    private FlowPane filters() {
        Words words = studio.words().get();
        FlowPane row = new FlowPane(
                8,
                6,
                choice("filter-club", "players.any-club", List.of(Club.values()), words::name, search::club),
                choice(
                        "filter-when",
                        "players.ever",
                        List.of(LessonSearch.When.MONTH, LessonSearch.When.YEAR),
                        w -> Texts.of("players.when." + w.name().toLowerCase(Locale.ROOT)),
                        w -> search.when(w.orElse(LessonSearch.When.EVER))),
                choice(
                        "filter-finding",
                        "players.any-finding",
                        List.of(ReadingKind.values()),
                        k -> Texts.of("players.out", words.name(k).toLowerCase(Locale.ROOT)),
                        search::outOfRange));
        row.setPrefWrapLength(listWidth() - 32);
        return row;
    }

    private static <T> ComboBox<Optional<T>> choice(
            String id, String any, List<T> all, Function<T, String> name, Consumer<Optional<T>> chosen) {
        ComboBox<Optional<T>> box = new ComboBox<>();
        box.setId(id);
        box.setAccessibleText(Texts.of(any));
        box.getItems().add(Optional.empty());
        all.forEach(t -> box.getItems().add(Optional.of(t)));
        box.setConverter(
                Controls.names(value -> Controls.sentence(value.map(name).orElse(Texts.of(any)))));
        box.setValue(Optional.empty());
        box.setOnAction(e -> chosen.accept(box.getValue()));
        box.setMaxWidth(listWidth() - 32);
        return box;
    }

    /** Up and down go through the list while the field keeps the letters; Enter opens. */
    private void key(KeyEvent e) {
        int at = list.getSelectionModel().getSelectedIndex();
        switch (e.getCode()) {
            case DOWN -> select(Math.min(lines.size() - 1, at + 1));
            case UP -> select(Math.max(0, at - 1));
            case ENTER -> open();
            case ESCAPE -> text.clear();
            default -> {
                return;
            }
        }
        e.consume();
    }

    private void select(int index) {
        if (!lines.isEmpty()) {
            list.getSelectionModel().select(index);
            list.scrollTo(Math.max(0, index - 3));
        }
    }

    private void open() {
        Optional.ofNullable(list.getSelectionModel().getSelectedItem())
                .ifPresent(line -> studio.desk().open(line.id()));
    }

    private void found(List<LessonLine> found) {
        Optional<Integer> before =
                Optional.ofNullable(list.getSelectionModel().getSelectedItem()).map(LessonLine::id);
        refreshed = true;
        thumbnails.renew();
        lines.setAll(found);
        count.setText(
                found.isEmpty()
                        ? ""
                        : Texts.of(
                                found.size() < LessonSearch.MOST ? "players.count" : "players.count-more",
                                found.size()));
        int same = before.map(id -> found.stream().map(LessonLine::id).toList().indexOf(id))
                .orElse(-1);
        select(Math.max(0, same));
        refreshed = false;
        Optional.ofNullable(list.getSelectionModel().getSelectedItem()).ifPresentOrElse(card::show, card::clear);
    }

    /** Something in the ledger changed. */
    private void again() {
        search.look();
    }

    @Override
    public String id() {
        return "players";
    }

    @Override
    public Parent root() {
        return root;
    }

    @Override
    public void left() {
        card.note();
    }

    @Override
    public void close() {
        card.note();
    }

    @Override
    public void entered() {
        search.look();
        text.requestFocus();
        text.selectAll();
    }
}

package org.toeline.desk.across;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import javafx.animation.PauseTransition;
import javafx.geometry.Insets;
import javafx.geometry.Orientation;
import javafx.geometry.Pos;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.SplitPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.util.Duration;
import org.toeline.across.ChangeCall;
import org.toeline.across.ChangeWords;
import org.toeline.across.Comparison;
import org.toeline.desk.look.Look;
import org.toeline.desk.screen.Controls;
import org.toeline.desk.screen.Screen;
import org.toeline.desk.screen.Studio;
import org.toeline.desk.text.Texts;
import org.toeline.ledger.store.rows.Player;
import org.toeline.mark.Club;
import org.toeline.paint.AcrossPlot;
import org.toeline.reading.ReadingKind;

/** What changed across a player's lessons. */
public final class AcrossScreen implements Screen {

    private final Studio studio;
    private final AcrossModel model;
    private final StillLoading loading;
    private final BorderPane root = new BorderPane();
    private final StackPane middle = new StackPane();
    /** Of the header and a row, beside usual text. */
    private static final double LEAST_ROWS = 170;

    private final ComboBox<Player> players = new ComboBox<>();
    private final ComboBox<Club> clubs = new ComboBox<>();
    private final Label sentence = new Label();
    private final Label spread = new Label();
    private final Label nothing = new Label();
    private final VBox empty = new VBox(14);
    private final SplitPane shown = new SplitPane();
    private final LessonTicks ticks;
    private final RowList rows = new RowList();
    private final MenuButton export;
    private final StillsPane stills;
    /** Findings are stated when the hand that marked has rested. */
    private final PauseTransition later = new PauseTransition(Duration.millis(800));

    private boolean filling;
    private OptionalInt onTheDesk = OptionalInt.empty();

    public AcrossScreen(Studio studio) {
        this.studio = studio;
        this.model = new AcrossModel(studio.records(), this::update);
        MissingClips missing =
                new MissingClips(studio, model, () -> root.getScene().getWindow(), this::entered);
        this.stills = new StillsPane(this::pictures, missing.root());
        this.loading = new StillLoading(studio, still -> {
            stills.put(still);
            missing.show(stills.stills());
        });
        this.ticks = new LessonTicks(id -> {
            if (!model.turn(id)) {
                studio.say().accept(Texts.of("across.most", AcrossModel.MOST_TICKED));
                update();
            }
        });
        later.setOnFinished(e -> model.load(OptionalInt.empty(), Optional.empty()));
        export = new AcrossExport(studio.background(), studio.say()).button(this::plot);
        export.setDisable(true);
        root.getStyleClass().add("paper");
        root.setTop(top());
        shown.setOrientation(Orientation.HORIZONTAL);
        shown.getItems().setAll(readings(), stills);
        shown.setDividerPositions(0.47);
        shown.getStyleClass().add("paper");
        middle.getChildren().setAll(shown, empty());
        root.setCenter(middle);
    }

    private HBox top() {
        players.setId("across-player");
        players.setAccessibleText(Texts.of("across.player"));
        players.setPrefWidth(260);
        players.setConverter(Controls.names(AcrossModel::name));
        players.setOnAction(e -> Optional.ofNullable(players.getValue())
                .filter(p -> !filling)
                .ifPresent(p -> model.load(OptionalInt.of(p.id()), Optional.empty())));
        clubs.setId("across-club");
        clubs.setAccessibleText(Texts.of("across.club"));
        clubs.setConverter(
                Controls.names(c -> Controls.sentence(studio.words().get().name(c))));
        clubs.setOnAction(e -> Optional.ofNullable(clubs.getValue())
                .filter(c -> !filling)
                .ifPresent(c -> model.load(OptionalInt.empty(), Optional.of(c))));
        Region space = new Region();
        HBox.setHgrow(space, Priority.ALWAYS);
        HBox top = new HBox(
                10,
                new Label(Texts.of("across.player")),
                players,
                new Label(Texts.of("across.club")),
                clubs,
                space,
                export);
        top.setAlignment(Pos.CENTER_LEFT);
        top.setPadding(new Insets(10, 12, 10, 12));
        return top;
    }

    private HBox readings() {
        sentence.setId("across-sentence");
        sentence.getStyleClass().add("across-said");
        spread.setId("across-spread");
        spread.getStyleClass().add("hint");
        for (Label label : List.of(sentence, spread)) {
            label.setWrapText(true);
            label.setMinHeight(Region.USE_PREF_SIZE);
        }
        VBox right = new VBox(6, sentence, spread, rows);
        VBox.setVgrow(rows, Priority.ALWAYS);
        rows.setMinHeight(Look.px(LEAST_ROWS));
        ScrollPane scrolled = new ScrollPane(right);
        scrolled.setFitToWidth(true);
        scrolled.setFitToHeight(true);
        scrolled.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scrolled.getStyleClass().addAll("paper", "edge-to-edge");
        scrolled.setMinWidth(300);
        HBox.setHgrow(scrolled, Priority.ALWAYS);
        HBox both = new HBox(12, ticks, scrolled);
        both.setPadding(new Insets(0, 8, 0, 12));
        return both;
    }

    private VBox empty() {
        nothing.setId("across-nothing");
        nothing.getStyleClass().add("next");
        nothing.setWrapText(true);
        nothing.setMaxWidth(560);
        nothing.setTextAlignment(javafx.scene.text.TextAlignment.CENTER);
        Button go = new Button(Texts.of("across.go-lesson"));
        go.setId("across-go-lesson");
        go.setOnAction(e -> studio.go().accept("lesson"));
        empty.setAlignment(Pos.CENTER);
        empty.getStyleClass().add("paper");
        empty.getChildren().setAll(nothing, go);
        return empty;
    }

    @Override
    public String id() {
        return "across";
    }

    @Override
    public Parent root() {
        return root;
    }

    @Override
    public void entered() {
        nothing.setText(Texts.of(studio.records().failed() ? "across.closed" : "across.nothing"));
        boolean known = model.answer().player().isPresent();
        empty.setVisible(!known);
        shown.setVisible(known);
        OptionalInt lesson = studio.records().lessonId();
        boolean another = lesson.isPresent() && !lesson.equals(onTheDesk);
        onTheDesk = lesson;
        model.load(
                studio.records().playerId(),
                another ? Optional.of(studio.model().sheet().club()) : Optional.empty());
        if (known) {
            // the lesson on the desk may have been marked on since, and other units chosen
            update();
        }
        later.playFromStart();
        // not the box of players: F4, which leads here, would open it
        rows.takeFocus();
    }

    @Override
    public void left() {
        later.stop();
    }

    /** Shows what the model says. */
    private void update() {
        AcrossModel.Answer answer = model.answer();
        empty.setVisible(answer.lessons().isEmpty());
        shown.setVisible(!answer.lessons().isEmpty());
        filling = true;
        players.getItems().setAll(answer.players());
        players.setValue(answer.player().orElse(null));
        clubs.getItems().setAll(answer.clubs());
        clubs.setValue(answer.clubs().contains(answer.club()) ? answer.club() : null);
        filling = false;
        export.setDisable(model.comparison().isEmpty());
        ticks.show(answer.lines(), model.ticked());
        rows.show(model.comparison(), model.days(), studio.words().get());
        sentence.setText(said());
        spread.setText(unsure().strip());
        spread.setVisible(!spread.getText().isEmpty());
        spread.setManaged(spread.isVisible());
        pictures();
    }

    private String said() {
        if (model.answer().lessons().size() == 1) {
            return Texts.of("across.one");
        }
        if (model.ticked().size() < 2) {
            return Texts.of("across.tick");
        }
        Comparison comparison = model.comparison().orElseThrow();
        return Texts.of("across.from-to", day(comparison.earlier()), day(comparison.later())) + "\n"
                + new ChangeWords(studio.words().get()).real(kinds(comparison, ChangeCall.REAL));
    }

    /** What is too close to call, and that the player's own spread is not known where it is not. */
    private String unsure() {
        if (model.ticked().size() < 2) {
            return "";
        }
        Comparison comparison = model.comparison().orElseThrow();
        List<ReadingKind> close = kinds(comparison, ChangeCall.TOO_CLOSE);
        boolean known =
                comparison.rows().stream().anyMatch(r -> r.across().spread().isKnown());
        return (close.isEmpty() ? "" : new ChangeWords(studio.words().get()).close(close) + "\n")
                + (known ? "" : Texts.of("across.spread-unknown"));
    }

    private static List<ReadingKind> kinds(Comparison comparison, ChangeCall call) {
        return comparison.rows().stream()
                .filter(r -> r.call().equals(Optional.of(call)))
                .flatMap(r -> ReadingKind.of(r.across().reading()).stream())
                .toList();
    }

    private String day(int lessonId) {
        return model.days().get(model.comparison().orElseThrow().indexOf(lessonId));
    }

    /** Fetches the pictures of the ticked lessons. */
    private void pictures() {
        Map<Integer, String> captions = new LinkedHashMap<>();
        model.ticked().forEach(id -> captions.put(id, day(id)));
        stills.expect(captions, studio.words().get());
        loading.load(List.copyOf(captions.keySet()), stills.view());
    }

    /** What is shown, to be written to a file; empty when there is nothing. */
    Optional<AcrossPlot> plot() {
        return model.comparison()
                .map(c -> new AcrossPlot(
                        Texts.of(
                                "across.title",
                                model.answer().player().map(AcrossModel::name).orElse(""),
                                studio.words().get().name(model.answer().club())),
                        said(),
                        model.days(),
                        stills.shown(),
                        c,
                        studio.words().get()));
    }

    AcrossModel model() {
        return model;
    }

    StillsPane stills() {
        return stills;
    }
}

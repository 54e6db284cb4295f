package org.toeline.desk.players;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Insets;
import javafx.geometry.Side;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.CustomMenuItem;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.VBox;
import javafx.stage.Window;
import org.toeline.desk.look.Look;
import org.toeline.desk.records.Records;
import org.toeline.desk.text.Texts;
import org.toeline.ledger.store.Ledger;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.rows.LessonLine;
import org.toeline.ledger.store.rows.Player;
import org.toeline.ledger.store.rows.Search;

/** One of the players, by two letters and Enter, below a control. */
final class PlayerChooser {

    private static final int MOST = 6;
    private static final int SEARCHED = 200;
    private static final double WIDTH = 440;

    /** Who may be chosen, and what of it. */
    interface Asking {

        boolean offers(LessonLine line);

        void chosen(Player player);

        /** What it says of a new player of the typed name, where one may be made. */
        default Optional<String> fresh(String typed) {
            return Optional.empty();
        }

        default void add(String typed) {}
    }

    private record Found(Player player, int lessons) {}

    private final String id;
    private final Records records;
    private final Asking asking;
    private final TextField name = new TextField();
    private final VBox choices = new VBox(2);
    private final ContextMenu popup;
    private List<Found> found = List.of();

    /** @param id the field's, which begins those of the choices too */
    PlayerChooser(String id, String title, Records records, Asking asking) {
        this.id = id;
        this.records = records;
        this.asking = asking;
        name.setId(id);
        name.setPromptText(Texts.of("whose.prompt"));
        name.setAccessibleText(Texts.of("whose.prompt"));
        name.textProperty().addListener((o, before, now) -> look());
        name.setOnKeyPressed(e -> {
            if (e.getCode() == KeyCode.ENTER) {
                first();
                e.consume();
            }
        });
        Label asked = new Label(title);
        asked.setWrapText(true);
        VBox box = new VBox(8, asked, name, choices);
        box.setPadding(new Insets(8));
        box.setPrefWidth(Look.px(WIDTH));
        CustomMenuItem item = new CustomMenuItem(box, false);
        popup = new ContextMenu(item);
        popup.setOnShown(e -> {
            name.requestFocus();
            // below the button at the window's right edge it would run past the window
            Window window = popup.getOwnerWindow();
            popup.setX(Math.max(
                    window.getX(), Math.min(popup.getX(), window.getX() + window.getWidth() - popup.getWidth())));
        });
    }

    /** @param typed what is looked for at first */
    void show(Node below, String typed) {
        name.setText(typed);
        look();
        popup.show(below, Side.BOTTOM, 0, 4);
    }

    private void look() {
        String typed = name.getText().strip();
        records.ask(l -> found(l, typed), players -> {
            if (typed.equals(name.getText().strip())) {
                show(players);
            }
        });
    }

    private List<Found> found(Ledger ledger, String typed) throws LedgerException {
        List<Found> players = new ArrayList<>();
        for (LessonLine line : ledger.find(Search.text(typed).withMost(SEARCHED))) {
            if (players.size() < MOST
                    && asking.offers(line)
                    && players.stream().noneMatch(p -> p.player.id() == line.playerId())) {
                Optional<Player> player = ledger.player(line.playerId());
                if (player.isPresent()) {
                    players.add(new Found(
                            player.get(),
                            ledger.lessonNumbers(Optional.of(line.playerId())).size()));
                }
            }
        }
        return players;
    }

    private void show(List<Found> players) {
        found = players;
        choices.getChildren().clear();
        for (Found one : players) {
            Player player = one.player;
            choices.getChildren()
                    .add(choice(
                            id + "-" + player.id(),
                            Texts.of(
                                    "whose.player",
                                    Said.player(player.details().name(), player.id()),
                                    Texts.of("hand."
                                            + player.details().handedness().id()),
                                    player.id(),
                                    one.lessons),
                            () -> choose(player)));
        }
        String typed = name.getText().strip();
        if (!typed.isEmpty()) {
            asking.fresh(typed)
                    .ifPresent(words -> choices.getChildren().add(choice(id + "-new", words, () -> add(typed))));
        }
        if (choices.getChildren().isEmpty()) {
            Label nobody = new Label(Texts.of("whose.none"));
            nobody.setWrapText(true);
            choices.getChildren().add(nobody);
        }
    }

    private static Button choice(String id, String text, Runnable action) {
        Button button = new Button(text);
        button.setId(id);
        button.setMaxWidth(Double.MAX_VALUE);
        button.setWrapText(true);
        button.setAlignment(javafx.geometry.Pos.CENTER_LEFT);
        button.setOnAction(e -> action.run());
        return button;
    }

    private void first() {
        String typed = name.getText().strip();
        if (!found.isEmpty()) {
            choose(found.get(0).player);
        } else if (asking.fresh(typed).isPresent() && !typed.isEmpty()) {
            add(typed);
        }
    }

    private void choose(Player player) {
        popup.hide();
        asking.chosen(player);
    }

    private void add(String typed) {
        popup.hide();
        asking.add(typed);
    }
}

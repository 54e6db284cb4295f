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
import org.toeline.desk.screen.Studio;
import org.toeline.desk.text.Texts;
import org.toeline.ledger.store.rows.LessonLine;
import org.toeline.ledger.store.rows.Player;
import org.toeline.ledger.store.rows.PlayerDetails;
import org.toeline.ledger.store.rows.Search;

/** Whose lesson is on the desk: two letters and Enter, or a new name and Enter. */
public final class Whose {

    private static final int MOST = 6;
    private static final int SEARCHED = 200;

    private final Studio studio;
    private final TextField name = new TextField();
    private final VBox choices = new VBox(2);
    private final ContextMenu popup;
    private List<Player> found = List.of();

    private Whose(Studio studio) {
        this.studio = studio;
        name.setId("whose");
        name.setPromptText(Texts.of("whose.prompt"));
        name.setAccessibleText(Texts.of("whose.prompt"));
        name.textProperty().addListener((o, before, now) -> look());
        name.setOnKeyPressed(e -> {
            if (e.getCode() == KeyCode.ENTER) {
                first();
                e.consume();
            }
        });
        VBox box = new VBox(8, new Label(Texts.of("whose.title")), name, choices);
        box.setPadding(new Insets(8));
        box.setPrefWidth(340);
        CustomMenuItem item = new CustomMenuItem(box, false);
        popup = new ContextMenu(item);
        popup.setOnShown(e -> name.requestFocus());
    }

    /** Shows the question below a control. */
    public static void ask(Studio studio, Node below) {
        Whose whose = new Whose(studio);
        whose.look();
        whose.popup.show(below, Side.BOTTOM, 0, 4);
    }

    private void look() {
        String typed = name.getText().strip();
        studio.records()
                .ask(
                        l -> {
                            List<Player> players = new ArrayList<>();
                            for (LessonLine line : l.find(Search.text(typed).withMost(SEARCHED))) {
                                if (players.size() < MOST
                                        && line.playerName().isPresent()
                                        && players.stream().noneMatch(p -> p.id() == line.playerId())) {
                                    l.player(line.playerId()).ifPresent(players::add);
                                }
                            }
                            return players;
                        },
                        players -> {
                            if (typed.equals(name.getText().strip())) {
                                show(players);
                            }
                        });
    }

    private void show(List<Player> players) {
        found = players;
        choices.getChildren().clear();
        for (Player player : players) {
            choices.getChildren()
                    .add(choice(
                            "whose-" + player.id(),
                            player.details().name().orElseThrow() + " · "
                                    + Texts.of("hand."
                                            + player.details().handedness().id()),
                            () -> give(player)));
        }
        String typed = name.getText().strip();
        if (!typed.isEmpty()) {
            choices.getChildren().add(choice("whose-new", Texts.of("whose.new", typed), () -> add(typed)));
        }
    }

    private static Button choice(String id, String text, Runnable action) {
        Button button = new Button(text);
        button.setId(id);
        button.setMaxWidth(Double.MAX_VALUE);
        button.setAlignment(javafx.geometry.Pos.CENTER_LEFT);
        button.setOnAction(e -> action.run());
        return button;
    }

    private void first() {
        String typed = name.getText().strip();
        if (!found.isEmpty()) {
            give(found.get(0));
        } else if (!typed.isEmpty()) {
            add(typed);
        }
    }

    private void add(String typed) {
        studio.records()
                .ask(
                        l -> l.addPlayer(PlayerDetails.of(
                                Optional.of(typed), studio.model().sheet().handedness())),
                        this::give);
    }

    private void give(Player player) {
        popup.hide();
        studio.records().give(player, given -> {
            if (given.details().handedness() != studio.model().sheet().handedness()) {
                studio.say()
                        .accept(Texts.of(
                                "whose.other-hand",
                                given.details().name().orElse(""),
                                Texts.of("hand." + given.details().handedness().id())));
            }
        });
    }
}

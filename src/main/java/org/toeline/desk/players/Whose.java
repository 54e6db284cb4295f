package org.toeline.desk.players;

import java.util.Optional;
import javafx.scene.Node;
import org.toeline.desk.screen.Studio;
import org.toeline.desk.text.Texts;
import org.toeline.ledger.store.rows.LessonLine;
import org.toeline.ledger.store.rows.Player;
import org.toeline.ledger.store.rows.PlayerDetails;

/** Whose lesson is on the desk: two letters and Enter, or a new name and Enter. */
public final class Whose implements PlayerChooser.Asking {

    private final Studio studio;

    private Whose(Studio studio) {
        this.studio = studio;
    }

    /** Shows the question below a control. */
    public static void ask(Studio studio, Node below) {
        new PlayerChooser("whose", Texts.of("whose.title"), studio.records(), new Whose(studio)).show(below, "");
    }

    @Override
    public boolean offers(LessonLine line) {
        return line.playerName().isPresent();
    }

    @Override
    public Optional<String> fresh(String typed) {
        return Optional.of(Texts.of("whose.new", typed));
    }

    @Override
    public void add(String typed) {
        studio.records()
                .ask(
                        l -> l.addPlayer(PlayerDetails.of(
                                Optional.of(typed), studio.model().sheet().handedness())),
                        this::chosen);
    }

    @Override
    public void chosen(Player player) {
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

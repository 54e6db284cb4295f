package org.toeline.desk.sheet;

import java.util.Optional;
import java.util.OptionalInt;
import javafx.scene.control.Button;
import javafx.scene.control.Tooltip;
import org.toeline.desk.lesson.LessonListener;
import org.toeline.desk.players.Whose;
import org.toeline.desk.records.Records;
import org.toeline.desk.screen.Studio;
import org.toeline.desk.text.Texts;
import org.toeline.ledger.store.rows.Player;
import org.toeline.ledger.store.rows.PlayerDetails;
import org.toeline.mark.Handedness;

/** Whose lesson is on the desk; pressed, it asks. */
public final class LessonName extends Button implements Records.Listener {

    private static final int LONGEST = 28;

    private final Studio studio;
    private Optional<Player> current = Optional.empty();

    public LessonName(Studio studio) {
        this.studio = studio;
        setId("lesson-player");
        setTooltip(new Tooltip(Texts.of("whose.title")));
        setOnAction(e -> Whose.ask(studio, this));
        setMinWidth(USE_PREF_SIZE);
        show(Optional.empty());
        studio.records().listen(this);
        studio.model().listen(new LessonListener() {
            @Override
            public void changed() {
                // what is not settled may be dropped
            }

            @Override
            public void settled() {
                handOfNameless();
            }
        });
    }

    @Override
    public void changed() {
        OptionalInt id = studio.records().playerId();
        if (id.isEmpty()) {
            show(Optional.empty());
            return;
        }
        studio.records().ask(l -> l.player(id.getAsInt()), player -> {
            if (studio.records().playerId().equals(id)) {
                show(player.flatMap(p -> p.details().name()));
                player.ifPresent(this::writeInto);
                current = player;
                handOfNameless();
            }
        });
    }

    /** Of a player without a name nothing is known but this lesson: it says which hand is theirs. */
    private void handOfNameless() {
        Handedness hand = studio.model().sheet().handedness();
        current.filter(p -> studio.records().playerId().equals(OptionalInt.of(p.id())))
                .filter(p -> p.details().name().isEmpty() && p.details().handedness() != hand)
                .ifPresent(p -> {
                    current = Optional.empty();
                    Player other = new Player(p.id(), p.version(), handed(p, hand));
                    studio.records().ask(l -> l.changePlayer(other), kept -> changed());
                });
    }

    private static PlayerDetails handed(Player player, Handedness hand) {
        PlayerDetails d = player.details();
        return new PlayerDetails(d.name(), hand, d.heightM(), d.bornYear(), d.note());
    }

    private void show(Optional<String> name) {
        setText(name.map(n -> n.length() > LONGEST ? n.substring(0, LONGEST) + "…" : n)
                        .orElse(Texts.of("whose.nobody")) + " ▾");
    }

    /** The name goes where handouts look for it. */
    private void writeInto(Player player) {
        if (!studio.model().lesson().playerName().equals(player.details().name())) {
            studio.model().describe(l -> l.withPlayerName(player.details().name()));
        }
    }
}

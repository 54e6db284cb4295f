package org.toeline.desk.players;

import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import org.toeline.desk.dialog.DialogFrame;
import org.toeline.desk.screen.Studio;
import org.toeline.desk.text.Texts;
import org.toeline.ledger.store.Ledger;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.rows.LessonLine;
import org.toeline.ledger.store.rows.Player;
import org.toeline.ledger.store.rows.Search;

/** A player who is there twice: who else it is, then what would move, and only then it is done. */
final class OnePerson implements PlayerChooser.Asking {

    private final Studio studio;
    private final Node owner;
    private final Player stays;
    private final Runnable changed;

    private OnePerson(Studio studio, Node owner, Player stays, Runnable changed) {
        this.studio = studio;
        this.owner = owner;
        this.stays = stays;
        this.changed = changed;
    }

    /** @param changed called once the two are one */
    static void ask(Studio studio, Node below, Player stays, Runnable changed) {
        new PlayerChooser(
                        "one-person",
                        Texts.of("one.title", named(stays)),
                        studio.records(),
                        new OnePerson(studio, below, stays, changed))
                .show(below, stays.details().name().orElse(""));
    }

    @Override
    public boolean offers(LessonLine line) {
        return line.playerId() != stays.id();
    }

    /** As it stands in a sentence: two players of one name are told apart by their numbers. */
    private static String named(Player player) {
        return player.details()
                .name()
                .map(name -> Texts.of("one.player", name, player.id()))
                .orElseGet(() -> Said.player(Optional.empty(), player.id()));
    }

    @Override
    public void chosen(Player goes) {
        if (goes.details().handedness() != stays.details().handedness()) {
            new DialogFrame(owner.getScene().getWindow(), Texts.of("one.name"))
                    .text(Texts.of("one.hands", named(goes), named(stays)))
                    .leave(Texts.of("dialog.close"))
                    .show();
            return;
        }
        studio.records().ask(l -> lessons(l, goes), lines -> sure(goes, lines));
    }

    private static List<LessonLine> lessons(Ledger ledger, Player goes) throws LedgerException {
        int all = ledger.lessonNumbers(Optional.of(goes.id())).size();
        return ledger.find(Search.RECENT.withPlayer(goes.id()).withMost(Math.max(1, all)));
    }

    private void sure(Player goes, List<LessonLine> lines) {
        String latest = Said.day(lines.stream().findFirst().flatMap(LessonLine::recorded));
        new DialogFrame(owner.getScene().getWindow(), Texts.of("one.name"))
                .heading(Texts.of("one.sure", named(goes), named(stays)))
                .text(Texts.of("one.moves", lines.size(), named(goes), named(stays), latest))
                .text(Texts.of("one.stays", named(stays)))
                .text(Texts.of("one.no-way-back"))
                .leave(Texts.of("dialog.cancel"))
                .destroy(
                        "sure-one",
                        Texts.of("one.do"),
                        () -> studio.records().merge(stays.id(), goes.id(), merged -> {
                            studio.say()
                                    .accept(Texts.of(
                                            "one.done", merged.versions().size(), named(merged.player())));
                            changed.run();
                        }))
                .show();
    }
}

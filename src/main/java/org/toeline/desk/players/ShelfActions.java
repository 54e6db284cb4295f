package org.toeline.desk.players;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.toeline.desk.dialog.DialogFrame;
import org.toeline.desk.dialog.FileDialog;
import org.toeline.desk.screen.Controls;
import org.toeline.desk.screen.Studio;
import org.toeline.desk.text.Texts;
import org.toeline.ledger.LessonDocument;
import org.toeline.ledger.store.Deleted;
import org.toeline.ledger.store.Ledger;
import org.toeline.ledger.store.backup.OldBackups;
import org.toeline.ledger.store.exchange.LessonArchive;
import org.toeline.ledger.store.place.LedgerPlace;
import org.toeline.ledger.store.place.Stills;
import org.toeline.ledger.store.rows.Aside;
import org.toeline.ledger.store.rows.Player;

/** What can be done with a lesson and a player of the ledger; each asks before anything is lost. */
final class ShelfActions {

    private final Studio studio;
    private final Node owner;
    private final Runnable changed;

    ShelfActions(Studio studio, Node owner, Runnable changed) {
        this.studio = studio;
        this.owner = owner;
        this.changed = changed;
    }

    FlowPane row(Shelf shelf) {
        return new FlowPane(
                8,
                8,
                Controls.button("give-document", "players.give-document", () -> giveDocument(shelf)),
                Controls.button("give-archive", "players.give-archive", () -> giveArchive(shelf)),
                Controls.button("delete-lesson", "players.delete-lesson", () -> deleteLesson(shelf)));
    }

    /** Among what concerns the player, apart from what takes a lesson away. */
    Button deletesPlayer(Player player) {
        return Controls.button("delete-player", "players.delete-player", () -> deletePlayer(player));
    }

    private Optional<Path> where(String pressed, String ending, int lessonId) {
        return new FileDialog(FileDialog.Kind.LESSONS, pressed)
                .named(String.format(Locale.ROOT, "lesson-%06d.%s", lessonId, ending))
                .save(owner.getScene().getWindow());
    }

    private void giveDocument(Shelf shelf) {
        where("players.give-document", "lesson.json", shelf.kept().id())
                .ifPresent(file -> studio.background()
                        .run(
                                () -> {
                                    LessonDocument.write(shelf.kept().lesson(), file);
                                    return file;
                                },
                                this::given));
    }

    private void giveArchive(Shelf shelf) {
        where("players.give-archive", "lesson.zip", shelf.kept().id())
                .ifPresent(file -> studio.background().run(() -> archive(shelf, file), this::given));
    }

    private Path archive(Shelf shelf, Path file) throws Exception {
        LessonArchive.write(
                shelf.kept().lesson(),
                shelf.kept().identity(),
                shelf.kept().findings(),
                shelf.clips(),
                Stills.of(studio.records().settings().folder(), shelf.kept().identity()),
                file);
        return file;
    }

    private void given(Path file) {
        studio.say().accept(Texts.of("kept", file));
    }

    void edit(Player player) {
        PlayerFields.ask(
                owner.getScene().getWindow(),
                player.details(),
                details -> studio.records()
                        .ask(l -> l.changePlayer(new Player(player.id(), player.version(), details)), kept -> {
                            if (kept.isEmpty()) {
                                studio.say().accept(Texts.of("players.changed-meanwhile"));
                            }
                            studio.records().named(player.id());
                            changed.run();
                        }));
    }

    void take(Shelf shelf, Aside aside) {
        int id = shelf.kept().id();
        sure(
                "aside-take",
                aside,
                () -> studio.records()
                        .ask(
                                l -> {
                                    var now = l.lesson(id).orElseThrow();
                                    var saved = l.saveMarks(id, now.version(), aside.lesson());
                                    l.dropAside(aside.id());
                                    return saved;
                                },
                                saved -> studio.desk().open(id)));
    }

    void drop(Aside aside) {
        sure(
                "aside-drop",
                aside,
                () -> studio.records()
                        .ask(
                                l -> {
                                    l.dropAside(aside.id());
                                    return true;
                                },
                                done -> changed.run()));
    }

    private void sure(String what, Aside aside, Runnable action) {
        new DialogFrame(owner.getScene().getWindow(), Texts.of("other-bay.name"))
                .heading(Texts.of("players." + what + ".sure", aside.keptBy(), Said.day(Optional.of(aside.keptAt()))))
                .text(Texts.of("players." + what + ".text"))
                .leave(Texts.of("dialog.cancel"))
                .destroy("sure-" + what, Texts.of("players." + what), action)
                .show();
    }

    private void deleteLesson(Shelf shelf) {
        String whose =
                Said.player(shelf.player().details().name(), shelf.player().id());
        String which = whose + ", " + Said.day(shelf.kept().lesson().recorded().map(Object::toString));
        sure("lesson", which, () -> {
            int id = shelf.kept().id();
            if (studio.records().lessonId().equals(OptionalInt.of(id))) {
                clearDesk();
            }
            studio.records().ask(l -> l.deleteLesson(id, OldBackups.KEEP, files()), this::deleted);
        });
    }

    /** Offered first: the player's lessons as archives, in a folder. */
    private void deletePlayer(Player player) {
        CheckBox give = new CheckBox(Texts.of("players.give-first"));
        give.setId("give-first");
        give.setSelected(true);
        CheckBox backups = new CheckBox(Texts.of("players.backups-too"));
        backups.setId("backups-too");
        sure(
                "player",
                Said.player(player.details().name(), player.id()),
                () -> {
                    OldBackups old = backups.isSelected() ? OldBackups.REPLACE : OldBackups.KEEP;
                    if (!give.isSelected()) {
                        deletePlayer(player, Optional.empty(), old);
                    } else {
                        new FileDialog(FileDialog.Kind.LESSONS, "players.give-first")
                                .folder(owner.getScene().getWindow())
                                .ifPresent(folder -> deletePlayer(player, Optional.of(folder), old));
                    }
                },
                give,
                backups);
    }

    private void deletePlayer(Player player, Optional<Path> archives, OldBackups old) {
        if (studio.records().playerId().equals(OptionalInt.of(player.id()))) {
            clearDesk();
        }
        studio.records()
                .ask(
                        l -> {
                            if (archives.isPresent()) {
                                giveAll(l, player, archives.get());
                            }
                            return l.deletePlayer(player.id(), old, files());
                        },
                        this::deleted);
    }

    /** What is deleted is on the desk no longer. */
    private void clearDesk() {
        studio.desk().fresh();
        studio.go().accept("players");
    }

    private LedgerPlace.Folder files() {
        return studio.records().settings().folder();
    }

    private List<Path> giveAll(Ledger ledger, Player player, Path folder) throws Exception {
        List<Path> given = new ArrayList<>();
        for (int id : ledger.lessonNumbers(Optional.of(player.id()))) {
            Shelf shelf =
                    Shelf.of(ledger, studio.records().settings().folder(), id).orElseThrow();
            given.add(archive(shelf, folder.resolve(String.format(Locale.ROOT, "lesson-%06d.lesson.zip", id))));
        }
        return given;
    }

    private void deleted(Deleted what) {
        studio.say()
                .accept(what.unfinished()
                        .map(why -> Texts.of("players.deleted-unfinished", why))
                        .orElseGet(() -> Texts.of(
                                what.stillHolding().isEmpty() ? "players.deleted" : "players.deleted-but",
                                what.lessons(),
                                what.clips(),
                                what.stillHolding().size())));
        changed.run();
    }

    private void sure(String what, String name, Runnable delete, Node... more) {
        VBox content = new VBox(10, DialogFrame.wrapped(Texts.of("players.sure")));
        content.getChildren().addAll(more);
        new DialogFrame(owner.getScene().getWindow(), Texts.of("players.deleting-" + what))
                .heading(Texts.of("players.sure-" + what, name))
                .middle(content)
                .leave(Texts.of("dialog.cancel"))
                .destroy("sure-delete", Texts.of("players.delete"), delete)
                .show();
    }
}

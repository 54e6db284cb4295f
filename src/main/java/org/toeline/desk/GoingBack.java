package org.toeline.desk;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.VBox;
import javafx.stage.Window;
import org.toeline.desk.dialog.DialogFrame;
import org.toeline.desk.screen.Studio;
import org.toeline.desk.text.Texts;
import org.toeline.language.Language;
import org.toeline.ledger.store.Ledger;
import org.toeline.ledger.store.backup.Backups;
import org.toeline.ledger.store.place.LedgerPlace;

/** Going back to a backup: which, then what it takes the place of, and only then it is done. */
final class GoingBack {

    /** @param holds empty where it cannot be read */
    private record Choice(Path file, String made, Optional<Backups.Content> holds) {}

    private final Studio studio;
    private final Window window;

    private GoingBack(Studio studio, Window window) {
        this.studio = studio;
        this.window = window;
    }

    static void ask(Studio studio, Window window) {
        GoingBack back = new GoingBack(studio, window);
        if (studio.records().settings().server().isPresent()) {
            back.says(Texts.of("back.server"));
        } else {
            studio.background().run(back::choices, back::choose);
        }
    }

    private LedgerPlace.Folder folder() {
        return studio.records().settings().folder();
    }

    private List<Choice> choices() throws Exception {
        List<Choice> choices = new ArrayList<>();
        for (Path file : Ledger.backups(folder())) {
            choices.add(new Choice(file, made(Files.getLastModifiedTime(file).toInstant()), Backups.content(file)));
        }
        return choices;
    }

    private static String made(Instant at) {
        return DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT)
                .withLocale(Language.written())
                .format(at.atZone(ZoneId.systemDefault()));
    }

    private void says(String sentence) {
        new DialogFrame(window, Texts.of("back.title"))
                .middle(DialogFrame.wrapped(sentence))
                .leave(Texts.of("dialog.close"))
                .show();
    }

    private void choose(List<Choice> choices) {
        if (choices.isEmpty()) {
            says(Texts.of("back.none", folder().backups()));
            return;
        }
        ToggleGroup group = new ToggleGroup();
        VBox box = new VBox(8);
        for (Choice choice : choices) {
            RadioButton button = new RadioButton(choice.holds
                    .map(held -> Texts.of(
                            "back.line", choice.made, held.lessons(), held.players(), choice.file.getFileName()))
                    .orElseGet(() -> Texts.of("back.line-broken", choice.made, choice.file.getFileName())));
            button.setId("back-" + choices.indexOf(choice));
            button.setDisable(choice.holds.isEmpty());
            button.setToggleGroup(group);
            button.setUserData(choice);
            if (group.getSelectedToggle() == null && choice.holds.isPresent()) {
                button.setSelected(true);
            }
            box.getChildren().add(button);
        }
        new DialogFrame(window, Texts.of("back.title"))
                .heading(Texts.of("back.choose"))
                .middle(box)
                .leave(Texts.of("dialog.cancel"))
                .act(
                        "back-go-on",
                        Texts.of("back.go-on"),
                        () -> Optional.ofNullable(group.getSelectedToggle())
                                .map(chosen -> (Choice) chosen.getUserData())
                                .ifPresent(this::look))
                .show();
    }

    private void look(Choice choice) {
        int then = choice.holds.orElseThrow().lessons();
        if (studio.records().failed()) {
            sure(choice, Texts.of("back.now-unknown", then));
        } else {
            studio.records()
                    .ask(
                            l -> l.lessonNumbers(Optional.empty()).size(),
                            now -> sure(choice, Texts.of("back.now", now, then)));
        }
    }

    private void sure(Choice choice, String what) {
        new DialogFrame(window, Texts.of("back.title"))
                .heading(Texts.of("back.sure", choice.made))
                .text(what)
                .text(Texts.of("back.aside"))
                .leave(Texts.of("dialog.cancel"))
                .destroy("sure-back", Texts.of("back.do"), () -> restore(choice))
                .show();
    }

    private void restore(Choice choice) {
        if (studio.records().keeps()) {
            // a lesson of the ledger that goes is not one of the ledger that comes
            studio.desk().fresh();
        }
        studio.records().restore(choice.file, aside -> {
            studio.say()
                    .accept(aside.map(was -> Texts.of("back.done", choice.file.getFileName(), was))
                            .orElseGet(() -> Texts.of("back.done-nothing", choice.file.getFileName())));
            studio.go().accept("players");
        });
    }
}

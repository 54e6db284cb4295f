package org.toeline.desk.across;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.stage.Window;
import org.toeline.desk.across.StillSource.Still;
import org.toeline.desk.dialog.FileDialog;
import org.toeline.desk.records.LostClips;
import org.toeline.desk.records.LostClips.Lost;
import org.toeline.desk.screen.Studio;
import org.toeline.desk.text.Texts;
import org.toeline.ledger.store.rows.LessonFindings;

/** A line below the stills that appears when a clip is not where it was, and offers to look for it in a folder. */
final class MissingClips {

    private final Studio studio;
    private final AcrossModel model;
    private final Supplier<Window> window;
    private final Runnable found;
    private final Label label = new Label(Texts.of("across.lost"));
    private final Button look = new Button(Texts.of("across.look"));
    private final HBox root = new HBox(10, label, look);

    /** @param found is called when clips were found, so that their pictures are fetched */
    MissingClips(Studio studio, AcrossModel model, Supplier<Window> window, Runnable found) {
        this.studio = studio;
        this.model = model;
        this.window = window;
        this.found = found;
        label.setWrapText(true);
        HBox.setHgrow(label, Priority.ALWAYS);
        label.setMaxWidth(Double.MAX_VALUE);
        look.setId("across-look");
        look.setMinWidth(HBox.USE_PREF_SIZE);
        look.setOnAction(e -> choose());
        root.setAlignment(Pos.CENTER_LEFT);
        show(List.of());
    }

    HBox root() {
        return root;
    }

    void show(List<Still> stills) {
        boolean lost = stills.stream().anyMatch(s -> s.missing().isPresent());
        root.setVisible(lost);
        root.setManaged(lost);
    }

    private void choose() {
        new FileDialog(FileDialog.Kind.CLIPS, "across.look")
                .folder(window.get())
                .ifPresent(this::look);
    }

    /** Looks for all clips of the player's lessons with this club that are not at their places. */
    void look(Path below) {
        studio.say().accept(Texts.of("lost.looking", below));
        List<Integer> lessons =
                model.answer().lessons().stream().map(LessonFindings::lessonId).toList();
        studio.records()
                .ask(
                        l -> LostClips.among(
                                l, lessons, studio.records().settings().folder()),
                        lost -> studio.background()
                                .run(() -> LostClips.search(lost, below), where -> keep(lost, where, below)));
    }

    private void keep(List<Lost> lost, Map<Lost, Path> where, Path below) {
        Map<Lost, Path> others = new LinkedHashMap<>(where);
        int onTheDesk = studio.records().lessonId().orElse(0);
        // the lesson on the desk is changed there: what is kept of it is written from there
        others.keySet().removeIf(l -> l.lessonId() == onTheDesk);
        where.forEach((l, path) -> {
            if (l.lessonId() == onTheDesk) {
                studio.model().moved(l.take().view(), path.toString());
            }
        });
        studio.records().ask(l -> LostClips.keep(l, others), kept -> {
            studio.say()
                    .accept(
                            where.isEmpty()
                                    ? Texts.of("lost.none", below)
                                    : Texts.of("lost.found", where.size(), lost.size()));
            found.run();
        });
    }
}

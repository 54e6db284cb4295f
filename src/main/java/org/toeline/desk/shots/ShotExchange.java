package org.toeline.desk.shots;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import javafx.scene.input.DragEvent;
import javafx.scene.input.TransferMode;
import org.toeline.desk.screen.Studio;
import org.toeline.desk.text.Texts;
import org.toeline.desk.work.Background;
import org.toeline.document.WholeFile;
import org.toeline.flight.Shot;
import org.toeline.flight.table.Meaning;
import org.toeline.flight.table.ShotExport;
import org.toeline.flight.table.Template;
import org.toeline.handout.PictureFormat;
import org.toeline.paint.ShotPicture;

/** Shots in and out of files: a table looked at and taken in, the table and the picture written. */
final class ShotExchange {

    private final Studio studio;
    private final ShotFiles files;
    private final ShotsModel model;
    private final ShotsView view;
    private final ShotTable table;
    private final Background.Lane reading;
    private final Consumer<Set<Meaning>> came;

    /** @param came told of the figures that a table brought */
    ShotExchange(
            Studio studio,
            ShotFiles files,
            ShotsModel model,
            ShotsView view,
            ShotTable table,
            Consumer<Set<Meaning>> came) {
        this.came = came;
        this.studio = studio;
        this.files = files;
        this.model = model;
        this.view = view;
        this.table = table;
        this.reading = studio.background().lane();
        view.setOnDragOver(e -> {
            if (e.getDragboard().hasFiles()) {
                e.acceptTransferModes(TransferMode.COPY);
            }
        });
        view.setOnDragDropped(this::dropped);
    }

    private void dropped(DragEvent e) {
        boolean files = e.getDragboard().hasFiles();
        if (files) {
            takeIn(e.getDragboard().getFiles().get(0).toPath());
        }
        e.setDropCompleted(files);
    }

    void chooseTable() {
        ShotFiles.choose(view.getScene().getWindow()).ifPresent(this::takeIn);
    }

    void takeIn(Path file) {
        table.settle();
        studio.say().accept(Texts.of("shots.import.reading", file.getFileName()));
        studio.background().run(() -> ImportModel.read(file, files.templates()), read -> {
            studio.say().accept("");
            ImportPane[] pane = new ImportPane[1];
            pane[0] = new ImportPane(read, reading, taken -> {
                view.away(pane[0]);
                taken.ifPresent(this::taken);
                table.goToEnd();
            });
            view.over(pane[0]);
            pane[0].requestFocus();
        });
    }

    private void taken(ImportModel.Taken taken) {
        table.forget();
        List<TypedShot> before = model.rows();
        int added = taken.rows().size();
        came.accept(taken.figures());
        model.add(taken.rows());
        studio.background().run(() -> ShotsModel.alike(before, taken.rows()), alike -> {
            studio.say()
                    .accept(Texts.of("shots.import.done", added, taken.file().getFileName(), alike, taken.leftOut()));
            taken.template().ifPresent(t -> keep(t, added));
        });
    }

    private void keep(Template template, int added) {
        studio.background()
                .run(
                        () -> files.keep(template),
                        kept -> studio.say().accept(Texts.of("shots.import.template-kept", added, template.name())));
    }

    void writeTable(Path file) {
        List<Shot> shots = model.rows().stream().map(TypedShot::kept).toList();
        write(file, () -> ShotExport.csv(shots).getBytes(StandardCharsets.UTF_8));
    }

    void writePicture(Path file, ShotPicture picture) {
        String name = file.toString().toLowerCase(Locale.ROOT);
        write(
                file,
                () -> name.endsWith(".pdf")
                        ? picture.pdf()
                        : PictureFormat.byName(name).orElse(PictureFormat.PNG).of(picture));
    }

    private void write(Path file, Callable<byte[]> bytes) {
        studio.background()
                .run(
                        () -> {
                            WholeFile.write(file, bytes.call());
                            return file;
                        },
                        written -> studio.say().accept(Texts.of("shots.exported", written)));
    }
}

package org.toeline.desk.shots;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.application.Platform;
import javafx.scene.Parent;
import javafx.scene.input.KeyEvent;
import org.toeline.desk.screen.Screen;
import org.toeline.desk.screen.Studio;
import org.toeline.desk.text.Texts;
import org.toeline.desk.work.Background;
import org.toeline.flight.Shot;

/** The screen of the shots: joins the table, what follows from it, and the ledger. */
public final class ShotsScreen implements Screen, ShotBar.Acts {

    private final Studio studio;
    private final ShotKeeping keeping;
    private final ShotsModel model;
    private final ShotTable table;
    private final ShotBar bar;
    private final AirBar airBar;
    private final ShotPlotPane plot;
    private final DifferencesPane differences;
    private final TogetherPane together = new TogetherPane();
    private final ShotsView view;
    private final Reckoning reckoning;
    private final Background.Lane writing;
    private final ShotFiles files;
    private final ShotExchange exchange;
    private final ComparedWith other;
    private ShotSettings settings = ShotSettings.USUAL;

    public ShotsScreen(Studio studio) {
        this.studio = studio;
        this.writing = studio.background().lane();
        this.files = new ShotFiles(studio.records().settings().folder().folder());
        this.keeping = new ShotKeeping(studio, this::opened);
        this.other = new ComparedWith(studio, keeping, this::offer);
        this.differences = new DifferencesPane(other::choose);
        this.model = new ShotsModel(keeping::keep);
        this.table = new ShotTable(model, row -> picked());
        this.plot = new ShotPlotPane(studio.background());
        this.bar = new ShotBar(this, this::use);
        this.airBar = new AirBar(c -> use(settings.withConditions(c)));
        this.view = new ShotsView(bar, airBar, table, plot, differences, together);
        this.reckoning =
                new Reckoning(studio.background(), settings.conditions().air(), view::working);
        this.exchange =
                new ShotExchange(studio, files, model, view, table, figures -> use(settings.withColumns(figures)));
        view.addEventFilter(KeyEvent.KEY_PRESSED, this::key);
        view.onStop(reckoning::stop);
        model.listen(this::reckon);
        show(settings);
        offer();
        studio.background().run(files::settings, read -> {
            if (!read.remark().isEmpty()) {
                studio.say().accept(read.remark());
            }
            if (!read.value().equals(settings)) {
                settings = read.value();
                show(settings);
                airChanged();
            }
        });
        keeping.lessonChanged();
    }

    @Override
    public String id() {
        return "shots";
    }

    @Override
    public Parent root() {
        return view;
    }

    @Override
    public void entered() {
        other.lookUp();
        table.goToEnd();
    }

    @Override
    public void left() {
        table.requestFocus();
    }

    ShotsModel model() {
        return model;
    }

    Reckoned reckoned() {
        return reckoning.reckoned();
    }

    private void key(KeyEvent e) {
        ShotKeys.act(e, table.isFocusWithin(), this).ifPresent(act -> {
            e.consume();
            act.run();
        });
    }

    /** Other shots came from the ledger: those of another lesson. */
    private void opened(List<TypedShot> rows) {
        boolean typing = table.isFocusWithin();
        table.forget();
        model.load(rows);
        if (typing) {
            table.goToEnd();
        }
        other.forget();
        other.lookUp();
        differences.toTop();
        together.toTop();
    }

    /** The lessons to compare with, and what follows from the one that is. */
    private void offer() {
        differences.choices(other.choices(), other.comparing());
        view.title(other.title());
        reckon();
    }

    private void reckon() {
        bar.show(model);
        List<Shot> shots = model.shots();
        differences.reckoning(nothingYet());
        plot.reckoning(nothingYet());
        PlayersShots lessons = other.allWith(shots);
        reckoning.setups(other.mine(shots), other.against(), this::shown);
        reckoning.lessons(
                lessons,
                pairs -> together.show(
                        lessons, pairs, new ExpectationWords(studio.words().get())));
    }

    /** Whether there are shots, and nothing is reckoned of them yet. */
    private boolean nothingYet() {
        return !model.shots().isEmpty() && reckoned().shots().isEmpty();
    }

    /** In two turns, since the table below is laid out anew as well. */
    private void shown() {
        if (other.of(reckoned().setups())) {
            columns();
            offer();
        }
        table.refreshCells();
        picked();
        Platform.runLater(this::compared);
    }

    private void compared() {
        differences.show(
                reckoned(),
                settings.units(),
                other.expectations(reckoned().compared().comparison()));
    }

    /** The picture points out the row that is typed into, and what is odd about it is said in full. */
    private void picked() {
        PictureOfSetups pictures = new PictureOfSetups(reckoned().compared(), settings);
        plot.show(pictures.onScreen(table.row()));
        plot.reckoning(nothingYet());
        String note = new ShotColumns(model, this::reckoned).note(table.row());
        List<String> said = new ArrayList<>();
        keeping.unable().ifPresent(said::add);
        said.addAll(reckoning.said());
        if (!note.isEmpty()) {
            said.add(Texts.of("shots.said.row", table.row() + 1, note));
        }
        reckoned().together().ifPresent(t -> said.add("! " + t.reason()));
        view.said(String.join("\n", said));
    }

    private void use(ShotSettings changed) {
        boolean otherAir = !changed.conditions().equals(settings.conditions());
        boolean otherBar = !changed.units().equals(settings.units());
        settings = changed;
        writing.run(() -> files.keep(changed), kept -> {});
        if (otherAir) {
            airChanged();
        } else {
            useUnitsAndColumns();
        }
        // what was typed of the air stands as it was typed, also where it means what stood there before
        if (otherBar) {
            airBar.show(changed);
        }
    }

    private void airChanged() {
        reckoning.through(settings.conditions().air());
        reckon();
    }

    private void show(ShotSettings shown) {
        airBar.show(shown);
        useUnitsAndColumns();
    }

    private void useUnitsAndColumns() {
        bar.show(settings);
        model.useUnits(settings.units());
        columns();
    }

    private void columns() {
        table.columns(
                settings.columns(),
                other.namesSetups() ? ShotTable.Setups.NAMED : ShotTable.Setups.NOBODY_SAYS,
                new ShotColumns(model, this::reckoned));
    }

    @Override
    public void takeIn() {
        exchange.chooseTable();
    }

    /** A table is looked at, its columns are corrected, then its shots stand after those that are there. */
    public void takeIn(Path file) {
        exchange.takeIn(file);
    }

    @Override
    public void exportTable() {
        ShotFiles.save("shots.export-table", "shots.csv", view.getScene().getWindow())
                .ifPresent(this::exportTable);
    }

    public void exportTable(Path file) {
        exchange.writeTable(file);
    }

    @Override
    public void exportPicture() {
        ShotFiles.save("shots.export-picture", "shots.png", view.getScene().getWindow())
                .ifPresent(this::exportPicture);
    }

    /** A PDF page of lines, or PNG, JPEG or SVG, as the file's name asks; a PNG when it asks for nothing. */
    public void exportPicture(Path file) {
        exchange.writePicture(file, new PictureOfSetups(reckoned().compared(), settings).forFile());
    }

    @Override
    public void undo() {
        table.giveUp();
        model.undo();
        table.giveUp();
    }

    @Override
    public void redo() {
        table.giveUp();
        model.redo();
        table.giveUp();
    }

    @Override
    public void putAside(String why) {
        table.giveUp();
        model.putAside(table.row(), why);
        table.giveUp();
    }

    @Override
    public void removeRow() {
        table.giveUp();
        model.remove(table.row());
        table.giveUp();
    }
}

package org.toeline.desk.sheet;

import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.image.Image;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.toeline.advice.Assessment;
import org.toeline.advice.LengthUnit;
import org.toeline.advice.Words;
import org.toeline.desk.bodymap.MarkingPane;
import org.toeline.desk.findings.FindingsPane;
import org.toeline.desk.lesson.LessonModel;
import org.toeline.desk.look.Look;
import org.toeline.desk.picture.Aim;
import org.toeline.desk.picture.PicturePane;
import org.toeline.desk.text.Texts;
import org.toeline.language.Language;
import org.toeline.ledger.store.rows.LessonLine;
import org.toeline.mark.PinnedWords;
import org.toeline.mark.View;

/** The window's parts: pictures on the left in a dark surround, body map and findings on paper beside them. */
final class SheetView extends BorderPane {

    /** With less, beside text of the usual size, the row of views has no small pictures. */
    private static final double LEAST_FOR_SMALL = 560;
    /** With less, beside text of the usual size, the findings are below what is to be marked and not beside it. */
    private static final double LEAST_FOR_THREE = 700;

    private final LessonModel model;
    private final Sheet sheet;
    private final PicturePane picture;
    private final MarkingPane marking;
    private final MarkingColumn column;
    private final Pictures pictures;
    private final FindingsPane findings;
    private final Toolbar toolbar;
    private final ViewRow views;
    private final ClipSteps steps;
    private final Map<View, WritableImage> images = new EnumMap<>(View.class);
    private final Watched watched;
    private final TiedRow tied;
    private final OverThePicture over;
    private final OverlayLines lines;
    private final PinDialog pins;
    private final ShownLight light;
    private Words words = Words.usual();

    SheetView(LessonModel model, Sheet sheet, FrameChange change) {
        this.model = model;
        this.sheet = sheet;
        this.findings = new FindingsPane(sheet::mend);
        this.lines = new OverlayLines(sheet::assessment);
        this.pins = new PinDialog(model, sheet);
        this.picture = new PicturePane(model, lines, sheet.assistant(), pins);
        this.light = new ShownLight(picture);
        picture.setAccessibleText(Texts.of("picture.name"));
        this.marking = new MarkingPane(model, words, sheet::lenses, sheet, picture::requestFocus);
        this.toolbar = new Toolbar(model, sheet, this::unit);
        this.views = new ViewRow(
                model,
                words,
                this::update,
                this::arrived,
                ClipSteps.button(
                        "find-address", "step.address", () -> sheet.clips().findAddress(model.large())),
                ClipSteps.button("fit", "step.fit", picture::fit));
        this.tied = new TiedRow(model, sheet, new AwayLine(model, sheet.clips(), change, picture::requestFocus));
        this.watched = new Watched(sheet, picture);
        this.steps = new ClipSteps(model, sheet, picture);
        this.over = new OverThePicture(model, sheet, watched, light, picture::requestFocus);
        picture.wheel(watched::wheeled);
        this.pictures = new Pictures(views, over, watched.strips(), watched.bar(), steps, tied);
        Dropped.onto(this, files -> arrived(files, model.large()));
        Dropped.onto(
                watched.second(),
                files -> arrived(files, sheet.films().companion().orElse(model.large())));
        HBox.setHgrow(pictures, Priority.ALWAYS);
        column = new MarkingColumn(marking, this, () -> marking.update(sheet.doubted(model.large())));
        heightProperty().addListener((o, before, now) -> views.pictures(now.doubleValue() > Look.px(LEAST_FOR_SMALL)));
        VBox.setVgrow(column, Priority.ALWAYS);
        VBox.setVgrow(findings, Priority.ALWAYS);
        setCenter(new HBox(pictures, column, findings));
        widthProperty().addListener((o, before, now) -> arrange(now.doubleValue() >= Look.px(LEAST_FOR_THREE)));
        setTop(toolbar);
    }

    private void arrange(boolean three) {
        HBox center = (HBox) getCenter();
        if (three != center.getChildren().contains(findings)) {
            center.getChildren().setAll(pictures);
            center.getChildren().addAll(three ? List.of(column, findings) : List.of(new VBox(column, findings)));
            // below each other they share the height evenly
            column.setPrefHeight(three ? USE_COMPUTED_SIZE : 1);
            findings.setPrefHeight(three ? USE_COMPUTED_SIZE : 1);
        }
    }

    /** Offers the last lesson, first. */
    void goOn(LessonLine last) {
        over.goOn(last);
    }

    void welcome(boolean shown) {
        over.welcome(shown);
        update();
    }

    /** Clips dropped or chosen; one is for the view it was dropped onto. A lesson's file is opened. */
    void arrived(List<Path> files, View onto) {
        if (files.size() == 1 && OnTheDesk.isLesson(files.get(0))) {
            sheet.desk().open(files.get(0));
            return;
        }
        welcome(false);
        sheet.arrivals().arrived(files, onto);
    }

    /** Which of several clips was taken for which view; asked until it is answered or something is marked. */
    ArrivedBar whichIsWhich() {
        return over.whichIsWhich();
    }

    /** Drops a click, stroke or move that is half done. */
    boolean drop() {
        return picture.drop();
    }

    Aim aim() {
        return picture.aim();
    }

    /** Gives the keys to the answers to what lies on the ground; answers whether that is asked. */
    boolean answerGround() {
        return marking.answerGround();
    }

    /** Asks for a clip of the large view. */
    void chooseClip() {
        views.choose();
    }

    void fit() {
        picture.fit();
    }

    /** The next click or stroke on the picture pins words there. */
    void pin(Optional<PinnedWords> elsewhere) {
        pins.begin(picture, elsewhere);
    }

    /** The lines that follow from the marks, on or off. */
    void lines() {
        lines.toggle();
        picture.repaint();
    }

    /** The picture brighter or darker, with more or less contrast; marks and clips stay as they are. */
    void light(double brighter, double moreContrast) {
        light.add(brighter, moreContrast);
    }

    void asFilmed() {
        light.asFilmed();
    }

    private void unit(LengthUnit unit) {
        words = Words.of(Language.written(), unit);
        findings.words(words);
        lines.words(words);
        marking.words(words);
        marking.update(sheet.doubted(model.large()));
        sheet.assessment().ifPresent(this::show);
    }

    Words words() {
        return words;
    }

    /** Forgets the pictures of an earlier lesson. */
    void clear() {
        images.clear();
        light.asFilmed();
        over.clear();
        views.clear();
        picture.show(null);
    }

    void picture(View view, @Nullable WritableImage image) {
        images.put(view, image);
        views.picture(view, image);
        watched.show(view, image);
        if (view == model.large()) {
            picture.show(image);
        }
        update();
    }

    /** A view's clip was looked through. */
    void lookedThrough(View view) {
        over.lookedThrough(view);
        update();
    }

    /** A small picture of a film that passes. */
    void pass(View view, Image image, int widthPx, int heightPx) {
        watched.pass(view, image, widthPx, heightPx);
    }

    /** Another moment of the film is shown. */
    void moved() {
        steps.update();
        tied.moved();
        watched.moved();
    }

    /** Brings everything but the findings up to date with the model. */
    void update() {
        views.update();
        WritableImage image = images.get(model.large());
        if (picture.picture() != image || watched.isOther()) {
            picture.show(image);
        }
        over.update(image != null);
        steps.update();
        tied.update(sheet.assessment());
        watched.update();
        room(!sheet.films().together(), views, column);
        pictures.controls(!over.isWelcome());
        views.more(!over.isWelcome());
        picture.doubted(sheet.doubted(model.large()));
        if (!sheet.follows()) {
            picture.repaint();
        }
        picture.lookAtSuggestion();
        marking.update(sheet.doubted(model.large()));
        toolbar.update();
    }

    /** In step one looks: the room of what chooses and of what is to be marked is the pictures'. */
    private static void room(boolean taken, Region... parts) {
        for (Region part : parts) {
            part.setVisible(taken);
            part.setManaged(taken);
        }
    }

    /** What stands there is of other marks than these, and nothing is said until there is something to say of these. */
    void reckoning() {
        findings.reckoning();
    }

    void show(Assessment assessment) {
        findings.show(assessment);
        tied.badge(Optional.of(assessment));
        picture.doubted(sheet.doubted(model.large()));
        picture.repaint();
        marking.update(sheet.doubted(model.large()));
    }
}

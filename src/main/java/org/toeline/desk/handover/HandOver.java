package org.toeline.desk.handover;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.toeline.advice.Assessment;
import org.toeline.advice.Phrases;
import org.toeline.advice.Words;
import org.toeline.desk.records.LessonFrames;
import org.toeline.desk.screen.Studio;
import org.toeline.desk.text.Texts;
import org.toeline.desk.work.Background;
import org.toeline.document.WholeFile;
import org.toeline.handout.Handout;
import org.toeline.handout.PictureFormat;
import org.toeline.handout.ShownLarge;
import org.toeline.ledger.store.place.LedgerPlace;
import org.toeline.ledger.store.place.Stills;
import org.toeline.ledger.store.rows.LessonLine;
import org.toeline.ledger.store.rows.Search;
import org.toeline.mark.View;

/** The handout of the lesson on the desk by what was chosen: painted and written off the interface thread. */
final class HandOver {

    /** Resolution at which a page is looked at, pixels an inch. */
    private static final float PAGE_DPI = 110;

    private final Studio studio;
    private final Background.Lane lane;
    private final Background.Lane large;
    private Choices choices = Choices.usual(Locale.getDefault());
    private Phrases phrases = Phrases.NONE;
    private Optional<Material.Earlier> earlier = Optional.empty();

    HandOver(Studio studio) {
        this.studio = studio;
        this.lane = studio.background().lane();
        this.large = studio.background().lane();
    }

    Choices choices() {
        return choices;
    }

    void choose(Choices changed) {
        choices = changed;
    }

    void phrases(Phrases changed) {
        phrases = changed;
    }

    /** Whether there is something to hand over. */
    boolean isReady() {
        return studio.assessment().get().isPresent() && refused().isEmpty();
    }

    /** Why nothing is handed over although there are marks: they contradict each other, or nothing was judged. */
    Optional<String> refused() {
        return studio.assessment()
                .get()
                .flatMap(a -> Handout.of(
                                studio.model().lesson(),
                                a,
                                Map.of(),
                                studio.words().get())
                        .lacksAdvice())
                .map(HandOver::sentence);
    }

    /** Why there is nothing to hand over: refused, still being reckoned, or nothing marked. */
    String whyNot() {
        return refused().orElseGet(() -> Texts.of(views().isEmpty() ? "hand-over.nothing" : "findings.reckoning"));
    }

    private static String sentence(String said) {
        return Words.sentenceCase(said) + (said.endsWith(".") ? "" : ".");
    }

    /** Views that can be shown. */
    List<View> views() {
        return studio.model().sheet().views().stream().map(v -> v.view()).toList();
    }

    /** The player's other lessons with this club that were kept before the one on the desk, the latest first. */
    void earlierLessons(Consumer<List<LessonLine>> then) {
        OptionalInt player = studio.records().playerId();
        OptionalInt own = studio.records().lessonId();
        if (player.isEmpty() || own.isEmpty()) {
            then.accept(List.of());
            return;
        }
        Search search = Search.RECENT
                .withPlayer(player.getAsInt())
                .withClub(studio.model().sheet().club());
        studio.records()
                .ask(
                        l -> l.find(search).stream()
                                .filter(line -> line.id() < own.getAsInt())
                                .toList(),
                        then);
    }

    /** Shows an earlier lesson beside this one, or none. */
    void beside(Optional<LessonLine> line, Runnable then) {
        if (line.isEmpty()) {
            earlier = Optional.empty();
            then.run();
            return;
        }
        LedgerPlace.Folder files = studio.records().settings().folder();
        studio.records()
                .ask(
                        l -> new LessonFrames(
                                l.lesson(line.get().id()).orElseThrow(),
                                l.takes(line.get().id()),
                                files),
                        frames -> studio.background().run(frames::pictures, pictures -> {
                            earlier = Optional.of(new Material.Earlier(frames.kept(), pictures));
                            then.run();
                        }));
    }

    /** Empty while there is nothing to hand over. */
    private Optional<Material> material() {
        return studio.assessment().get().filter(a -> refused().isEmpty()).map(this::materialOf);
    }

    private Material materialOf(Assessment found) {
        return new Material(
                studio.model().lesson(),
                found,
                studio.frames().get(),
                choices,
                studio.words().get().lengthUnit(),
                phrases,
                studio.ranges().all(),
                earlier,
                studio.records().settings().folder(),
                studio.records().identity());
    }

    /** Paints what the player will see; only the latest is answered. */
    void paint(Consumer<BufferedImage> then) {
        material()
                .ifPresent(m -> lane.run(
                        () -> {
                            Handout handout = m.handout();
                            return m.choices().shown() == Choices.Shown.PAPER
                                    ? page(handout.pdf(m.choices().paper()))
                                    : PictureFormat.image(m.still(handout));
                        },
                        then));
    }

    /** The still as it would be kept. */
    void still(Consumer<BufferedImage> then) {
        material().ifPresent(m -> studio.background().run(() -> PictureFormat.image(m.still(m.handout())), then));
    }

    /** The page as a PDF. */
    void pdf(Consumer<byte[]> then) {
        material()
                .ifPresent(m -> studio.background()
                        .run(() -> m.handout().pdf(m.choices().paper()), then));
    }

    /**
     * What is painted for a screen.
     *
     * @param scale from the drawing's units to the screen's pixels
     */
    record Large(ShownLarge drawing, BufferedImage image, double scale) {}

    /** For a screen of so many pixels; without marks the picture alone. Only the latest is answered. */
    void large(double widthPx, double heightPx, Consumer<Large> then) {
        studio.assessment()
                .get()
                .map(this::materialOf)
                .ifPresent(m -> large.run(() -> painted(m, widthPx, heightPx), then));
    }

    private static Large painted(Material m, double widthPx, double heightPx) throws IOException {
        ShownLarge drawing = m.handout().large(widthPx / heightPx);
        double scale = heightPx / ShownLarge.HEIGHT;
        return new Large(drawing, PictureFormat.image(drawing, scale), scale);
    }

    private static BufferedImage page(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFRenderer(document).renderImageWithDPI(0, PAGE_DPI);
        }
    }

    /** The usual name of a file; empty while there is nothing to hand over. */
    Optional<String> fileName(String what, String ending) {
        return material()
                .map(m -> Handout.of(m.lesson(), m.assessment(), Map.of(), Words.usual())
                        .withOptions(m.choices().still())
                        .fileName(what, ending));
    }

    /** Writes one file, its kind by its ending: png, jpg or svg for the still, pdf or html for the page. */
    void write(Path file, Consumer<Path> then) {
        material()
                .ifPresent(m -> studio.background()
                        .run(
                                () -> {
                                    WholeFile.write(
                                            file,
                                            m.file(
                                                    m.handout(),
                                                    file.getFileName().toString()));
                                    return file;
                                },
                                then));
    }

    /** Writes the still and both pages under their usual names, and the still beside the lesson in the ledger. */
    void writeAll(Path folder, Consumer<List<Path>> then) {
        material()
                .ifPresent(m -> studio.background()
                        .run(
                                () -> {
                                    Handout handout = m.handout();
                                    List<Path> written = new ArrayList<>();
                                    String stem = Handout.freeStem(folder, handout.stem());
                                    for (var file : new TreeMap<>(m.files(handout, stem)).entrySet()) {
                                        WholeFile.write(folder.resolve(file.getKey()), file.getValue());
                                        written.add(folder.resolve(file.getKey()));
                                    }
                                    if (m.identity().isPresent()) {
                                        WholeFile.write(
                                                Stills.folder(
                                                                m.files(),
                                                                m.identity().get())
                                                        .resolve(handout.fileName("still", "png")),
                                                PictureFormat.PNG.of(m.still(handout)));
                                    }
                                    return written;
                                },
                                then));
    }
}

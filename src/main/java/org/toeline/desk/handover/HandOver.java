package org.toeline.desk.handover;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
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
import org.toeline.advice.LengthUnit;
import org.toeline.advice.Phrases;
import org.toeline.advice.RangeBook;
import org.toeline.advice.Words;
import org.toeline.desk.records.AddressFrames;
import org.toeline.desk.records.LessonFrames;
import org.toeline.desk.screen.Studio;
import org.toeline.desk.work.Background;
import org.toeline.document.WholeFile;
import org.toeline.handout.BeforeAfter;
import org.toeline.handout.Handout;
import org.toeline.handout.PictureFormat;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.store.place.LedgerPlace;
import org.toeline.ledger.store.place.Stills;
import org.toeline.ledger.store.rows.KeptLesson;
import org.toeline.ledger.store.rows.LessonLine;
import org.toeline.ledger.store.rows.Search;
import org.toeline.mark.View;
import org.toeline.paint.Drawing;
import org.toeline.video.Frame;

/** The handout of the lesson on the desk by what was chosen: painted and written off the interface thread. */
final class HandOver {

    /** Resolution at which a page is looked at, pixels an inch. */
    private static final float PAGE_DPI = 110;

    private final Studio studio;
    private final Background.Lane lane;
    private Choices choices = Choices.usual(Locale.getDefault());
    private Phrases phrases = Phrases.NONE;
    private Optional<Earlier> earlier = Optional.empty();

    HandOver(Studio studio) {
        this.studio = studio;
        this.lane = studio.background().lane();
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

    private static String sentence(String said) {
        return Words.sentenceCase(said) + (said.endsWith(".") ? "" : ".");
    }

    /** Views that can be shown. */
    List<View> views() {
        return studio.model().sheet().views().stream().map(v -> v.view()).toList();
    }

    /**
     * An earlier lesson to be shown beside the one on the desk.
     *
     * @param pictures its address frames, as far as they are found
     */
    private record Earlier(KeptLesson kept, Map<View, BufferedImage> pictures) {}

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
                            earlier = Optional.of(new Earlier(frames.kept(), pictures));
                            then.run();
                        }));
    }

    /** What a handout is made from, as it is now. */
    private record Material(
            Lesson lesson,
            Assessment assessment,
            Map<View, Frame> frames,
            Choices choices,
            LengthUnit unit,
            Phrases phrases,
            RangeBook ranges,
            Optional<Earlier> earlier,
            LedgerPlace.Folder files,
            Optional<String> identity) {

        /** Pictures as the desk shows them; for a clip that is gone, the address frame that was kept. */
        Handout handout() throws IOException {
            Map<View, BufferedImage> pictures = new EnumMap<>(View.class);
            for (var marks : assessment.sheet().views()) {
                Frame frame = frames.get(marks.view());
                if (frame != null) {
                    pictures.put(marks.view(), frame.toImage());
                } else if (identity.isPresent()) {
                    AddressFrames.read(files, identity.get(), marks.view())
                            .ifPresent(p -> pictures.put(marks.view(), p));
                }
            }
            return as(lesson, assessment, pictures);
        }

        private Handout as(Lesson of, Assessment found, Map<View, BufferedImage> pictures) {
            return Handout.of(
                            of,
                            found,
                            pictures,
                            Words.of(choices.language(), unit).with(phrases))
                    .withOptions(choices.still().withContact(phrases.contact()))
                    .withCoachsWords(choices.coachsWords());
        }

        /** The still, or both stills in one picture when an earlier lesson is to be beside it and can be. */
        Drawing still(Handout handout) {
            return both(handout).map(Drawing.class::cast).orElseGet(handout::still);
        }

        /** All files under usual names, with those of before and after when there is an earlier lesson beside it. */
        Map<String, byte[]> files(Handout handout, String stem) {
            Map<String, byte[]> files = new HashMap<>(handout.files(stem, choices.paper()));
            both(handout).ifPresent(b -> files.putAll(b.files(stem, choices.paper())));
            return files;
        }

        private Optional<BeforeAfter> both(Handout handout) {
            return earlier.map(e ->
                            as(e.kept.lesson(), Assessment.of(e.kept.lesson().sheet(), ranges), e.pictures))
                    .filter(before -> before.lacksAdvice().isEmpty()
                            && BeforeAfter.hindrance(before, handout).isEmpty())
                    .flatMap(before -> BeforeAfter.of(before, handout));
        }
    }

    /** Empty while there is nothing to hand over. */
    private Optional<Material> material() {
        return studio.assessment()
                .get()
                .filter(a -> refused().isEmpty())
                .map(a -> new Material(
                        studio.model().lesson(),
                        a,
                        studio.frames().get(),
                        choices,
                        studio.words().get().lengthUnit(),
                        phrases,
                        studio.ranges().all(),
                        earlier,
                        studio.records().settings().folder(),
                        studio.records().identity()));
    }

    /** Paints what the player will see; only the latest is answered. */
    void paint(Consumer<BufferedImage> then) {
        material()
                .ifPresent(m -> lane.run(
                        () -> {
                            Handout handout = m.handout();
                            return m.choices.shown() == Choices.Shown.PAPER
                                    ? page(handout.pdf(m.choices.paper()))
                                    : PictureFormat.image(m.still(handout));
                        },
                        then));
    }

    private static BufferedImage page(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFRenderer(document).renderImageWithDPI(0, PAGE_DPI);
        }
    }

    /** The usual name of a file; empty while there is nothing to hand over. */
    Optional<String> fileName(String what, String ending) {
        return material()
                .map(m -> Handout.of(m.lesson, m.assessment, Map.of(), Words.usual())
                        .withOptions(m.choices.still())
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
                                            bytes(
                                                    m,
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
                                    if (m.identity.isPresent()) {
                                        WholeFile.write(
                                                Stills.folder(m.files, m.identity.get())
                                                        .resolve(handout.fileName("still", "png")),
                                                PictureFormat.PNG.of(m.still(handout)));
                                    }
                                    return written;
                                },
                                then));
    }

    private static byte[] bytes(Material material, Handout handout, String name) {
        String lower = name.toLowerCase(Locale.ROOT);
        if (lower.endsWith(".pdf")) {
            return handout.pdf(material.choices.paper());
        }
        if (lower.endsWith(".html") || lower.endsWith(".htm")) {
            return handout.html();
        }
        return PictureFormat.byName(name).orElse(PictureFormat.PNG).of(material.still(handout));
    }
}

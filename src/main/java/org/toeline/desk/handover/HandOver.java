package org.toeline.desk.handover;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Consumer;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.toeline.advice.Assessment;
import org.toeline.advice.LengthUnit;
import org.toeline.advice.Phrases;
import org.toeline.advice.Words;
import org.toeline.desk.records.AddressFrames;
import org.toeline.desk.screen.Studio;
import org.toeline.desk.work.Background;
import org.toeline.handout.Handout;
import org.toeline.handout.PictureFormat;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.WholeFile;
import org.toeline.ledger.store.LedgerPlace;
import org.toeline.ledger.store.Stills;
import org.toeline.mark.View;
import org.toeline.video.Frame;

/** The handout of the lesson on the desk by what was chosen: painted and written off the interface thread. */
final class HandOver {

    /** Resolution at which a page is looked at, pixels an inch. */
    private static final float PAGE_DPI = 110;

    private final Studio studio;
    private final Background.Lane lane;
    private Choices choices = Choices.usual(Locale.getDefault());
    private Phrases phrases = Phrases.NONE;

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
        return studio.assessment().get().isPresent();
    }

    /** Views that can be shown. */
    List<View> views() {
        return studio.model().sheet().views().stream().map(v -> v.view()).toList();
    }

    /** What a handout is made from, as it is now. */
    private record Material(Lesson lesson, Assessment assessment, Map<View, Frame> frames, Choices choices, LengthUnit unit,
                            Phrases phrases, LedgerPlace.Folder files, OptionalInt lessonId) {

        /** Pictures as the desk shows them; for a clip that is gone, the address frame that was kept. */
        Handout handout() throws IOException {
            Map<View, BufferedImage> pictures = new EnumMap<>(View.class);
            for (var marks : assessment.sheet().views()) {
                Frame frame = frames.get(marks.view());
                if (frame != null) {
                    pictures.put(marks.view(), frame.toImage());
                } else if (lessonId.isPresent()) {
                    AddressFrames.read(files, lessonId.getAsInt(), marks.view()).ifPresent(p -> pictures.put(marks.view(), p));
                }
            }
            return Handout.of(lesson, assessment, pictures, Words.of(choices.language(), unit).with(phrases))
                    .withOptions(choices.still()).withCoachsWords(choices.coachsWords());
        }
    }

    private Optional<Material> material() {
        return studio.assessment().get().map(a -> new Material(studio.model().lesson(), a, studio.frames().get(), choices,
                studio.words().get().lengthUnit(), phrases, studio.records().settings().folder(), studio.records().lessonId()));
    }

    /** Paints what the player will see; only the latest is answered. */
    void paint(Consumer<BufferedImage> then) {
        material().ifPresent(m -> lane.run(() -> {
            Handout handout = m.handout();
            return m.choices.shown() == Choices.Shown.PAPER ? page(handout.pdf(m.choices.paper()))
                    : PictureFormat.image(handout.still());
        }, then));
    }

    private static BufferedImage page(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFRenderer(document).renderImageWithDPI(0, PAGE_DPI);
        }
    }

    /** The usual name of a file; empty while there is nothing to hand over. */
    Optional<String> fileName(String what, String ending) {
        return material().map(m -> Handout.of(m.lesson, m.assessment, Map.of(), Words.english()).withOptions(m.choices.still())
                .fileName(what, ending));
    }

    /** Writes one file, its kind by its ending: png, jpg or svg for the still, pdf or html for the page. */
    void write(Path file, Consumer<Path> then) {
        material().ifPresent(m -> studio.background().run(() -> {
            WholeFile.write(file, bytes(m.handout(), file.getFileName().toString(), m.choices));
            return file;
        }, then));
    }

    /** Writes the still and both pages under their usual names, and the still beside the lesson in the ledger. */
    void writeAll(Path folder, Consumer<List<Path>> then) {
        material().ifPresent(m -> studio.background().run(() -> {
            Handout handout = m.handout();
            List<Path> written = new ArrayList<>();
            for (String name : List.of(handout.fileName("still", "png"), handout.fileName("page", "pdf"),
                    handout.fileName("page", "html"))) {
                WholeFile.write(folder.resolve(name), bytes(handout, name, m.choices));
                written.add(folder.resolve(name));
            }
            if (m.lessonId.isPresent()) {
                WholeFile.write(Stills.folder(m.files, m.lessonId.getAsInt()).resolve(handout.fileName("still", "png")),
                        handout.png());
            }
            return written;
        }, then));
    }

    private static byte[] bytes(Handout handout, String name, Choices choices) {
        String lower = name.toLowerCase(Locale.ROOT);
        if (lower.endsWith(".pdf")) {
            return handout.pdf(choices.paper());
        }
        if (lower.endsWith(".html") || lower.endsWith(".htm")) {
            return handout.html();
        }
        return PictureFormat.byName(name).orElse(PictureFormat.PNG).of(handout.still());
    }
}

package org.toeline.cli;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.toeline.advice.Assessment;
import org.toeline.advice.Words;
import org.toeline.handout.BeforeAfter;
import org.toeline.handout.Handout;
import org.toeline.handout.StillOptions;
import org.toeline.language.Sentences;
import org.toeline.ledger.DocumentException;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.store.Ledger;
import org.toeline.ledger.store.Media;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.rows.KeptLesson;
import org.toeline.ledger.store.rows.Take;
import org.toeline.mark.View;
import org.toeline.video.ClipException;

/** Makes the handout of a lesson in a ledger: only the one clip that the still shows is opened. Any thread. */
final class KeptHandout {

    private static final Sentences SENTENCES = Sentences.of(KeptHandout.class);

    private final Ledger ledger;
    private final Media media;
    private final Path clips;
    private final Path out;
    private final Words words;
    private final StillOptions options;
    private final HandoutChoices choices;

    /** @param clips the folder that relative clip names are relative to */
    KeptHandout(Ledger ledger, Media media, Path clips, Path out, HandoutChoices choices) {
        this.ledger = ledger;
        this.media = media;
        this.clips = clips;
        this.out = out;
        this.words = choices.words();
        this.options = choices.options();
        this.choices = choices;
    }

    /** Writes the files; returns the beginning of their names. */
    String write(int id) throws LedgerException, DocumentException, ClipException, IOException {
        Lesson lesson = lesson(id);
        Assessment assessment = Assessment.of(lesson.sheet());
        Handout handout = handout(lesson, assessment, picture(lesson, assessment, id));
        String stem = choices.stem(out, handout.stem() + "-lesson" + id);
        OutFiles.write(out, handout.files(stem, choices.paper()));
        return out.resolve(stem) + "-…";
    }

    /** The same with an earlier lesson of the player beside it. */
    String write(int earlier, int id) throws LedgerException, DocumentException, ClipException, IOException {
        Handout before = handout(earlier);
        Handout after = handout(id);
        Optional<String> hindrance = BeforeAfter.hindrance(before, after);
        if (hindrance.isPresent()) {
            throw new DocumentException(hindrance.get());
        }
        BeforeAfter both = BeforeAfter.of(before, after)
                .orElseThrow(() -> new DocumentException(SENTENCES.of("still.none", earlier, id)));
        String stem = choices.stem(out, after.stem() + "-lesson" + id);
        OutFiles.write(out, both.files(stem, choices.paper()));
        return out.resolve(stem) + "-before-after…";
    }

    private Lesson lesson(int id) throws LedgerException, DocumentException {
        return ledger.lesson(id)
                .map(KeptLesson::lesson)
                .orElseThrow(() -> new DocumentException(
                        SENTENCES.of("kept.no-lesson", ledger.place().name())));
    }

    /** With the pictures of all views whose clips are there. */
    private Handout handout(int id) throws LedgerException, DocumentException, ClipException, IOException {
        Lesson lesson = lesson(id);
        Map<View, BufferedImage> pictures = new EnumMap<>(View.class);
        for (Take take : ledger.takes(id)) {
            Optional<Path> file = media.locate(take, clips);
            if (file.isPresent()) {
                pictures.put(
                        take.view(),
                        LessonPictures.frame(lesson, take.view(), file.get(), SENTENCES.of("kept.lesson", id)));
            }
        }
        return handout(lesson, Assessment.of(lesson.sheet()), pictures);
    }

    private Handout handout(Lesson lesson, Assessment assessment, Map<View, BufferedImage> pictures)
            throws DocumentException {
        Handout handout = new Handout(lesson, assessment, pictures, words, options, choices.coachsWords());
        Optional<String> lacks = handout.lacksAdvice();
        if (lacks.isPresent()) {
            throw new DocumentException(lacks.get());
        }
        return handout;
    }

    /** The frame of the view that shows the first thing best, of those whose clip is there. */
    private Map<View, BufferedImage> picture(Lesson lesson, Assessment assessment, int id)
            throws LedgerException, DocumentException, ClipException, IOException {
        Map<View, Take> takes = new EnumMap<>(View.class);
        ledger.takes(id).forEach(t -> takes.put(t.view(), t));
        boolean none = takes.isEmpty();
        while (!takes.isEmpty()) {
            View view = Handout.shows(assessment, options, takes.keySet()).orElseThrow();
            Optional<Path> file = media.locate(Objects.requireNonNull(takes.remove(view)), clips);
            if (file.isPresent()) {
                return Map.of(view, LessonPictures.frame(lesson, view, file.get(), SENTENCES.of("kept.lesson", id)));
            }
        }
        throw new DocumentException(none ? SENTENCES.of("kept.no-clip") : SENTENCES.of("kept.clips"));
    }
}

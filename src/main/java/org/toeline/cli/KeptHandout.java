package org.toeline.cli;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import org.toeline.advice.Assessment;
import org.toeline.advice.Words;
import org.toeline.document.WholeFile;
import org.toeline.handout.Handout;
import org.toeline.handout.Paper;
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

    private final Ledger ledger;
    private final Media media;
    private final Path clips;
    private final Path out;
    private final Words words;
    private final StillOptions options;
    private final String coachsWords;
    private final Paper paper;

    /** @param clips the folder that relative clip names are relative to */
    KeptHandout(Ledger ledger, Media media, Path clips, Path out, HandoutChoices choices) {
        this.ledger = ledger;
        this.media = media;
        this.clips = clips;
        this.out = out;
        this.words = choices.words();
        this.options = choices.options();
        this.coachsWords = choices.coachsWords();
        this.paper = choices.paper();
    }

    /** Writes the files; returns the beginning of their names. */
    String write(int id) throws LedgerException, DocumentException, ClipException, IOException {
        KeptLesson kept = ledger.lesson(id)
                .orElseThrow(() -> new DocumentException(Sentences.of(KeptHandout.class)
                        .of("kept.no-lesson", ledger.place().name())));
        Lesson lesson = kept.lesson();
        Assessment assessment = Assessment.of(lesson.sheet());
        Handout handout = new Handout(lesson, assessment, picture(lesson, assessment, id), words, options, coachsWords);
        Optional<String> lacks = handout.lacksAdvice();
        if (lacks.isPresent()) {
            throw new DocumentException(lacks.get());
        }
        String stem = options.signed().fileStem(lesson) + "-lesson" + id;
        for (Map.Entry<String, byte[]> file : new TreeMap<>(handout.files(paper)).entrySet()) {
            String name =
                    file.getKey().substring(options.signed().fileStem(lesson).length());
            WholeFile.write(out.resolve(stem + name), file.getValue());
        }
        return out.resolve(stem) + "-…";
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
                return Map.of(view, LessonPictures.frame(lesson, view, file.get(), "lesson " + id));
            }
        }
        throw new DocumentException(
                none
                        ? Sentences.of(KeptHandout.class).of("kept.no-clip")
                        : Sentences.of(KeptHandout.class).of("kept.clips"));
    }
}

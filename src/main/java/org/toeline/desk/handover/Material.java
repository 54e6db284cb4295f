package org.toeline.desk.handover;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.toeline.advice.Assessment;
import org.toeline.advice.LengthUnit;
import org.toeline.advice.Phrases;
import org.toeline.advice.RangeBook;
import org.toeline.advice.Words;
import org.toeline.desk.records.AddressFrames;
import org.toeline.handout.BeforeAfter;
import org.toeline.handout.Handout;
import org.toeline.handout.PictureFormat;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.store.place.LedgerPlace;
import org.toeline.ledger.store.rows.KeptLesson;
import org.toeline.mark.View;
import org.toeline.paint.Drawing;
import org.toeline.video.Frame;

/** What a handout is made from, as it is now. */
record Material(
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
                AddressFrames.read(files, identity.get(), marks.view()).ifPresent(p -> pictures.put(marks.view(), p));
            }
        }
        return as(lesson, assessment, pictures);
    }

    private Handout as(Lesson of, Assessment found, Map<View, BufferedImage> pictures) {
        return Handout.of(
                        of, found, pictures, Words.of(choices.language(), unit).with(phrases))
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
        return earlier.map(
                        e -> as(e.kept.lesson(), Assessment.of(e.kept.lesson().sheet(), ranges), e.pictures))
                .filter(before -> before.lacksAdvice().isEmpty()
                        && BeforeAfter.hindrance(before, handout).isEmpty())
                .flatMap(before -> BeforeAfter.of(before, handout));
    }

    /**
     * An earlier lesson to be shown beside the one on the desk.
     *
     * @param pictures its address frames, as far as they are found
     */
    record Earlier(KeptLesson kept, Map<View, BufferedImage> pictures) {}

    /** One file, its kind by the ending of its name. */
    byte[] file(Handout handout, String name) {
        String lower = name.toLowerCase(Locale.ROOT);
        if (lower.endsWith(".pdf")) {
            return handout.pdf(choices.paper());
        }
        if (lower.endsWith(".html") || lower.endsWith(".htm")) {
            return handout.html();
        }
        return PictureFormat.byName(name).orElse(PictureFormat.PNG).of(still(handout));
    }
}

package org.toeline.ledger;

import java.time.OffsetDateTime;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.PinnedWords;
import org.toeline.mark.View;

/**
 * One lesson: who, when, which clips, and what was marked on them.
 *
 * @param playerName empty when no name was given
 * @param clips      the clip and moment of each view that has one
 * @param unfinished where the marking stands, apart from the marks
 * @param words      what the coach pinned to the pictures, in order
 * @param kept       parts of the document that this program does not know, to be written back as they were
 */
public record Lesson(
        Optional<String> playerName,
        Optional<OffsetDateTime> recorded,
        MarkSheet sheet,
        Map<View, ClipMoment> clips,
        Unfinished unfinished,
        List<PinnedWords> words,
        Kept kept) {

    /** Unknown parts of a document. */
    public interface Kept {}

    /** Nothing unknown. */
    public static final Kept NOTHING_KEPT = new Kept() {};

    public Lesson {
        Map<View, ClipMoment> copy = new EnumMap<>(View.class);
        copy.putAll(clips);
        clips = java.util.Collections.unmodifiableMap(copy);
        words = List.copyOf(words);
    }

    public static Lesson of(MarkSheet sheet) {
        return new Lesson(
                Optional.empty(), Optional.empty(), sheet, Map.of(), Unfinished.NOTHING, List.of(), NOTHING_KEPT);
    }

    /** Where the lesson was held; empty when nothing was said. */
    public String place() {
        return KeptTree.text(kept, "place");
    }

    /** What the coach wrote; empty when nothing was. */
    public String notes() {
        return KeptTree.text(kept, "notes");
    }

    /** A name that lessons share when they are one setup addressed again; empty when this is addressed once. */
    public String setup() {
        return KeptTree.text(kept, "setup");
    }

    /** As an address of the setup of that name, or of none where it is empty. */
    public Lesson withSetup(String name) {
        return new Lesson(playerName, recorded, sheet, clips, unfinished, words, KeptTree.with(kept, "setup", name));
    }

    /** The views of which somebody said, when asked, to which frame their marks belong; ids with spaces between. */
    public String framesSure() {
        return KeptTree.text(kept, "framesSure");
    }

    public Lesson withFramesSure(String views) {
        return new Lesson(
                playerName, recorded, sheet, clips, unfinished, words, KeptTree.with(kept, "framesSure", views));
    }

    public Lesson withPlace(String place) {
        return new Lesson(playerName, recorded, sheet, clips, unfinished, words, KeptTree.with(kept, "place", place));
    }

    public Lesson withNotes(String notes) {
        return new Lesson(playerName, recorded, sheet, clips, unfinished, words, KeptTree.with(kept, "notes", notes));
    }

    public Lesson withPlayerName(Optional<String> name) {
        return new Lesson(name, recorded, sheet, clips, unfinished, words, kept);
    }

    public Lesson withRecorded(OffsetDateTime time) {
        return new Lesson(playerName, Optional.of(time), sheet, clips, unfinished, words, kept);
    }

    public Lesson withSheet(MarkSheet changed) {
        return new Lesson(playerName, recorded, changed, clips, unfinished, words, kept);
    }

    /** What is pinned to the picture of a view. */
    public List<PinnedWords> words(View view) {
        return words.stream().filter(w -> w.view() == view).toList();
    }

    /** With other words pinned to the pictures. */
    public Lesson withWords(List<PinnedWords> changed) {
        return new Lesson(playerName, recorded, sheet, clips, unfinished, changed, kept);
    }

    /** With nothing pinned to the picture of a view. */
    public Lesson withoutWords(View view) {
        return withWords(words.stream().filter(w -> w.view() != view).toList());
    }

    public Lesson withUnfinished(Unfinished changed) {
        return new Lesson(playerName, recorded, sheet, clips, changed, words, kept);
    }

    public Lesson withClip(View view, ClipMoment moment) {
        Map<View, ClipMoment> changed = new EnumMap<>(View.class);
        changed.putAll(clips);
        changed.put(view, moment);
        return new Lesson(playerName, recorded, sheet, changed, unfinished, words, kept);
    }

    /** With other clips and moments. */
    public Lesson withClips(Map<View, ClipMoment> changed) {
        return new Lesson(playerName, recorded, sheet, changed, unfinished, words, kept);
    }

    /** With a view's clip or its moment changed, where it has one. */
    public Lesson withMoment(View view, UnaryOperator<ClipMoment> change) {
        ClipMoment moment = clips.get(view);
        return moment == null ? this : withClip(view, change.apply(moment));
    }

    /** With what was called face-on called down the line and the other way round: clips, moments and what was not seen. */
    public Lesson withViewsExchanged(MarkSheet exchanged) {
        Map<View, ClipMoment> others = new EnumMap<>(View.class);
        clips.forEach((view, moment) -> others.put(exchangedWith(view), moment));
        Unfinished left = Unfinished.NOTHING;
        for (View view : View.values()) {
            left = left.withUnseen(exchangedWith(view), none -> unfinished.unseen(view));
        }
        List<PinnedWords> pinned =
                words.stream().map(w -> w.to(exchangedWith(w.view()))).toList();
        return new Lesson(playerName, recorded, exchanged, others, left, pinned, kept);
    }

    private static View exchangedWith(View view) {
        return switch (view) {
            case FACE_ON -> View.DOWN_THE_LINE;
            case DOWN_THE_LINE -> View.FACE_ON;
            case TEE -> View.TEE;
        };
    }
}

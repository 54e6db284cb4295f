package org.toeline.desk.records;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.toeline.advice.Range;
import org.toeline.advice.RangeBook;
import org.toeline.desk.text.Texts;
import org.toeline.document.OwnDocument;
import org.toeline.document.WholeFile;
import org.toeline.mark.Club;
import org.toeline.reading.ReadingKind;

/**
 * The coach's own ranges beside those that come with the program, in one document of the user's. What is read may be asked
 * for on any thread; it is changed on the JavaFX thread only.
 */
public final class OwnRanges {

    private final Path file;
    private final List<Runnable> listeners = new ArrayList<>();
    private volatile RangeBook own = new RangeBook(List.of());
    private final String remark;

    /** @param file need not exist */
    public OwnRanges(Path file) {
        this.file = file;
        OwnDocument.Read<RangeBook> read = OwnDocument.read(file, own, RangeBook::of);
        own = read.value();
        remark = read.remark();
    }

    /** One sentence about what could not be read; empty when all is well. */
    public String remark() {
        return remark;
    }

    /** What lessons are judged by: the coach's own before those that come with the program. */
    public RangeBook all() {
        return RangeBook.shipped().with(own);
    }

    public RangeBook own() {
        return own;
    }

    public void listen(Runnable changed) {
        listeners.add(changed);
    }

    /** Takes a range of the coach's own in place of what there was. */
    public void put(Range range) throws IOException {
        keep(own.with(range));
    }

    /** Back to what comes with the program. */
    public void restore(ReadingKind kind, Club club) throws IOException {
        keep(own.without(kind, club));
    }

    public void restoreAll() throws IOException {
        keep(new RangeBook(List.of()));
    }

    /**
     * Takes ranges from a document, in place of the coach's own for the same readings and clubs.
     *
     * @return how many
     * @throws IllegalArgumentException with a sentence, when the document is none
     */
    public int takeIn(Path from) throws IOException {
        try {
            RangeBook given = RangeBook.of(Files.readAllBytes(from));
            keep(own.with(given));
            return given.ranges().size();
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(
                    Texts.of("ranges.not-taken-in", from, String.valueOf(e.getMessage())), e);
        }
    }

    /** All ranges as they count now, for another coach. */
    public void giveOut(Path to) throws IOException {
        WholeFile.write(to, all().json());
    }

    /** The coach's own range for a reading and club, where there is one. */
    public Optional<Range> own(ReadingKind kind, Club club) {
        return own.range(kind, club);
    }

    private void keep(RangeBook changed) throws IOException {
        WholeFile.write(file, changed.json());
        own = changed;
        List.copyOf(listeners).forEach(Runnable::run);
    }
}

package org.toeline.desk.records;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.UnaryOperator;
import org.toeline.assist.learn.CorrectionBook;
import org.toeline.document.OwnDocument;
import org.toeline.document.WholeFile;

/**
 * What is learnt of the coach's corrections, in one document of this user on this machine, which nothing gives out or backs up. It is
 * read again before something is added, so that what another window of the program added stays; of two that write within the
 * same moment the later counts. On the JavaFX thread only.
 */
public final class OwnCorrections {

    private final Path file;
    private CorrectionBook book;
    private final String remark;

    /** @param file need not exist */
    public OwnCorrections(Path file) {
        this.file = file;
        OwnDocument.Read<CorrectionBook> read = read();
        book = read.value();
        remark = read.remark();
    }

    private OwnDocument.Read<CorrectionBook> read() {
        return OwnDocument.read(file, CorrectionBook.EMPTY, CorrectionBook::of);
    }

    public Path file() {
        return file;
    }

    /** One sentence about what could not be read; empty when all is well. */
    public String remark() {
        return remark;
    }

    public CorrectionBook book() {
        return book;
    }

    /**
     * Adds to what is kept. Where it cannot be written it counts until the program ends.
     *
     * @return one sentence about what was set aside, empty when all is well
     */
    public String add(UnaryOperator<CorrectionBook> what) throws IOException {
        OwnDocument.Read<CorrectionBook> now = read();
        book = what.apply(now.value());
        WholeFile.write(file, book.json());
        return now.remark();
    }

    /** Nothing is kept any more, and nothing counts. */
    public void forget() throws IOException {
        book = CorrectionBook.EMPTY;
        Files.deleteIfExists(file);
    }
}

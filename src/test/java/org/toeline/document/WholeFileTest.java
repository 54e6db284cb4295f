package org.toeline.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIOException;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WholeFileTest {

    @TempDir
    private Path folder;

    @Test
    void isThereWholeAndNothingElse() throws Exception {
        Path file = folder.resolve("new").resolve("a.bin");
        WholeFile.write(file, new byte[] {1, 2});
        WholeFile.write(file, new byte[] {3});
        assertThat(file).hasBinaryContent(new byte[] {3});
        assertThat(file.getParent()).isDirectoryNotContaining("glob:**.part");
    }

    @Test
    void oneThatFailsHalfwayLeavesWhatWasThere() throws Exception {
        Path file = folder.resolve("a.bin");
        WholeFile.write(file, new byte[] {1});
        assertThatIOException()
                .isThrownBy(() -> WholeFile.write(file, out -> {
                    out.write(new byte[100_000]);
                    throw new IOException("the disk is full");
                }))
                .withMessage("the disk is full");
        assertThat(file).hasBinaryContent(new byte[] {1});
        assertThat(folder).isDirectoryNotContaining("glob:**.part");
    }

    @Test
    void whatWasWrittenByOtherMeansTakesThePlace() throws Exception {
        Path beside = Files.write(folder.resolve("beside"), new byte[] {7});
        Path file = Files.write(folder.resolve("a.bin"), new byte[] {1});
        assertThat(WholeFile.putInPlace(beside, file)).hasBinaryContent(new byte[] {7});
        assertThat(beside).doesNotExist();
    }
}

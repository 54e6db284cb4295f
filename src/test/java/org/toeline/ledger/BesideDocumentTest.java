package org.toeline.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a document says is no reason to open a file that is none of its own. */
class BesideDocumentTest {

    @TempDir
    private Path folder;

    @Test
    void onlyPlainFilesOfItsOwnFolderCount() throws IOException {
        Path own = Files.createDirectories(folder.resolve("lesson/clips"));
        Path document = folder.resolve("lesson/a.lesson.json");
        Path secret = Files.writeString(folder.resolve("secret.txt"), "secret");
        Path beside = Files.writeString(folder.resolve("lesson/one.mp4"), "clip");
        Path below = Files.writeString(own.resolve("two.mp4"), "clip");
        Files.createSymbolicLink(folder.resolve("lesson/out.mp4"), secret);
        Files.createSymbolicLink(folder.resolve("lesson/outside"), folder);
        Files.createSymbolicLink(folder.resolve("lesson/inside.mp4"), beside);

        assertThat(BesideDocument.clip(document, "one.mp4")).contains(beside.toAbsolutePath());
        assertThat(BesideDocument.clip(document, "clips/two.mp4")).contains(below.toAbsolutePath());
        assertThat(BesideDocument.clip(document, "clips/../one.mp4")).contains(beside.toAbsolutePath());
        assertThat(BesideDocument.clip(document, "inside.mp4")).isPresent();
        assertThat(BesideDocument.clip(document, beside.toAbsolutePath().toString()))
                .isPresent();
        assertThat(BesideDocument.leadsOut(document, "missing.mp4"))
                .as("it may come")
                .isFalse();
        assertThat(BesideDocument.leadsOut(document, "../missing.mp4")).isTrue();
        assertThat(BesideDocument.leadsOut(document, "out.mp4")).isTrue();
        for (String no : new String[] {
            secret.toString(),
            "../secret.txt",
            "clips/../../secret.txt",
            "out.mp4",
            "outside/secret.txt",
            "clips",
            ".",
            "",
            "/dev/zero",
            "a\0b.mp4",
            "missing.mp4"
        }) {
            assertThat(BesideDocument.clip(document, no)).as(no).isEmpty();
            assertThat(BesideDocument.place(document, no).getParent())
                    .as(no)
                    .isEqualTo(document.toAbsolutePath().getParent());
        }
        assertThat(BesideDocument.place(document, "C:\\Users\\x\\secret.txt").getFileName())
                .hasToString("secret.txt");
    }
}

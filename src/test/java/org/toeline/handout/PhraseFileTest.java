package org.toeline.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.toeline.advice.Phrases;

/** Fault K11 for the coach's own phrases. */
class PhraseFileTest {

    @TempDir
    private Path folder;

    @Test
    void keepsWhatWasWritten() throws Exception {
        Path file = folder.resolve("phrases.json");
        Phrases own = Phrases.NONE.with("de", "why.knee-flex", "Locker lassen.").withOwn(List.of("Gut gemacht."));
        assertThat(PhraseFile.read(file)).isEqualTo(new Phrases.Read(Phrases.NONE, List.of(), true));
        assertThat(PhraseFile.write(file, own)).isEmpty();
        assertThat(PhraseFile.read(file)).isEqualTo(new Phrases.Read(own, List.of(), true));
        assertThat(PhraseFile.write(file, own.withOwn(List.of()))).isEmpty();
        assertThat(folder).isDirectoryNotContaining("glob:**.unreadable").isDirectoryNotContaining("glob:**.part");
    }

    /** Cut at any byte it is said, left alone when read, and moved aside when something is kept in its place. */
    @Test
    void oneThatCannotBeReadIsNeverLost() throws Exception {
        Path file = folder.resolve("phrases.json");
        byte[] whole =
                Phrases.NONE.with("en", "why.knee-flex", "Loose.").written().getBytes();
        for (int cut = 1; cut < whole.length - 2; cut += 7) {
            byte[] part = java.util.Arrays.copyOf(whole, cut);
            Files.write(file, part);
            Phrases.Read read = PhraseFile.read(file);
            assertThat(read.whole()).as("cut at " + cut).isFalse();
            assertThat(read.said()).hasSize(1).allMatch(s -> s.contains("phrases.json"));
            assertThat(file).hasBinaryContent(part);
        }
        byte[] last = Files.readAllBytes(file);
        Path aside = PhraseFile.write(file, Phrases.NONE).orElseThrow();
        assertThat(aside).hasBinaryContent(last);
        assertThat(PhraseFile.read(file).whole()).isTrue();
        Files.write(file, new byte[(1 << 20) + 1]);
        assertThat(PhraseFile.read(file).said()).hasSize(1).allMatch(s -> s.contains("megabyte"));
    }
}

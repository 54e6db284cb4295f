package org.toeline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One document among many is refused by name and place, and the others are measured. */
class ManyDocumentsTest {

    private static final String WHOLE = "sample-media/before/before.lesson.json";

    @TempDir
    private Path folder;

    @Test
    void exactlyTheBadOnesAreRefused() throws Exception {
        assertThat(ManyDocuments.run(100, 3, folder).wrong()).isEmpty();
    }

    /** Each of these ended a whole batch with exit status 1 and no file named, or was let through. */
    @Test
    void whatStoppedABatchOnce() throws Exception {
        String text = Files.readString(Path.of(WHOLE));
        byte[][] bad = {
            text.replaceFirst("\\{", "{\"clickSd\": 1e-9,").getBytes(StandardCharsets.UTF_8),
            text.replaceFirst("\\{", "{\"clickSd\": 4.9e-324,").getBytes(StandardCharsets.UTF_8),
            text.replaceFirst("\"version\":\\s*1", "\"version\": 1e999").getBytes(StandardCharsets.UTF_8),
            text.replace("face-on.mp4", "face\\u0000.mp4").getBytes(StandardCharsets.UTF_8),
            text.getBytes(StandardCharsets.UTF_16),
            (text + "{}").getBytes(StandardCharsets.UTF_8)
        };
        for (int i = 0; i < bad.length; i++) {
            Path file = Files.write(folder.resolve("bad" + i + ".lesson.json"), bad[i]);
            StringWriter out = new StringWriter();
            StringWriter err = new StringWriter();
            int status = Commands.run(
                    new String[] {"measure", "--json", WHOLE, file.toString(), WHOLE},
                    new PrintWriter(out),
                    new PrintWriter(err));
            assertThat(status).as("bad " + i + ": " + err).isEqualTo(2);
            assertThat(err.toString()).contains("bad" + i).hasLineCount(1);
            String[] lines = out.toString().split("\n");
            assertThat(lines).hasSize(3);
            assertThat(lines[0]).contains("\"readings\"").isEqualTo(lines[2]);
            assertThat(lines[1]).startsWith("{\"error\":");
        }
    }
}

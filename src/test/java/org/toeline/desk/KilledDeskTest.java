package org.toeline.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.toeline.desk.KilledDesk.Left;

/** Property: a crash loses at most the last gesture. The real desk in a real process, really killed. */
class KilledDeskTest {

    @TempDir
    Path folder;

    @Test
    void losesAtMostTheLastGesture() throws Exception {
        for (long afterMs : new long[] {150, 700, 1300}) {
            Path own = Files.createDirectory(folder.resolve("after-" + afterMs));
            Left left = KilledDesk.kill(own, afterMs);
            assertThat(left.done()).as("gestures made").isPositive();
            assertThat(left.kept()).as("killed after gesture %d", left.done()).isGreaterThanOrEqualTo(left.done() - 1);
            assertThat(left.inLedger())
                    .as("the ledger, after gesture %d", left.done())
                    .isGreaterThanOrEqualTo(left.done() - 1);
            try (var files = Files.list(own)) {
                assertThat(files.filter(f -> f.getFileName().toString().contains(".lesson.json")
                                && !f.getFileName().toString().equals("lesson.lesson.json")))
                        .as("a part of a document may lie beside it, never in its place")
                        .hasSizeLessThanOrEqualTo(1);
            }
        }
    }
}

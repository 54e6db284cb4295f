package org.toeline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.toeline.ledger.LessonDocument;

/** The ledger from the command line, one whole use of it. */
class LedgerCommandTest {

    private static final String BEFORE = "sample-media/before/before.lesson.json";
    private static final String AFTER = "sample-media/after/after.lesson.json";

    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... args) {
        out.getBuffer().setLength(0);
        err.getBuffer().setLength(0);
        List<String> all = new ArrayList<>(
                List.of("ledger", args[0], "--ledger", folder.resolve("kept").toString()));
        all.addAll(List.of(args).subList(1, args.length));
        return Commands.run(all.toArray(String[]::new), new PrintWriter(out), new PrintWriter(err));
    }

    @Test
    void fromImportToDeletion() throws Exception {
        assertThat(run("import", AFTER, BEFORE)).isZero();
        assertThat(out.toString().lines().toList().get(0))
                .as("in the order recorded")
                .startsWith(BEFORE);
        assertThat(run("import", BEFORE)).isZero();
        assertThat(out.toString()).contains("there already");
        assertThat(run("find", "--json")).isZero();
        List<String> lines = out.toString().lines().toList();
        JsonNode recent = new ObjectMapper().readTree(lines.get(0));
        assertThat(lines).hasSize(2);
        assertThat(recent.path("lesson").asInt()).isEqualTo(2);
        String name = recent.path("name").asText();
        assertThat(run("find", name.substring(0, 2))).isZero();
        assertThat(out.toString().lines()).hasSize(2);
        assertThat(run("find", "--finding", "ball-to-lead-shoulder", "--verdict", "out-high"))
                .isZero();
        assertThat(out.toString().lines()).as("before the change").hasSize(1);
        assertThat(run("across", "--player", "1", "--club", "driver", "--json")).isZero();
        JsonNode across = new ObjectMapper().readTree(out.toString()).path("readings");
        assertThat(across)
                .anySatisfy(r -> assertThat(r.path("reading").asText()
                                + r.path("change").path("call").asText())
                        .isEqualTo("ball-to-lead-shoulderreal"));
        assertThat(run("backup")).isZero();
        Path backup = Path.of(out.toString().strip());
        assertThat(backup).exists();
        assertThat(run("check")).isZero();
        Path given = folder.resolve("given");
        assertThat(run(
                        "export",
                        "--out",
                        given.toString(),
                        "--csv",
                        given.resolve("all.csv").toString()))
                .isZero();
        assertThat(given.resolve("lesson-000001.lesson.json"))
                .hasBinaryContent(LessonDocument.bytes(LessonDocument.read(Path.of(BEFORE))));
        assertThat(Files.readAllLines(given.resolve("all.csv"))).hasSizeGreaterThan(30);
        assertThat(run("delete", "--player", "1", "--export-first", given.toString(), "--backups-too"))
                .isZero();
        assertThat(out.toString()).contains("deleted: 2 lessons");
        assertThat(given.resolve("lesson-000002.lesson.zip")).exists();
        assertThat(backup).doesNotExist();
        assertThat(run("find")).isZero();
        assertThat(out.toString()).isEmpty();
        assertThat(run("import", given.resolve("lesson-000002.lesson.zip").toString()))
                .isZero();
        assertThat(run("export", "--lesson", "3", "--out", given.toString())).isZero();
        assertThat(given.resolve("lesson-000003.lesson.json"))
                .hasBinaryContent(LessonDocument.bytes(LessonDocument.read(Path.of(AFTER))));
        try (Stream<Path> files = Files.walk(folder.resolve("kept"))) {
            assertThat(files.map(f -> f.getFileName().toString()))
                    .noneMatch(n -> n.startsWith(".import") || n.endsWith(".part"));
        }
    }

    @Test
    void saysWhatIsWrongInASentence() throws Exception {
        Path broken = Files.writeString(folder.resolve("broken.lesson.json"), "{");
        assertThat(run("import", broken.toString(), BEFORE)).isEqualTo(2);
        assertThat(err.toString().lines()).hasSize(1);
        assertThat(out.toString()).contains("lesson 1");
        assertThat(run("delete", "--player", "77")).isEqualTo(2);
        assertThat(err.toString()).contains("there is no player 77");
        assertThat(run("find", "--club", "spoon")).isEqualTo(2);
        assertThat(run("export")).isEqualTo(2);
        assertThat(run("export", "--lesson", "9", "--out", folder.toString())).isEqualTo(2);
        assertThat(run("restore")).isEqualTo(2);
        Files.write(folder.resolve("kept/ledger.db"), new byte[50]);
        assertThat(run("find")).isEqualTo(1);
        assertThat(err.toString())
                .contains("ledger.db")
                .contains("damaged")
                .contains("no backup")
                .hasLineCount(1);
    }

    @Test
    void aDamagedLedgerComesBackFromItsBackup() throws Exception {
        assertThat(run("import", BEFORE)).isZero();
        assertThat(run("backup")).isZero();
        Files.write(folder.resolve("kept/ledger.db"), new byte[50]);
        assertThat(run("find")).isEqualTo(1);
        assertThat(err.toString()).contains("the newest backup is");
        assertThat(run("restore")).isZero();
        assertThat(run("find")).isZero();
        assertThat(out.toString().lines()).hasSize(1);
    }

    @Test
    void twoPlayersWhoAreOne() throws Exception {
        Path renamed = folder.resolve("renamed.lesson.json");
        LessonDocument.write(
                LessonDocument.read(Path.of(AFTER)).withPlayerName(java.util.Optional.of("Another Name")), renamed);
        assertThat(run("import", BEFORE, renamed.toString())).isZero();
        assertThat(run("merge", "--player", "2", "--into", "1")).isZero();
        assertThat(out.toString()).startsWith("One lesson of player 2 went to player 1, ");
        assertThat(run("find", "another")).isZero();
        assertThat(out.toString()).isEmpty();
        assertThat(run("across", "--player", "1", "--club", "driver", "--json")).isZero();
        assertThat(run("check")).isZero();
        assertThat(run("merge", "--player", "2", "--into", "1")).isEqualTo(2);
        assertThat(err.toString()).contains("there is no player 2").hasLineCount(1);
    }
}

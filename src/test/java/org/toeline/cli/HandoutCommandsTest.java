package org.toeline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Stills and handouts from the command line, one and many. */
class HandoutCommandsTest {

    private static final String BEFORE = "sample-media/before/before.lesson.json";
    private static final String AFTER = "sample-media/after/after.lesson.json";

    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(Object... args) {
        out.getBuffer().setLength(0);
        err.getBuffer().setLength(0);
        return Commands.run(
                Stream.of(args).map(Object::toString).toArray(String[]::new),
                new PrintWriter(out),
                new PrintWriter(err));
    }

    @Test
    void aStillIsWrittenAsItsNameEnds() throws Exception {
        Path svg = folder.resolve("still.svg");
        assertThat(run("still", BEFORE, "--out", svg, "--language", "de", "--inches", "--whole-set"))
                .isZero();
        assertThat(Files.readString(svg))
                .startsWith("<?xml")
                .contains("<svg")
                .contains("Ansprechposition")
                .contains("Zoll");
        Path jpeg = folder.resolve("both.jpg");
        assertThat(run("still", AFTER, "--before", BEFORE, "--out", jpeg)).isZero();
        assertThat(ImageIO.read(jpeg.toFile()).getWidth()).isEqualTo(1080);
        assertThat(Files.readAllBytes(jpeg)).startsWith(0xFF, 0xD8);
    }

    @Test
    void aHandoutIsNamedSignedAndWordedAsAsked() throws Exception {
        Path phrases = Files.writeString(folder.resolve("own.json"), """
            {"format": "toeline-phrases", "version": 1, "phrases": {"de": {"handout.check": "Zu Hause",
             "finding.out": "Schlimm"}}}\
            """);
        assertThat(run(
                        "handout",
                        BEFORE,
                        "--out",
                        folder,
                        "--language",
                        "de-AT",
                        "--paper",
                        "letter",
                        "--sign",
                        "name",
                        "--coach",
                        "Gut <gemacht>.",
                        "--phrases",
                        phrases,
                        "--cover-face"))
                .isZero();
        assertThat(err.toString()).contains("own.json").contains("finding.out").hasLineCount(1);
        String html = Files.readString(folder.resolve("A-Sample-2026-05-14-page.html"), StandardCharsets.UTF_8);
        assertThat(html)
                .contains("<html lang=\"de\">")
                .contains("Gut &lt;gemacht&gt;.")
                .contains("Zu Hause")
                .contains("Der Ball liegt zu weit vorn")
                .doesNotContain("Schlimm");
        assertThat(folder.resolve("A-Sample-2026-05-14-page.pdf")).exists();
        assertThat(folder.resolve("A-Sample-2026-05-14-still.png")).exists();
    }

    @Test
    void whatCannotBeDoneIsSaidInASentence() throws Exception {
        for (String[] wrong : new String[][] {
            {"--view", "above"},
            {"--cover", "face-on:1,2,3"},
            {"--paper", "a5"},
            {"--coach", "x".repeat(801)},
            {"--sign", "face"},
            {"--language", "!"}
        }) {
            assertThat(run("handout", BEFORE, "--out", folder, wrong[0], wrong[1]))
                    .as(wrong[0])
                    .isEqualTo(2);
            assertThat(err.toString()).as(wrong[0]).hasLineCount(1);
        }
        ObjectNode lesson =
                (ObjectNode) new ObjectMapper().readTree(Path.of(BEFORE).toFile());
        lesson.path("views").forEach(v -> {
            ((ObjectNode) v)
                    .put(
                            "clip",
                            Path.of("sample-media/before")
                                    .toAbsolutePath()
                                    .resolve(v.path("clip").asText())
                                    .toString());
            ((com.fasterxml.jackson.databind.node.ArrayNode) v.path("marks"))
                    .removeIf(m -> m.path("landmark").asText().equals("head-centre"));
        });
        Path headless = folder.resolve("headless.lesson.json");
        new ObjectMapper().writeValue(headless.toFile(), lesson);
        assertThat(run("still", headless, "--out", folder.resolve("x.png"), "--cover-face"))
                .isEqualTo(2);
        assertThat(err.toString())
                .contains("headless.lesson.json")
                .contains("head was not marked")
                .hasLineCount(1);
        assertThat(folder.resolve("x.png")).doesNotExist();
        assertThat(run("still", headless, "--out", folder.resolve("x.png"), "--cover", "face-on:577,136,60,70"))
                .isZero();
    }

    /** One that cannot be made is said, and the rest are made. */
    @Test
    void aLedgerGivesOutAllHandouts() throws Exception {
        Path ledger = folder.resolve("kept");
        Path gone = Files.writeString(
                folder.resolve("gone.lesson.json"),
                anywhere(BEFORE).replace(".mp4", "-gone.mp4").replace("10:20", "09:20"));
        Path before = Files.writeString(folder.resolve("before.lesson.json"), anywhere(BEFORE));
        Path after = Files.writeString(folder.resolve("after.lesson.json"), anywhere(AFTER));
        assertThat(run("ledger", "import", "--ledger", ledger, before, gone, after))
                .isZero();
        Path made = folder.resolve("made");
        assertThat(run("ledger", "handouts", "--ledger", ledger, "--out", made)).isEqualTo(2);
        assertThat(err.toString())
                .contains("lesson 1")
                .contains("--clips")
                .contains("1 of 3 handouts could not be made");
        assertThat(out.toString())
                .contains("2 of 3: lesson 2")
                .contains("3 of 3: lesson 3")
                .hasLineCount(2);
        try (Stream<Path> files = Files.list(made)) {
            assertThat(files.map(f -> f.getFileName().toString()))
                    .containsExactlyInAnyOrder(
                            "AS-2026-05-14-lesson2-still.png",
                            "AS-2026-05-14-lesson2-page.pdf",
                            "AS-2026-05-14-lesson2-page.html",
                            "AS-2026-06-11-lesson3-still.png",
                            "AS-2026-06-11-lesson3-page.pdf",
                            "AS-2026-06-11-lesson3-page.html");
        }
        assertThat(run("ledger", "handouts", "--ledger", ledger, "--lesson", "7", "--out", made))
                .isEqualTo(2);
        assertThat(err.toString()).contains("lesson 7").contains("no such lesson");
    }

    /** The document with its clips named from the root. */
    private static String anywhere(String document) throws Exception {
        Path file = Path.of(document).toAbsolutePath();
        return Files.readString(file)
                .replaceAll(
                        "(\"clip\"\\s*:\\s*\")",
                        "$1" + file.getParent().toString().replace("\\", "/") + "/");
    }
}

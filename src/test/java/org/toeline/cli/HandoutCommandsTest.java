package org.toeline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
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
            {"--contact", "x".repeat(161)},
            {"--language", "!"}
        }) {
            assertThat(run("handout", BEFORE, "--out", folder, wrong[0], wrong[1]))
                    .as(wrong[0])
                    .isEqualTo(2);
            assertThat(err.toString()).as(wrong[0]).hasLineCount(1);
        }
        ObjectNode lesson =
                (ObjectNode) new ObjectMapper().readTree(Path.of(BEFORE).toFile());
        lesson.path("views")
                .forEach(v -> ((ArrayNode) v.path("marks"))
                        .removeIf(m -> m.path("landmark").asText().equals("head-centre")));
        copyClips(BEFORE, folder);
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

    /** Two players of the same initials on one day: nothing is replaced unasked. */
    @Test
    void nobodysHandoutIsReplacedUnasked() throws Exception {
        assertThat(run("handout", BEFORE, "--out", folder)).isZero();
        byte[] first = Files.readAllBytes(folder.resolve("AS-2026-05-14-still.png"));
        Path other = Files.writeString(
                folder.resolve("other.lesson.json"), clipsCopied(BEFORE).replace("A. Sample", "Anton Simple"));
        assertThat(run("handout", other, "--out", folder, "--whole-set")).isZero();
        assertThat(out.toString()).contains("AS-2026-05-14-2-still.png");
        assertThat(folder.resolve("AS-2026-05-14-2-page.pdf")).exists();
        assertThat(Files.readAllBytes(folder.resolve("AS-2026-05-14-still.png")))
                .isEqualTo(first);
        Path still = folder.resolve("AS-2026-05-14-still.png");
        assertThat(run("still", other, "--whole-set", "--out", still)).isEqualTo(2);
        assertThat(err.toString()).contains("still.png").contains("--replace").hasLineCount(1);
        assertThat(Files.readAllBytes(still)).isEqualTo(first);
        assertThat(run("still", other, "--whole-set", "--out", still, "--replace"))
                .isZero();
        assertThat(Files.readAllBytes(still)).isNotEqualTo(first);
    }

    /** A cover that would hide nothing is refused: for a view that is not shown, or outside the picture. */
    @Test
    void aCoverThatHidesNothingIsRefused() {
        Path still = folder.resolve("x.png");
        for (String cover : new String[] {"down-the-line:500,200,60,70", "face-on:5000,136,60,70"}) {
            assertThat(run("still", BEFORE, "--view", "face-on", "--out", still, "--cover", cover))
                    .as(cover)
                    .isEqualTo(2);
            assertThat(err.toString()).as(cover).contains("cover").hasLineCount(1);
            assertThat(still).doesNotExist();
        }
    }

    @Test
    void aFolderThatCannotBeWrittenIsSaidByItsName() throws Exception {
        Path file = Files.writeString(folder.resolve("no-folder"), "x");
        assertThat(run("handout", BEFORE, "--out", file)).isEqualTo(2);
        assertThat(err.toString())
                .contains(file.toString())
                .doesNotContain(".part")
                .hasLineCount(1);
    }

    /** Nothing marked, or nothing that the pictures show: there is no page of it, and no reason to praise. */
    @Test
    void whereNothingIsJudgedThereIsNoPage() throws Exception {
        for (String kept : new String[] {"none", "lead-toe"}) {
            ObjectNode lesson = (ObjectNode) new ObjectMapper().readTree(clipsCopied(BEFORE));
            lesson.path("views").forEach(v -> {
                ((ObjectNode) v).remove("ball");
                ((ArrayNode) v.path("marks"))
                        .removeIf(m -> !m.path("landmark").asText().equals(kept));
            });
            Path bare = folder.resolve("bare.lesson.json");
            new ObjectMapper().writeValue(bare.toFile(), lesson);
            Path page = folder.resolve("page-" + kept);
            assertThat(run("handout", bare, "--out", page)).as(kept).isEqualTo(2);
            assertThat(err.toString())
                    .contains("bare.lesson.json")
                    .contains("nothing was measured that could be judged")
                    .hasLineCount(1);
            assertThat(page).doesNotExist();
        }
    }

    /** Before and after are one player's, of one hand and one kind of club, in that order. */
    @Test
    void beforeAndAfterAreOfOneThing() throws Exception {
        Path later = folder.resolve("later.lesson.json");
        for (String[] change : new String[][] {
            {"A. Sample", "Somebody Else", "two players"},
            {"\"club\": \"driver\"", "\"club\": \"wedge\"", "kind of club"},
            {"2026-06-11", "2025-06-11", "exchange them"}
        }) {
            String text = clipsCopied(AFTER);
            assertThat(text).contains(change[0]);
            Files.writeString(later, text.replace(change[0], change[1]));
            for (String command : new String[] {"still", "handout"}) {
                Path made = folder.resolve("both-" + command);
                assertThat(run(command, later, "--before", BEFORE, "--out", made))
                        .as(command + " " + change[2])
                        .isEqualTo(2);
                assertThat(err.toString()).contains(change[2]).hasLineCount(1);
                assertThat(made).doesNotExist();
            }
        }
        assertThat(run("still", "sample-media/left-handed/left-handed.lesson.json", "--before", BEFORE, "--out", later))
                .isEqualTo(2);
    }

    /** What became of it stands on top, praise first, and the coach's contact at the end. */
    @Test
    void beforeAndAfterIsAPageToo() throws Exception {
        assertThat(run(
                        "handout",
                        AFTER,
                        "--before",
                        BEFORE,
                        "--out",
                        folder,
                        "--contact",
                        "C. Coach, coach@example.org"))
                .isZero();
        String html = Files.readString(folder.resolve("AS-2026-06-11-before-after.html"), StandardCharsets.UTF_8);
        assertThat(html)
                .contains("<h1>Well done: the ball now lies under your left shoulder.</h1>")
                .contains("<p class=\"lead\">Nothing is surely out of range. ")
                .contains("coach@example.org");
        assertThat(folder.resolve("AS-2026-06-11-before-after.pdf")).exists();
        assertThat(folder.resolve("AS-2026-06-11-before-after.png")).exists();
    }

    /** One that cannot be made is said, and the rest are made. */
    @Test
    void aLedgerGivesOutAllHandouts() throws Exception {
        Path ledger = folder.resolve("kept");
        Path first = copyClips(BEFORE, Files.createDirectory(folder.resolve("first")));
        Path second = copyClips(AFTER, Files.createDirectory(folder.resolve("second")));
        Path gone = Files.writeString(
                first.resolve("gone.lesson.json"),
                Files.readString(Path.of(BEFORE)).replace(".mp4", "-gone.mp4").replace("10:20", "09:20"));
        Path before = Files.copy(Path.of(BEFORE), first.resolve("before.lesson.json"));
        Path after = Files.copy(Path.of(AFTER), second.resolve("after.lesson.json"));
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
        assertThat(run("ledger", "handouts", "--ledger", ledger, "--lesson", "3", "--before", "2", "--out", made))
                .isZero();
        assertThat(made.resolve("AS-2026-06-11-lesson3-2-before-after.pdf")).exists();
        assertThat(run("ledger", "handouts", "--ledger", ledger, "--lesson", "2", "--before", "3", "--out", made))
                .isEqualTo(2);
        assertThat(err.toString()).contains("exchange them");
        assertThat(run("ledger", "handouts", "--ledger", ledger, "--lesson", "7", "--out", made))
                .isEqualTo(2);
        assertThat(err.toString()).contains("lesson 7").contains("no such lesson");
    }

    /** The clips that lie beside a document, into another folder. */
    /** The document's text; what it names lies in the folder from now on. */
    private String clipsCopied(String document) throws Exception {
        copyClips(document, folder);
        return Files.readString(Path.of(document));
    }

    private static Path copyClips(String document, Path into) throws Exception {
        try (Stream<Path> files = Files.list(Path.of(document).toAbsolutePath().getParent())) {
            for (Path clip : files.filter(f -> f.toString().endsWith(".mp4")).toList()) {
                Files.copy(clip, into.resolve(clip.getFileName()), StandardCopyOption.REPLACE_EXISTING);
            }
        }
        return into;
    }
}

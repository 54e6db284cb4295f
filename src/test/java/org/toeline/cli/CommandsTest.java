package org.toeline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.toeline.language.Language;

/** The commands as other programs use them: what they print where, and how they end. */
class CommandsTest {

    private static final String BEFORE = "sample-media/before/before.lesson.json";

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    /** Contradiction of silence: a sheet without a mark has nothing that could be in or out of range. */
    @Test
    void nothingMarkedIsNothingSaid(@TempDir Path dir) throws Exception {
        Path empty = dir.resolve("empty.lesson.json");
        Files.writeString(empty, """
            {"format": "toeline-lesson", "version": 1, "player": {"handedness": "right"}, "club": "driver",
             "views": [{"view": "face-on", "width": 1920, "height": 1080}]}
            """);
        assertThat(run("measure", empty.toString())).isZero();
        assertThat(out.toString())
                .contains("Nothing was measured that could be judged")
                .doesNotContain("range");
        assertThat(run("handout", empty.toString(), "--out", dir.resolve("out").toString()))
                .isEqualTo(2);
        assertThat(err.toString()).contains("empty.lesson.json").contains("mark the player first");
        assertThat(dir.resolve("out")).doesNotExist();
    }

    /** What the library of commands finds wrong is said in the language of the person, not in the library's. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "ledger nonsense | „nonsense“ ist hier nicht bekannt",
                "measure --nonsense x.json | „--nonsense“ ist hier nicht bekannt",
                "frame --time 1 | es fehlt: --out, CLIP",
                "ledger find --most many | --most: „many“ ist nicht möglich",
                "ledger delete --player 1 --lesson 2 | zwei dieser Angaben schließen einander aus",
                "ledger delete | es fehlt: --player, --lesson"
            })
    void whatIsMistypedIsSaidInThePersonsLanguage(String typed, String said) {
        Locale before = Language.now();
        try {
            Language.choose(Locale.GERMAN);
            assertThat(run(typed.split(" "))).isEqualTo(2);
        } finally {
            Locale.setDefault(Locale.Category.DISPLAY, before);
        }
        assertThat(err.toString().strip()).isEqualTo(said + " (siehe toeline --help)");
    }

    private int run(String... args) {
        return Commands.run(args, new PrintWriter(out), new PrintWriter(err));
    }

    @Test
    void measurePrintsOneObjectAndNothingElse() throws Exception {
        assertThat(run("measure", "--json", BEFORE)).isZero();
        JsonNode object = new ObjectMapper().readTree(out.toString());
        assertThat(object.path("format").asText()).isEqualTo("toeline-readings");
        assertThat(object.path("first").path("reading").asText()).isEqualTo("ball-to-lead-shoulder");
        JsonNode reading = object.path("readings").path(0);
        for (String key : List.of("reading", "value", "u", "low", "high", "unit", "dominatedBy")) {
            assertThat(reading.has(key)).as(key).isTrue();
        }
        assertThat(err.toString()).isEmpty();
    }

    /** What is printed keeps to the schema that other programs may check against. */
    @Test
    void outputKeepsToItsSchema() throws Exception {
        JsonSchema schema = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                .getSchema(Commands.class.getResourceAsStream("readings.schema.json"));
        for (String lesson : List.of("before", "after", "left-handed", "all-good")) {
            out.getBuffer().setLength(0);
            assertThat(run("measure", "--json", "sample-media/" + lesson + "/" + lesson + ".lesson.json"))
                    .isZero();
            assertThat(schema.validate(new ObjectMapper().readTree(out.toString())))
                    .as(lesson)
                    .isEmpty();
        }
    }

    @Test
    void severalDocumentsAreOneALineInOrder(@TempDir Path folder) throws Exception {
        Path broken = Files.writeString(folder.resolve("broken.lesson.json"), "{\"format\": 3}");
        assertThat(run("measure", "--json", BEFORE, broken.toString(), BEFORE)).isEqualTo(2);
        List<String> lines = out.toString().lines().toList();
        assertThat(lines).hasSize(3);
        assertThat(lines.get(0)).isEqualTo(lines.get(2)).startsWith("{\"format\"");
        assertThat(lines.get(1)).startsWith("{\"error\"");
        assertThat(err.toString().lines()).hasSize(1);
    }

    @Test
    void endsAsItSays(@TempDir Path folder) throws Exception {
        assertThat(run("measure", folder.resolve("none.json").toString())).isEqualTo(2);
        assertThat(run("nonsense")).isEqualTo(2);
        assertThat(run("frame", "x.mp4", "--out", "y.png")).isEqualTo(2);
        assertThat(run("clip", folder.resolve("none.mp4").toString())).isEqualTo(3);
        Path text = Files.writeString(folder.resolve("text.mp4"), "no clip");
        assertThat(run("clip", text.toString())).isEqualTo(3);
        assertThat(run("--version")).isZero();
        assertThat(run("measure", "--help")).isZero();
        assertThat(err.toString()).doesNotContain("\tat ");
    }

    @Test
    void aLessonWithoutItsClipSaysSo(@TempDir Path folder) throws Exception {
        Path lesson = Files.copy(Path.of(BEFORE), folder.resolve("lonely.lesson.json"));
        Path still = folder.resolve("still.png");
        assertThat(run("still", lesson.toString(), "--out", still.toString())).isEqualTo(3);
        assertThat(still).doesNotExist();
        assertThat(err.toString()).contains("face-on.mp4").contains("no such file");
    }

    /** A document comes from anywhere: what it names outside its own folder is not opened. */
    @Test
    void aDocumentOpensNoFileOutsideItsFolder(@TempDir Path folder) throws Exception {
        Path clips = Path.of(BEFORE).toAbsolutePath().getParent();
        Path own = Files.createDirectories(folder.resolve("own"));
        Path still = folder.resolve("still.png");
        Files.copy(clips.resolve("face-on.mp4"), folder.resolve("face-on.mp4"));
        for (String clip : new String[] {clips.resolve("face-on.mp4").toString(), "../face-on.mp4"}) {
            Path lesson = Files.writeString(
                    own.resolve("a.lesson.json"),
                    Files.readString(Path.of(BEFORE)).replace("\"face-on.mp4\"", "\"" + clip + "\""));
            err.getBuffer().setLength(0);
            assertThat(run("still", lesson.toString(), "--out", still.toString()))
                    .as(clip)
                    .isEqualTo(2);
            assertThat(err.toString()).contains("face-on").contains(clip).hasLineCount(1);
            assertThat(still).doesNotExist();
        }
    }

    @Test
    void clipAndFrameAndAddress(@TempDir Path folder) throws Exception {
        String clip = "sample-media/before/face-on.mp4";
        assertThat(run("clip", clip, "--json", "--times")).isZero();
        JsonNode info = new ObjectMapper().readTree(out.toString());
        assertThat(info.path("frames").asInt())
                .isEqualTo(info.path("times").size())
                .isEqualTo(228);
        out.getBuffer().setLength(0);
        Path png = folder.resolve("f.png");
        assertThat(run("frame", clip, "--time", "1.005", "--out", png.toString()))
                .isZero();
        assertThat(out.toString().strip()).isEqualTo("1.000000");
        assertThat(png).exists();
    }

    @Test
    void theRateOfFilmingCanBeSaid() throws Exception {
        String clip = "sample-media/before/face-on.mp4";
        assertThat(run("address", clip, "--json", "--filmed-at", "60")).isZero();
        assertThat(new ObjectMapper().readTree(out.toString()).path("found").asBoolean())
                .isTrue();
        assertThat(run("address", clip, "--filmed-at", "0.3")).isEqualTo(2);
        assertThat(err.toString()).contains("--filmed-at is 0.3; 1 to 100000 frames a second are possible");
    }

    @Test
    void handoutWritesThreeFiles(@TempDir Path folder) {
        assertThat(run("handout", BEFORE, "--out", folder.toString())).isZero();
        assertThat(folder)
                .isDirectoryContaining("glob:**AS-2026-05-14-still.png")
                .isDirectoryContaining("glob:**AS-2026-05-14-page.pdf")
                .isDirectoryContaining("glob:**AS-2026-05-14-page.html");
        assertThat(out.toString()).hasLineCount(3).doesNotContain("Sample");
    }

    /** What has no name of its own can be neither a file that is read nor one that is written. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "still sample-media/before/before.lesson.json --out /",
                "still sample-media/before/before.lesson.json --out / --replace",
                "still / --out ROOM/x.png",
                "frame sample-media/before/tee.mp4 --time 0.5 --out /",
                "frame / --time 0.5 --out ROOM/x.png",
                "measure /",
                "measure sample-media/before/before.lesson.json --mend cross-rod-turned --save /",
                "changes / /",
                "handout / --out ROOM",
                "clip /",
                "address /",
                "lens / --name a --square 25 --columns 9 --rows 6",
                "shots /",
                "ledger export --csv / --ledger ROOM",
                "ledger import / --ledger ROOM",
                "ledger restore / --ledger ROOM"
            })
    void theRootOfTheDiskIsSaidInASentence(String line, @TempDir Path room) {
        assertThat(run(line.replace("ROOM", room.toString()).split(" ")))
                .as(line)
                .isIn(2, 3);
        assertThat(err.toString())
                .doesNotContainIgnoringCase("null")
                .doesNotContain("Exception")
                .contains("/");
        assertThat(err.toString().lines()).isNotEmpty();
    }

    /** As the virtual machine reports it on a Debian without the library; the whole is in {@code .ci/installed.sh}. */
    @Test
    void oneSentenceWhereTheSystemCannotDrawLetters() {
        Error error = new ExceptionInInitializerError(new UnsatisfiedLinkError(
                "libfontmanager.so: libfreetype.so.6: cannot open shared object file\nand more"));
        assertThat(Commands.lacking(error))
                .contains("libfreetype.so.6", "apt-get install", "fontconfig")
                .doesNotContain("\n");
    }
}

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
import org.toeline.flight.ShotFigure;

/** The shots command as a person and as a program use it. */
class ShotsCommandTest {

    private static final String BEFORE = "sample-media/shots/before.csv";
    private static final String AFTER = "sample-media/shots/after.csv";

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... args) {
        return Commands.run(args, new PrintWriter(out), new PrintWriter(err));
    }

    /** The samples were drawn with a launch 3° higher and some 400 turns a minute less; one shot before is a mishit. */
    @Test
    void comparesTwoTablesInWords() {
        assertThat(run("shots", BEFORE, "--against", AFTER)).isZero();
        assertThat(out.toString())
                .contains("line 12 left out: a summary")
                .contains("Smits & Smith 1994")
                .contains("Bearman & Harvey 1976")
                .containsPattern("launch angle +\\+3\\.\\d \\(\\+.*\\) ° +real")
                .containsPattern("launch direction .* (not shown|too few shots)")
                .contains("10 figures looked at together");
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void printsOneObjectThatKeepsToItsSchema() throws Exception {
        JsonSchema schema = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                .getSchema(Commands.class.getResourceAsStream("shots.schema.json"));
        assertThat(run("shots", BEFORE, "--json")).isZero();
        JsonNode one = new ObjectMapper().readTree(out.toString());
        assertThat(schema.validate(one)).isEmpty();
        assertThat(one.has("differences")).isFalse();
        out.getBuffer().setLength(0);
        assertThat(run("shots", BEFORE, "--against", AFTER, "--json")).isZero();
        JsonNode two = new ObjectMapper().readTree(out.toString());
        assertThat(schema.validate(two)).isEmpty();
        assertThat(two.path("setups").path(0).path("shots")).hasSize(10);
        assertThat(two.path("setups").path(0).path("shots").path(0).path("flights"))
                .hasSize(4);
        for (JsonNode difference : two.path("differences")) {
            if (difference.path("figure").asText().equals("launch-angle")) {
                assertThat(difference.path("state").asText()).isEqualTo("real");
                assertThat(difference.path("low").asDouble()).isBetween(0.5, 3.0);
                assertThat(difference.path("high").asDouble()).isBetween(3.0, 5.5);
            }
        }
    }

    private JsonNode keepsToItsSchema(Path table) throws Exception {
        assertThat(run("shots", table.toString(), "--json")).isZero();
        JsonNode found = new ObjectMapper().readTree(out.toString());
        assertThat(JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                        .getSchema(Commands.class.getResourceAsStream("shots.schema.json"))
                        .validate(found))
                .isEmpty();
        return found;
    }

    /** Where start line and spin axis were not measured a flight has no side, and the object still keeps to its schema. */
    @Test
    void aFlightWithoutAStartLineHasNoSide(@TempDir Path folder) throws Exception {
        Path table = Files.writeString(folder.resolve("plain.csv"), """
                Ball speed (m/s),Launch angle (deg),Spin rate (rpm)
                64.1,12.0,2600
                65.2,12.9,2710
                """);
        JsonNode found = keepsToItsSchema(table);
        JsonNode flight = found.path("setups")
                .path(0)
                .path("shots")
                .path(0)
                .path("flights")
                .path(0);
        assertThat(flight.path("carry").asDouble()).isPositive();
        assertThat(flight.has("side")).isFalse();
    }

    /** A speed in mph under a heading that says m/s, and an apex in feet under one that says metres. */
    @Test
    void flagsUnitsThatWereMixedUp(@TempDir Path folder) throws Exception {
        Path table = Files.writeString(
                folder.resolve("odd.csv"), """
                    Ball Speed (m/s);Launch Angle (°);Spin Rate (rpm);Carry (m);Apex (m)
                    147,2;13,1;2610;222,4;27,9
                    65,9;13,4;2600;223,0;91,5
                    """ + "65,4;13,0;2580;221,7;28,1\n65,1;12,8;2630;220,9;27,4\n".repeat(9));
        assertThat(run("shots", table.toString())).isZero();
        assertThat(out.toString())
                .contains("line 2 does not count: ball speed of 147.2 m/s")
                .contains("(18 shots)");
        assertThat(out.toString())
                .contains("line 2, impossible: ball speed of 147.2 m/s")
                .contains("mph read as m/s")
                .contains("line 3, impossible: apex of 91.5 m")
                .contains("feet read as metres");
    }

    /** A carry that was measured with one setup only is not held against one that was computed for the other. */
    @Test
    void measuredAndComputedAreNotCompared(@TempDir Path folder) throws Exception {
        String rows = """
            Ball Speed (m/s),Launch Angle (deg),Spin Rate (rpm)%s
            65.2,12.9,2600%s
            66.0,13.4,2550%s
            64.8,12.2,2710%s
            """;
        Path measured =
                Files.writeString(folder.resolve("a.csv"), rows.formatted(",Carry (m)", ",220", ",222", ",218"));
        Path launched = Files.writeString(folder.resolve("b.csv"), rows.formatted("", "", "", ""));
        assertThat(run("shots", measured.toString(), "--against", launched.toString(), "--json"))
                .isZero();
        JsonNode object = new ObjectMapper().readTree(out.toString());
        assertThat(object.path("differences").findValuesAsText("figure"))
                .contains("ball-speed", "apex")
                .doesNotContain("carry");
        assertThat(object.path("setups").path(1).path("computed"))
                .extracting(JsonNode::asText)
                .contains("apex")
                .doesNotContain("carry");
    }

    /** Nothing of it is sure: questions, no shots, and no fault. */
    @Test
    void asksInsteadOfGuessing(@TempDir Path folder) throws Exception {
        Path table = Files.writeString(
                folder.resolve("ask.csv"), "Shot,Swing Direction (deg),Carry\n1,2.1,230\n2,-1.0,228\n3,0.4,231\n");
        assertThat(run("shots", table.toString(), "--json")).isZero();
        JsonNode object = new ObjectMapper().readTree(out.toString());
        assertThat(object.path("setups").path(0).path("shots")).isEmpty();
        assertThat(object.path("ask")).hasSize(2);
        JsonNode first = object.path("ask").path(0);
        assertThat(first.path("column").asInt()).isEqualTo(1);
        assertThat(first.path("heading").asText()).isEqualTo("Swing Direction (deg)");
        assertThat(first.path("perhaps").asText()).isEqualTo("launch-direction");
        assertThat(first.path("values")).hasSize(3);
    }

    /** Two clubs are never thrown together; one of them can be chosen. */
    @Test
    void clubsAreAFilter(@TempDir Path folder) throws Exception {
        Path table = Files.writeString(
                folder.resolve("clubs.csv"),
                "Club,Carry (m)\n" + "Driver,230\nDriver,228\n7-iron,150\n7-iron,148\n".repeat(3));
        assertThat(run("shots", table.toString(), "--json")).isZero();
        JsonNode all =
                new ObjectMapper().readTree(out.toString()).path("setups").path(0);
        assertThat(all.path("middles")).isEmpty();
        assertThat(all.path("filters").path("Club").path("Driver").asInt()).isEqualTo(6);
        out.getBuffer().setLength(0);
        assertThat(run("shots", table.toString(), "--only", "Club=7-iron", "--json"))
                .isZero();
        JsonNode irons =
                new ObjectMapper().readTree(out.toString()).path("setups").path(0);
        assertThat(irons.path("middles").path(0).path("value").asDouble()).isEqualTo(149);
        assertThat(run("shots", table.toString(), "--only", "Club=Putter")).isEqualTo(2);
    }

    @Test
    void aSavedTemplateReadsTheSameAgain(@TempDir Path folder) throws Exception {
        Path template = folder.resolve("t.json");
        assertThat(run("shots", BEFORE, "--json", "--save-template", template.toString()))
                .isZero();
        String first = out.toString();
        out.getBuffer().setLength(0);
        assertThat(run("shots", BEFORE, "--json", "--template", template.toString()))
                .isZero();
        assertThat(out.toString()).isEqualTo(first);
        assertThat(Files.readString(template)).contains("toeline-shot-template");
    }

    private static String inTurns(String heading, String... names) {
        StringBuilder lines = new StringBuilder("Shot," + heading + ",Ball speed (m/s),Carry (m)\n");
        for (int i = 0; i < 24; i++) {
            String name = names[i / 3 % names.length];
            int which = List.of(names).indexOf(name);
            lines.append(String.format(
                    Locale.ROOT,
                    "%d,%s,%.1f,%.1f%n",
                    i + 1,
                    name,
                    60 + 5 * which + 0.3 * (i % 3) + 0.1 * (i % 5),
                    190 + 18 * which + (i % 3) + 0.3 * (i % 5)));
        }
        return lines.toString();
    }

    /** A column that surely says with which setup each shot was hit is enough; of another one a person says so. */
    @Test
    void comparesTheSetupsThatTheTableNames(@TempDir Path folder) throws Exception {
        Path table = Files.writeString(
                folder.resolve("turns.csv"), inTurns("Setup", "ball back", "ball forward") + "25,–,61.0,192.0\n");
        JsonNode found = keepsToItsSchema(table);
        assertThat(found.path("inTurns").toString())
                .isEqualTo("{\"heading\":\"Setup\",\"before\":\"ball back\",\"after\":\"ball forward\",\"neither\":1}");
        assertThat(found.path("differences").path(0).path("before").asInt()).isEqualTo(12);
        assertThat(found.path("differences").path(0).path("state").asText()).isEqualTo("real");
        out.getBuffer().setLength(0);
        assertThat(run("shots", table.toString())).isZero();
        assertThat(out.toString())
                .contains("From ball back to ball forward")
                .contains("“Setup”: ball forward")
                .contains("1 shot says nothing under “Setup”: counted in neither setup")
                .containsPattern("carry .* real")
                .doesNotContain("not thrown together")
                .doesNotContain("not read: “Setup”");
        out.getBuffer().setLength(0);
        String given = given(folder, "Block", "A", "B");
        assertThat(run("shots", given)).isZero();
        assertThat(out.toString())
                .contains("or compare two setups with --turns \"Block\"")
                .doesNotContain("From A to B");
        assertThat(run("shots", given, "--turns", "Block")).isZero();
        assertThat(out.toString()).contains("From A to B");
    }

    /** Three setups are no two, and clubs are not thrown together for the sake of setups. */
    @Test
    void comparesNoSetupsThatAreNotTwo(@TempDir Path folder) throws Exception {
        assertThat(run("shots", given(folder, "Setup", "A", "B", "C"))).isZero();
        assertThat(out.toString()).contains("{A=9, B=9, C=6}").doesNotContain("From A");
        Path clubs = Files.writeString(
                folder.resolve("clubs.csv"), inTurns("Setup,Club", "A,driver", "B,driver", "A,wedge", "B,wedge"));
        out.getBuffer().setLength(0);
        assertThat(run("shots", clubs.toString())).isZero();
        assertThat(out.toString()).contains("different “Club”").doesNotContain("From A");
        assertThat(run("shots", clubs.toString(), "--turns", "Setup")).isEqualTo(2);
        assertThat(err.toString()).contains("{Club={driver=12, wedge=12}}").contains("--only");
        assertThat(run("shots", clubs.toString(), "--only", "Club=wedge")).isZero();
        assertThat(out.toString()).contains("From A to B");
    }

    private static String given(Path folder, String heading, String... names) throws Exception {
        return Files.writeString(folder.resolve(heading + names.length + ".csv"), inTurns(heading, names))
                .toString();
    }

    @Test
    void saysWhatCouldNotBeDoneAndEndsWithTwo(@TempDir Path folder) throws Exception {
        Path prose = Files.writeString(folder.resolve("prose.csv"), "nothing of the kind\n");
        Path none = folder.resolve("none.csv");
        Path bad = Files.writeString(folder.resolve("bad.json"), "{}");
        assertThat(run("shots", prose.toString())).isEqualTo(2);
        assertThat(run("shots", none.toString())).isEqualTo(2);
        assertThat(run("shots", BEFORE, "--template", bad.toString())).isEqualTo(2);
        assertThat(run("shots", BEFORE, "--units", "furlongs")).isEqualTo(2);
        assertThat(run("shots", BEFORE, "--temperature", "99")).isEqualTo(2);
        assertThat(err.toString().lines()).hasSize(5).noneMatch(l -> l.contains("Exception"));
        assertThat(err.toString())
                .contains("no heading says what a column means")
                .contains("there is no such file")
                .contains("not a shot template")
                .contains("furlongs")
                .contains("99");
    }

    /** No uncertainty is nothing, and none is shown smaller than it is: half widths are rounded up (JCGM 100:2008, 7.2.6). */
    @Test
    void aHalfWidthIsRoundedUp() {
        assertThat(ShownShots.METRIC.half(ShotFigure.BALL_SPEED, 0.31)).isEqualTo("0.4");
        assertThat(ShownShots.METRIC.half(ShotFigure.BALL_SPEED, 0.3)).isEqualTo("0.3");
        assertThat(ShownShots.METRIC.half(ShotFigure.HANG_TIME, 0.0001)).isEqualTo("0.01");
        assertThat(ShownShots.METRIC.half(ShotFigure.SPIN_RATE, 0.001)).isEqualTo("1");
    }
}

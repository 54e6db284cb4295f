package org.toeline.desk.shots;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.toeline.flight.FigureUnit;
import org.toeline.flight.Shot;
import org.toeline.flight.ShotFigure;
import org.toeline.flight.table.DecimalMark;
import org.toeline.flight.table.Imported;
import org.toeline.flight.table.Meaning;
import org.toeline.flight.table.PositiveSide;
import org.toeline.flight.table.Separator;
import org.toeline.flight.table.Template;

/** A table looked at before it is taken in: proposed, corrected, kept as a template and recognised by it. */
class ImportModelTest {

    @TempDir
    Path folder;

    private Path table() throws IOException {
        return Files.writeString(
                folder.resolve("table.csv"), "Tempo;Launch (deg);Start line;Who\n65,2;12,1;1,5;a\n66,0;x;-2;b\n");
    }

    /** A dash is no name of a setup, and who does without an aid may call that “none”; one setup of all shots is taken too. */
    @Test
    void whatNamesNoSetupIsCountedAsNamingNone() throws Exception {
        StringBuilder lines = new StringBuilder("Nr,Setup,Ball speed (m/s),Carry (m)\n");
        String[] names = {"none", "gate", "-"};
        for (int i = 0; i < 12; i++) {
            lines.append(i + 1)
                    .append(',')
                    .append(names[i % 3])
                    .append(',')
                    .append(62 + i * i % 7)
                    .append(',');
            lines.append(200 + 3 * i * i % 11).append('\n');
        }
        ImportModel model = ImportModel.read(Files.writeString(folder.resolve("dash.csv"), lines), List.of());
        assertThat(model.imported().shots())
                .as("whole numbers that are near the mean by chance are shots")
                .hasSize(12)
                .extracting(Shot::setup)
                .startsWith("none", "gate", "")
                .filteredOn(String::isEmpty)
                .hasSize(4);
        assertThat(Imported.unnamed(model.imported().shots())).isEqualTo(4);
    }

    /** A mean that a program numbers on like a shot is a mean where chance would hardly make a shot so. */
    @Test
    void aNumberedMeanIsNoShot() throws Exception {
        StringBuilder lines = new StringBuilder("Nr,Ball speed (m/s),Carry (m),Apex (m)\n");
        double[] sums = new double[3];
        for (int i = 1; i <= 10; i++) {
            double[] shot = {62 + i * i % 7 + 0.13 * i, 200 + 3 * i * i % 11 + 0.17 * i, 25 + 5 * i % 7 + 0.11 * i};
            lines.append(String.format(Locale.ROOT, "%d,%.2f,%.2f,%.2f%n", i, shot[0], shot[1], shot[2]));
            for (int f = 0; f < sums.length; f++) {
                sums[f] += shot[f] / 10;
            }
        }
        lines.append(String.format(Locale.ROOT, "11,%.2f,%.2f,%.2f%n", sums[0], sums[1], sums[2]));
        Imported imported = ImportModel.read(Files.writeString(folder.resolve("mean.csv"), lines), List.of())
                .imported();
        assertThat(imported.shots()).hasSize(10);
        assertThat(imported.leftOut())
                .singleElement()
                .satisfies(l -> assertThat(l.line()).isEqualTo(12));
    }

    @Test
    void whatTheHeadingsDoNotSayTheCoachSays() throws IOException {
        ImportModel model = ImportModel.read(table(), List.of());
        assertThat(model.column("Tempo")).isEmpty();
        model = model.means("Tempo", Meaning.BALL_SPEED);
        assertThat(model.asked()).extracting(a -> a.heading()).containsExactly("Launch (deg)", "Start line");
        model = model.means("Launch (deg)", Meaning.LAUNCH_ANGLE);
        model = model.means("Start line", Meaning.LAUNCH_DIRECTION);
        assertThat(model.asked()).isEmpty();
        model = model.plusIs("Start line", PositiveSide.LEFT);
        model = model.meansRemark("Who");
        assertThat(model.imported().shots()).hasSize(2);
        assertThat(model.imported().shots().get(0).figure(ShotFigure.BALL_SPEED).orElseThrow())
                .isEqualTo(65.2);
        assertThat(Math.toDegrees(model.imported()
                        .shots()
                        .get(0)
                        .figure(ShotFigure.LAUNCH_DIRECTION)
                        .orElseThrow()))
                .isCloseTo(1.5, within(1e-9));
        assertThat(model.imported().shots().get(1).remark()).isEqualTo("b");
        assertThat(model.imported().leftOut()).singleElement().satisfies(out -> {
            assertThat(out.line()).isEqualTo(3);
            assertThat(out.reason()).contains("“x” is not a number");
        });
        model = model.in("Tempo", FigureUnit.KILOMETRES_PER_HOUR);
        assertThat(model.imported().shots().get(0).figure(ShotFigure.BALL_SPEED).orElseThrow())
                .isCloseTo(65.2 / 3.6, within(1e-9));
        model = model.means("Start line", Meaning.BALL_SPEED);
        assertThat(model.column("Tempo")).as("a meaning stands over one column").isEmpty();
    }

    /** A language that the program does not know: what is said of units and sides it understands all the same. */
    @Test
    void theUnitThatAHeadingStatesIsTakenWithIt() throws IOException {
        Path foreign = Files.writeString(
                folder.resolve("foreign.csv"),
                "Tacada;Velocidade (km/h);Desvio (yd, + = left)\n1;241,5;4,2\n2;240,3;-3,0\n3;238,8;1,5\n");
        ImportModel model = ImportModel.read(foreign, List.of());
        assertThat(model.imported().shots()).isEmpty();
        model = model.means("Velocidade (km/h)", Meaning.BALL_SPEED).means("Desvio (yd, + = left)", Meaning.SIDE);
        assertThat(model.imported().shots().get(0).figure(ShotFigure.BALL_SPEED).orElseThrow())
                .isCloseTo(241.5 / 3.6, within(1e-9));
        assertThat(model.imported().shots().get(0).figure(ShotFigure.SIDE).orElseThrow())
                .isCloseTo(4.2 * 0.9144, within(1e-9));
    }

    /** Where no heading states it, the unit is one in which such figures lie where they usually lie. */
    @Test
    void aUnitThatCannotBeIsNotProposed() throws IOException {
        Path fast = Files.writeString(
                folder.resolve("fast.csv"), "Nr,Tempo,Carry\n1,148.2,240\n2,151.0,244\n3,149.3,239\n");
        ImportModel model = ImportModel.read(fast, List.of()).means("Tempo", Meaning.BALL_SPEED);
        assertThat(model.column("Tempo").orElseThrow().unit()).isEqualTo(FigureUnit.MILES_PER_HOUR);
        assertThat(model.imported().notes()).noneMatch(n -> n.contains("not those of"));
    }

    /** Crosses beside a column are no unit of it. */
    @Test
    void whatStandsBesideIsAUnitOnlyOfItsKind() throws IOException {
        Path crosses = Files.writeString(
                folder.resolve("crosses.csv"), "No,Carry,Seen\n1,241.5,x\n2,240.3,x\n3,238.8,x\n4,236.0,x\n");
        ImportModel model = ImportModel.read(crosses, List.of());
        assertThat(model.asked())
                .singleElement()
                .satisfies(a -> assertThat(a.why()).isEqualTo("no unit is stated"));
        assertThat(model.means("Carry", Meaning.CARRY).imported().shots()).hasSize(4);
    }

    /** Whole turns written with a point between thousands: who says what they are, but not how, is told that it cannot be so. */
    @Test
    void figuresThatCannotBeAreSaidToBeOthers() throws IOException {
        Path thousands = Files.writeString(
                folder.resolve("thousands.csv"),
                "Nr;Gesamtspin (U/min);Carry (m)\n1;3.035;214\n2;2.911;209\n3;3.120;211\n");
        ImportModel model = ImportModel.read(thousands, List.of());
        String heading = "Gesamtspin (U/min)";
        assertThat(model.asked()).extracting(a -> a.heading()).containsExactly(heading);
        assertThat(model.meansNothing(heading).asked())
                .as("to leave it out is an answer")
                .isEmpty();
        ImportModel said = model.means(heading, Meaning.SPIN_RATE);
        assertThat(said.imported().notes()).anyMatch(n -> n.contains(heading) && n.contains("as it is read here"));
        ImportModel right = said.cutAt(Separator.GUESS, DecimalMark.COMMA);
        assertThat(right.imported().notes()).noneMatch(n -> n.contains("as it is read here"));
        assertThat(FigureUnit.TURNS_PER_MINUTE.fromInside(right.imported()
                        .shots()
                        .get(0)
                        .figure(ShotFigure.SPIN_RATE)
                        .orElseThrow()))
                .isCloseTo(3035, within(1e-6));
    }

    /** Two clubs, two players: nothing is mixed, and nothing is chosen for the coach. */
    @Test
    void clubsAndPlayersAreChosenAndNeverMixed() throws IOException {
        Path mixed = Files.writeString(
                folder.resolve("mixed.csv"),
                "Player,Club,Ball speed (m/s),Carry (m)\nA,Driver,65.2,210.5\nB,Driver,60.1,180.2\nA,7 iron,50.3,150.1\n"
                        + "A,Driver,64.8,208.3\nA,7 iron,49.9,148.8\n");
        ImportModel model = ImportModel.read(mixed, List.of());
        assertThat(model.filters().get("Player")).isEqualTo(Map.of("A", 4, "B", 1));
        assertThat(model.filters().get("Club")).isEqualTo(Map.of("Driver", 3, "7 iron", 2));
        assertThat(model.chosen()).isFalse();
        model = model.only("Club", "Driver");
        assertThat(model.chosen()).isFalse();
        model = model.only("Player", "A");
        assertThat(model.chosen()).isTrue();
        assertThat(model.taken("").rows())
                .extracting(r -> r.shot().figure(ShotFigure.CARRY).orElseThrow())
                .containsExactly(210.5, 208.3);
        assertThat(model.meansNothing("Carry (m)").chosen())
                .as("read otherwise, it is asked again")
                .isFalse();
    }

    /** Words that name a setup in the six languages of the headings, as tables of blocks have them (common practice). */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Setup",
                "Set-up",
                "Before/After",
                "Haltung",
                "Vorher/Nachher",
                "Avant/Après",
                "Antes/Después",
                "Prima/Dopo",
                "セットアップ",
                "構え"
            })
    void setupsAreTakenInTogether(String heading) throws IOException {
        ImportModel model = ImportModel.read(blocks(heading, "A", "B"), List.of());
        assertThat(model.setups()).contains(heading);
        assertThat(model.chosen()).as("nothing is to be asked").isTrue();
        assertThat(model.taken("").rows())
                .extracting(r -> r.shot().setup())
                .containsExactly("A", "A", "B", "B", "A", "A", "B", "B");
        assertThat(model.taken("").rows())
                .extracting(r -> r.shot().remark())
                .as("a setup is no remark")
                .containsOnly("");
        ImportModel one = model.only(heading, "B");
        assertThat(one.taken("").rows()).extracting(r -> r.shot().setup()).containsExactly("B", "B", "B", "B");
        assertThat(one.inSetups(heading).taken("").rows()).hasSize(8);
    }

    /** Names that differ in capitals and blanks alone are one setup, as it is written first. */
    @Test
    void theSameNameWrittenOtherwiseIsTheSameSetup() throws IOException {
        Path file = blocks("Setup", "Forward", "Back  foot");
        String table = Files.readString(file);
        int last = table.lastIndexOf("Forward");
        String mixed = table.substring(0, last) + "forward " + table.substring(last + "Forward".length());
        ImportModel model =
                ImportModel.read(Files.writeString(file, mixed.replaceFirst("Back {2}foot", "back foot")), List.of());
        assertThat(model.taken("").rows())
                .extracting(r -> r.shot().setup())
                .containsExactly(
                        "Forward", "Forward", "back foot", "back foot", "Forward", "Forward", "back foot", "back foot");
    }

    /** A block may be a setup, or a part of the hour: nobody but the coach knows. */
    @ParameterizedTest
    @ValueSource(strings = {"Block", "Condition", "Versuch", "Série", "Grupo", "Prova", "条件"})
    void whatMayBeASetupIsAsked(String heading) throws IOException {
        ImportModel model = ImportModel.read(blocks(heading, "1", "2"), List.of());
        assertThat(model.setups()).isEmpty();
        assertThat(model.chosen()).isFalse();
        assertThat(Imported.mayNameSetups(heading)).isTrue();
        ImportModel said = model.inSetups(heading);
        assertThat(said.chosen()).isTrue();
        assertThat(said.taken("").rows())
                .extracting(r -> r.shot().setup())
                .containsExactly("1", "1", "2", "2", "1", "1", "2", "2");
        assertThat(model.only(heading, "1").taken("").rows()).hasSize(4);
    }

    @Test
    void clubsAndPlayersAreNoSetups() {
        assertThat(List.of("Club", "Player", "Date", "Schläger", "Joueur", "Fecha", "Palla", "選手"))
                .noneMatch(Imported::mayNameSetups);
    }

    private Path blocks(String heading, String first, String second) throws IOException {
        StringBuilder lines = new StringBuilder(heading + ",Ball speed (m/s),Carry (m)\n");
        for (int i = 0; i < 8; i++) {
            lines.append(i / 2 % 2 == 0 ? first : second);
            lines.append(',')
                    .append(64.2 + i * 0.3)
                    .append(',')
                    .append(205.1 + i)
                    .append('\n');
        }
        return Files.writeString(folder.resolve("blocks.csv"), lines);
    }

    @Test
    void aKeptTemplateIsRecognised() throws IOException {
        ImportModel first = ImportModel.read(table(), List.of());
        first = first.means("Tempo", Meaning.BALL_SPEED);
        Template kept = first.taken("mine").template().orElseThrow();
        assertThat(first.taken(" ").template()).isEmpty();
        ShotFiles files = new ShotFiles(folder);
        files.keep(kept);
        ImportModel again = ImportModel.read(table(), files.templates());
        assertThat(again.template()).isEqualTo(kept);
        assertThat(again.asked()).isEmpty();
    }

    @Test
    void settingsComeBackAsTheyWere() throws IOException {
        ShotFiles files = new ShotFiles(folder);
        assertThat(files.settings().value()).isEqualTo(ShotSettings.USUAL);
        ShotSettings changed = ShotSettings.USUAL
                .withUnits(new ShotUnits(FigureUnit.MILES_PER_HOUR, FigureUnit.YARD, FigureUnit.FOOT))
                .withColumn(Meaning.CLUB_SPEED, ShotSettings.Shown.NO)
                .withConditions(new Conditions(12, Conditions.From.PRESSURE, 955, 80, -3, 1.5));
        files.keep(changed);
        assertThat(files.settings().value()).isEqualTo(changed);
    }
}

package org.toeline.flight.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.toeline.document.Json;
import org.toeline.flight.FigureUnit;
import org.toeline.flight.Shot;
import org.toeline.flight.ShotFigure;
import org.toeline.language.Language;

/** Templates and tables that the program writes itself. */
class TemplateAndExportTest {

    private static final Template TEMPLATE = new Template(
            "the range's own",
            Separator.SEMICOLON,
            DecimalMark.COMMA,
            List.of(
                    new Column("Speed", Meaning.BALL_SPEED, FigureUnit.KILOMETRES_PER_HOUR, PositiveSide.RIGHT),
                    new Column("Axis", Meaning.SPIN_AXIS, FigureUnit.DEGREE, PositiveSide.LEFT)),
            List.of("Club"));

    @Test
    void aTemplateComesBackAsItWas() throws Exception {
        byte[] written = TemplateDocument.write(TEMPLATE);
        assertThat(TemplateDocument.read(written)).isEqualTo(TEMPLATE);
        byte[] own = TemplateDocument.write(ShotExport.template());
        assertThat(TemplateDocument.read(own)).isEqualTo(ShotExport.template());
    }

    @Test
    void aTemplateReadsWhatItSays() {
        Imported read = ShotImport.read(
                "Club;Speed;Axis;Other\nDriver;234,0;3,0;9\nDriver;237,6;-2,0;9\n".getBytes(StandardCharsets.UTF_8),
                TEMPLATE);
        assertThat(read.shots()).hasSize(2);
        assertThat(read.shots().get(0).figure(ShotFigure.BALL_SPEED)).hasValueCloseTo(65.0, within(1e-9));
        assertThat(read.shots().get(0).figure(ShotFigure.SPIN_AXIS)).hasValueCloseTo(Math.toRadians(3), within(1e-9));
        assertThat(read.shots().get(0).remark()).isEqualTo("Driver");
        assertThat(read.lines()).containsExactly(2, 3);
    }

    @Test
    void missingColumnsAreNoted() {
        Imported read = ShotImport.read("Speed\n234,5\n".getBytes(StandardCharsets.UTF_8), TEMPLATE);
        assertThat(read.shots()).hasSize(1);
        assertThat(read.notes()).contains("there is no column “Axis”");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "[]",
                "no json",
                "{\"format\":\"toeline-shot-template\",\"version\":2,\"name\":\"x\",\"columns\":[]}",
                "{\"format\":\"toeline-shot-template\",\"version\":1,\"name\":\"x\",\"columns\":"
                        + "[{\"header\":\"a\",\"meaning\":\"carry\",\"unit\":\"mph\"}]}",
                "{\"format\":\"toeline-shot-template\",\"version\":1,\"name\":\"x\",\"columns\":"
                        + "[{\"header\":\"a\",\"meaning\":\"carry\",\"unit\":\"m\"},{\"header\":\"b\",\"meaning\":\"carry\",\"unit\":\"m\"}]}"
            })
    void whatIsNoTemplateIsRefused(String text) {
        assertThatThrownBy(() -> TemplateDocument.read(text.getBytes(StandardCharsets.UTF_8)))
                .isInstanceOfAny(Json.NotJson.class, IllegalArgumentException.class)
                .hasMessageMatching(".{5,}");
    }

    /** Property: what is written is read back, with any figures missing. */
    @Test
    void tablesComeBackAsTheyWere() {
        SplittableRandom random = new SplittableRandom(5);
        List<Shot> shots = IntStream.range(0, 50)
                .mapToObj(i -> {
                    Map<ShotFigure, Double> figures = new EnumMap<>(ShotFigure.class);
                    figures.put(ShotFigure.BALL_SPEED, random.nextDouble(20, 80));
                    for (ShotFigure figure : ShotFigure.values()) {
                        if (random.nextBoolean()) {
                            figures.put(figure, random.nextDouble(figure.least(), figure.most()));
                        }
                    }
                    return new Shot(figures, "shot " + i);
                })
                .toList();
        Imported read = ShotImport.read(ShotExport.csv(shots).getBytes(StandardCharsets.UTF_8), ShotExport.template());
        assertThat(read.leftOut()).isEmpty();
        assertThat(read.shots()).hasSize(shots.size());
        for (int i = 0; i < shots.size(); i++) {
            Shot written = shots.get(i);
            assertThat(read.shots().get(i).figures()).hasSameSizeAs(written.figures());
            assertThat(read.shots().get(i).remark()).isEqualTo(written.remark());
            read.shots()
                    .get(i)
                    .figures()
                    .forEach((figure, value) -> assertThat(value)
                            .isCloseTo(
                                    written.figure(figure).orElseThrow(),
                                    within(figure.shownUnit().toInside(6e-5))));
        }
    }

    /** Our own headings say all that is to be known: nothing of them is asked about. */
    @Test
    void ourOwnTableNeedsNoQuestions() {
        byte[] bytes = ShotExport.csv(DrawnShots.of(8, 66, 12.5, 2650, 3)).getBytes(StandardCharsets.UTF_8);
        Proposal proposal = Proposal.of(bytes, "x");
        assertThat(proposal.asked()).isEmpty();
        assertThat(proposal.template().columns())
                .containsExactlyInAnyOrderElementsOf(ShotExport.template().columns());
    }

    /** What is given out at a German desk is read at an English one, and at the same one once it speaks English. */
    @Test
    void ourOwnTableIsTheSameInEveryLanguage() {
        Locale before = Language.now();
        try {
            Set<String> tables = new HashSet<>();
            for (Locale language : Language.all()) {
                Language.choose(language);
                tables.add(ShotExport.csv(DrawnShots.of(8, 66, 12.5, 2650, 3)));
            }
            assertThat(tables).hasSize(1);
        } finally {
            Locale.setDefault(Locale.Category.DISPLAY, before);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+cmd|' /C calc'!A0", "-2+3", "@SUM(A1)", "\t=1", " =1", "\r=1", "＝1"})
    void formulasAreMadeHarmless(String remark) {
        String csv = ShotExport.csv(List.of(new Shot(Map.of(ShotFigure.SIDE, 3.0), remark)));
        String last = csv.lines().reduce((a, b) -> b).orElseThrow();
        assertThat(csv).contains("'" + remark.substring(0, 1));
        assertThat(last).doesNotContain(",=").doesNotContain("\"=");
        // A figure below zero is a number, and stays one.
        assertThat(csv).contains("\r\n-3,");
    }

    @Test
    void plainRemarksStayPlain() {
        assertThat(ShotExport.harmless("Driver, low tee")).isEqualTo("Driver, low tee");
    }
}

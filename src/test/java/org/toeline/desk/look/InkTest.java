package org.toeline.desk.look;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.toeline.desk.Contrast;
import org.toeline.paint.Ink;

/** What is drawn and not laid out can be read on both papers: contrast as WCAG 2.2 asks of text (1.4.3) and of marks (1.4.11). */
class InkTest {

    private static final double LEAST_OF_TEXT = 4.5;
    private static final double LEAST_OF_MARKS = 3;

    private static final List<Color> GROUNDS = List.of(Ink.PAPER, Color.WHITE);
    private static final Map<String, Color> TEXTS = Map.of("text", Ink.TEXT, "quiet text", Ink.GREY);
    private static final Map<String, Color> MARKS = Map.of(
            "in range", Ink.BLUE,
            "out of range", Ink.VERMILION,
            "not told", Ink.GREY,
            "this lesson's shots", Ink.GREEN,
            "the other lesson's shots", Ink.PURPLE);

    @ParameterizedTest
    @EnumSource(Look.Paper.class)
    void inksCanBeReadOnBothPapers(Look.Paper paper) {
        UnaryOperator<Color> seen = c -> paper == Look.Paper.DARK ? DarkInk.dark(c) : c;
        for (Color ground : GROUNDS) {
            TEXTS.forEach((name, ink) -> contrast(name, seen.apply(ink), seen.apply(ground), LEAST_OF_TEXT));
            MARKS.forEach((name, ink) -> contrast(name, seen.apply(ink), seen.apply(ground), LEAST_OF_MARKS));
        }
        // the aim's tick stands in the band, and figures on the chosen lesson's column
        contrast("aim", seen.apply(Ink.TEXT), seen.apply(Ink.BAND), LEAST_OF_TEXT);
        contrast("figure", seen.apply(Ink.TEXT), seen.apply(Ink.CHOSEN), LEAST_OF_TEXT);
    }

    private static void contrast(String name, Color ink, Color ground, double least) {
        assertThat(Contrast.of(fx(ink), fx(ground))).as(name + " on " + ground).isGreaterThan(least);
    }

    private static javafx.scene.paint.Color fx(Color color) {
        return javafx.scene.paint.Color.rgb(color.getRed(), color.getGreen(), color.getBlue());
    }
}

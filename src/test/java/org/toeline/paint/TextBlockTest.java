package org.toeline.paint;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Font;
import org.junit.jupiter.api.Test;

class TextBlockTest {

    private static final Font FONT = Ink.plain(12);

    @Test
    void aFigureAndItsIntervalStayOnOneLine() {
        String text =
                "The ball is too far forward: +11.5 ± 2.6\u00a0cm against the lead shoulder, and +5 ± 3° of tilt.";
        for (int wide = 100; wide < 500; wide += 7) {
            double width = wide;
            TextBlock block = TextBlock.of(text, FONT, width);
            assertThat(String.join(" ", block.lines())).isEqualTo(text);
            assertThat(block.lines())
                    .as("%.0f wide", width)
                    .noneMatch(l -> l.startsWith("±") || l.endsWith("±"))
                    .allMatch(l -> Ink.width(l, FONT) <= width);
        }
    }
}

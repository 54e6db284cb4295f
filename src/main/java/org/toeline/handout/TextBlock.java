package org.toeline.handout;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;

/** Lines of text broken to a width. */
record TextBlock(List<String> lines, Font font) {

    static TextBlock of(String text, Font font, double width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.strip().split("\\s+")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && Ink.width(longer, font) > width) {
                lines.add(line.toString());
                line = new StringBuilder(word);
            } else {
                line = new StringBuilder(longer);
            }
        }
        if (!line.isEmpty()) {
            lines.add(line.toString());
        }
        return new TextBlock(List.copyOf(lines), font);
    }

    double height() {
        return lines.size() * font.getSize2D() * 1.3;
    }

    /** Draws from a top left corner; returns where the block ends. */
    double paint(Graphics2D g, Color color, double x, double top) {
        double y = top;
        for (String line : lines) {
            Ink.text(g, line, font, color, x, y + font.getSize2D());
            y += font.getSize2D() * 1.3;
        }
        return y;
    }
}

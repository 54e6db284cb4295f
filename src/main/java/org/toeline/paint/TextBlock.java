package org.toeline.paint;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Lines of text broken to a width, between words, never at a ±; a word wider than that is broken too. */
public record TextBlock(List<String> lines, Font font) {

    /** Words one by one are within so much of the line they make: below it, the line need not be laid out to be measured. */
    private static final double SURELY_FITS = 0.96;

    private static final Pattern BETWEEN_WORDS = Pattern.compile("(?<!±)\\s+(?!±)");

    public static TextBlock of(String text, Font font, double width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        double space = Ink.width(" ", font);
        double about = 0;
        for (String word : words(text, font, width)) {
            double wide = Ink.width(word, font);
            String longer = line.isEmpty() ? word : line + " " + word;
            about += space + wide;
            if (!line.isEmpty() && about > SURELY_FITS * width && Ink.width(longer, font) > width) {
                lines.add(line.toString());
                line = new StringBuilder(word);
                about = wide;
            } else {
                line = new StringBuilder(longer);
            }
        }
        if (!line.isEmpty()) {
            lines.add(line.toString());
        }
        return new TextBlock(List.copyOf(lines), font);
    }

    private static List<String> words(String text, Font font, double width) {
        List<String> words = new ArrayList<>();
        for (String word : BETWEEN_WORDS.split(text.strip())) {
            StringBuilder part = new StringBuilder();
            if (Ink.width(word, font) > width) {
                for (int c : word.codePoints().toArray()) {
                    String one = Character.toString(c);
                    if (!part.isEmpty() && Ink.width(part + one, font) > width) {
                        words.add(part.toString());
                        part = new StringBuilder();
                    }
                    part.append(one);
                }
                words.add(part.toString());
            } else {
                words.add(word);
            }
        }
        return words;
    }

    public double height() {
        return lines.size() * font.getSize2D() * 1.3;
    }

    /** Draws from a top left corner; returns where the block ends. */
    public double paint(Graphics2D g, Color color, double x, double top) {
        double y = top;
        for (String line : lines) {
            Ink.text(g, line, font, color, x, y + font.getSize2D());
            y += font.getSize2D() * 1.3;
        }
        return y;
    }
}

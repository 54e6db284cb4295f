package org.toeline.paint;

import java.awt.Font;
import java.awt.GraphicsEnvironment;
import java.awt.font.TextAttribute;
import java.text.AttributedString;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Names in any script: letters that the program's own font lacks are drawn with one that is found on this machine. Any
 * thread.
 */
public final class Script {

    private static final Map<Integer, Optional<Font>> FOUND = new ConcurrentHashMap<>();

    private Script() {}

    /** The text in that font, and in another where it lacks a letter; what no font has stays in the first. */
    static AttributedString of(String text, Font font) {
        AttributedString written = new AttributedString(text);
        written.addAttribute(TextAttribute.FONT, font);
        if (font.canDisplayUpTo(text) >= 0) {
            for (int i = 0; i < text.length(); ) {
                int c = text.codePointAt(i);
                int next = i + Character.charCount(c);
                Optional<Font> other = font.canDisplay(c) || isUnseen(c) ? Optional.empty() : found(c);
                if (other.isPresent()) {
                    written.addAttribute(
                            TextAttribute.FONT, other.get().deriveFont(font.getStyle(), font.getSize2D()), i, next);
                }
                i = next;
            }
        }
        return written;
    }

    private static Optional<Font> found(int c) {
        return FOUND.computeIfAbsent(
                c,
                missing -> List.of(GraphicsEnvironment.getLocalGraphicsEnvironment()
                                .getAllFonts())
                        .stream()
                        .filter(f -> f.canDisplay(missing))
                        .findFirst());
    }

    /** Joiners, marks of direction and selectors draw nothing. */
    private static boolean isUnseen(int c) {
        int type = Character.getType(c);
        return type == Character.FORMAT || type == Character.CONTROL || c >= 0xFE00 && c <= 0xFE0F;
    }

    /** The letters of a text that no font on this machine has, each once; empty when all can be drawn. */
    public static String missing(String text) {
        Font own = Ink.plain(12);
        StringBuilder missing = new StringBuilder();
        text.codePoints()
                .distinct()
                .filter(c -> !isUnseen(c) && !Character.isWhitespace(c))
                .filter(c -> !own.canDisplay(c) && found(c).isEmpty())
                .forEach(missing::appendCodePoint);
        return missing.toString();
    }

    /** Whether letters change their shape or order beside others, or another font is needed: such text is drawn, not typed. */
    public static boolean isDrawn(String text) {
        return text.codePoints().anyMatch(c -> {
            byte direction = Character.getDirectionality(c);
            return direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT
                    || direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC
                    || c >= 0x0900 && c < 0x1100
                    || !isUnseen(c) && !Ink.plain(12).canDisplay(c);
        });
    }
}

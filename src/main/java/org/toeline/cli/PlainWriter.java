package org.toeline.cli;

import java.io.FilterWriter;
import java.io.IOException;
import java.io.Writer;

/**
 * Writes what would do something to a terminal, or turn a line's direction, as its number: names and notes come from anywhere.
 * What it writes instead ({@code \}{@code u001b}) means the same inside a JSON string.
 */
final class PlainWriter extends FilterWriter {

    PlainWriter(Writer out) {
        super(out);
    }

    private static boolean acts(char c) {
        return Character.isISOControl(c) && c != '\n' && c != '\r' && c != '\t'
                || c >= '\u202a' && c <= '\u202e'
                || c >= '\u2066' && c <= '\u2069'
                || c == '\u200e'
                || c == '\u200f'
                || c == '\u061c'
                || c == '\u2028'
                || c == '\u2029';
    }

    /** The same text with what acts told as its number. */
    static String plain(String text) {
        StringBuilder plain = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (acts(c)) {
                plain.append(String.format("\\u%04x", (int) c));
            } else {
                plain.append(c);
            }
        }
        return plain.toString();
    }

    @Override
    public void write(int c) throws IOException {
        out.write(plain(String.valueOf((char) c)));
    }

    @Override
    public void write(char[] text, int from, int length) throws IOException {
        out.write(plain(new String(text, from, length)));
    }

    @Override
    public void write(String text, int from, int length) throws IOException {
        out.write(plain(text.substring(from, from + length)));
    }
}

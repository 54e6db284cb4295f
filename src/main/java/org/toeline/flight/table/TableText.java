package org.toeline.flight.table;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

/**
 * The text of a table, and in which encoding its bytes turned out to be: by its mark (UTF-8, UTF-16), by the zeros that
 * Latin letters have in UTF-16, else UTF-8 if it is valid, else
 * windows-31j if there are kana, else windows-1252.
 */
record TableText(String text, Charset encoding) {

    private static final Charset WINDOWS = Charset.forName("windows-1252");
    private static final Charset JAPANESE = Charset.forName("windows-31j");
    private static final int LEAST_KANA = 3;
    private static final int LOOK_AT = 4096;
    private static final double MANY = 0.3;

    static TableText of(byte[] bytes) {
        if (starts(bytes, 0xEF, 0xBB, 0xBF)) {
            return decoded(bytes, 3, StandardCharsets.UTF_8);
        }
        if (starts(bytes, 0xFF, 0xFE)) {
            return decoded(bytes, 2, StandardCharsets.UTF_16LE);
        }
        if (starts(bytes, 0xFE, 0xFF)) {
            return decoded(bytes, 2, StandardCharsets.UTF_16BE);
        }
        if (zeros(bytes, 1) > MANY) {
            return decoded(bytes, 0, StandardCharsets.UTF_16LE);
        }
        if (zeros(bytes, 0) > MANY) {
            return decoded(bytes, 0, StandardCharsets.UTF_16BE);
        }
        try {
            return new TableText(
                    StandardCharsets.UTF_8
                            .newDecoder()
                            .onMalformedInput(CodingErrorAction.REPORT)
                            .decode(ByteBuffer.wrap(bytes))
                            .toString(),
                    StandardCharsets.UTF_8);
        } catch (CharacterCodingException e) {
            return decoded(bytes, 0, kana(bytes) ? JAPANESE : WINDOWS);
        }
    }

    /** Whether bytes have pairs that are kana in windows-31j; in windows-1252 their first byte is a rare sign. */
    private static boolean kana(byte[] bytes) {
        int pairs = 0;
        for (int i = 0; i + 1 < Math.min(bytes.length, LOOK_AT); i++) {
            int first = bytes[i] & 0xFF;
            int second = bytes[i + 1] & 0xFF;
            if ((first == 0x82 || first == 0x83) && second >= 0x40 && second != 0x7F) {
                pairs++;
                i++;
            }
        }
        return pairs >= LEAST_KANA;
    }

    private static TableText decoded(byte[] bytes, int from, Charset encoding) {
        return new TableText(new String(bytes, from, bytes.length - from, encoding), encoding);
    }

    private static boolean starts(byte[] bytes, int... with) {
        if (bytes.length < with.length) {
            return false;
        }
        for (int i = 0; i < with.length; i++) {
            if ((bytes[i] & 0xFF) != with[i]) {
                return false;
            }
        }
        return true;
    }

    /** The share of zeros among every second byte, from one on. */
    private static double zeros(byte[] bytes, int from) {
        int zeros = 0;
        int seen = 0;
        for (int i = from; i < Math.min(bytes.length, LOOK_AT); i += 2) {
            seen++;
            zeros += bytes[i] == 0 ? 1 : 0;
        }
        return seen == 0 ? 0 : zeros / (double) seen;
    }
}

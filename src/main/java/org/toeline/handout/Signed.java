package org.toeline.handout;

import java.text.Normalizer;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.toeline.advice.Words;
import org.toeline.ledger.Lesson;

/** How a handout tells whose it is, on the picture and in the names of its files. */
public enum Signed {
    NOT,
    DATE,
    INITIALS_AND_DATE,
    /** Only when asked for. */
    FULL_NAME_AND_DATE;

    private static final String LEFT_TO_RIGHT_MARK = "\u200E";
    private static final int MOST_INITIALS = 4;
    private static final int LONGEST_NAME = 60;

    /** The line below the picture, with the date as the reader writes it; empty for none. */
    public String text(Lesson lesson, Words words) {
        String date = this == NOT
                ? ""
                : lesson.recorded()
                        .map(r -> r.format(DateTimeFormatter.ofLocalizedDate(FormatStyle.LONG)
                                .withLocale(readers(words))))
                        .orElse("");
        String who = leftToRightAround(who(lesson));
        return who.isEmpty() || date.isEmpty() ? who + date : who + " · " + date;
    }

    /** A name that is written from right to left turns nothing around that stands beside it. */
    private static String leftToRightAround(String name) {
        boolean turns = name.codePoints().anyMatch(c -> {
            byte direction = Character.getDirectionality(c);
            return direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT
                    || direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC;
        });
        return turns ? LEFT_TO_RIGHT_MARK + name + LEFT_TO_RIGHT_MARK : name;
    }

    /** The reader's own form where the words are of the reader's language, else the words'. */
    private static Locale readers(Words words) {
        return words.locale().getLanguage().equals(words.language())
                ? words.locale()
                : Locale.forLanguageTag(words.language());
    }

    /**
     * The beginning of a file name, such as AS-2026-05-14. Letters, digits and hyphens only, so that it is a name on every
     * system whatever the player is called.
     */
    public String fileStem(Lesson lesson) {
        String who = Normalizer.normalize(who(lesson), Normalizer.Form.NFC)
                .replaceAll("[^\\p{L}\\p{M}\\p{Nd}]+", "-")
                .replaceAll("^-+|-+$", "");
        String day = this == NOT
                ? ""
                : lesson.recorded().map(r -> "-" + r.toLocalDate()).orElse("");
        return (who.isEmpty() ? "player" : who) + day;
    }

    private String who(Lesson lesson) {
        Optional<String> name = lesson.playerName().map(Plain::line);
        return switch (this) {
            case NOT, DATE -> "";
            case INITIALS_AND_DATE -> name.map(Signed::initials).orElse("");
            case FULL_NAME_AND_DATE -> name.map(Signed::cut).orElse("");
        };
    }

    /** Letters past sixty are left out, whole characters at a time. */
    private static String cut(String name) {
        return name.codePointCount(0, name.length()) <= LONGEST_NAME
                ? name
                : name.substring(0, name.offsetByCodePoints(0, LONGEST_NAME)) + "…";
    }

    /** The first letters of a name's words, at most four. */
    static String initials(String name) {
        return Arrays.stream(name.strip().split("[\\s\\-]+"))
                .filter(w -> !w.isEmpty())
                .map(w -> w.codePointAt(0))
                .filter(Character::isLetterOrDigit)
                .map(c -> Character.toString(c).toUpperCase(Locale.ROOT))
                .limit(MOST_INITIALS)
                .collect(Collectors.joining());
    }
}

package org.toeline.desk.text;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.time.format.FormatStyle;
import java.util.Optional;
import org.toeline.language.Language;

/** Days as every screen writes them: the way of the language that the desk speaks. */
public final class Days {

    private static final int DATE_LENGTH = "2026-01-31".length();

    private Days() {}

    public static String of(LocalDate day) {
        return DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM)
                .withLocale(Language.written())
                .format(day);
    }

    public static String of(OffsetDateTime moment) {
        return of(moment.toLocalDate());
    }

    /** Of a date or a moment as ISO 8601 writes it; empty when it is neither. */
    public static Optional<String> of(String iso) {
        try {
            return Optional.of(of(LocalDate.parse(iso.substring(0, Math.min(DATE_LENGTH, iso.length())))));
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }
}

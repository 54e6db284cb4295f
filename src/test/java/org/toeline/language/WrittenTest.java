package org.toeline.language;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Numbers for a person: the language's decimal sign, and U+2212 for a minus (common practice in print: a hyphen is no minus sign). */
class WrittenTest {

    private static final Path SOURCES = Path.of("src/main/java");
    /** What writes a number in a person's language by itself, and with it a hyphen. */
    private static final Pattern BY_ITSELF = Pattern.compile(
            "(?:String\\.format|printf)\\(\\s*Language\\.|DecimalFormatSymbols\\.getInstance|\"%[+]?\\.[0-9]f\"\\.formatted");

    private final Locale before = Language.now();

    @AfterEach
    void asBefore() {
        Locale.setDefault(Locale.Category.DISPLAY, before);
    }

    @Test
    void aMinusIsAMinusSign() {
        for (Locale language : Language.all()) {
            Locale.setDefault(Locale.Category.DISPLAY, language);
            String sign = language.equals(Locale.GERMAN) ? "," : ".";
            assertThat(Written.number("%.1f", -4)).isEqualTo("−4" + sign + "0");
            assertThat(Written.number("%+.1f", 4)).isEqualTo("+4" + sign + "0");
            assertThat(Written.number("%.0f", -0.4)).as("nothing has no sign").isEqualTo("0");
            assertThat(Written.patterned("0.##", -1.25)).isEqualTo("−1" + sign + "25");
        }
    }

    @Test
    void sentencesWriteOneToo() {
        Locale.setDefault(Locale.Category.DISPLAY, Locale.GERMAN);
        Sentences sentences = Sentences.in("org.toeline.language.numbers");
        assertThat(sentences.of("bare", -1.5)).isEqualTo("um −1,5 anders");
        assertThat(sentences.of("bare", -3)).isEqualTo("um −3 anders");
        assertThat(sentences.of("bare", 20_000))
                .as("whole numbers have no groups")
                .isEqualTo("um 20000 anders");
        assertThat(sentences.of("pattern", -0.25)).isEqualTo("um −0,250 anders");
        assertThat(sentences.of("bare", "7-iron"))
                .as("words keep their hyphens")
                .isEqualTo("um 7-iron anders");
    }

    /** Whoever writes a number for a person goes through here. */
    @Test
    void nobodyWritesNumbersByThemselves() throws IOException {
        List<String> found;
        try (Stream<Path> files = Files.walk(SOURCES)) {
            found = files.filter(f -> f.toString().endsWith(".java")
                            && !f.getFileName().toString().equals("Written.java"))
                    .filter(f -> BY_ITSELF.matcher(read(f)).find())
                    .map(f -> f.getFileName().toString())
                    .toList();
        }
        assertThat(found).isEmpty();
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}

package org.toeline.language;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.toeline.language.Literals.Literal;

/**
 * What a person reads stands in a bundle, where it can be said in another language. Found is every literal of two words or
 * more; allowed is what no person reads, each kind with its reason, and nothing else.
 */
class NoSentencesInCodeTest {

    private static final Path PROGRAM = Path.of("src/main/java/org/toeline");
    private static final Pattern TWO_WORDS = Pattern.compile("\\p{L}{2,}[,;:.]? +[“„‘(]?\\p{L}{2,}");

    /** Who is told in these brackets, and why it is no person at the desk. */
    private static final Map<String, String> TOLD_TO_NOBODY = Map.ofEntries(
            Map.entry("IllegalStateException", "the program is broken; for who mends it"),
            Map.entry("AssertionError", "the program is broken; for who mends it"),
            Map.entry("UnsupportedOperationException", "the program is broken; for who mends it"),
            Map.entry("UncheckedIOException", "names a file of the program's own"),
            Map.entry("requireNonNull", "the program is broken; for who mends it"),
            Map.entry("log", "the log, for who mends the program"),
            Map.entry("resolve", "the name of a file or a folder"),
            Map.entry("PreparedPictures", "the name of a thread, in a debugger"),
            Map.entry("Thread", "the name of a thread, in a debugger"),
            Map.entry("setStyle", "CSS"),
            Map.entry("SuppressWarnings", "a word of the compiler"));

    /**
     * Stages, and types of a stage, whose values are made by the program alone, never of a document, a command line or a
     * field, so that a broken precondition (an IllegalArgumentException) is the program's own fault. A launch is asked first
     * whether it makes a flight.
     */
    private static final Set<String> MADE_BY_THE_PROGRAM = Set.of(
            "camera/",
            "posture/",
            "reading/",
            "assist/",
            "paint/",
            "across/",
            "video/",
            "flight/compare/",
            "flight/Flight.java",
            "flight/FlightBand.java",
            "flight/Launch.java",
            "flight/Trajectory.java");

    /** Whose brackets hold what stands on the screen, or is read out: there a single word is a sentence. */
    private static final Set<String> ON_THE_SCREEN = Set.of(
            "setAccessibleText",
            "setText",
            "setPromptText",
            "setTitle",
            "setHeaderText",
            "Label",
            "Button",
            "ToggleButton",
            "RadioButton",
            "CheckBox",
            "Tooltip",
            "Menu",
            "MenuItem",
            "Tab",
            "TitledPane",
            "TableColumn");

    private static final Pattern WORD = Pattern.compile("(?<![%.\\d])\\b\\p{L}{2,}");

    /** Text of another language than people's. */
    private static final Pattern MARKUP = Pattern.compile("[<>]|\\{[\\w-]+:|=\\\\\"");

    /** What begins as SQL does, names a column in its manner, or ends in what only SQL says; and the name of its format. */
    private static final Pattern SQL =
            Pattern.compile("(?is).*\\w_\\w.*|.*\\bcollate\\b.*|\\) (to stdout|from stdin)|sqlite format .*"
                    + "|^\\s*(explain|including|select|insert|update|delete|create|drop|alter|vacuum|pragma|set"
                    + " transaction|lock|from|where|and|or|order|on conflict|values|changed_at|join|left"
                    + " join|begin|analyze|copy)\\b.*");

    @Test
    void whatAPersonReadsStandsInABundle() throws IOException {
        assertThat(findings()).isEmpty();
    }

    @Test
    void aSentenceInCodeIsFound() {
        String source = "/* no sentence here */ class A { void a() { say(\"This was done\" + \"x y\"); "
                + "throw new IllegalStateException(\"never at all\"); // nor here at all\n b.log(\"one two\"); } }";
        List<Literal> all = Literals.of(source);
        assertThat(all).extracting(Literal::text).containsExactly("This was donex y", "never at all", "one two");
        assertThat(all.stream().filter(l -> isSentence("advice/A.java", l)))
                .extracting(Literal::text)
                .containsExactly("This was donex y");
    }

    @Test
    void aWordOnTheScreenIsFound() {
        String source =
                "class A { void a() { club.setAccessibleText(\"club\"); length.setText(String.format(\"of %.2f s\","
                        + " 1)); b.setText(Texts.of(\"time.of\", \"10\")); b.setText(\"%.3f\");"
                        + " u.setPromptText(\"jdbc:a://host\"); } }";
        assertThat(Literals.of(source).stream().filter(l -> isSentence("desk/A.java", l)))
                .extracting(Literal::text)
                .containsExactly("club", "of %.2f s");
    }

    private static List<String> findings() throws IOException {
        List<String> all = new ArrayList<>();
        List<Path> sources;
        try (Stream<Path> files = Files.walk(PROGRAM)) {
            sources = files.filter(f -> f.toString().endsWith(".java")).sorted().toList();
        }
        assertThat(sources).hasSizeGreaterThan(100);
        for (Path file : sources) {
            String name = PROGRAM.relativize(file).toString().replace('\\', '/');
            for (Literal literal : Literals.of(Files.readString(file))) {
                if (isSentence(name, literal)) {
                    all.add(name + ":" + literal.line() + ": " + literal.text());
                }
            }
        }
        return all;
    }

    /** Said by a control, itself or put together there; the key of a sentence in a bundle is not. */
    private static boolean isOnTheScreen(Literal literal) {
        List<String> calls = literal.calls();
        String innermost = calls.isEmpty() ? "" : calls.get(calls.size() - 1);
        return (ON_THE_SCREEN.contains(innermost)
                        || innermost.equals("format") && calls.stream().anyMatch(ON_THE_SCREEN::contains))
                && WORD.matcher(literal.text()).find()
                && !literal.text().contains("://");
    }

    private static boolean isSentence(String file, Literal literal) {
        String stage = file.contains("/") ? file.substring(0, file.indexOf('/')) : "";
        return (TWO_WORDS.matcher(literal.text()).find() || isOnTheScreen(literal))
                && literal.calls().stream().noneMatch(TOLD_TO_NOBODY::containsKey)
                && !(literal.calls().contains("IllegalArgumentException")
                        && MADE_BY_THE_PROGRAM.stream().anyMatch(file::startsWith))
                // a kept list of frames that is damaged is made anew, unsaid
                && !(stage.equals("video") && literal.calls().contains("IOException"))
                && !(stage.equals("handout") && MARKUP.matcher(literal.text()).find())
                && !(stage.equals("ledger") && SQL.matcher(literal.text()).matches());
    }
}

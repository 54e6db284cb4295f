package org.toeline.study;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.toeline.advice.Range;
import org.toeline.advice.RangeBook;
import org.toeline.advice.Words;

/** The shipped ranges as the table of {@code docs/ranges.md}. {@code main} writes it there anew. */
public final class RangeTable {

    /** Where the table begins in the file; it reaches to the end. */
    static final String BEGINS = "| reading | clubs | recommended | aim | stands on | source and population | note |";

    static final Path FILE = Path.of("docs/ranges.md");

    private RangeTable() {}

    public static void main(String[] args) throws IOException {
        String before = Files.readString(FILE);
        Files.writeString(FILE, before.substring(0, before.indexOf(BEGINS)) + table());
    }

    static String table() {
        List<Range> sorted = RangeBook.shipped().ranges().stream()
                .sorted((a, b) -> a.kind() != b.kind() ? a.kind().compareTo(b.kind()) : first(a).compareTo(first(b)))
                .toList();
        StringBuilder table = new StringBuilder(BEGINS + "\n| --- | --- | --- | --- | --- | --- | --- |\n");
        Words words = Words.english();
        for (Range range : sorted) {
            table.append(String.format(
                    Locale.ROOT,
                    "| %s | %s | %s | %s | %s | %s | %s |%n",
                    words.name(range.kind()),
                    range.clubs().stream().sorted().map(words::name).collect(Collectors.joining(", ")),
                    words.range(range.kind(), range.low(), range.high()) + grows(range),
                    words.amount(range.kind(), range.aim()),
                    range.provenance().id().replace('-', ' '),
                    range.source(),
                    range.note()));
        }
        return table.toString();
    }

    private static String grows(Range range) {
        return range.scaling() == Range.Scaling.STATURE ? " *" : "";
    }

    private static org.toeline.mark.Club first(Range range) {
        return range.clubs().stream().sorted().findFirst().orElseThrow();
    }
}

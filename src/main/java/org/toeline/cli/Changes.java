package org.toeline.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.toeline.across.LessonChange;
import org.toeline.across.OwnSpread;
import org.toeline.advice.Assessment;
import org.toeline.advice.Words;
import org.toeline.language.Sentences;
import org.toeline.reading.Measured;
import org.toeline.reading.Reading;
import org.toeline.reading.ReadingKind;

/** What changed from one lesson to a later one, as lines of text or as a JSON object (its schema: {@code changes.schema.json}). */
record Changes(List<Line> lines) {

    /** One reading that both lessons have, in the unit it is read in. */
    record Line(ReadingKind kind, Measured earlier, Measured later, LessonChange change) {}

    Changes {
        lines = List.copyOf(lines);
    }

    /** @param repeats groups of lessons, each one setup of this player addressed several times; may be empty */
    static Changes between(Assessment earlier, Assessment later, List<List<Assessment>> repeats) {
        List<Line> lines = new ArrayList<>();
        for (Reading first : earlier.readings()) {
            measured(later, first.kind())
                    .ifPresent(second -> lines.add(new Line(
                            first.kind(),
                            Measured.shown(first),
                            second,
                            LessonChange.between(Measured.shown(first), second, spread(first.kind(), repeats)))));
        }
        return new Changes(lines);
    }

    private static OwnSpread spread(ReadingKind kind, List<List<Assessment>> repeats) {
        return OwnSpread.ofRepeats(repeats.stream()
                .map(group ->
                        group.stream().flatMap(a -> measured(a, kind).stream()).toList())
                .toList());
    }

    private static Optional<Measured> measured(Assessment assessment, ReadingKind kind) {
        return assessment.readings().stream()
                .filter(r -> r.kind() == kind)
                .map(Measured::shown)
                .findFirst();
    }

    private static String words(LessonChange change) {
        return switch (change.call()) {
            case REAL -> Sentences.of(Changes.class).of("changes.real");
            case TOO_CLOSE ->
                Sentences.of(Changes.class)
                        .of("changes.close", Math.max(change.smallestDetectable(), Math.abs(change.difference())));
            case NOT_SHOWN -> Sentences.of(Changes.class).of("changes.none", change.smallestDetectable());
        };
    }

    void print(PrintWriter out) {
        Words words = Words.usual();
        for (Line line : lines) {
            out.printf(
                    Locale.ROOT,
                    "%-32s %+8.1f %-8s %s%n",
                    words.name(line.kind),
                    line.change.difference(),
                    line.kind.unit().id(),
                    words(line.change));
        }
        if (lines.stream().noneMatch(l -> l.change.spread().isKnown())) {
            out.println(Sentences.of(Changes.class).of("changes.spread"));
        }
    }

    ObjectNode json() {
        ObjectNode out = JsonNodeFactory.instance.objectNode();
        out.put("format", "toeline-changes").put("version", 1);
        ArrayNode array = out.putArray("changes");
        for (Line line : lines) {
            ObjectNode node = array.addObject();
            node.put("reading", line.kind.id()).put("unit", line.kind.unit().id());
            put(node.putObject("earlier"), line.earlier);
            put(node.putObject("later"), line.later);
            node.put("difference", ReadingsDocument.rounded(line.change.difference()));
            node.put("u", ReadingsDocument.rounded(line.change.standardUncertainty()));
            node.put("smallestDetectable", ReadingsDocument.rounded(line.change.smallestDetectable()));
            if (line.change.spread().isKnown()) {
                node.put(
                        "ownSpread",
                        ReadingsDocument.rounded(line.change.spread().standardDeviation()));
            }
            node.put("call", line.change.call().id());
        }
        return out;
    }

    private static void put(ObjectNode node, Measured measured) {
        node.put("value", ReadingsDocument.rounded(measured.value()));
        node.put("u", ReadingsDocument.rounded(measured.standardUncertainty()));
    }
}

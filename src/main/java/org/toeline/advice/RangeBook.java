package org.toeline.advice;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.toeline.mark.Club;
import org.toeline.reading.ReadingKind;

/** The ranges a coach works with; those that come with the program are in {@code ranges.json}. */
public record RangeBook(List<Range> ranges) {

    private static final RangeBook SHIPPED = parse(Data.shipped("ranges"));

    public RangeBook {
        ranges = List.copyOf(ranges);
        for (int i = 0; i < ranges.size(); i++) {
            for (Range earlier : ranges.subList(0, i)) {
                Range later = ranges.get(i);
                if (earlier.kind() == later.kind() && !java.util.Collections.disjoint(earlier.clubs(), later.clubs())) {
                    throw new IllegalArgumentException("two ranges for " + later.kind().id() + " with one club");
                }
            }
        }
    }

    /** The ranges that come with the program. */
    public static RangeBook shipped() {
        return SHIPPED;
    }

    public Optional<Range> range(ReadingKind kind, Club club) {
        return ranges.stream().filter(r -> r.kind() == kind && r.clubs().contains(club)).findFirst();
    }

    /** Reads a document that was checked against {@code ranges.schema.json}. */
    static RangeBook parse(JsonNode document) {
        List<Range> ranges = new ArrayList<>();
        for (JsonNode node : document.path("ranges")) {
            ReadingKind kind = ReadingKind.of(node.path("reading").asText()).orElseThrow();
            ranges.add(new Range(kind, clubs(node.path("clubs")), inside(kind, node, "low"), inside(kind, node, "high"),
                    inside(kind, node, "aim"), provenance(node.path("provenance").asText()),
                    node.path("source").asText(), node.path("note").asText("")));
        }
        return new RangeBook(ranges);
    }

    private static double inside(ReadingKind kind, JsonNode node, String name) {
        return kind.unit().toInside(node.path(name).asDouble());
    }

    static Set<Club> clubs(JsonNode names) {
        Set<Club> clubs = EnumSet.noneOf(Club.class);
        names.forEach(name -> clubs.add(Club.of(name.asText()).orElseThrow()));
        return clubs;
    }

    private static Provenance provenance(String id) {
        for (Provenance provenance : Provenance.values()) {
            if (provenance.id().equals(id)) {
                return provenance;
            }
        }
        throw new IllegalArgumentException("provenance “" + id + "” is not known");
    }
}

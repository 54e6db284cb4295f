package org.toeline.advice;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.toeline.document.Json;
import org.toeline.language.Sentences;
import org.toeline.mark.Club;
import org.toeline.reading.ReadingKind;

/** The ranges a coach works with; those that come with the program are in {@code ranges.json}. */
public record RangeBook(List<Range> ranges) {

    private static final RangeBook SHIPPED = parse(Data.shipped("ranges"));

    /** Parts of a unit that are written. */
    private static final double FINEST = 1e6;

    public RangeBook {
        ranges = List.copyOf(ranges);
        for (int i = 0; i < ranges.size(); i++) {
            for (Range earlier : ranges.subList(0, i)) {
                Range later = ranges.get(i);
                if (earlier.kind() == later.kind() && !java.util.Collections.disjoint(earlier.clubs(), later.clubs())) {
                    throw new IllegalArgumentException(Sentences.of(RangeBook.class)
                            .of("range.twice", later.kind().id()));
                }
            }
        }
    }

    /** The ranges that come with the program. */
    public static RangeBook shipped() {
        return SHIPPED;
    }

    public Optional<Range> range(ReadingKind kind, Club club) {
        return ranges.stream()
                .filter(r -> r.kind() == kind && r.clubs().contains(club))
                .findFirst();
    }

    /**
     * These ranges with a coach's own in place of those that are for the same reading and club; what the coach says nothing
     * about stays.
     */
    public RangeBook with(RangeBook own) {
        List<Range> all = new ArrayList<>(own.ranges);
        for (Range range : ranges) {
            Set<Club> left = EnumSet.noneOf(Club.class);
            range.clubs().stream()
                    .filter(club -> own.range(range.kind(), club).isEmpty())
                    .forEach(left::add);
            if (!left.isEmpty()) {
                all.add(range.forClubs(left));
            }
        }
        return new RangeBook(all);
    }

    /** These ranges and one more, in place of what there was for its reading and clubs. */
    public RangeBook with(Range changed) {
        return with(new RangeBook(List.of(changed)));
    }

    /** These ranges without those for a reading and a club. */
    public RangeBook without(ReadingKind kind, Club club) {
        return new RangeBook(ranges.stream()
                .filter(r -> r.kind() != kind || !r.clubs().contains(club))
                .toList());
    }

    /**
     * Reads a document as {@link #json} writes it.
     *
     * @throws IllegalArgumentException with a sentence, when it is none or a range in it is none
     */
    public static RangeBook of(byte[] json) throws Json.NotJson {
        return parse(Data.checked(Json.read(json), "ranges"));
    }

    /** The document: JSON by {@code ranges.schema.json}, in the units a person reads. */
    public byte[] json() {
        ObjectNode document = Json.object().put("format", "toeline-ranges").put("version", 1);
        ArrayNode list = document.putArray("ranges");
        for (Range range : ranges) {
            ObjectNode node = list.addObject().put("reading", range.kind().id());
            ArrayNode clubs = node.putArray("clubs");
            range.clubs().stream().sorted().forEach(club -> clubs.add(club.id()));
            node.put("low", written(range.shownLow()))
                    .put("high", written(range.shownHigh()))
                    .put("aim", written(range.shownAim()))
                    .put("provenance", range.provenance().id())
                    .put("source", range.source())
                    .put("note", range.note())
                    .put("scales", range.scaling().id())
                    .put("for", range.whom().id());
        }
        return Json.bytes(document);
    }

    /** Without what dividing by the unit left behind. */
    private static double written(double shown) {
        return Math.rint(shown * FINEST) / FINEST;
    }

    /** Reads a document that was checked against {@code ranges.schema.json}. */
    static RangeBook parse(JsonNode document) {
        List<Range> ranges = new ArrayList<>();
        for (JsonNode node : document.path("ranges")) {
            ReadingKind kind = Data.reading(node.path("reading").asText());
            ranges.add(new Range(
                    kind,
                    clubs(node.path("clubs")),
                    inside(kind, node, "low"),
                    inside(kind, node, "high"),
                    inside(kind, node, "aim"),
                    provenance(node.path("provenance").asText()),
                    node.path("source").asText(),
                    node.path("note").asText(""),
                    scaling(node.path("scales").asText(""), kind),
                    whom(node.path("for").asText(""), kind),
                    OptionalDouble.empty()));
        }
        return new RangeBook(ranges);
    }

    private static double inside(ReadingKind kind, JsonNode node, String name) {
        return kind.unit().toInside(node.path(name).asDouble());
    }

    private static Range.Scaling scaling(String id, ReadingKind kind) {
        return Arrays.stream(Range.Scaling.values())
                .filter(s -> s.id().equals(id))
                .findFirst()
                .orElseGet(() -> Range.Scaling.usual(kind));
    }

    private static Range.Whom whom(String id, ReadingKind kind) {
        return Arrays.stream(Range.Whom.values())
                .filter(w -> w.id().equals(id))
                .findFirst()
                .orElseGet(() -> Range.Whom.usual(kind));
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
        throw new IllegalArgumentException(Sentences.of(RangeBook.class).of("range.provenance", id));
    }
}

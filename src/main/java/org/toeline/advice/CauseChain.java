package org.toeline.advice;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.toeline.mark.Club;
import org.toeline.reading.ReadingKind;

/**
 * Which fault leads to which: a graph without circles from a reading to those that follow from it, and the order in
 * which causes are looked at. The one that comes with the program is {@code causes.json}.
 *
 * @param order readings that may be named first, most upstream first
 * @param links what follows from what, with provenance
 */
public record CauseChain(List<ReadingKind> order, List<Link> links) {

    private static final CauseChain SHIPPED = parse(Data.shipped("causes"));

    /**
     * One link of the chain.
     *
     * @param source the citation, or “common practice”
     */
    public record Link(ReadingKind cause, ReadingKind effect, Set<Club> clubs, String source) {

        public Link {
            clubs = Set.copyOf(clubs);
        }
    }

    public CauseChain {
        order = List.copyOf(order);
        links = List.copyOf(links);
        for (Link link : links) {
            if (order.indexOf(link.cause) < 0 || order.indexOf(link.effect) <= order.indexOf(link.cause)) {
                throw new IllegalArgumentException(link.cause.id() + " → " + link.effect.id()
                        + ": both must stand in the order, the cause before its effect");
            }
        }
    }

    /** The chain that comes with the program. */
    public static CauseChain shipped() {
        return SHIPPED;
    }

    /** The most upstream finding that is out of range, with those out of range downstream of it. */
    public Optional<FirstThing> first(List<Finding> findings, Club club) {
        for (ReadingKind kind : order) {
            Optional<Finding> out = findings.stream().filter(f -> f.kind() == kind && isOut(f)).findFirst();
            if (out.isPresent()) {
                Set<ReadingKind> downstream = downstream(kind, club);
                return Optional.of(new FirstThing(out.get(), findings.stream()
                        .filter(f -> isOut(f) && downstream.contains(f.kind())).map(Finding::kind).toList()));
            }
        }
        return Optional.empty();
    }

    private static boolean isOut(Finding finding) {
        return finding.verdict().map(Verdict::isOut).orElse(false);
    }

    private Set<ReadingKind> downstream(ReadingKind from, Club club) {
        Set<ReadingKind> reached = EnumSet.noneOf(ReadingKind.class);
        Deque<ReadingKind> open = new ArrayDeque<>(List.of(from));
        while (!open.isEmpty()) {
            ReadingKind kind = open.pop();
            for (Link link : links) {
                if (link.cause == kind && link.clubs.contains(club) && reached.add(link.effect)) {
                    open.push(link.effect);
                }
            }
        }
        return reached;
    }

    /** Reads a document that was checked against {@code causes.schema.json}. */
    static CauseChain parse(JsonNode document) {
        List<ReadingKind> order = new ArrayList<>();
        document.path("order").forEach(n -> order.add(ReadingKind.of(n.asText()).orElseThrow()));
        List<Link> links = new ArrayList<>();
        for (JsonNode node : document.path("links")) {
            links.add(new Link(ReadingKind.of(node.path("cause").asText()).orElseThrow(),
                    ReadingKind.of(node.path("effect").asText()).orElseThrow(),
                    RangeBook.clubs(node.path("clubs")), node.path("source").asText()));
        }
        return new CauseChain(order, links);
    }
}

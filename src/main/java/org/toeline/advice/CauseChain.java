package org.toeline.advice;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.toeline.language.Sentences;
import org.toeline.mark.Club;
import org.toeline.reading.ReadingKind;

/**
 * Which fault leads to which: for each club a graph without circles from a reading to those that follow from it, and the
 * order in which causes are looked at. The one that comes with the program is {@code causes.json}.
 *
 * @param orders for each club the readings that may be named first, most upstream first; a club without an order is advised
 *               nothing
 * @param links  what follows from what, with provenance
 */
public record CauseChain(Map<Club, List<ReadingKind>> orders, List<Link> links) {

    private static final CauseChain SHIPPED = parse(Data.shipped("causes"));

    /** Which way an effect goes with its cause: too high with too high, too high with too low, or both may be. */
    public enum Sense {
        SAME,
        OPPOSITE,
        EITHER;

        Sense then(Sense next) {
            return this == EITHER || next == EITHER ? EITHER : this == next ? SAME : OPPOSITE;
        }

        /** Whether an effect of such a verdict may come from a cause of such a verdict; both out of range. */
        boolean fits(Verdict cause, Verdict effect) {
            return this == EITHER || (cause == effect) == (this == SAME);
        }
    }

    /** What a link stands on. */
    public enum Grounds {
        /** A published study, which the source cites. */
        PUBLISHED,
        /** What teachers commonly say; no study is cited. */
        COMMON_PRACTICE,
        /** Both readings tell of one thing. */
        SAME_THING,
        /** Set by the coach who uses it. */
        COACHS_OWN;

        static Grounds of(String id) {
            return valueOf(id.replace('-', '_').toUpperCase(Locale.ROOT));
        }
    }

    /**
     * One link of the chain.
     *
     * @param source the citation, or why it needs none
     */
    public record Link(
            ReadingKind cause, ReadingKind effect, Sense sense, Set<Club> clubs, Grounds grounds, String source) {

        public Link {
            clubs = Set.copyOf(clubs);
        }
    }

    /** A reading that was reached from another, and how it goes with that. */
    private record Reached(ReadingKind kind, Sense sense) {}

    public CauseChain {
        Map<Club, List<ReadingKind>> copy = new EnumMap<>(Club.class);
        orders.forEach((club, order) -> copy.put(club, List.copyOf(order)));
        orders = java.util.Collections.unmodifiableMap(copy);
        links = List.copyOf(links);
        for (Link link : links) {
            for (Club club : link.clubs) {
                List<ReadingKind> order = copy.getOrDefault(club, List.of());
                if (order.indexOf(link.cause) < 0 || order.indexOf(link.effect) <= order.indexOf(link.cause)) {
                    throw new IllegalArgumentException(Sentences.of(CauseChain.class)
                            .of("causes.order", link.cause.id(), link.effect.id(), club.id()));
                }
            }
        }
    }

    /** The chain that comes with the program. */
    public static CauseChain shipped() {
        return SHIPPED;
    }

    /** The readings that may be named first with a club, most upstream first. */
    public List<ReadingKind> order(Club club) {
        return orders.getOrDefault(club, List.of());
    }

    /** The links that hold with a club. */
    public List<Link> links(Club club) {
        return links.stream().filter(l -> l.clubs.contains(club)).toList();
    }

    /** The most upstream finding that is out of range, with those out of range downstream of it that go with it. */
    public Optional<FirstThing> first(List<Finding> findings, Club club) {
        for (ReadingKind kind : order(club)) {
            Optional<Finding> out =
                    findings.stream().filter(f -> f.kind() == kind && isOut(f)).findFirst();
            if (out.isPresent()) {
                Set<Reached> downstream = downstream(kind, club);
                Verdict cause = out.get().verdict().orElseThrow();
                return Optional.of(new FirstThing(
                        out.get(),
                        findings.stream()
                                .filter(f -> isOut(f)
                                        && downstream.stream()
                                                .anyMatch(r -> r.kind == f.kind()
                                                        && r.sense.fits(
                                                                cause,
                                                                f.verdict().orElseThrow())))
                                .map(Finding::kind)
                                .toList()));
            }
        }
        return Optional.empty();
    }

    private static boolean isOut(Finding finding) {
        return finding.verdict().map(Verdict::isOut).orElse(false);
    }

    private Set<Reached> downstream(ReadingKind from, Club club) {
        Set<Reached> reached = new HashSet<>();
        Deque<Reached> open = new ArrayDeque<>(List.of(new Reached(from, Sense.SAME)));
        while (!open.isEmpty()) {
            Reached at = open.pop();
            for (Link link : links(club)) {
                Reached next = new Reached(link.effect, at.sense.then(link.sense));
                if (link.cause == at.kind && reached.add(next)) {
                    open.push(next);
                }
            }
        }
        return reached;
    }

    /** The readings that may follow from one with a club, through any number of links. */
    public Set<ReadingKind> downstreamOf(ReadingKind kind, Club club) {
        Set<ReadingKind> kinds = EnumSet.noneOf(ReadingKind.class);
        downstream(kind, club).forEach(r -> kinds.add(r.kind));
        return kinds;
    }

    /** Reads a document that was checked against {@code causes.schema.json}. */
    static CauseChain parse(JsonNode document) {
        Map<Club, List<ReadingKind>> orders = new EnumMap<>(Club.class);
        for (JsonNode node : document.path("orders")) {
            List<ReadingKind> order = new ArrayList<>();
            node.path("order").forEach(n -> order.add(Data.reading(n.asText())));
            if (node.path("others").asText().equals("last")) {
                Arrays.stream(ReadingKind.values())
                        .filter(kind -> !order.contains(kind))
                        .forEach(order::add);
            }
            for (Club club : RangeBook.clubs(node.path("clubs"))) {
                if (orders.put(club, order) != null) {
                    throw new IllegalArgumentException(
                            Sentences.of(CauseChain.class).of("causes.twice", club.id()));
                }
            }
        }
        List<Link> links = new ArrayList<>();
        for (JsonNode node : document.path("links")) {
            links.add(new Link(
                    Data.reading(node.path("cause").asText()),
                    Data.reading(node.path("effect").asText()),
                    Sense.valueOf(node.path("sense").asText().toUpperCase(Locale.ROOT)),
                    RangeBook.clubs(node.path("clubs")),
                    Grounds.of(node.path("provenance").asText()),
                    node.path("source").asText()));
        }
        return new CauseChain(orders, links);
    }
}

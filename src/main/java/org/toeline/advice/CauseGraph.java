package org.toeline.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.toeline.advice.CauseChain.Link;
import org.toeline.mark.Club;
import org.toeline.reading.ReadingKind;

/**
 * The part of the chain of causes that concerns one address position, ready to be drawn: one box a {@link Topic}, with its
 * best-known reading, in steps, each after all that lead to it, and the links between different things, without those that a
 * longer way says too.
 *
 * @param nodes in the club's order
 * @param edges causes before effects
 */
public record CauseGraph(List<Node> nodes, List<Link> edges) {

    /** What a reading is in the chain. */
    public enum Role {
        /** The one thing to change first. */
        FIRST,
        /** Out of range, and may follow from it. */
        MAY_FOLLOW,
        /** Stands in the chain; in range, or nobody can tell, or out of range for another reason. */
        BESIDE
    }

    /**
     * A reading in the chain.
     *
     * @param step 0 for what nothing here leads to, else one more than the farthest of its causes
     */
    public record Node(ReadingKind kind, Finding finding, Role role, int step) {}

    public CauseGraph {
        nodes = List.copyOf(nodes);
        edges = List.copyOf(edges);
    }

    /**
     * What was found of the chain: the first thing and what lies downstream of it; everything found, where nothing is to be
     * changed.
     */
    public static CauseGraph of(Advice advice, CauseChain chain, Club club) {
        Optional<FirstThing> first = advice.first();
        Set<ReadingKind> downstream =
                first.map(f -> chain.downstreamOf(f.finding().kind(), club)).orElse(Set.of());
        List<ReadingKind> found = chain.order(club).stream()
                .filter(k -> advice.finding(k).isPresent())
                .filter(k -> first.map(f -> f.finding().kind() == k || downstream.contains(k))
                        .orElse(true))
                .toList();
        Map<Topic, ReadingKind> named = named(advice, first, found);
        List<ReadingKind> kinds =
                found.stream().filter(k -> named.get(Topic.of(k)) == k).toList();
        List<Link> edges = edges(advice, chain.links(club), named);
        List<Link> all = List.copyOf(edges);
        edges.removeIf(link -> saidByALongerWay(link, all));
        Map<ReadingKind, Integer> steps = new EnumMap<>(ReadingKind.class);
        List<Node> nodes = new ArrayList<>();
        for (ReadingKind kind : kinds) {
            int step = edges.stream()
                    .filter(e -> e.effect() == kind)
                    .mapToInt(e -> steps.getOrDefault(e.cause(), -1) + 1)
                    .max()
                    .orElse(0);
            steps.put(kind, step);
            nodes.add(new Node(kind, advice.finding(kind).orElseThrow(), role(kind, first), step));
        }
        return new CauseGraph(nodes, edges);
    }

    /** The links between different things, once each, from and to what stands for them. */
    private static List<Link> edges(Advice advice, List<Link> links, Map<Topic, ReadingKind> named) {
        List<Link> edges = new ArrayList<>();
        for (Link link : links) {
            ReadingKind cause = named.get(Topic.of(link.cause()));
            ReadingKind effect = named.get(Topic.of(link.effect()));
            if (cause != null
                    && effect != null
                    && cause != effect
                    && holds(link, advice.finding(cause))
                    && edges.stream().noneMatch(e -> e.cause() == cause && e.effect() == effect)) {
                edges.add(new Link(
                        cause, effect, link.sense(), link.when(), link.clubs(), link.grounds(), link.source()));
            }
        }
        return edges;
    }

    /** Whether a link's cause may be out of range the way the link asks for: not when it is out the other way. */
    private static boolean holds(Link link, Optional<Finding> cause) {
        Optional<Verdict> out = cause.flatMap(Finding::verdict).filter(Verdict::isOut);
        return out.isEmpty() || link.when().isEmpty() || link.when().equals(out);
    }

    /** For each thing the reading that stands for it: the first to change, else the best known, of those that follow if any. */
    private static Map<Topic, ReadingKind> named(Advice advice, Optional<FirstThing> first, List<ReadingKind> found) {
        Map<Topic, ReadingKind> named = new EnumMap<>(Topic.class);
        first.ifPresent(f -> named.put(Topic.of(f.finding().kind()), f.finding().kind()));
        List<ReadingKind> bestFirst = found.stream()
                .sorted(Comparator.comparing((ReadingKind k) -> role(k, first) == Role.BESIDE)
                        .thenComparing(k -> looseness(advice.finding(k).orElseThrow())))
                .toList();
        bestFirst.forEach(k -> named.putIfAbsent(Topic.of(k), k));
        return named;
    }

    /** The interval over the range it is held against: the smaller, the better known. */
    private static double looseness(Finding finding) {
        return finding.range()
                .map(r -> (finding.reading().high() - finding.reading().low()) / (r.high() - r.low()))
                .orElse(Double.POSITIVE_INFINITY);
    }

    /** How the reading in a box is out of range; empty when it is not. */
    public Optional<Verdict> out(ReadingKind kind) {
        return nodes.stream()
                .filter(n -> n.kind() == kind)
                .flatMap(n -> n.finding().verdict().stream())
                .filter(Verdict::isOut)
                .findFirst();
    }

    private static Role role(ReadingKind kind, Optional<FirstThing> first) {
        if (first.isEmpty()) {
            return Role.BESIDE;
        }
        return first.get().finding().kind() == kind
                ? Role.FIRST
                : first.get().mayFollow().contains(kind) ? Role.MAY_FOLLOW : Role.BESIDE;
    }

    private static boolean saidByALongerWay(Link link, List<Link> edges) {
        return edges.stream()
                .filter(e -> e.cause() == link.cause() && e.effect() != link.effect())
                .anyMatch(e -> leads(e.effect(), link.effect(), edges));
    }

    private static boolean leads(ReadingKind from, ReadingKind to, List<Link> edges) {
        return from == to || edges.stream().filter(e -> e.cause() == from).anyMatch(e -> leads(e.effect(), to, edges));
    }
}

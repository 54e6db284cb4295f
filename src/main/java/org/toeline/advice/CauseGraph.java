package org.toeline.advice;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.toeline.advice.CauseChain.Link;
import org.toeline.mark.Club;
import org.toeline.reading.ReadingKind;

/**
 * The part of the chain of causes that concerns one address position, ready to be drawn: readings in steps, each after
 * all that lead to it, and the links between them, without those that a longer way says too.
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
        List<ReadingKind> kinds = chain.order(club).stream()
                .filter(k -> advice.finding(k).isPresent())
                .filter(k -> first.map(f -> f.finding().kind() == k || downstream.contains(k))
                        .orElse(true))
                .toList();
        List<Link> edges = new ArrayList<>();
        for (Link link : chain.links(club)) {
            if (kinds.contains(link.cause()) && kinds.contains(link.effect())) {
                edges.add(link);
            }
        }
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

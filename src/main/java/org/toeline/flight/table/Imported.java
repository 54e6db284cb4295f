package org.toeline.flight.table;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.toeline.flight.Shot;

/**
 * What came of a table: the shots, and what was left out by line and reason.
 *
 * @param shots    in the order of the table
 * @param lines    for each shot, the line of the file it stands on
 * @param groups   for each shot, what tells it from shots of another club, player, day or title, by the heading
 * @param leftOut  what was not read, in the order of the table; blank lines do not count
 * @param notes    what holds for the whole table: sentences without a full stop
 * @param encoding the encoding the bytes turned out to have
 */
public record Imported(
        List<Shot> shots,
        List<Integer> lines,
        List<Map<String, String>> groups,
        List<LeftOut> leftOut,
        List<String> notes,
        String encoding) {

    /** Stands for a heading where titles within the table tell its parts from each other. */
    public static final String TITLE = "title";

    public Imported {
        shots = List.copyOf(shots);
        lines = List.copyOf(lines);
        groups = List.copyOf(groups);
        leftOut = List.copyOf(leftOut);
        notes = List.copyOf(notes);
        if (shots.size() != lines.size() || shots.size() != groups.size()) {
            throw new IllegalArgumentException(
                    shots.size() + " shots, " + lines.size() + " lines, " + groups.size() + " groups");
        }
    }

    /** By which headings the shots differ in club, player, day or title: how many shots have which value. */
    public Map<String, Map<String, Integer>> filters() {
        Map<String, Map<String, Integer>> all = new LinkedHashMap<>();
        for (Map<String, String> group : groups) {
            group.forEach((heading, value) ->
                    all.computeIfAbsent(heading, h -> new TreeMap<>()).merge(value, 1, Integer::sum));
        }
        all.values().removeIf(v -> v.size() < 2);
        return all;
    }

    /** Only the shots that have these values; the others are left out by line. */
    public Imported only(Map<String, String> wanted) {
        List<Integer> kept = IntStream.range(0, shots.size())
                .filter(i -> wanted.entrySet().stream()
                        .allMatch(e -> e.getValue().equals(groups.get(i).get(e.getKey()))))
                .boxed()
                .toList();
        return new Imported(
                kept.stream().map(shots::get).toList(),
                kept.stream().map(lines::get).toList(),
                kept.stream().map(groups::get).toList(),
                leftOut,
                notes,
                encoding);
    }
}

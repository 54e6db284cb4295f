package org.toeline.flight.table;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
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
    /** Stands where a cell that tells shots apart is empty. */
    static final String NOTHING = "–";

    private static final Set<String> NO_NAMES = Set.of("", "-", "--", "---", NOTHING, "—", "n/a", "#n/a", "?");

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

    /** The heading that surely says with which setup each shot was hit, if there is one. */
    public Optional<String> setups() {
        return headings().filter(h -> says(HeadingNames.SETUP, h)).findFirst();
    }

    /** Whether a heading may say so: only a person knows. */
    public static boolean mayNameSetups(String heading) {
        return says(HeadingNames.SETUP, heading) || says(HeadingNames.SETUP + HeadingNames.PERHAPS, heading);
    }

    private Stream<String> headings() {
        return groups.stream().limit(1).flatMap(g -> g.keySet().stream());
    }

    private static boolean says(String kind, String heading) {
        return HeadingNames.is(kind, HeadingText.of(heading).words());
    }

    /** The shots, each with what stands under a heading as the name of its setup. */
    public Imported inSetups(String heading) {
        List<Shot> named = IntStream.range(0, shots.size())
                .mapToObj(i -> shots.get(i).withSetup(named(groups.get(i).getOrDefault(heading, NOTHING))))
                .toList();
        return new Imported(named, lines, groups, leftOut, notes, encoding);
    }

    private static String named(String value) {
        return namesASetup(value) ? value : "";
    }

    /** Whether what stands under a heading is a name; “none” is, of who has an aid to set up with, and of who has none. */
    public static boolean namesASetup(String value) {
        return !NO_NAMES.contains(value.strip().toLowerCase(Locale.ROOT));
    }

    /** How many shots name no setup. */
    public static long unnamed(List<Shot> shots) {
        return shots.stream().filter(s -> s.setup().isEmpty()).count();
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

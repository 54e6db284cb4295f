package org.toeline.flight.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.toeline.flight.ShotFigure;
import org.toeline.language.Sentences;

/**
 * What went together over one player's lessons: a reading beside a launch figure. Never a proof that one makes the other.
 *
 * @param reading     the reading's name in documents
 * @param correlation on how many lessons it rests is in it
 * @param shown       whether it holds with all pairs that were looked at allowed for (Holm): of two dozen pairs that have
 *                    nothing to do with each other, one goes together by chance
 */
public record GoesTogether(String reading, ShotFigure figure, RankCorrelation correlation, boolean shown) {

    private record Pair(String reading, ShotFigure figure) {}

    /**
     * Every reading with every figure that enough lessons have both of, the surest first.
     */
    public static List<GoesTogether> of(List<LessonFigures> lessons) {
        Map<Pair, RankCorrelation> correlations = new LinkedHashMap<>();
        Set<String> readings = new TreeSet<>();
        lessons.forEach(l -> readings.addAll(l.readings().keySet()));
        for (String reading : readings) {
            for (ShotFigure figure : ShotFigure.values()) {
                correlation(lessons, reading, figure).ifPresent(r -> correlations.put(new Pair(reading, figure), r));
            }
        }
        Map<Pair, Double> p = new LinkedHashMap<>();
        correlations.forEach((pair, r) -> p.put(pair, r.p()));
        Set<Pair> holding = Holm.holding(p);
        List<GoesTogether> all = new ArrayList<>();
        correlations.forEach(
                (pair, r) -> all.add(new GoesTogether(pair.reading, pair.figure, r, holding.contains(pair))));
        all.sort(Comparator.comparingDouble(g -> g.correlation.p()));
        return List.copyOf(all);
    }

    private static Optional<RankCorrelation> correlation(
            List<LessonFigures> lessons, String reading, ShotFigure figure) {
        List<LessonFigures> both = lessons.stream()
                .filter(l -> l.readings().containsKey(reading) && l.figures().containsKey(figure))
                .toList();
        return RankCorrelation.of(
                both.stream().mapToDouble(l -> l.readings().get(reading)).toArray(),
                both.stream().mapToDouble(l -> l.figures().get(figure)).toArray());
    }

    /** In words, such as “goes with, over 9 lessons (rank correlation 0.78, 0.15 to 0.96)”. */
    public String words() {
        return shown || !correlation.shown()
                ? correlation.words()
                : Sentences.of(GoesTogether.class).of("together.by-chance", correlation.words());
    }
}

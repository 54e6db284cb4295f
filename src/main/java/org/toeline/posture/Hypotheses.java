package org.toeline.posture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Which marks may be wrong: sets of them, each with its odds against “all are right”. From the likeliest set so far, each
 * mark that disagrees with the rest makes a set with one mark more, whose odds are those of the set times the mark's own
 * ({@link Misfits}); sets far less likely than the best are not followed. A mark that only the habits of people speak
 * against makes no set: it is mentioned at most.
 */
final class Hypotheses {

    /** More wrong marks than this are not looked for. */
    private static final int MOST_DOUBTS = 6;
    /** More fits than this are not made. */
    private static final int MOST_FITS = 14;
    /** The natural logarithm of the share of the likeliest set's odds below which a set is dropped: a fiftieth. */
    private static final double DROPPED = -Math.log(50);
    /** A set less likely than this in the end would not show in a 95 % interval. */
    private static final double LEAST = 0.005;
    /** The score that evidence alone must reach for a mark's doubt to count: as likely wrong as right, but for its rarity. */
    private static final double EVIDENT = 0;

    private final List<Guess> guesses = new ArrayList<>();
    private final Map<Problem.MarkName, Double> offPx = new HashMap<>();

    /** A set of wrong marks, fitted without them, and the natural logarithm of its odds. */
    record Guess(Fitted fitted, double logOdds) {}

    Hypotheses(Fitted whole) {
        guesses.add(new Guess(whole, 0));
        Set<Set<Problem.MarkName>> seen = new HashSet<>(Set.of(Set.of()));
        List<Guess> open = new ArrayList<>(guesses);
        while (!open.isEmpty()) {
            Guess next = open.stream()
                    .max(Comparator.comparingDouble(Guess::logOdds))
                    .orElseThrow();
            open.remove(next);
            if (next.logOdds < best().logOdds + DROPPED || next.fitted.leftOut.size() >= MOST_DOUBTS) {
                continue;
            }
            for (Misfits.Misfit misfit : next.fitted.misfits()) {
                double logOdds = next.logOdds + misfit.logOdds();
                if (logOdds < best().logOdds + DROPPED || guesses.size() >= MOST_FITS) {
                    break;
                }
                Set<Problem.MarkName> more = new HashSet<>(next.fitted.leftOut);
                more.add(misfit.name());
                if (next.fitted.evidenceAgainst(misfit.name()) > EVIDENT && seen.add(more)) {
                    Guess guess = new Guess(next.fitted.without(misfit.name()), logOdds);
                    offPx.putIfAbsent(misfit.name(), misfit.offPx());
                    guesses.add(guess);
                    open.add(guess);
                }
            }
        }
    }

    private Guess best() {
        return guesses.stream().max(Comparator.comparingDouble(Guess::logOdds)).orElseThrow();
    }

    /** The likeliest set, fitted without its marks. */
    Fitted likeliest() {
        return best().fitted;
    }

    /** The likeliest first; those that would not show are left out. */
    List<Hypothesis> all() {
        List<Guess> kept = kept();
        double sum = kept.stream().mapToDouble(this::share).sum();
        return kept.stream()
                .map(g -> new Hypothesis(
                        share(g) / sum,
                        PostureEstimator.coordinates(g.fitted.problem, g.fitted.state.x),
                        g.fitted.laplace))
                .toList();
    }

    private List<Guess> kept() {
        double all = guesses.stream().mapToDouble(this::share).sum();
        return guesses.stream()
                .filter(g -> share(g) >= LEAST * all)
                .sorted(Comparator.comparingDouble(Guess::logOdds).reversed())
                .toList();
    }

    private double share(Guess guess) {
        return Math.exp(guess.logOdds - best().logOdds);
    }

    /** The marks in doubt, the likeliest wrong first; those that are only mentioned last. */
    List<Doubt> doubts() {
        double all = guesses.stream().mapToDouble(this::share).sum();
        List<Doubt> doubts = new ArrayList<>();
        offPx.forEach((mark, off) -> {
            double odds = guesses.stream()
                            .filter(g -> g.fitted.leftOut.contains(mark))
                            .mapToDouble(this::share)
                            .sum()
                    / all;
            if (odds >= Misfits.NAMED) {
                doubts.add(new Doubt(mark.view(), mark.name(), off, Math.min(1, odds), true));
            }
        });
        doubts.sort(Comparator.comparingDouble(Doubt::odds)
                .thenComparingDouble(Doubt::offPx)
                .reversed());
        mention().ifPresent(doubts::add);
        return doubts;
    }

    /** A mark that nothing but the habits of people speaks against, clearly. */
    private Optional<Doubt> mention() {
        Fitted likeliest = likeliest();
        double mentioned = likeliest.problem.used.size() > 1 ? Misfits.MENTIONED : Misfits.MENTIONED_IN_ONE_VIEW;
        return likeliest.misfits().stream()
                .filter(m -> m.score() > mentioned && likeliest.evidenceAgainst(m.name()) <= EVIDENT)
                .findFirst()
                .map(m -> new Doubt(m.sight().view, m.sight().name, m.offPx(), m.odds(), false));
    }
}

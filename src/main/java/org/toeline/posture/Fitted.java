package org.toeline.posture;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.toeline.mark.MarkSheet;

/** A sheet fitted with some of its marks left out: the minimum and the curvature there. */
final class Fitted {

    /** How much looser the pictures are taken at first, from far off, pixels. */
    private static final double SOFT_PX = 40;

    /** A misfit per degree of freedom that one wrong mark hardly makes, nor a body or a camera out of the ordinary. */
    private static final double WILD = 20;

    final Problem problem;
    final Set<Problem.MarkName> leftOut;
    final State state;
    final double cost;
    final Laplace laplace;
    private final MarkSheet sheet;
    private List<Misfits.Misfit> misfits = List.of();
    private boolean looked;
    private Optional<Fitted> evidence = Optional.empty();

    private Fitted(Problem problem, Set<Problem.MarkName> leftOut, Minimum minimum) {
        this.sheet = problem.sheet;
        this.problem = problem;
        this.leftOut = leftOut;
        this.state = minimum.state();
        this.cost = minimum.cost();
        this.laplace = new Laplace(problem.knowledge, state, problem.unknowns);
    }

    /**
     * With every mark. Where marks so fitted contradict each other wildly, the descent may have ended in a valley beside
     * the lowest; then, and only then, it is tried again from cameras that stand nearer, farther and to either side.
     */
    static Fitted whole(MarkSheet sheet) {
        Fitted best = direct(sheet);
        for (int i = 0; i < CameraHabits.OTHER_STARTS && best.fit().perDegreeOfFreedom() > WILD; i++) {
            Problem again = new Problem(sheet, Set.of());
            Fitted other = from(again, again.otherStart(i));
            if (other.cost < best.cost) {
                best = other;
            }
        }
        return best;
    }

    /** With every mark, from the usual start alone. */
    static Fitted direct(MarkSheet sheet) {
        Problem problem = new Problem(sheet, Set.of());
        return from(problem, problem.start());
    }

    /** How well the marks that are not left out fit together. */
    Posture.Fit fit() {
        int[] rows = {0};
        problem.knowledge.forEach(k -> k.rows(state, (residual, count, index, slope) -> rows[0]++));
        return new Posture.Fit(cost, rows[0] - state.x.length);
    }

    private static Fitted from(Problem problem, State start) {
        Minimum minimum = new Minimum(problem.knowledge, start);
        minimum.descend(SOFT_PX);
        minimum.descend(0);
        minimum.descend(0);
        return new Fitted(problem, Set.of(), minimum);
    }

    /** The same with one mark more left out. */
    Fitted without(Problem.MarkName mark) {
        Set<Problem.MarkName> more = new HashSet<>(leftOut);
        more.add(mark);
        return again(new Problem(sheet, more), more);
    }

    private Fitted again(Problem other, Set<Problem.MarkName> without) {
        Minimum minimum = new Minimum(other.knowledge, state.with(state.x.clone()));
        minimum.descend(0);
        minimum.descend(0);
        return new Fitted(other, without, minimum);
    }

    /** The marks that disagree, the greatest score first. */
    List<Misfits.Misfit> misfits() {
        if (!looked) {
            misfits = Misfits.of(problem.knowledge, state, laplace);
            looked = true;
        }
        return misfits;
    }

    /**
     * How much evidence alone, without the habits of people, speaks against a mark: its score where all marks are fitted to
     * each other and to what no player can help.
     */
    double evidenceAgainst(Problem.MarkName mark) {
        if (evidence.isEmpty()) {
            evidence = Optional.of(again(new Problem(sheet, leftOut, Problem.Belief.EVIDENCE), leftOut));
        }
        return evidence.get().misfits().stream()
                .filter(m -> m.name().equals(mark))
                .mapToDouble(Misfits.Misfit::score)
                .findFirst()
                .orElse(Double.NEGATIVE_INFINITY);
    }
}

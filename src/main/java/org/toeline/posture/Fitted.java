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

    /** With every mark, from far off. */
    static Fitted whole(MarkSheet sheet) {
        Problem problem = new Problem(sheet, Set.of());
        return from(problem, problem.start());
    }

    /** With every mark, from another start. */
    static Fitted from(Problem problem, State start) {
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

    /** How much evidence alone, without the habits of people, speaks against a mark: the score of {@link Misfits}. */
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

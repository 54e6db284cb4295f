package org.toeline.posture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.toeline.study.Scenes;

/** Every row's slopes against central differences, away from the solution so that no term vanishes. */
class DerivativeTest {

    private static final double STEP = 1e-6;
    /** Central differences of values up to 1000 in double precision: 1e-10/1e-6, plus curvature times step squared. */
    private static final double RELATIVE = 2e-5;

    private record Row(double residual, double[] slope) {}

    private static List<Row> rows(Knowledge knowledge, State state) {
        List<Row> rows = new ArrayList<>();
        knowledge.rows(state, (residual, count, index, slope) -> {
            double[] dense = new double[state.x.length];
            for (int i = 0; i < count; i++) {
                dense[index[i]] += slope[i];
            }
            rows.add(new Row(residual, dense));
        });
        return rows;
    }

    @Test
    void slopesAreDerivatives() {
        Problem problem = new Problem(Scenes.separateTakesWithBentLens(5), Set.of());
        State state = problem.start();
        SplittableRandom random = new SplittableRandom(8);
        double[] x = state.x.clone();
        for (int i = 0; i < x.length; i++) {
            x[i] += 0.03 * random.nextGaussian();
        }
        state.moveTo(x);
        problem.knowledge.forEach(k -> k.weigh(state, 0));
        for (Knowledge knowledge : problem.knowledge) {
            List<Row> at = rows(knowledge, state);
            for (int i = 0; i < x.length; i++) {
                List<Row> up = moved(knowledge, state, x, i, STEP);
                List<Row> down = moved(knowledge, state, x, i, -STEP);
                for (int r = 0; r < at.size(); r++) {
                    double numeric = (up.get(r).residual - down.get(r).residual) / (2 * STEP);
                    double slope = at.get(r).slope[i];
                    assertThat(slope)
                            .as("%s, row %d, unknown %d", knowledge.getClass().getSimpleName(), r, i)
                            .isCloseTo(numeric, within(RELATIVE * Math.abs(numeric) + 1e-3));
                }
            }
        }
    }

    private static List<Row> moved(Knowledge knowledge, State state, double[] x, int i, double step) {
        double[] other = x.clone();
        other[i] += step;
        return rows(knowledge, state.with(other));
    }
}

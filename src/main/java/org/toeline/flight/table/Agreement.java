package org.toeline.flight.table;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.toeline.flight.Air;
import org.toeline.flight.FigureUnit;
import org.toeline.flight.Flight;
import org.toeline.flight.Launch;
import org.toeline.flight.SmitsSmith;
import org.toeline.flight.Trajectory;
import org.toeline.language.Sentences;

/** Whether the columns that are each sure of themselves are so together; those that contradict each other are asked about. */
record Agreement(TableBody body, Map<ColumnJudge, Column> columns, List<Asked> asked, List<String> unmapped) {

    private static final double SAME = 0.02;
    private static final double MOST = 0.9;
    /** A ball's speed over its club's. */
    private static final double[] SMASH = {0.7, 1.6};
    /** Measured carry and height over computed ones: models and wind are far from that. */
    private static final double[] CARRY = {0.55, 1.6};

    private static final double[] APEX = {0.4, 2.2};
    private static final int LEAST_FLOWN = 3;
    private static final int FLOWN = 9;

    Map<Meaning, Column> of(Map<Meaning, List<ColumnJudge>> sure) {
        Map<Meaning, ColumnJudge> one = new EnumMap<>(Meaning.class);
        sure.forEach((meaning, judges) -> {
            if (judges.size() == 1 || sameFigures(judges)) {
                one.put(meaning, judges.get(0));
                judges.stream().skip(1).forEach(j -> unmapped.add(heading(j)));
            } else {
                judges.forEach(j -> ask(j, Sentences.of(Agreement.class).of("table.several", meaning.words())));
            }
        });
        spin(one);
        longer(one);
        speeds(one);
        flights(one);
        Map<Meaning, Column> agreed = new EnumMap<>(Meaning.class);
        one.forEach((m, j) -> agreed.put(m, column(j)));
        return agreed;
    }

    private Column column(ColumnJudge judge) {
        return Optional.ofNullable(columns.get(judge)).orElseThrow();
    }

    private String heading(ColumnJudge judge) {
        return body.header().heading(judge.place());
    }

    private double[] inside(ColumnJudge judge) {
        return ColumnJudge.inside(body, judge.place(), column(judge));
    }

    private void ask(ColumnJudge judge, String why) {
        asked.add(judge.asked(column(judge), why));
    }

    private void ask(Map<Meaning, ColumnJudge> one, String why, Meaning... meanings) {
        for (Meaning meaning : meanings) {
            Optional.ofNullable(one.remove(meaning)).ifPresent(j -> ask(j, why));
        }
    }

    /** The same figure twice, in two units perhaps. */
    private boolean sameFigures(List<ColumnJudge> judges) {
        double[] first = inside(judges.get(0));
        for (ColumnJudge other : judges.subList(1, judges.size())) {
            double[] second = inside(other);
            int both = 0;
            int same = 0;
            for (int i = 0; i < first.length; i++) {
                if (!Double.isNaN(first[i]) && !Double.isNaN(second[i])) {
                    both++;
                    same += Math.abs(first[i] - second[i])
                                    <= SAME * Math.max(Math.abs(first[i]), Math.abs(second[i])) + 1e-3
                            ? 1
                            : 0;
                }
            }
            if (both == 0 || same < both || heading(other).equals(heading(judges.get(0)))) {
                return false;
            }
        }
        return true;
    }

    /** Back spin alone is less than the whole; with its side or the axis beside it the whole follows. */
    private void spin(Map<Meaning, ColumnJudge> one) {
        if (one.containsKey(Meaning.BACK_SPIN)
                && !one.containsKey(Meaning.SPIN_RATE)
                && !one.containsKey(Meaning.SIDE_SPIN)
                && !one.containsKey(Meaning.SPIN_AXIS)) {
            ask(one, Sentences.of(Agreement.class).of("table.back-alone"), Meaning.BACK_SPIN);
        }
        if (one.containsKey(Meaning.SIDE_SPIN) && !one.containsKey(Meaning.BACK_SPIN)) {
            ask(one, Sentences.of(Agreement.class).of("table.side-alone"), Meaning.SIDE_SPIN);
        }
        if (share(one, Meaning.BACK_SPIN, Meaning.SPIN_RATE, (back, all) -> back <= all * (1 + SAME) + 1) < MOST) {
            ask(one, Sentences.of(Agreement.class).of("table.more-back"), Meaning.BACK_SPIN, Meaning.SPIN_RATE);
        }
    }

    private void longer(Map<Meaning, ColumnJudge> one) {
        if (share(one, Meaning.CARRY, Meaning.TOTAL, (carry, total) -> total >= carry * (1 - SAME)) < MOST) {
            ask(one, Sentences.of(Agreement.class).of("table.shorter"), Meaning.TOTAL, Meaning.CARRY);
        }
        if (share(one, Meaning.SIDE, Meaning.CARRY, (side, carry) -> Math.abs(side) < carry) < MOST) {
            ask(one, Sentences.of(Agreement.class).of("table.wider"), Meaning.SIDE);
        }
        if (share(one, Meaning.APEX, Meaning.CARRY, (apex, carry) -> apex < 0.7 * carry) < MOST) {
            ask(one, Sentences.of(Agreement.class).of("table.as-high"), Meaning.APEX, Meaning.CARRY);
        }
    }

    private void speeds(Map<Meaning, ColumnJudge> one) {
        if (share(one, Meaning.CLUB_SPEED, Meaning.BALL_SPEED, (c, b) -> b > SMASH[0] * c && b < SMASH[1] * c) < MOST) {
            ask(
                    one,
                    Sentences.of(Agreement.class).of("table.speeds"),
                    Meaning.CLUB_SPEED,
                    Meaning.BALL_SPEED,
                    Meaning.SMASH_FACTOR);
        }
        ColumnJudge club = one.get(Meaning.CLUB_SPEED);
        ColumnJudge ball = one.get(Meaning.BALL_SPEED);
        ColumnJudge smash = one.get(Meaning.SMASH_FACTOR);
        if (club != null && ball != null && smash != null) {
            double[] c = inside(club);
            double[] b = inside(ball);
            double[] s = inside(smash);
            double[] off = new double[c.length];
            for (int i = 0; i < c.length; i++) {
                off[i] = b[i] / c[i] / s[i];
            }
            OptionalDouble middle = middle(off);
            if (middle.isPresent() && Math.abs(middle.getAsDouble() - 1) > 0.05) {
                ask(
                        one,
                        Sentences.of(Agreement.class).of("table.smash"),
                        Meaning.SMASH_FACTOR,
                        Meaning.CLUB_SPEED,
                        Meaning.BALL_SPEED);
            }
        }
    }

    /** What a launch flies, beside what is said to be measured. */
    private void flights(Map<Meaning, ColumnJudge> one) {
        ColumnJudge speed = one.get(Meaning.BALL_SPEED);
        ColumnJudge angle = one.get(Meaning.LAUNCH_ANGLE);
        if (speed == null || angle == null) {
            return;
        }
        double[] v = inside(speed);
        double[] a = inside(angle);
        double[] w = one.containsKey(Meaning.SPIN_RATE) ? inside(one.get(Meaning.SPIN_RATE)) : new double[0];
        Trajectory trajectory = new Trajectory(Air.USUAL, SmitsSmith.WITHOUT_REYNOLDS_TERM);
        double[] carry = new double[v.length];
        double[] apex = new double[v.length];
        Arrays.fill(carry, Double.NaN);
        Arrays.fill(apex, Double.NaN);
        int flown = 0;
        for (int i = 0; i < v.length && flown < FLOWN; i++) {
            double spin = w.length > 0 ? w[i] : FigureUnit.TURNS_PER_MINUTE.toInside(3500);
            if (v[i] > 5 && v[i] < 110 && a[i] > 0.02 && a[i] < 1.2 && spin >= 0 && spin < 1500) {
                Flight flight = trajectory.fly(new Launch(v[i], a[i], 0, spin, 0));
                carry[i] = flight.carryM();
                apex[i] = flight.apexM();
                flown++;
            }
        }
        if (flown >= LEAST_FLOWN) {
            against(one, Meaning.CARRY, carry, CARRY);
            against(one, Meaning.APEX, apex, APEX);
        }
    }

    private void against(Map<Meaning, ColumnJudge> one, Meaning meaning, double[] computed, double[] ends) {
        ColumnJudge judge = one.get(meaning);
        if (judge == null) {
            return;
        }
        double[] ratio = inside(judge);
        for (int i = 0; i < ratio.length; i++) {
            ratio[i] /= computed[i];
        }
        OptionalDouble middle = middle(ratio);
        if (middle.isPresent() && (middle.getAsDouble() < ends[0] || middle.getAsDouble() > ends[1])) {
            ask(
                    one,
                    Sentences.of(Agreement.class).of("table.no-such"),
                    meaning,
                    Meaning.BALL_SPEED,
                    Meaning.LAUNCH_ANGLE);
        }
    }

    private static OptionalDouble middle(double[] values) {
        double[] sorted =
                Arrays.stream(values).filter(Double::isFinite).sorted().toArray();
        return sorted.length == 0 ? OptionalDouble.empty() : OptionalDouble.of(sorted[sorted.length / 2]);
    }

    private interface Holds {
        boolean of(double first, double second);
    }

    /** In which share of the rows something holds of two figures; 1 where they are not both there. */
    private double share(Map<Meaning, ColumnJudge> one, Meaning first, Meaning second, Holds holds) {
        ColumnJudge a = one.get(first);
        ColumnJudge b = one.get(second);
        if (a == null || b == null) {
            return 1;
        }
        double[] x = inside(a);
        double[] y = inside(b);
        List<Boolean> all = new ArrayList<>();
        for (int i = 0; i < x.length; i++) {
            if (!Double.isNaN(x[i]) && !Double.isNaN(y[i])) {
                all.add(holds.of(x[i], y[i]));
            }
        }
        return all.isEmpty() ? 1 : all.stream().filter(h -> h).count() / (double) all.size();
    }
}

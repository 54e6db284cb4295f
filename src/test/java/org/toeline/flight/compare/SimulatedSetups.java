package org.toeline.flight.compare;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.toeline.flight.Shot;
import org.toeline.flight.ShotFigure;

/** Shots of two setups whose difference is known: of several kinds of shots, hit one setup after the other or in turns. */
final class SimulatedSetups {

    /** What shots are like about their middle, in units of their spread. */
    enum Kind {
        NORMAL("normal"),
        SKEWED("skewed"),
        TWO_WAY("missed to either side, three in ten"),
        TOPPED("topped, one in ten"),
        TOPPED_FIRST("topped, one in ten, first setup only"),
        UNEQUAL("spreads as 1 : 3"),
        ALIKE("like the one before by 0.4"),
        ALIKE_IN_TURNS("the same, hit A B A B"),
        NORMAL_IN_TURNS("normal, hit A B A B");

        final String words;

        Kind(String words) {
            this.words = words;
        }
    }

    /** A chi square of four degrees of freedom has this spread. */
    private static final double SKEWED_SPREAD = Math.sqrt(8);

    private static final double ALIKE = 0.4;

    private final SplittableRandom random;

    SimulatedSetups(long seed) {
        this.random = new SplittableRandom(seed);
    }

    double[] normal(int count, double middle, double spread) {
        return random.doubles(count)
                .map(x -> middle + spread * random.nextGaussian())
                .toArray();
    }

    /** The setups' places in the order of hitting: in two runs, or in four for setups hit in turns. */
    static List<Boolean> places(Kind kind, int first, int second) {
        List<Boolean> places = new ArrayList<>();
        int[] runs = kind == Kind.ALIKE_IN_TURNS || kind == Kind.NORMAL_IN_TURNS
                ? new int[] {first / 2, second / 2, first - first / 2, second - second / 2}
                : new int[] {first, second};
        for (int run = 0; run < runs.length; run++) {
            for (int i = 0; i < runs[run]; i++) {
                places.add(run % 2 == 1);
            }
        }
        return places;
    }

    /**
     * @param figures how many figures each shot has, independent of each other; the first is moved
     * @param by      by how many spreads the second setup's lie higher
     */
    HitOrder order(Kind kind, int first, int second, List<ShotFigure> figures, double by) {
        List<Boolean> places = places(kind, first, second);
        List<Map<ShotFigure, Double>> all = new ArrayList<>();
        places.forEach(p -> all.add(new EnumMap<>(ShotFigure.class)));
        for (ShotFigure figure : figures) {
            double last = random.nextGaussian();
            for (int i = 0; i < places.size(); i++) {
                boolean after = places.get(i);
                double x = one(kind, after, last);
                last = x;
                double moved = after && figure == figures.get(0) ? by : 0;
                double middle = (figure.least() + figure.most()) / 2;
                all.get(i).put(figure, middle + figure.worthwhile() * (x + moved));
            }
        }
        return new HitOrder(all.stream().map(Shot::new).toList(), places);
    }

    private double one(Kind kind, boolean after, double last) {
        double usual = random.nextGaussian();
        double chance = random.nextDouble();
        double far = random.nextDouble(3, 8);
        return switch (kind) {
            case NORMAL, NORMAL_IN_TURNS -> usual;
            case SKEWED -> {
                double sum = 0;
                for (int i = 0; i < 4; i++) {
                    double g = random.nextGaussian();
                    sum += g * g;
                }
                yield (sum - 4) / SKEWED_SPREAD;
            }
            case TWO_WAY -> chance < 0.15 ? far : chance < 0.3 ? -far : usual;
            case TOPPED -> chance < 0.1 ? -far : usual;
            case TOPPED_FIRST -> !after && chance < 0.1 ? -far : usual;
            case UNEQUAL -> after ? 3 * usual : usual;
            case ALIKE, ALIKE_IN_TURNS -> ALIKE * last + Math.sqrt(1 - ALIKE * ALIKE) * usual;
        };
    }

    /** In how many of so many trials some figure is called real; and how often the first one's interval holds the truth. */
    record Rates(double real, double held) {}

    Rates rates(Kind kind, int first, int second, List<ShotFigure> figures, double by, int trials) {
        int real = 0;
        int held = 0;
        for (int i = 0; i < trials; i++) {
            List<Difference> found =
                    SetupComparison.of(order(kind, first, second, figures, by)).differences();
            boolean some = by == 0
                    ? found.stream().anyMatch(d -> d.state() == State.REAL)
                    : found.get(0).state() == State.REAL;
            real += some ? 1 : 0;
            double truth = by * figures.get(0).worthwhile();
            held += found.stream()
                            .filter(d -> d.figure() == figures.get(0))
                            .flatMap(d -> d.estimate().stream())
                            .anyMatch(e -> e.low() <= truth && truth <= e.high())
                    ? 1
                    : 0;
        }
        return new Rates(real / (double) trials, held / (double) trials);
    }
}

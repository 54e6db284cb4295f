package org.toeline.flight;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoublePredicate;
import java.util.function.Function;
import java.util.function.Supplier;
import org.toeline.flight.Implausible.Grade;
import org.toeline.language.Sentences;
import org.toeline.language.Written;

/**
 * What of a shot's figures no flight could give, with the likely reason. Mechanics first: lift and drag do no more work
 * than none, so that in still air no apex exceeds v²/2g, the height of a ball thrown straight up in a vacuum; and no
 * carry exceeds v²/g, the greatest range in a vacuum (at 45°). The vacuum range at the shot's own launch angle is no
 * bound: lift carries a low drive past it. Then what a golf ball can do at all, then what the models of flight give.
 */
public final class Plausibility {

    private static final Sentences SAID = Sentences.of(Plausibility.class);

    /** The longest model is still some 10 % short at times, and a helping wind adds as much. */
    private static final double LONGER = 1.25;

    private static final double SHORTER = 0.7;
    private static final double HIGHER = 1.6;
    private static final double LOWER = 0.45;
    /** Of many shots, the middle one is less at the mercy of wind and chance. */
    private static final double LONGER_TOGETHER = 1.08;

    private static final int TOGETHER = 3;

    /**
     * The fastest ball a club can make, as a multiple of the club's own speed: (1 + e)/(1 + m/M) with restitution e 0.83, the
     * most that was allowed for long, a head of 0.2 kg and a ball of 0.0459 kg is 1.49; a little more is left for what
     * measuring adds (from memory).
     */
    private static final double FASTEST_OFF_THE_CLUB = 1.56;

    /** So near to the first model a shot needs no look at the others. */
    private static final double NEAR = 0.2;

    /** Of more shots so many, from all over them, tell the middle. */
    private static final int LOOK_AT = 400;

    private final Function<Launch, Flight> first;
    private final Function<Launch, FlightBand.Figures> flights;

    public Plausibility(Air air) {
        this(new RememberedFlights(air));
    }

    public Plausibility(RememberedFlights flights) {
        this.first = flights::first;
        this.flights = flights::of;
    }

    /** What speaks against the figures of one shot; empty if nothing does. */
    public List<Implausible> check(Shot shot) {
        List<Implausible> found = new ArrayList<>();
        shot.figures().forEach((figure, value) -> {
            if (value < figure.least() || value > figure.most()) {
                found.add(outOfRange(figure, value));
            }
        });
        OptionalDouble speed = shot.figure(ShotFigure.BALL_SPEED);
        if (speed.isPresent() && found.stream().noneMatch(f -> f.figure() == ShotFigure.BALL_SPEED)) {
            mechanics(shot, speed.getAsDouble()).forEach(f -> addOnce(found, f));
        }
        times(shot).forEach(f -> addOnce(found, f));
        club(shot).ifPresent(f -> addOnce(found, f));
        if (found.isEmpty()) {
            models(shot).forEach(f -> addOnce(found, f));
        }
        return List.copyOf(found);
    }

    private static void addOnce(List<Implausible> found, Implausible more) {
        if (found.stream().noneMatch(f -> f.figure() == more.figure())) {
            found.add(more);
        }
    }

    private static Implausible outOfRange(ShotFigure figure, double value) {
        String beyond = SAID.of(
                "odd.beyond",
                figure.words(),
                UnitSlip.shown(figure, value),
                UnitSlip.shown(figure, figure.least()),
                UnitSlip.shown(figure, figure.most()));
        return new Implausible(
                figure,
                Grade.IMPOSSIBLE,
                withSlip(beyond, figure, value, v -> v >= figure.least() + 0.03 * figure.most() && v <= figure.most()));
    }

    private static String withSlip(String sentence, ShotFigure figure, double value, DoublePredicate fits) {
        return UnitSlip.words(figure, value, fits)
                .map(s -> SAID.of("slip.asked", sentence, s))
                .orElse(sentence);
    }

    private static List<Implausible> mechanics(Shot shot, double speedMps) {
        List<Implausible> found = new ArrayList<>();
        double farthest = speedMps * speedMps / Trajectory.GRAVITY;
        above(
                        shot,
                        ShotFigure.APEX,
                        farthest / 2,
                        () -> SAID.of("odd.thrown", UnitSlip.shown(ShotFigure.BALL_SPEED, speedMps)))
                .ifPresent(found::add);
        above(
                        shot,
                        ShotFigure.CARRY,
                        farthest,
                        () -> SAID.of("odd.longest", UnitSlip.shown(ShotFigure.BALL_SPEED, speedMps)))
                .ifPresent(found::add);
        return found;
    }

    private static Optional<Implausible> above(Shot shot, ShotFigure figure, double most, Supplier<String> why) {
        OptionalDouble value = shot.figure(figure);
        if (value.isEmpty() || value.getAsDouble() <= most) {
            return Optional.empty();
        }
        String sentence = SAID.of(
                "odd.more",
                figure.words(),
                UnitSlip.shown(figure, value.getAsDouble()),
                why.get(),
                UnitSlip.shown(figure, most));
        return Optional.of(new Implausible(
                figure,
                Grade.IMPOSSIBLE,
                withSlip(sentence, figure, value.getAsDouble(), v -> v > 0.3 * most && v < 0.9 * most)));
    }

    /** A ball that is up for a time cannot have fallen from higher than free fall allows, nor flown faster than it left. */
    private static List<Implausible> times(Shot shot) {
        List<Implausible> found = new ArrayList<>();
        OptionalDouble time = shot.figure(ShotFigure.HANG_TIME);
        if (time.isPresent()) {
            double seconds = time.getAsDouble();
            above(
                            shot,
                            ShotFigure.APEX,
                            Trajectory.GRAVITY * seconds * seconds / 2,
                            () -> SAID.of("odd.fall", tenths(seconds)))
                    .ifPresent(found::add);
            shot.figure(ShotFigure.BALL_SPEED)
                    .ifPresent(v -> above(
                                    shot, ShotFigure.CARRY, v * seconds, () -> SAID.of("odd.farther", tenths(seconds)))
                            .ifPresent(found::add));
        }
        return found;
    }

    private static String tenths(double seconds) {
        return Written.number("%.1f", seconds);
    }

    private static Optional<Implausible> club(Shot shot) {
        OptionalDouble club = shot.figure(ShotFigure.CLUB_SPEED);
        return club.isEmpty()
                ? Optional.empty()
                : above(
                        shot,
                        ShotFigure.BALL_SPEED,
                        FASTEST_OFF_THE_CLUB * club.getAsDouble(),
                        () -> SAID.of("odd.faster", UnitSlip.shown(ShotFigure.CLUB_SPEED, club.getAsDouble())));
    }

    private List<Implausible> models(Shot shot) {
        Optional<Launch> launch = shot.launch();
        if (launch.isEmpty()) {
            return List.of();
        }
        Flight usual = first.apply(launch.get());
        if (near(shot.figure(ShotFigure.CARRY), usual.carryM()) && near(shot.figure(ShotFigure.APEX), usual.apexM())) {
            return List.of();
        }
        FlightBand.Figures flown = flights.apply(launch.get());
        List<Implausible> found = new ArrayList<>();
        beside(shot, ShotFigure.CARRY, flown.shortestM() * SHORTER, flown.longestM() * LONGER)
                .ifPresent(found::add);
        beside(shot, ShotFigure.APEX, flown.lowestM() * LOWER, flown.highestM() * HIGHER)
                .ifPresent(found::add);
        return found;
    }

    private static boolean near(OptionalDouble measured, double computed) {
        return measured.isEmpty() || Math.abs(measured.getAsDouble() - computed) <= NEAR * computed;
    }

    private static Optional<Implausible> beside(Shot shot, ShotFigure figure, double least, double most) {
        OptionalDouble value = shot.figure(figure);
        if (value.isEmpty() || value.getAsDouble() >= least && value.getAsDouble() <= most) {
            return Optional.empty();
        }
        String sentence = SAID.of(
                "odd.models",
                figure.words(),
                UnitSlip.shown(figure, value.getAsDouble()),
                UnitSlip.shown(figure, least),
                UnitSlip.shown(figure, most));
        return Optional.of(new Implausible(
                figure, Grade.DOUBTFUL, withSlip(sentence, figure, value.getAsDouble(), v -> v > least && v < most)));
    }

    /**
     * What speaks against a figure of all shots together: a carry that is, in the middle shot of at least three, longer
     * than the longest model by what yards read as metres would add.
     */
    public Optional<Implausible> checkTogether(List<Shot> shots) {
        int step = Math.max(1, shots.size() / LOOK_AT);
        double[] shares = java.util.stream.IntStream.range(0, shots.size())
                .filter(i -> i % step == 0)
                .mapToObj(shots::get)
                .filter(s ->
                        s.figure(ShotFigure.CARRY).isPresent() && s.launch().isPresent())
                .mapToDouble(s -> s.figure(ShotFigure.CARRY).getAsDouble()
                        / flights.apply(s.launch().get()).longestM())
                .sorted()
                .toArray();
        if (shares.length < TOGETHER || shares[shares.length / 2] < LONGER_TOGETHER) {
            return Optional.empty();
        }
        return Optional.of(new Implausible(
                ShotFigure.CARRY,
                Grade.DOUBTFUL,
                SAID.of("odd.together", shares.length, Math.round(100 * (shares[shares.length / 2] - 1)))));
    }
}

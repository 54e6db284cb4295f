package org.toeline.flight.table;

import static org.toeline.flight.FigureUnit.TURNS_PER_MINUTE;
import static org.toeline.flight.ShotFigure.APEX;
import static org.toeline.flight.ShotFigure.ATTACK_ANGLE;
import static org.toeline.flight.ShotFigure.BALL_SPEED;
import static org.toeline.flight.ShotFigure.CARRY;
import static org.toeline.flight.ShotFigure.CLUB_PATH;
import static org.toeline.flight.ShotFigure.CLUB_SPEED;
import static org.toeline.flight.ShotFigure.DESCENT_ANGLE;
import static org.toeline.flight.ShotFigure.DYNAMIC_LOFT;
import static org.toeline.flight.ShotFigure.HANG_TIME;
import static org.toeline.flight.ShotFigure.LAUNCH_ANGLE;
import static org.toeline.flight.ShotFigure.LAUNCH_DIRECTION;
import static org.toeline.flight.ShotFigure.SIDE;
import static org.toeline.flight.ShotFigure.SMASH_FACTOR;
import static org.toeline.flight.ShotFigure.SPIN_AXIS;
import static org.toeline.flight.ShotFigure.SPIN_RATE;
import static org.toeline.flight.ShotFigure.TOTAL;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.toeline.flight.Air;
import org.toeline.flight.Flight;
import org.toeline.flight.Launch;
import org.toeline.flight.Shot;
import org.toeline.flight.ShotFigure;
import org.toeline.flight.SmitsSmith;
import org.toeline.flight.Trajectory;

/** Shots drawn around a usual one and flown, with every figure that a table may have. */
final class DrawnShots {

    private DrawnShots() {}

    static List<Shot> of(int count, double speed, double launch, double rpm, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Trajectory trajectory = new Trajectory(Air.USUAL, SmitsSmith.WITHOUT_REYNOLDS_TERM);
        List<Shot> shots = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Launch l = new Launch(
                    speed + 1.3 * random.nextGaussian(),
                    Math.toRadians(launch + random.nextGaussian()),
                    Math.toRadians(1.7 * random.nextGaussian()),
                    TURNS_PER_MINUTE.toInside(rpm + 180 * random.nextGaussian()),
                    Math.toRadians(4 * random.nextGaussian()));
            Flight f = trajectory.fly(l);
            Map<ShotFigure, Double> figures = new EnumMap<>(ShotFigure.class);
            figures.put(BALL_SPEED, l.speedMps());
            figures.put(CLUB_SPEED, l.speedMps() / 1.45);
            figures.put(LAUNCH_ANGLE, l.angleRad());
            figures.put(LAUNCH_DIRECTION, l.directionRad());
            figures.put(SPIN_RATE, l.spinRadPerS());
            figures.put(SPIN_AXIS, l.axisRad());
            figures.put(CARRY, f.carryM());
            figures.put(APEX, f.apexM());
            figures.put(SIDE, f.sideM());
            figures.put(DESCENT_ANGLE, f.descentRad());
            figures.put(HANG_TIME, f.hangTimeS());
            figures.put(TOTAL, f.carryM() + 12 + random.nextGaussian());
            figures.put(SMASH_FACTOR, 1.45);
            figures.put(ATTACK_ANGLE, Math.toRadians(1.5 * random.nextGaussian()));
            figures.put(CLUB_PATH, Math.toRadians(2 * random.nextGaussian()));
            figures.put(ShotFigure.FACE_TO_PATH, Math.toRadians(1.4 * random.nextGaussian()));
            figures.put(DYNAMIC_LOFT, Math.toRadians(launch + 2 + random.nextGaussian()));
            shots.add(new Shot(figures));
        }
        return List.copyOf(shots);
    }
}

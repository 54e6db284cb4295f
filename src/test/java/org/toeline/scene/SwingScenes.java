package org.toeline.scene;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.toeline.mark.View;

/**
 * Films what a player does before, between and instead of swings, small and quickly, with the moments known: the scenes
 * that the sample lessons do not have.
 */
public final class SwingScenes {

    private static final int WIDTH = 320;
    private static final int HEIGHT = 180;
    private static final int RATE = 30;
    private static final double BACK_S = 0.85;
    private static final double DOWN_S = 0.30;
    private static final double HELD_S = 0.8;
    private static final double LOWERED_S = 0.6;
    private static final double SWAY_M = 0.0009;

    /** Something the player does from one moment to another, seconds. */
    private record Act(Kind kind, double fromS, double toS) {

        boolean at(double timeS) {
            return timeS >= fromS && timeS < toS;
        }

        double share(double timeS) {
            return (timeS - fromS) / (toS - fromS);
        }
    }

    private enum Kind {
        WALKS_IN,
        WALKS_OUT,
        WAGGLES,
        STANDS,
        SWINGS
    }

    private static final Map<String, SwingScenes> SCENES = Map.of(
            "two",
                    new SwingScenes()
                            .stands(0.5)
                            .waggles()
                            .stands(1)
                            .swings()
                            .stands(0.7)
                            .waggles()
                            .stands(1.2)
                            .swings()
                            .stands(0.5),
            "walkin",
                    new SwingScenes()
                            .walksIn()
                            .stands(0.6)
                            .waggles()
                            .stands(1.1)
                            .swings()
                            .stands(0.5),
            "noswing",
                    new SwingScenes()
                            .walksIn()
                            .stands(0.6)
                            .waggles()
                            .stands(1.1)
                            .walksOut()
                            .stands(0.4),
            "waggles",
                    new SwingScenes()
                            .stands(0.6)
                            .waggles()
                            .stands(1.1)
                            .waggles()
                            .stands(1),
            "through", new SwingScenes().walksIn().walksOut());
    private static final Map<String, String> PLAYERS = Map.of(
            "two",
            "before",
            "walkin",
            "all-good",
            "noswing",
            "all-good",
            "waggles",
            "left-handed",
            "through",
            "left-handed");

    private final List<Act> acts = new ArrayList<>();
    private double end;

    private SwingScenes add(Kind kind, double lengthS) {
        acts.add(new Act(kind, end, end + lengthS));
        end += lengthS;
        return this;
    }

    private SwingScenes() {}

    /** A scene by the first part of its clip's name. */
    public static SwingScenes named(String name) {
        return SCENES.get(name);
    }

    /** Films all scenes, some minutes. Argument: the folder, which for the tests is the test resources' of this package. */
    public static void main(String[] args) throws IOException {
        for (String name : PLAYERS.keySet()) {
            for (View view : new View[] {View.FACE_ON, View.DOWN_THE_LINE}) {
                named(name).film(Path.of(args[0]).resolve(name + "-" + view.id() + ".mp4"), PLAYERS.get(name), view);
            }
        }
    }

    private SwingScenes walksIn() {
        return add(Kind.WALKS_IN, 1.8);
    }

    private SwingScenes walksOut() {
        return add(Kind.WALKS_OUT, 1.8);
    }

    private SwingScenes waggles() {
        return add(Kind.WAGGLES, 0.9);
    }

    private SwingScenes stands(double lengthS) {
        return add(Kind.STANDS, lengthS);
    }

    /** Back, down, through, held at the end and lowered. */
    private SwingScenes swings() {
        return add(Kind.SWINGS, BACK_S + DOWN_S + HELD_S + LOWERED_S);
    }

    /** From and to, seconds, of the stands that a swing follows at once. */
    public List<double[]> addresses() {
        List<double[]> all = new ArrayList<>();
        for (int i = 1; i < acts.size(); i++) {
            if (acts.get(i).kind == Kind.SWINGS && acts.get(i - 1).kind == Kind.STANDS) {
                all.add(new double[] {acts.get(i - 1).fromS, acts.get(i - 1).toS});
            }
        }
        return all;
    }

    /** Films the scene; the sample lesson's player, bay and camera. */
    private Path film(Path file, String lesson, View view) throws IOException {
        Scenario scenario = Scenarios.named(lesson).orElseThrow();
        Stage stage = new Stage(scenario);
        Filming filming = new Filming(scenario, stage, view, WIDTH, HEIGHT);
        try (ClipWriter writer = new ClipWriter(file, WIDTH, HEIGHT, RATE, 1_500_000)) {
            for (int f = 0; f < end * RATE; f++) {
                double timeS = f / (double) RATE;
                double[][] moves = stage.moves(deviation(timeS));
                for (double[] move : moves) {
                    move[3] += walkedM(timeS);
                }
                writer.add(filming.frame(moves, f));
            }
        }
        return file;
    }

    /** How far from the place to stand, metres along the target line. */
    private double walkedM(double timeS) {
        double away = 0;
        for (Act act : acts) {
            if (act.kind == Kind.WALKS_IN && timeS < act.toS) {
                away = -2.6 * (1 - smooth(act.share(timeS)));
            } else if (act.kind == Kind.WALKS_OUT && timeS >= act.fromS) {
                away = -2.6 * smooth(act.share(timeS));
            }
        }
        return away;
    }

    private Deviation deviation(double timeS) {
        double swayT = SWAY_M * Math.sin(4.1 * timeS);
        double swayH = SWAY_M * Math.sin(5.3 * timeS + 1.1);
        for (Act act : acts) {
            if (act.at(timeS) && act.kind == Kind.WAGGLES) {
                double s = Math.sin(2 * Math.PI * act.share(timeS));
                return new Deviation(swayT, swayH, 0, 0, 0.012, 0.30 * s * s);
            }
            if (act.at(timeS) && act.kind == Kind.SWINGS) {
                double turn = turn(timeS - act.fromS);
                return new Deviation(swayT, swayH, 0, turn, 0.5 * Math.abs(turn), 0.5 * turn);
            }
        }
        return new Deviation(swayT, swayH, 0, 0, 0, 0);
    }

    private static double turn(double sinceS) {
        double back = 1.5 * smooth(sinceS / BACK_S);
        double through = -3.0 * smooth((sinceS - BACK_S) / DOWN_S);
        double lowered = 1.5 * smooth((sinceS - BACK_S - DOWN_S - HELD_S) / LOWERED_S);
        return back + through + lowered;
    }

    private static double smooth(double x) {
        double c = Math.max(0, Math.min(1, x));
        return c * c * c * (c * (6 * c - 15) + 10);
    }
}

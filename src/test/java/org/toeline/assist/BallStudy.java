package org.toeline.assist;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import org.toeline.camera.UsualLens;
import org.toeline.mark.View;
import org.toeline.scene.SceneBalls;
import org.toeline.video.ClipException;

/**
 * The tables of ball fits in {@code docs/marking.md}: drawn, filmed, and those of the sample clips. Arguments: how many drawn
 * balls of each kind, and how many filmed ones altogether.
 */
final class BallStudy {

    private static final double[] DIAMETERS = {10, 14, 20, 30, 44, 60};

    private record Kind(DrawnBall.Cover cover, DrawnBall.Ground ground, double diameter) {

        String row(int n) {
            SplittableRandom random = new SplittableRandom(100 * ground.ordinal() + (long) diameter);
            BallTally tally = new BallTally();
            for (int i = 0; i < n; i++) {
                DrawnBall ball = DrawnBall.random(diameter + random.nextDouble(), ground, cover, random);
                tally.add(ball, BallOutline.fit(ball.frame(), View.TEE, Double.POSITIVE_INFINITY, ball.click(random)));
            }
            return "| " + ground.name().toLowerCase(Locale.ROOT)
                    + (cover == DrawnBall.Cover.HALF ? ", half hidden" : "") + " | " + (int) diameter + " | " + tally;
        }
    }

    private BallStudy() {}

    public static void main(String[] args) throws IOException, ClipException {
        int n = args.length > 0 ? Integer.parseInt(args[0]) : 24;
        System.out.println("| ground | diameter | " + BallTally.HEADER);
        List<Kind> kinds = new ArrayList<>();
        for (DrawnBall.Cover cover : DrawnBall.Cover.values()) {
            for (DrawnBall.Ground ground : DrawnBall.Ground.values()) {
                for (double diameter : DIAMETERS) {
                    kinds.add(new Kind(cover, ground, diameter));
                }
            }
        }
        kinds.parallelStream().map(k -> k.row(n)).toList().forEach(System.out::println);
        System.out.println("| grass, before a white shoe | 60–110 | " + beforeShoes(5 * n));
        filmed(args.length > 1 ? Integer.parseInt(args[1]) : 72);
        sampleClips();
    }

    private static BallTally beforeShoes(int n) {
        SplittableRandom random = new SplittableRandom(41);
        BallTally tally = new BallTally();
        for (int i = 0; i < n; i++) {
            DrawnBall ball = DrawnBall.beforeAShoe(60 + random.nextDouble(50), random);
            tally.add(ball, BallOutline.fit(ball.frame(), View.TEE, Double.POSITIVE_INFINITY, ball.click(random)));
        }
        return tally;
    }

    private static void filmed(int n) throws IOException, ClipException {
        Path folder = Files.createTempDirectory("balls");
        SceneBalls scene = new SceneBalls(folder);
        SplittableRandom random = new SplittableRandom(12);
        List<SceneBalls.Filmed> balls = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            SceneBalls.Filmed ball = scene.film(i, random);
            if (ball.inside()) {
                balls.add(ball);
            }
        }
        Files.delete(folder);
        System.out.println("| view | " + BallTally.HEADER);
        for (View view : View.values()) {
            BallTally tally = new BallTally();
            balls.stream()
                    .filter(b -> b.view() == view)
                    .forEach(b -> tally.add(
                            b.centre(),
                            b.diameterPx(),
                            BallOutline.fit(
                                    b.frame(),
                                    view,
                                    UsualLens.MAIN.focalPx(
                                            b.frame().width(), b.frame().height()),
                                    b.click())));
            System.out.println("| " + view.id() + " | " + tally);
        }
    }

    private static void sampleClips() throws IOException, ClipException {
        System.out.println("| lesson | view | diameter | across | down | diameter | stated |");
        for (String lesson : SampleBalls.LESSONS) {
            for (View view : View.values()) {
                SampleBalls on = SampleBalls.of(lesson, view);
                String errors = on.fit(on.click())
                        .map(m -> String.format(
                                Locale.ROOT,
                                "%+.2f | %+.2f | %+.2f | %.2f, %.2f",
                                m.centre().xPx() - on.centre().xPx(),
                                m.centre().yPx() - on.centre().yPx(),
                                m.diameterPx().orElseThrow() - on.diameterPx(),
                                m.sigmaPx(),
                                m.diameterSigmaPx()))
                        .orElse("refused | | |");
                System.out.printf(Locale.ROOT, "| %s | %s | %.1f | %s |%n", lesson, view.id(), on.diameterPx(), errors);
            }
        }
    }
}

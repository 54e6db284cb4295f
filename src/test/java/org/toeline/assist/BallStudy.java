package org.toeline.assist;

import java.util.SplittableRandom;

/** The table of ball fits in {@code docs/marking.md}. An argument says how many balls of each kind. */
final class BallStudy {

    private static final double[] DIAMETERS = {10, 14, 20, 30, 44, 60};

    private BallStudy() {
    }

    public static void main(String[] args) {
        int n = args.length > 0 ? Integer.parseInt(args[0]) : 40;
        System.out.println("| ground | diameter | fitted | refused | centre bias | centre rms | diameter bias | diameter rms "
                + "| centre in 95 % | diameter in 95 % |");
        for (DrawnBall.Cover cover : DrawnBall.Cover.values()) {
            for (DrawnBall.Ground ground : DrawnBall.Ground.values()) {
                for (double diameter : DIAMETERS) {
                    SplittableRandom random = new SplittableRandom(100 * ground.ordinal() + (long) diameter);
                    BallTally tally = new BallTally();
                    for (int i = 0; i < n; i++) {
                        DrawnBall ball = DrawnBall.random(diameter + random.nextDouble(), ground, cover, random);
                        tally.add(ball, BallOutline.fit(ball.frame(), Double.POSITIVE_INFINITY, ball.click(random)));
                    }
                    System.out.println("| " + ground.name().toLowerCase(java.util.Locale.ROOT)
                            + (cover == DrawnBall.Cover.HALF ? ", half hidden" : "") + " | " + (int) diameter + " | " + tally);
                }
            }
        }
    }
}

package org.toeline.scene;

/** What the player does in a clip: settles, waggles, holds still, takes the club away. Times in seconds. */
public final class Motion {

    public static final int FRAMES_PER_SECOND = 60;
    public static final int FRAMES = 228;
    public static final int TEE_FRAMES = 60;

    public static final double WAGGLE_FROM_S = 0.55;
    public static final double WAGGLE_TO_S = 1.40;
    public static final double STILL_FROM_S = 1.70;
    public static final double STILL_TO_S = 2.80;
    public static final double TAKEAWAY_S = 2.80;

    private static final double SETTLED_S = 1.65;
    private static final double SWAY_M = 0.0009;

    private Motion() {}

    /** The middle of the still span. */
    public static double addressS() {
        return 2.25;
    }

    static Deviation at(double timeS) {
        double unsettled = 1 - smooth(timeS / SETTLED_S);
        double held = SWAY_M * Math.min(1, 0.4 + timeS / 4);
        double swayT = 0.022 * unsettled * Math.sin(5.2 * timeS + 0.6) + held * Math.sin(4.1 * timeS);
        double swayH = 0.012 * unsettled * Math.cos(4.4 * timeS) + held * Math.sin(5.3 * timeS + 1.1);
        double lift = 0.050 * (1 - smooth(timeS / 0.5)) + 0.012 * hump(timeS, 0.35, SETTLED_S);
        double away = Math.max(0, timeS - TAKEAWAY_S);
        double turn = 1.45 * away * away / (0.45 + away);
        return new Deviation(swayT, swayH, 0.012 * unsettled, turn, lift, waggle(timeS) + 0.55 * turn * away);
    }

    /** Twice back and to the ball. */
    private static double waggle(double timeS) {
        double share = (timeS - WAGGLE_FROM_S) / (WAGGLE_TO_S - WAGGLE_FROM_S);
        if (share <= 0 || share >= 1) {
            return 0;
        }
        double s = Math.sin(2 * Math.PI * share);
        return 0.30 * s * s;
    }

    private static double hump(double timeS, double fromS, double toS) {
        return smooth((timeS - fromS) / 0.2) * (1 - smooth((timeS - toS + 0.25) / 0.25));
    }

    private static double smooth(double x) {
        double c = Math.max(0, Math.min(1, x));
        return c * c * c * (c * (6 * c - 15) + 10);
    }
}

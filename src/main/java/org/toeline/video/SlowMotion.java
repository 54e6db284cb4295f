package org.toeline.video;

import java.util.Map;
import java.util.OptionalDouble;

/**
 * How the clip's time relates to real time. A clip captured at 240 frames a second and made to play at 30 shows eight
 * seconds for every real one; captured and played at 240, its time is real.
 *
 * @param captureRate frames a second at which the pictures were taken, where that is known
 * @param factor      seconds of the clip to a real second: 1 in real time, more in slow motion
 */
public record SlowMotion(OptionalDouble captureRate, double factor) {

    public static final SlowMotion NONE = new SlowMotion(OptionalDouble.empty(), 1);
    private static final double LEAST_RATE = 1;
    private static final double MOST_RATE = 100_000;
    /** Rates that near each other are the same: those of files are rounded. */
    private static final double SAME = 1.2;

    public SlowMotion {
        if (captureRate.isPresent() && !possible(captureRate.getAsDouble())) {
            throw new IllegalArgumentException("captured at " + captureRate.getAsDouble() + " frames a second; "
                    + LEAST_RATE + " to " + MOST_RATE + " is possible");
        }
        if (!(factor >= 1 && factor <= MOST_RATE)) {
            throw new IllegalArgumentException("slowed down " + factor + " times; 1 to " + MOST_RATE + " is possible");
        }
    }

    /** Whether a clip can have been captured at so many frames a second. */
    public static boolean possible(double rate) {
        return rate >= LEAST_RATE && rate <= MOST_RATE;
    }

    /** A clip that shows so many frames a second and was captured at so many. */
    static SlowMotion of(double captureRate, double shownRate) {
        double factor = shownRate > 0 ? captureRate / shownRate : 1;
        return new SlowMotion(OptionalDouble.of(captureRate), factor < SAME ? 1 : factor);
    }

    /**
     * The rate of capture among a file's notes: {@code com.android.capture.fps}, and whatever else a maker calls so in the
     * key list of a QuickTime or MP4 file ({@code …capture.fps}, {@code …CaptureFrameRate}).
     */
    static OptionalDouble captureRate(Map<String, String> notes) {
        return notes.entrySet().stream()
                .filter(e -> {
                    String key = e.getKey().toLowerCase(java.util.Locale.ROOT).replaceAll("[^a-z]", "");
                    return key.endsWith("capturefps") || key.endsWith("captureframerate");
                })
                .mapToDouble(e -> number(e.getValue()))
                .filter(SlowMotion::possible)
                .findFirst();
    }

    private static double number(String text) {
        try {
            return Double.parseDouble(text.trim());
        } catch (NumberFormatException e) {
            return 0;
        }
    }

    /** How long so many seconds of the clip really took. */
    public double realSeconds(double clipSeconds) {
        return clipSeconds / factor;
    }
}

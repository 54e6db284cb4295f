package org.toeline.video;

/**
 * How loud a clip is over time.
 *
 * @param startSeconds presentation time of the first step
 * @param loudness     energy of the sound's changes in each thousandth of a second, 0 and more; low rumble counts little
 */
public record Sound(double startSeconds, float[] loudness) {

    /** Length of a step. */
    public static final double STEP_S = 0.001;

    public Sound {
        loudness = loudness.clone();
    }

    @Override
    public float[] loudness() {
        return loudness.clone();
    }

    /** The step of a time; may lie outside. */
    public int step(double seconds) {
        return (int) Math.floor((seconds - startSeconds) / STEP_S);
    }
}

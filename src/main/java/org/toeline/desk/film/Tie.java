package org.toeline.desk.film;

/**
 * One moment in two views.
 *
 * @param faceOnS       its time in the face-on clip
 * @param downTheLineS  its time in the other
 * @param sigmaS        how well that is known, real seconds, one standard deviation
 * @param by            what it follows from
 */
public record Tie(double faceOnS, double downTheLineS, double sigmaS, By by) {

    /** What ties two views. */
    public enum By {
        /** The strike, heard in both. */
        SOUND,
        /** How much moves in both. */
        MOTION,
        /** Two frames that the coach says are one moment. */
        HAND
    }
}

package org.toeline.flight;

/**
 * A figure that no flight, or hardly a flight, could give.
 *
 * @param figure  the figure that is doubted
 * @param grade   how sure that is
 * @param reason  a sentence without a full stop: what speaks against the figure, and the likely reason if there is one
 */
public record Implausible(ShotFigure figure, Grade grade, String reason) {

    /** How sure it is. */
    public enum Grade {
        /** Against a law of mechanics, or beyond anything a golf ball does. */
        IMPOSSIBLE,
        /** Possible, but far from what every model of flight gives. */
        DOUBTFUL
    }
}

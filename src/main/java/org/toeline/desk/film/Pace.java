package org.toeline.desk.film;

/** How fast a film plays and which way. */
public record Pace(int slowed, Direction direction) {

    /** As fast as it was, and half, a quarter, an eighth of it. */
    static final int MOST_SLOWED = 8;

    /** Which way time goes. */
    public enum Direction {
        FORWARDS(1),
        BACKWARDS(-1);

        private final int sign;

        Direction(int sign) {
            this.sign = sign;
        }
    }

    public static final Pace REAL = new Pace(1, Direction.FORWARDS);

    /** @param slowed 1, 2, 4 or 8 times */
    public Pace {
        if (slowed < 1 || slowed > MOST_SLOWED || Integer.bitCount(slowed) != 1) {
            throw new IllegalArgumentException("slowed: " + slowed);
        }
    }

    public Pace slower() {
        return new Pace(Math.min(MOST_SLOWED, 2 * slowed), direction);
    }

    public Pace faster() {
        return new Pace(Math.max(1, slowed / 2), direction);
    }

    public Pace turned() {
        return new Pace(slowed, direction == Direction.FORWARDS ? Direction.BACKWARDS : Direction.FORWARDS);
    }

    /** Real seconds of the film in so many seconds at the screen; negative backwards. */
    double filmSeconds(double screenSeconds) {
        return direction.sign * screenSeconds / slowed;
    }
}

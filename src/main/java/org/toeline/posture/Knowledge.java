package org.toeline.posture;

/** One piece of knowledge, as rows of (predicted − known) / standard deviation. */
interface Knowledge {

    Source source();

    void rows(State state, RowSink sink);

    /** Takes the weight that depends on the state (a landmark's spread in pixels) from this one. */
    default void weigh(State state, double softPx) {}
}

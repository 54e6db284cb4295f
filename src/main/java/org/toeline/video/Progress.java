package org.toeline.video;

/** Told how far a long piece of work has come; may ask it to stop. */
public interface Progress {

    /** Nobody listens. */
    Progress NONE = share -> Step.GO_ON;

    /** What the work should do next. */
    enum Step {
        GO_ON,
        STOP
    }

    /** @param share of the work done, 0 to 1 */
    Step at(double share);
}

package org.toeline.desk.sheet;

import java.util.Optional;
import java.util.OptionalDouble;
import org.toeline.video.Frame;
import org.toeline.video.FrameFetcher;

/** The clip of a view, where in it the view stands, its marked frame, and the pictures of both. Owned by the interface thread. */
final class OpenClip {

    final FrameFetcher fetcher;
    /** Where the lesson says the clip is. */
    final String named;
    /** Place of the frame that is or will be shown. */
    int at;
    /** That frame, once it is shown. */
    Optional<Frame> shown = Optional.empty();
    /** Time of the marked frame; empty for the first. */
    OptionalDouble markedAt = OptionalDouble.empty();
    /** The marked frame, once it was decoded. */
    Optional<Frame> marked = Optional.empty();

    OpenClip(FrameFetcher fetcher, String named) {
        this.fetcher = fetcher;
        this.named = named;
    }

    /** The frame shown at a time; the first where none is given. */
    int place(OptionalDouble seconds) {
        return seconds.isPresent() ? fetcher.clip().indexAt(seconds.getAsDouble()) : 0;
    }
}

package org.toeline.desk.film;

import java.util.List;
import java.util.Optional;
import org.toeline.mark.View;

/**
 * Films that are looked through together: each with the moment of its clip that is the same moment in all. Real seconds are
 * counted from that moment.
 */
record InStep(List<Part> parts) {

    /**
     * One of them.
     *
     * @param tiedS the moment they share, in the clip's own time
     */
    record Part(Reel reel, double tiedS) {

        double realS(int frame) {
            return realOf(reel.clip().seconds(frame));
        }

        int frame(double realS) {
            return reel.clip().indexAt(clipOf(realS));
        }

        double clipOf(double realS) {
            return tiedS + realS * reel.motion().factor();
        }

        double realOf(double clipS) {
            return reel.motion().realSeconds(clipS - tiedS);
        }

        /** Up to where there are pictures; as far as one likes, once no more will come. */
        double readyS() {
            int ready = reel.film().ready();
            return reel.film().ended() ? Double.POSITIVE_INFINITY : realS(Math.max(0, ready - 1));
        }

        int last() {
            int frames = reel.clip().frameCount();
            return (reel.film().ended()
                            ? Math.max(1, Math.min(frames, reel.film().ready()))
                            : frames)
                    - 1;
        }
    }

    InStep {
        parts = List.copyOf(parts);
        if (parts.isEmpty()) {
            throw new IllegalArgumentException("films: 0");
        }
    }

    Optional<Part> part(View view) {
        return parts.stream().filter(p -> p.reel().view() == view).findFirst();
    }

    /** The one the hand is on says where they are. */
    double atS() {
        Part first = parts.get(0);
        return first.realS(first.reel().at());
    }

    Span whole() {
        double from = parts.stream().mapToDouble(p -> p.realS(0)).min().orElseThrow();
        double to = parts.stream().mapToDouble(p -> p.realS(p.last())).max().orElseThrow();
        return new Span(from, Math.max(from, to));
    }

    double readyS() {
        return parts.stream().mapToDouble(Part::readyS).min().orElseThrow();
    }

    /** Shows all of them at a moment; those that show it already are left alone. */
    void look(double realS) {
        for (Part part : parts) {
            int frame = Math.min(part.last(), part.frame(realS));
            if (frame != part.reel().at()) {
                part.reel().look(frame);
            }
        }
    }

    /** The exact frames of where they are. */
    void rest() {
        parts.forEach(p -> p.reel().go(p.reel().at()));
    }

    /** The first to a frame, exactly, and the others to the same moment. */
    void go(int frame) {
        Part first = parts.get(0);
        int to = Math.max(0, Math.min(first.reel().clip().frameCount() - 1, frame));
        parts.forEach(p -> p.reel().go(p == first ? to : p.frame(first.realS(to))));
    }
}

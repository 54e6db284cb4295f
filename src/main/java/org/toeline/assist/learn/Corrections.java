package org.toeline.assist.learn;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.toeline.assist.LandmarkSuggester;
import org.toeline.assist.learn.Correction.Kind;
import org.toeline.mark.Landmark;
import org.toeline.mark.View;

/**
 * The corrections of one landmark in one view, of each kind the oldest first; of many only the last are kept, since habits change.
 *
 * @param misses how often the suggestion was so far off that it was none of this landmark, such as on the other leg: more than
 *               {@value #MISS} stated spreads; 0 or more
 */
public record Corrections(View view, Landmark landmark, List<Correction> kept, int misses) {

    /** So many of each kind are kept. */
    static final int MOST = 100;
    /** In both directions together; one in ninety is as far off by chance. */
    static final double MISS = 3;

    public Corrections {
        if (LandmarkSuggester.spread(landmark, view).isEmpty()) {
            throw new IllegalArgumentException(landmark.id() + " is not suggested in the view " + view.id());
        }
        if (misses < 0) {
            throw new IllegalArgumentException("misses are counted from nought: " + misses);
        }
        kept = List.copyOf(kept);
    }

    static Corrections none(View view, Landmark landmark) {
        return new Corrections(view, landmark, List.of(), 0);
    }

    /** How many were moved, or agreed with. */
    public int count(Kind kind) {
        return (int) kept.stream().filter(c -> c.kind() == kind).count();
    }

    /** Standard deviation in each direction that the suggestion has by itself, share of the span. */
    public double stated() {
        return LandmarkSuggester.spread(landmark, view).orElseThrow();
    }

    /** What follows for later suggestions; empty while there are too few. */
    public Optional<Learnt> learnt() {
        return Learnt.of(kept, stated());
    }

    Corrections with(Correction one) {
        List<Correction> all = new ArrayList<>(kept);
        if (count(one.kind()) >= MOST) {
            all.stream().filter(c -> c.kind() == one.kind()).findFirst().ifPresent(all::remove);
        }
        all.add(one);
        return new Corrections(view, landmark, all, misses);
    }

    Corrections withMiss() {
        return new Corrections(view, landmark, kept, misses + 1);
    }
}

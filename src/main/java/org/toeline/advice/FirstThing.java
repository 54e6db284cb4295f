package org.toeline.advice;

import java.util.List;
import org.toeline.reading.ReadingKind;

/**
 * The one thing to change first.
 *
 * @param mayFollow readings that are out of range too and lie downstream of it: they may follow from it
 */
public record FirstThing(Finding finding, List<ReadingKind> mayFollow) {

    public FirstThing {
        mayFollow = List.copyOf(mayFollow);
    }
}

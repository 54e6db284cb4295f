package org.toeline.desk.lesson;

import java.util.OptionalDouble;
import org.toeline.mark.View;

/**
 * What is looked at of the views' clips. The lesson asks before it takes a mark: looking through a clip changes nothing of what
 * is marked, and no mark lands on another frame than the marked one.
 */
public interface Film {

    /** No view has a clip. */
    Film NONE = new Film() {
        @Override
        public boolean has(View view) {
            return false;
        }

        @Override
        public OptionalDouble shown(View view) {
            return OptionalDouble.empty();
        }

        @Override
        public boolean shows(View view, OptionalDouble seconds) {
            return false;
        }
    };

    /** Whether a view has a clip that can be looked through. */
    boolean has(View view);

    /** Presentation time of the frame that is shown, exactly that one; empty while its picture is on its way. */
    OptionalDouble shown(View view);

    /** Whether the frame shown is the one at a time, or the first where no time is given. */
    boolean shows(View view, OptionalDouble seconds);
}

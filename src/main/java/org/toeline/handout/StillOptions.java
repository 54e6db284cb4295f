package org.toeline.handout;

import java.util.Optional;
import org.toeline.language.Sentences;
import org.toeline.mark.View;

/**
 * What goes on the still besides the one thing to change.
 *
 * @param lines  which lines are drawn
 * @param signed whose it is, below the picture and in file names
 * @param view   which view is shown; empty for the one that shows the first thing best
 * @param face   whether the face is covered
 * @param contact the coach's name and how to reach them, below the page; may be empty
 */
public record StillOptions(Lines lines, Signed signed, Optional<View> view, FaceCover face, String contact) {

    /** Longest contact, characters. */
    public static final int LONGEST_CONTACT = 160;

    public StillOptions {
        if (contact.length() > LONGEST_CONTACT) {
            throw new IllegalArgumentException(
                    Sentences.of(StillOptions.class).of("contact.long", contact.length(), LONGEST_CONTACT));
        }
    }

    /** Without the coach's name. */
    public StillOptions(Lines lines, Signed signed, Optional<View> view, FaceCover face) {
        this(lines, signed, view, face, "");
    }

    /** Only those that matter for the one thing to change first, or the whole set. */
    public enum Lines {
        THAT_MATTER,
        ALL
    }

    /** The lines that matter, initials and date, the view that shows it best, the face as it is. */
    public static final StillOptions USUAL =
            new StillOptions(Lines.THAT_MATTER, Signed.INITIALS_AND_DATE, Optional.empty(), FaceCover.none());

    public StillOptions withLines(Lines changed) {
        return new StillOptions(changed, signed, view, face, contact);
    }

    public StillOptions withSigned(Signed changed) {
        return new StillOptions(lines, changed, view, face, contact);
    }

    public StillOptions withView(View changed) {
        return new StillOptions(lines, signed, Optional.of(changed), face, contact);
    }

    public StillOptions withFace(FaceCover changed) {
        return new StillOptions(lines, signed, view, changed, contact);
    }

    public StillOptions withContact(String changed) {
        return new StillOptions(lines, signed, view, face, changed);
    }
}

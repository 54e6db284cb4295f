package org.toeline.desk.film;

import org.toeline.mark.View;
import org.toeline.video.Clip;
import org.toeline.video.QuickFilm;
import org.toeline.video.SlowMotion;

/** The film of one view, as it is looked through. */
public interface Reel {

    View view();

    Clip clip();

    QuickFilm film();

    /** How its time relates to real time. */
    SlowMotion motion();

    /** Place of the frame that is shown. */
    int at();

    /** Shows a frame's small picture at once, if it is ready. */
    void look(int frame);

    /** To a frame, exactly. */
    void go(int frame);
}

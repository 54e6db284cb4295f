package org.toeline.study;

import org.toeline.mark.Takes;

/** A kind of scene: what the coach filmed and marked. */
enum SceneKind {
    BOTH_AND_RODS("both views, rods", true, true, true, Takes.SIMULTANEOUS, 0),
    BOTH("both views, no rods", true, true, false, Takes.SIMULTANEOUS, 0),
    SEPARATE_TAKES("separate takes, rods", true, true, true, Takes.SEPARATE, 0),
    FACE_ON_AND_RODS("face-on, rods", true, false, true, Takes.SIMULTANEOUS, 0),
    FACE_ON("face-on alone", true, false, false, Takes.SIMULTANEOUS, 0),
    DOWN_THE_LINE("down the line alone", false, true, false, Takes.SIMULTANEOUS, 0),
    WRONG_MARK("both views, rods, one mark 35 to 70 px off", true, true, true, Takes.SIMULTANEOUS, 1),
    LAID_AGAIN("separate takes, rods laid again between them", true, true, true, Takes.SEPARATE, 0),
    HEIGHT_TOLD("face-on alone, the player's height told", true, false, false, Takes.SIMULTANEOUS, 0);

    final String words;
    final boolean faceOn;
    final boolean downTheLine;
    final boolean rods;
    final Takes takes;
    final int wrongMarks;

    SceneKind(String words, boolean faceOn, boolean downTheLine, boolean rods, Takes takes, int wrongMarks) {
        this.words = words;
        this.faceOn = faceOn;
        this.downTheLine = downTheLine;
        this.rods = rods;
        this.takes = takes;
        this.wrongMarks = wrongMarks;
    }
}

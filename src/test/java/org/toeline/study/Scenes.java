package org.toeline.study;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.toeline.mark.LensNote;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.ViewMarks;

/** Scenes for the tests of other packages. */
public final class Scenes {

    private Scenes() {}

    /** The marks of a scene with both views and rods, taken at one moment. */
    public static MarkSheet bothViews(long seed) {
        return new RandomScene(seed, SceneKind.BOTH_AND_RODS).sheet;
    }

    /** The marks of a scene of one of the kinds, in turn: with and without rods, one view or both, one take or two. */
    public static MarkSheet any(int kind, long seed) {
        return new RandomScene(seed, SceneKind.values()[kind % SceneKind.values().length]).sheet;
    }

    /** Two takes, and lenses with stated distortion; the marks need not fit it. */
    public static MarkSheet separateTakesWithBentLens(long seed) {
        MarkSheet sheet = new RandomScene(seed, SceneKind.SEPARATE_TAKES).sheet;
        LensNote bent = new LensNote(
                OptionalDouble.of(1500),
                OptionalDouble.of(40),
                OptionalDouble.of(950),
                OptionalDouble.of(545),
                OptionalDouble.of(-0.12),
                OptionalDouble.of(0.03));
        List<ViewMarks> views = new ArrayList<>(sheet.views());
        for (ViewMarks v : views) {
            sheet = sheet.withView(v.withLens(bent));
        }
        return sheet;
    }
}

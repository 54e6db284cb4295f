package org.toeline.posture;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.toeline.mark.FloorMark;
import org.toeline.mark.Landmark;
import org.toeline.mark.Laying;
import org.toeline.mark.Mark;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.Takes;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;

/**
 * Where each unknown stands in the vector that is fitted. For each view seven (natural logarithm of the focal length in
 * pixels; position t, h, u; heading, pitch, roll), for each marked landmark t, h, u, for the ball t and h of its centre,
 * the height of its underside and its diameter, for each marked floor point t and h, between two takes the player's shift
 * t, h, u, where the layout was laid again its move t, h and turn, and the player's size (natural logarithm of stature over {@link Population#USUAL_STATURE_M}). Metres and
 * radians.
 */
final class Unknowns {

    /** Offsets within a view's seven. */
    static final int LOG_FOCAL = 0;

    static final int POSITION = 1;
    static final int HEADING = 4;
    static final int PITCH = 5;
    static final int ROLL = 6;
    private static final int PER_VIEW = 7;

    /** Offsets within the ball's four. */
    static final int BALL_UNDERSIDE = 2;

    static final int BALL_DIAMETER = 3;

    private final Map<View, Integer> views = new EnumMap<>(View.class);
    private final Map<Landmark, Integer> landmarks = new EnumMap<>(Landmark.class);
    private final Map<String, Integer> floor = new HashMap<>();
    private final int ball;
    private final int shift;
    private final int laidAgain;
    private final int playerSize;
    private final int size;

    /** @param used the views that carry at least one mark */
    Unknowns(MarkSheet sheet, List<ViewMarks> used) {
        int next = 0;
        for (ViewMarks v : used) {
            views.put(v.view(), next);
            next += PER_VIEW;
        }
        for (ViewMarks v : used) {
            for (Mark mark : v.marks()) {
                if (landmarks.putIfAbsent(mark.landmark(), -1) == null) {
                    landmarks.put(mark.landmark(), next);
                    next += 3;
                }
            }
        }
        ball = next;
        next += 4;
        for (ViewMarks v : used) {
            for (FloorMark mark : v.floorMarks()) {
                if (!floor.containsKey(mark.pointId())) {
                    floor.put(mark.pointId(), next);
                    next += 2;
                }
            }
        }
        boolean moved = sheet.takes() == Takes.SEPARATE
                && views.containsKey(View.FACE_ON)
                && views.containsKey(View.DOWN_THE_LINE);
        shift = moved ? next : -1;
        next += moved ? 3 : 0;
        boolean again = sheet.floor().laying() == Laying.AGAIN
                && used.stream().filter(v -> !v.floorMarks().isEmpty()).anyMatch(v -> v.view() == View.DOWN_THE_LINE);
        laidAgain = again ? next : -1;
        next += again ? 3 : 0;
        playerSize = next;
        size = next + 1;
    }

    int size() {
        return size;
    }

    int view(View view) {
        return Objects.requireNonNull(views.get(view));
    }

    boolean has(Landmark landmark) {
        return landmarks.containsKey(landmark);
    }

    int landmark(Landmark landmark) {
        return Objects.requireNonNull(landmarks.get(landmark));
    }

    List<Landmark> landmarks() {
        return new ArrayList<>(landmarks.keySet());
    }

    int ball() {
        return ball;
    }

    boolean hasFloor() {
        return !floor.isEmpty();
    }

    Map<String, Integer> floor() {
        return floor;
    }

    boolean hasShift() {
        return shift >= 0;
    }

    int shift() {
        return shift;
    }

    /** Whether down the line sees the layout where it was laid the second time. */
    boolean hasLaidAgain() {
        return laidAgain >= 0;
    }

    int laidAgain() {
        return laidAgain;
    }

    int playerSize() {
        return playerSize;
    }
}

package org.toeline.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.toeline.mark.View;

/** Where a camera stands and where it should, in words a coach can act on. */
public final class CameraWords {

    /** Less than this to the side is opposite, metres. */
    private static final double OPPOSITE_M = 0.075;
    /** Less than this is level, radians. */
    private static final double LEVEL = Math.toRadians(1);

    private static final double STEP_M = 0.05;

    private final Words words;

    public CameraWords(Words words) {
        this.words = words;
    }

    /** Such as “The face-on camera stands about 3.4 m from the ball, 1.1 m high, 40 cm to the target side; it leans 2°.” */
    public String stand(CameraStand stand) {
        String lean = Math.abs(stand.leanRad()) < LEVEL
                ? words.text("camera.level")
                : words.text("camera.leans", Long.toString(Math.round(Math.abs(Math.toDegrees(stand.leanRad())))));
        return words.text(
                "camera.stands",
                words.name(stand.view()),
                words.far(stand.distanceM()),
                words.far(stand.heightM()),
                beside(stand),
                lean);
    }

    private String beside(CameraStand stand) {
        double at = stand.besideM();
        String way = stand.view() == View.DOWN_THE_LINE ? "line" : "ball";
        if (Math.abs(at) < OPPOSITE_M) {
            return words.text("camera.beside." + way);
        }
        return words.text("camera.beside." + way + (at > 0 ? ".plus" : ".minus"), words.far(round(Math.abs(at))));
    }

    /** What to do, and what it would gain; that it may stay when no move is worth it. */
    public String move(View view, Optional<CameraMove> best) {
        if (best.isEmpty()) {
            return words.text("camera.stay");
        }
        CameraMove move = best.get();
        List<String> ways = new ArrayList<>();
        if (Math.abs(move.nearerM()) >= STEP_M) {
            ways.add(words.text(
                    move.nearerM() > 0 ? "camera.nearer" : "camera.farther",
                    words.far(round(Math.abs(move.nearerM())))));
        }
        if (Math.abs(move.besideM()) >= OPPOSITE_M) {
            String way = view == View.DOWN_THE_LINE ? "line" : "ball";
            ways.add(words.text(
                    "camera.move." + way + (move.besideM() > 0 ? ".plus" : ".minus"),
                    words.far(round(Math.abs(move.besideM())))));
        }
        String then = words.half(move.kind(), move.halfWidthThen());
        String now = words.half(move.kind(), move.halfWidthNow());
        if (ways.isEmpty() || then.equals(now)) {
            return words.text("camera.stay");
        }
        return words.text("camera.move", words.list(ways), words.name(move.kind()), then, now);
    }

    private static double round(double lengthM) {
        return Math.round(lengthM / STEP_M) * STEP_M;
    }
}

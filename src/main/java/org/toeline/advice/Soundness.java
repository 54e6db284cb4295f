package org.toeline.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.toeline.advice.Contradiction.Clash;
import org.toeline.camera.Camera;
import org.toeline.geometry.GolfBall;
import org.toeline.geometry.WorldPoint;
import org.toeline.mark.Landmark;
import org.toeline.mark.Mark;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;
import org.toeline.posture.Doubt;
import org.toeline.posture.Posture;

/**
 * How far a sheet's marks can all be right: how well they fit together, and whether the world they make is one.
 *
 * @param misfit what the fit leaves over, in squared standard deviations, with what its doubted marks are taken to leave
 * @param perDegree the same per degree of freedom
 * @param broken what cannot be, gravest first
 */
record Soundness(double misfit, double perDegree, int doubts, List<Broken> broken) {

    /** What cannot be, and the view it is seen in. */
    record Broken(Clash clash, Optional<View> view) {}

    /**
     * What a mark that was put aside counts for, squared standard deviations: a rare slip of the hand, anywhere within some
     * tens of pixels, against a click within two.
     */
    private static final double A_DOUBT = 25;
    /** The tallest tee (Equipment Rules, Part 6): 4 in. */
    private static final double TALLEST_TEE_M = 0.1016;
    /** How far below the ground the underside of a ball may come out, metres: two standard deviations of a good sheet. */
    private static final double BELOW_M = 0.012;

    private static final double SHORTEST_M = 0.85;
    private static final double TALLEST_M = 2.35;
    /** Marks nearer to each other than this lie in one place, pixels. */
    private static final double ONE_PLACE_PX = 0.75;
    /** Two views in which each landmark lies nearer to itself than this, as a share of the picture's width, are one picture. */
    private static final double ONE_PICTURE = 0.015;
    /** So many landmarks must be marked in both to tell. */
    private static final int TO_TELL = 4;
    /** So many pairs of landmarks in one place happen by chance. */
    private static final int BY_CHANCE = 2;

    static Soundness of(MarkSheet sheet, Posture posture) {
        List<Broken> broken = new ArrayList<>();
        cameras(posture, broken);
        player(posture, broken);
        ball(posture, broken);
        size(posture, broken);
        sheet.views().forEach(v -> places(v, broken));
        samePicture(sheet, broken);
        int doubts = (int) posture.doubts().stream().filter(Doubt::moves).count();
        double misfit = posture.likeliestFit().chiSquare() + A_DOUBT * doubts;
        return new Soundness(
                misfit, misfit / Math.max(1, posture.likeliestFit().degreesOfFreedom()), doubts, List.copyOf(broken));
    }

    private static void cameras(Posture posture, List<Broken> broken) {
        for (View view : View.values()) {
            Optional<Camera> camera = posture.camera(view);
            if (camera.isEmpty()) {
                continue;
            }
            WorldPoint at = camera.get().pose().position();
            if (at.u() < 0) {
                broken.add(new Broken(Clash.CAMERA_UNDERGROUND, Optional.of(view)));
            } else if (view == View.FACE_ON && at.h() > 0 || view == View.DOWN_THE_LINE && at.t() > 0) {
                broken.add(new Broken(Clash.CAMERA_OTHER_SIDE, Optional.of(view)));
            }
        }
    }

    private static void player(Posture posture, List<Broken> broken) {
        Body body = new Body(posture);
        if (body.sum(Landmark.LEAD_HEEL, Landmark.LEAD_TOE, 1) + body.sum(Landmark.TRAIL_HEEL, Landmark.TRAIL_TOE, 1)
                > 0) {
            broken.add(new Broken(Clash.PLAYER_FACES_AWAY, Optional.empty()));
        }
        for (Landmark heel : List.of(Landmark.LEAD_HEEL, Landmark.TRAIL_HEEL)) {
            if (posture.has(heel) && posture.at(heel).h() < 0) {
                broken.add(new Broken(Clash.BALL_BEHIND_HEELS, Optional.empty()));
                break;
            }
        }
        if (body.sum(Landmark.LEAD_HEEL, Landmark.TRAIL_HEEL, 0) > 0
                || body.sum(Landmark.LEAD_SHOULDER, Landmark.TRAIL_SHOULDER, 0) > 0
                || body.sum(Landmark.LEAD_HIP, Landmark.TRAIL_HIP, 0) > 0) {
            broken.add(new Broken(Clash.LEAD_AND_TRAIL, Optional.empty()));
        }
        if (body.sum(Landmark.LEAD_SHOULDER, Landmark.LEAD_HIP, 2) > 0
                || body.sum(Landmark.TRAIL_SHOULDER, Landmark.TRAIL_HIP, 2) > 0
                || body.sum(Landmark.LEAD_HIP, Landmark.LEAD_KNEE, 2) > 0
                || body.sum(Landmark.TRAIL_HIP, Landmark.TRAIL_KNEE, 2) > 0) {
            broken.add(new Broken(Clash.UPSIDE_DOWN, Optional.empty()));
        }
    }

    private record Body(Posture posture) {

        /** How much farther along an axis the second lies than the first; 0 unless both are known. */
        double sum(Landmark from, Landmark to, int axis) {
            if (!posture.has(from) || !posture.has(to)) {
                return 0;
            }
            WorldPoint a = posture.at(from);
            WorldPoint b = posture.at(to);
            return axis == 0 ? b.t() - a.t() : axis == 1 ? b.h() - a.h() : b.u() - a.u();
        }
    }

    private static void ball(Posture posture, List<Broken> broken) {
        if (!posture.hasBall()) {
            return;
        }
        double underside = posture.ball().u() - GolfBall.USUAL_DIAMETER_M / 2;
        if (underside < -BELOW_M) {
            broken.add(new Broken(Clash.TEE_UNDERGROUND, Optional.empty()));
        } else if (underside > TALLEST_TEE_M + BELOW_M) {
            broken.add(new Broken(Clash.TEE_TOO_TALL, Optional.empty()));
        }
    }

    private static void size(Posture posture, List<Broken> broken) {
        double statureM = posture.stature().heightM();
        if (statureM < SHORTEST_M || statureM > TALLEST_M) {
            broken.add(new Broken(Clash.PLAYER_SIZE, Optional.empty()));
        }
    }

    private static void places(ViewMarks view, List<Broken> broken) {
        int pairs = 0;
        List<Mark> marks = view.marks();
        for (int i = 0; i < marks.size(); i++) {
            for (Mark other : marks.subList(0, i)) {
                pairs += marks.get(i).at().distancePx(other.at()) < ONE_PLACE_PX ? 1 : 0;
            }
        }
        if (pairs > BY_CHANCE) {
            broken.add(new Broken(Clash.MARKS_IN_ONE_PLACE, Optional.of(view.view())));
        }
    }

    private static void samePicture(MarkSheet sheet, List<Broken> broken) {
        Optional<ViewMarks> faceOn = sheet.view(View.FACE_ON);
        Optional<ViewMarks> downTheLine = sheet.view(View.DOWN_THE_LINE);
        if (faceOn.isEmpty() || downTheLine.isEmpty()) {
            return;
        }
        double nearPx = ONE_PICTURE * faceOn.get().widthPx();
        List<Double> apartPx = faceOn.get().marks().stream()
                .flatMap(m -> downTheLine.get().mark(m.landmark()).stream().map(o -> m.at().distancePx(o.at())))
                .toList();
        if (apartPx.size() >= TO_TELL && apartPx.stream().allMatch(d -> d < nearPx)) {
            broken.add(new Broken(Clash.SAME_PICTURE_TWICE, Optional.empty()));
        }
    }
}

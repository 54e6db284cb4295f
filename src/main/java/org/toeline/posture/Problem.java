package org.toeline.posture;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.toeline.geometry.GolfBall;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.BallMark;
import org.toeline.mark.FloorMark;
import org.toeline.mark.FloorReference;
import org.toeline.mark.Handedness;
import org.toeline.mark.Landmark;
import org.toeline.mark.LensNote;
import org.toeline.mark.Mark;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.VerticalMark;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;

/** A mark sheet as unknowns and everything known of them. Left-handed pictures are mirrored here and nowhere else. */
final class Problem {

    private static final double BALL_DIAMETER_SIGMA_M = 0.00010;
    /** The name of the ball's outline among the marks. */
    static final String BALL = "ball";

    /**
     * How far a player moves between two takes, address to address, metres: common practice, the size of a ball's
     * radius level and less in height.
     */
    private static final double[] SHIFT_SIGMA_M = {0.015, 0.015, 0.008};
    /** Where the ball may lie in a measured layout whose origin can be anywhere, metres. */
    private static final double BALL_ANYWHERE_M = 2.0;

    private static final double FIXED_M = 1e-5;
    /** How much looser habits are taken where evidence alone is asked. */
    private static final double LOOSENED = 8;
    /**
     * How a layout that is laid again along the target line differs from the first time: moved by a step (metres),
     * turned by what the eye does not see (radians, 1.5°); common practice.
     */
    private static final double[] LAID_AGAIN_SIGMA = {0.5, 0.5, 0.026};

    final MarkSheet sheet;
    final List<ViewMarks> used;
    final Unknowns unknowns;
    final ClubStance stance;
    final List<Knowledge> knowledge = new ArrayList<>();

    private final Set<MarkName> leftOut;
    private final Belief belief;

    /** A mark by where it is and what it is called in documents. */
    record MarkName(View view, String name) {}

    /** What is believed of the player's body. */
    enum Belief {
        /** How people usually are built and stand. */
        HABITS,
        /** What no player can help: bones, hands on the grip, feet on the floor; habits loosened eightfold. */
        EVIDENCE
    }

    Problem(MarkSheet sheet, Set<MarkName> leftOut) {
        this(sheet, leftOut, Belief.HABITS);
    }

    Problem(MarkSheet sheet, Set<MarkName> leftOut, Belief belief) {
        this.belief = belief;
        this.sheet = sheet;
        this.leftOut = leftOut;
        this.used = sheet.views().stream().filter(Problem::marked).toList();
        this.unknowns = new Unknowns(sheet, used);
        this.stance = ClubStance.of(sheet.club());
        know();
    }

    private static boolean marked(ViewMarks v) {
        return !v.marks().isEmpty() || !v.floorMarks().isEmpty() || v.ball().isPresent();
    }

    boolean ballMarked() {
        return used.stream().anyMatch(v -> v.ball().isPresent());
    }

    private boolean mirrored() {
        return sheet.handedness() == Handedness.LEFT;
    }

    State start() {
        double[] x = new double[unknowns.size()];
        int ball = unknowns.ball();
        double[] middle = floorMiddle();
        x[ball] = middle[0];
        x[ball + 1] = middle[1];
        x[ball + Unknowns.BALL_UNDERSIDE] = stance.teed();
        x[ball + Unknowns.BALL_DIAMETER] = GolfBall.USUAL_DIAMETER_M;
        unknowns.floor().forEach((id, at) -> {
            FloorReference p = sheet.floor().point(id).orElseThrow();
            x[at] = p.t();
            x[at + 1] = p.h();
        });
        BodyHabits.start(unknowns, Population.with(sheet.club()), x);
        Map<View, ViewFrame> frames = new EnumMap<>(View.class);
        for (ViewMarks v : used) {
            CameraHabits.start(v, unknowns, x);
            LensNote lens = v.lens();
            double cx = lens.cxPx().orElse(v.widthPx() / 2.0);
            frames.put(
                    v.view(),
                    new ViewFrame(
                            unknowns.view(v.view()),
                            mirrored() ? v.widthPx() - cx : cx,
                            lens.cyPx().orElse(v.heightPx() / 2.0),
                            lens.k1().orElse(0),
                            lens.k2().orElse(0)));
        }
        return new State(x, frames);
    }

    /** Another start, its cameras elsewhere; {@code which} from 0 to {@link CameraHabits#OTHER_STARTS}, exclusive. */
    State otherStart(int which) {
        State start = start();
        double[] x = start.x.clone();
        used.forEach(v -> CameraHabits.elsewhere(which, v, unknowns, x));
        start.moveTo(x);
        return start;
    }

    /** Roughly where the ball lies in the layout: where the lines meet is unknown, so its middle. */
    private double[] floorMiddle() {
        double t = 0;
        double h = 0;
        int n = Math.max(1, unknowns.floor().size());
        for (String id : unknowns.floor().keySet()) {
            FloorReference p = sheet.floor().point(id).orElseThrow();
            t += p.t() / n;
            h += p.h() / n;
        }
        return new double[] {t, h};
    }

    private void know() {
        for (ViewMarks v : used) {
            CameraHabits.know(v, unknowns, knowledge);
            marks(v);
            v.verticals().forEach(m -> vertical(v, m));
            v.ball().ifPresent(b -> ball(v, b));
        }
        layout();
        ballPlace();
        if (unknowns.hasShift()) {
            for (int i = 0; i < 3; i++) {
                knowledge.add(Usually.one(Source.TAKES, unknowns.shift() + i, 0, SHIFT_SIGMA_M[i]));
            }
        }
        if (unknowns.hasLaidAgain()) {
            for (int i = 0; i < 3; i++) {
                knowledge.add(Usually.one(Source.FLOOR, unknowns.laidAgain() + i, 0, LAID_AGAIN_SIGMA[i]));
            }
        }
        sheet.stature()
                .ifPresent(s -> knowledge.add(Usually.one(
                        Source.BODY,
                        unknowns.playerSize(),
                        Math.log(s.heightM() / Population.USUAL_STATURE_M),
                        s.sigmaM() / s.heightM())));
        Population population = Population.with(sheet.club());
        knowledge.add(
                Usually.one(Source.BODY, unknowns.playerSize(), population.logSizeMean(), population.logSizeSigma()));
        if (!unknowns.landmarks().isEmpty()) {
            knowledge.add(new BodyHabits(unknowns, population, belief == Belief.HABITS ? 1 : LOOSENED));
        }
        if (belief == Belief.EVIDENCE) {
            Anatomy.know(unknowns, population, knowledge);
        }
    }

    private void marks(ViewMarks v) {
        for (Mark mark : v.marks()) {
            Landmark landmark = mark.landmark();
            Place place = Place.at(unknowns.landmark(landmark));
            if (unknowns.hasShift() && v.view() == View.DOWN_THE_LINE && ofThePlayer(landmark)) {
                place = place.shifted(unknowns.shift(), onTheFloor(landmark) ? 2 : 3);
            }
            double spread = LandmarkSpread.metres(landmark)
                    + (mark.origin() == Mark.Origin.SUGGESTED ? LandmarkSpread.SUGGESTED_M : 0);
            sight(v, landmark.id(), Source.MARKS, place, mark.at(), mark.sigmaPx(), spread, 0);
        }
        for (FloorMark mark : v.floorMarks()) {
            Place place = Place.onGround(Objects.requireNonNull(unknowns.floor().get(mark.pointId())));
            if (unknowns.hasLaidAgain() && v.view() == View.DOWN_THE_LINE) {
                FloorReference p = sheet.floor().point(mark.pointId()).orElseThrow();
                double[] middle = floorMiddle();
                place = place.laidAgain(unknowns.laidAgain(), p.t() - middle[0], p.h() - middle[1]);
            }
            sight(v, mark.pointId(), Source.FLOOR, place, mark.at(), mark.sigmaPx(), 0, 0);
        }
    }

    private static boolean ofThePlayer(Landmark landmark) {
        return switch (landmark) {
            case CLUB_HEAD, CROWN, GROUND -> false;
            default -> true;
        };
    }

    private static boolean onTheFloor(Landmark landmark) {
        return switch (landmark) {
            case LEAD_HEEL, TRAIL_HEEL, LEAD_TOE, TRAIL_TOE -> true;
            default -> false;
        };
    }

    private void sight(
            ViewMarks v,
            String name,
            Source source,
            Place place,
            ImagePoint at,
            double clickPx,
            double spreadM,
            double radiusM) {
        double x = mirrored() ? v.widthPx() - at.xPx() : at.xPx();
        if (!leftOut.contains(new MarkName(v.view(), name))) {
            knowledge.add(new Sight(v.view(), name, source, place, x, at.yPx(), clickPx, spreadM, radiusM));
        }
    }

    private void vertical(ViewMarks v, VerticalMark mark) {
        ImagePoint a = Straight.of(v, mark.from());
        ImagePoint b = Straight.of(v, mark.to());
        if (mirrored()) {
            a = a.mirrored(v.widthPx());
            b = b.mirrored(v.widthPx());
        }
        knowledge.add(new Upright(v.view(), a.xPx(), a.yPx(), b.xPx(), b.yPx(), mark.sigmaPx()));
    }

    private void ball(ViewMarks v, BallMark mark) {
        sight(
                v,
                BALL,
                Source.BALL,
                Place.ball(unknowns.ball()),
                mark.centre(),
                mark.sigmaPx(),
                0,
                GolfBall.USUAL_DIAMETER_M / 2);
        if (mark.diameterPx().isPresent() && !leftOut.contains(new MarkName(v.view(), BALL))) {
            knowledge.add(
                    new Outline(v.view(), unknowns.ball(), mark.diameterPx().getAsDouble(), mark.diameterSigmaPx()));
        }
    }

    private void layout() {
        double sigma = sheet.floor().sigmaM();
        unknowns.floor().forEach((id, at) -> {
            FloorReference p = sheet.floor().point(id).orElseThrow();
            knowledge.add(Usually.one(Source.FLOOR, at, p.t(), sigma));
            knowledge.add(Usually.one(Source.FLOOR, at + 1, p.h(), sigma));
        });
    }

    private void ballPlace() {
        int ball = unknowns.ball();
        double[] middle = floorMiddle();
        double loose = unknowns.hasFloor() ? BALL_ANYWHERE_M : FIXED_M;
        knowledge.add(Usually.one(Source.BODY, ball, middle[0], loose));
        knowledge.add(Usually.one(Source.BODY, ball + 1, middle[1], loose));
        knowledge.add(Usually.one(Source.BODY, ball + Unknowns.BALL_UNDERSIDE, stance.teed(), stance.teedSigma()));
        knowledge.add(Usually.one(
                Source.BALL, ball + Unknowns.BALL_DIAMETER, GolfBall.USUAL_DIAMETER_M, BALL_DIAMETER_SIGMA_M));
    }
}

package org.toeline.assist;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.toeline.assist.PoseModel.Seen;
import org.toeline.assist.ShaftSearch.Shaft;
import org.toeline.assist.SnappedRod.Beyond;
import org.toeline.assist.SnappedRod.End;
import org.toeline.assist.Strokes.Stroke;
import org.toeline.geometry.ImagePoint;
import org.toeline.video.Frame;

/**
 * Rods on the ground by their colour: thin bars that differ in colour, not in brightness alone, from the same ground on both
 * of their sides. The edge of a mat has one ground on one side and another on the other; a white line and a grey rod are left
 * to the hand. Shares are of the span.
 */
final class RodSearch {

    private static final double SHORTEST = 0.22;
    /** Rods are some 8 to 12 mm thick (common practice), and may lie nearer to the camera than the player. */
    private static final double WIDEST = 0.010;

    private static final double BLUR_PX = 1.2;
    private static final int MOST_STROKES = 24;
    private static final double ONE_ROD_PX = 6;

    private static final int PLACES = 40;
    /** So far may the two sides differ, as a share of how far the rod stands off them. */
    private static final double SAME_GROUND = 0.3;

    private static final double STANDS_OFF = 0.5;
    /** At so many of its places: feet, a club and shadows may lie across it. */
    private static final double MOST_PLACES = 0.85;
    /** The least difference of colour to the ground, levels of 255; what has none of its own is a joint or the edge of a mat. */
    private static final double LEAST_COLOUR = 9;

    private static final double LEAST_COLOUR_OF_ITS_OWN = 9;

    private static final double RIM_PX = 8;
    private static final double AROUND_FEET = 0.055;
    private static final double AROUND_CLUB = 0.03;
    private static final double PAST_THE_HANDS = 0.06;

    private final Frame frame;
    private final Seen seen;
    private final Optional<Shaft> shaft;
    private final ImagePoint hands;
    private final double span;
    private final double knees;

    RodSearch(Frame frame, Seen seen, Optional<Shaft> shaft) {
        this.frame = frame;
        this.seen = seen;
        this.shaft = shaft;
        this.hands = ShaftSearch.hands(seen);
        this.span = PoseSearch.span(seen);
        this.knees = Standing.middle(seen, 25).yPx();
    }

    /** The longest strokes first; each rod once, and at least one of its ends on open ground. */
    List<SnappedRod> in(List<Stroke> coloured) {
        List<SnappedRod> rods = new ArrayList<>();
        coloured.stream()
                .filter(s -> s.lengthPx() > SHORTEST * span && s.upper().yPx() > knees)
                .limit(MOST_STROKES)
                .forEach(s -> EdgeSnap.rod(frame, s.from(), s.to())
                        .filter(r -> r.from().at().distancePx(r.to().at()) > SHORTEST * span)
                        .filter(r -> r.widthPx() < WIDEST * span + BLUR_PX)
                        .filter(this::onOneGround)
                        .filter(r -> !isShaft(r))
                        .map(this::withOpenEnds)
                        .filter(r -> r.from().beyond() == Beyond.GROUND || r.to().beyond() == Beyond.GROUND)
                        .filter(r -> rods.stream().noneMatch(o -> same(o, r)))
                        .ifPresent(rods::add));
        return rods;
    }

    /** Of what points at the hands the colour may be the sky's in chrome, or the grip's. */
    private boolean isShaft(SnappedRod rod) {
        StraightLine axis = StraightLine.through(rod.from().at(), rod.to().at());
        boolean leadsToTheHands = Math.abs(axis.place(hands).t()) < PAST_THE_HANDS * span;
        return leadsToTheHands
                || shaft.filter(s -> {
                            StraightLine line = StraightLine.through(s.hands(), s.low());
                            return Math.abs(line.place(rod.from().at()).t()) < 2 * ONE_ROD_PX
                                    && Math.abs(line.place(rod.to().at()).t()) < 2 * ONE_ROD_PX;
                        })
                        .isPresent();
    }

    /** At a shoe, the club or the rim of the picture a rod goes on, whatever the colours there say. */
    private SnappedRod withOpenEnds(SnappedRod rod) {
        return new SnappedRod(open(rod.from()), open(rod.to()), rod.sigmaAcrossPx(), rod.widthPx());
    }

    private End open(End end) {
        ImagePoint at = end.at();
        boolean covered = at.xPx() < RIM_PX
                || at.yPx() < RIM_PX
                || at.xPx() > frame.width() - RIM_PX
                || at.yPx() > frame.height() - RIM_PX;
        covered |= Standing.fromFeet(seen, at) < AROUND_FEET * span;
        covered |= shaft.filter(s -> fromStretch(at, s.hands(), s.low()) < AROUND_CLUB * span)
                .isPresent();
        return covered ? new End(at, end.sigmaAlongPx(), Beyond.COVER) : end;
    }

    /** How far a place lies from a stretch between two others, pixels. */
    static double fromStretch(ImagePoint at, ImagePoint from, ImagePoint to) {
        StraightLine.Place place = StraightLine.through(from, to).place(at);
        double past = Math.max(0, Math.max(-place.s(), place.s() - from.distancePx(to)));
        return Math.hypot(past, place.t());
    }

    private boolean onOneGround(SnappedRod rod) {
        StraightLine axis = StraightLine.through(rod.from().at(), rod.to().at());
        Strip strip = new Strip(new Colours(frame, 0, 0, frame.width(), frame.height()), axis);
        double length = rod.from().at().distancePx(rod.to().at());
        double half = rod.widthPx() / 2;
        double[] off = new double[PLACES];
        double[] sides = new double[PLACES];
        double[] colour = new double[PLACES];
        double[] own = new double[PLACES];
        for (int i = 0; i < PLACES; i++) {
            double s = (i + 0.5) / PLACES * length;
            double[] on = strip.at(s, -half / 2, half / 2);
            double[] left = strip.at(s, -half - 4, -half - 2);
            double[] right = strip.at(s, half + 2, half + 4);
            double[] ground = {(left[0] + right[0]) / 2, (left[1] + right[1]) / 2, (left[2] + right[2]) / 2};
            off[i] = LineSearch.distance(on, ground);
            sides[i] = LineSearch.distance(left, right);
            colour[i] = Math.hypot(on[1] - ground[1], on[2] - ground[2]);
            own[i] = Math.hypot(on[1], on[2]);
        }
        double usual = median(off);
        long good = 0;
        for (int i = 0; i < PLACES; i++) {
            good += off[i] > STANDS_OFF * usual && sides[i] < SAME_GROUND * usual + 6 ? 1 : 0;
        }
        return good >= MOST_PLACES * PLACES && median(colour) > LEAST_COLOUR && median(own) > LEAST_COLOUR_OF_ITS_OWN;
    }

    private static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }

    private static boolean same(SnappedRod a, SnappedRod b) {
        StraightLine line = StraightLine.through(a.from().at(), a.to().at());
        return Math.abs(line.place(b.from().at()).t()) < ONE_ROD_PX + a.widthPx()
                && Math.abs(line.place(b.to().at()).t()) < ONE_ROD_PX + a.widthPx();
    }
}

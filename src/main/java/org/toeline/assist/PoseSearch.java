package org.toeline.assist;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.toeline.assist.PoseModel.Region;
import org.toeline.assist.PoseModel.Seen;
import org.toeline.geometry.ImagePoint;
import org.toeline.video.Frame;

/**
 * Finds the square around the one person of a picture: squares of several sizes and places are tried until the model sees
 * a person in one; then the square follows what it sees, upright along the trunk, a few times. The last looks, from
 * squares a little apart, are averaged.
 */
final class PoseSearch {

    /** The least score that counts as a person. */
    static final double PERSON = 0.9;
    /** A first look this good is followed up. */
    private static final double PROMISING = 0.6;

    private static final int PASSES = 3;
    /** The square's side over the diameter of the circle the model draws around a person. */
    private static final double ROOM = 1.25;
    /** Last looks: moved by a share of the side, and the side times that. */
    private static final double[][] LOOKS = {{0, 0, 1}, {0.02, 0.015, 1.04}, {-0.02, -0.015, 0.97}};
    /** Looks at a real person agree; at what only resembles one they do not. Share of the span. */
    private static final double MOST_APART = 0.025;

    /** Where another is looked for beside the first, shares of the first one's span. */
    private static final double[] BESIDE = {-1.9, -1.3, -0.7, 0.7, 1.3, 1.9};
    /** The side of the square for that: in it whoever stands within 0.3 of its middle is seen. */
    private static final double WIDE = 2;

    /** Whoever stands so far beside is another. */
    private static final double APART = 0.35;
    /** One who is not so tall stands behind, and is not meant. */
    private static final double AS_TALL = 0.75;

    private static final double[] SIDES = {1.0, 0.75, 0.55};
    /** The head and the soles lie at least this far apart, pixels, or there is nothing to be measured. */
    private static final double LEAST_SPAN_PX = 60;

    private final PoseModel model;
    private final Frame frame;
    private boolean unclear;

    PoseSearch(PoseModel model, Frame frame) {
        this.model = model;
        this.frame = frame;
    }

    /** Whether something like a person was met that is not whole, or not seen alike twice. */
    boolean unclear() {
        return unclear;
    }

    /** @param hints points near the person, such as the ball: they only decide where is looked first */
    Optional<Seen> person(List<ImagePoint> hints) {
        for (Region first : places(hints)) {
            Seen seen = look(first);
            if (seen.score() >= PROMISING) {
                Optional<Seen> person = followed(seen);
                if (person.isPresent()) {
                    return person;
                }
            }
        }
        return Optional.empty();
    }

    /** The same person in another frame of the still span; one look is enough there. */
    Optional<Seen> again(Frame other, Seen seen) {
        return Optional.of(model.look(other, around(seen))).filter(s -> s.score() >= PERSON);
    }

    /** Whether beside a person there is another who is about as tall: which of them is meant cannot be told. */
    boolean anotherBeside(Seen seen) {
        double side = WIDE * span(seen);
        double middle = hipsX(seen);
        double y = seen.points()[0].yPx() + span(seen) / 2;
        for (double step : BESIDE) {
            double x = middle + step * span(seen);
            if (x < 0 || x > frame.width()) {
                continue;
            }
            Seen other = look(new Region(x, y, side, 0));
            if (other.score() >= PROMISING && isAnother(other, seen)) {
                Seen closer = look(around(other));
                if (closer.score() >= PERSON && isAnother(closer, seen) && whole(closer)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean isAnother(Seen other, Seen than) {
        return Math.abs(hipsX(other) - hipsX(than)) > APART * span(than) && span(other) > AS_TALL * span(than);
    }

    private static double hipsX(Seen seen) {
        return (seen.points()[23].xPx() + seen.points()[24].xPx()) / 2;
    }

    private Seen look(Region region) {
        return model.look(frame, region);
    }

    private Optional<Seen> followed(Seen first) {
        Seen seen = first;
        Region region = around(first);
        for (int pass = 0; pass < PASSES; pass++) {
            seen = look(region);
            if (seen.score() < PROMISING) {
                return Optional.empty();
            }
            region = around(seen);
        }
        if (seen.score() < PERSON || span(seen) < LEAST_SPAN_PX) {
            return Optional.empty();
        }
        List<Seen> looks = new ArrayList<>();
        for (double[] l : LOOKS) {
            looks.add(look(new Region(
                    region.xPx() + l[0] * region.sidePx(),
                    region.yPx() + l[1] * region.sidePx(),
                    region.sidePx() * l[2],
                    region.turnRad())));
        }
        Seen mean = mean(looks);
        if (mean.score() >= PERSON && whole(mean) && apart(looks, mean) <= MOST_APART * span(mean)) {
            return Optional.of(mean);
        }
        unclear = true;
        return Optional.empty();
    }

    /** At address all of the player is seen: shoulders, hips and one leg down to the foot, one above the other. */
    private static boolean whole(Seen seen) {
        boolean leg = false;
        for (int side = 0; side < 2; side++) {
            boolean shown = true;
            for (int i = 25 + side; i <= 31 + side; i += 2) {
                shown &= seen.visibility()[i] >= BonyPoints.LEAST_VISIBILITY;
            }
            leg |= shown;
        }
        for (int i : new int[] {0, 11, 12, 23, 24}) {
            leg &= seen.visibility()[i] >= BonyPoints.LEAST_VISIBILITY;
        }
        double shoulders = middle(seen, 11);
        double hips = middle(seen, 23);
        return leg
                && seen.points()[0].yPx() < hips
                && shoulders < hips
                && hips < middle(seen, 25)
                && middle(seen, 25) < middle(seen, 27);
    }

    private static double middle(Seen seen, int left) {
        return (seen.points()[left].yPx() + seen.points()[left + 1].yPx()) / 2;
    }

    /** How far the looks lie from their mean, rms over shoulders, hips, knees and ankles, pixels. */
    private static double apart(List<Seen> looks, Seen mean) {
        double squares = 0;
        int n = 0;
        for (Seen look : looks) {
            for (int i : new int[] {11, 12, 23, 24, 25, 26, 27, 28}) {
                double off = look.points()[i].distancePx(mean.points()[i]);
                squares += off * off;
                n++;
            }
        }
        return Math.sqrt(squares / n);
    }

    /** The square for the next look: the middle of the hips in its middle, the trunk upright. */
    private static Region around(Seen seen) {
        ImagePoint hips = seen.points()[33];
        ImagePoint rim = seen.points()[34];
        double turn = Math.atan2(rim.xPx() - hips.xPx(), hips.yPx() - rim.yPx());
        return new Region(hips.xPx(), hips.yPx(), Math.max(32, 2 * ROOM * hips.distancePx(rim)), turn);
    }

    private static Seen mean(List<Seen> looks) {
        ImagePoint[] points = new ImagePoint[PoseModel.POINTS];
        double[] visibility = new double[PoseModel.POINTS];
        for (int i = 0; i < points.length; i++) {
            int at = i;
            points[i] = new ImagePoint(
                    looks.stream()
                            .mapToDouble(s -> s.points()[at].xPx())
                            .average()
                            .orElseThrow(),
                    looks.stream()
                            .mapToDouble(s -> s.points()[at].yPx())
                            .average()
                            .orElseThrow());
            visibility[i] = looks.stream()
                    .mapToDouble(s -> s.visibility()[at])
                    .average()
                    .orElseThrow();
        }
        return new Seen(looks.stream().mapToDouble(Seen::score).min().orElseThrow(), points, visibility);
    }

    /** From the nose down to the lower sole, pixels: the measure of the person. */
    static double span(Seen seen) {
        double low = 0;
        for (int i = 29; i <= 32; i++) {
            low = Math.max(low, seen.points()[i].yPx());
        }
        return low - seen.points()[0].yPx();
    }

    private List<Region> places(List<ImagePoint> hints) {
        double middle = hints.stream().mapToDouble(ImagePoint::xPx).average().orElse(frame.width() / 2.0);
        List<Region> places = new ArrayList<>();
        for (double share : SIDES) {
            double side = share * frame.height();
            List<Region> row = new ArrayList<>();
            double step = side / 3;
            for (double x = Math.min(side / 2, frame.width() / 2.0);
                    x <= Math.max(frame.width() - side / 2, frame.width() / 2.0);
                    x += step) {
                row.add(new Region(x, side / 2, side, 0));
                if (share < 1) {
                    row.add(new Region(x, frame.height() - side / 2, side, 0));
                }
            }
            row.sort(Comparator.comparingDouble(r -> Math.abs(r.xPx() - middle)));
            places.addAll(row);
        }
        places.add(new Region(frame.width() / 2.0, frame.height() / 2.0, Math.max(frame.width(), frame.height()), 0));
        return places;
    }
}

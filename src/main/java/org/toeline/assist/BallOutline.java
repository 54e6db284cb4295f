package org.toeline.assist;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import org.toeline.assist.RimSearch.Candidate;
import org.toeline.assist.RimSearch.Edges;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.BallMark;
import org.toeline.mark.View;
import org.toeline.video.Frame;

/**
 * Finds and fits the outline of a ball from one click on it: a white ball of 8 to 150 px across, on any ground, up to
 * two thirds of its rim hidden. Circles that may be its rim come from {@link RimSearch}; {@link BallFit} then explains
 * the picture with each, under three assumptions on how the camera encodes light, which are weighed by how well they do
 * so. Tenths of a second, close by a second or two; any thread. {@code docs/marking.md} has what it achieves.
 */
public final class BallOutline {

    /** How light may be encoded: about as for a screen (IEC 61966-2-1, ITU-R BT.709), to the taste of the camera. */
    private static final double[] GAMMAS = {1.9, 2.2, 2.5};
    /** Neighbouring pixels err alike, after coding and on textures: what is stated is widened by this. */
    private static final double WIDENED = 1.3;
    /** What coding leaves uncertain however clear the picture, pixels: seen on filmed balls. */
    private static final double LEAST_CENTRE_PX = 0.15;

    private static final double LEAST_DIAMETER_PX = 0.27;
    /** And what shade adds when none of the rim stands off the ground: the same, {@code docs/marking.md}. */
    private static final double SHADED_CENTRE_PX = 0.5;

    private static final double SHADED_DIAMETER_PX = 1.0;

    /** So many pixels of a large ball are looked at in the end. */
    private static final int TO_FIT = 2500;

    /**
     * In a picture with a whole player a ball is no larger than this share of its height: the player alone takes some 1.5 m of
     * it at address, of which 43 mm are 2.9 %, and the ball is a fifth nearer.
     */
    private static final double MOST_OF_HEIGHT = 0.035;

    private static final double WELL_INSIDE = 0.85;
    /** Circles whose middles and radii differ by more than this share of the radius are two things. */
    private static final double OTHER = 0.3;
    /** The share of its rim that must be found of such another one before it is fitted. */
    private static final double MOST_OF_RIM = 0.5;
    /** Circles from so many beginnings that come to rest as one are one thing that is there. */
    private static final int AGREED = 3;
    /** What comes to rest nearer than this, radii, has found the same. */
    private static final double THE_SAME = 0.05;
    /** By how much what overlaps must have the plainer rim. */
    private static final double PLAINER = 0.1;

    private final Frame frame;
    private final Colours colours;
    private final Stretch stretch;
    private final boolean farOff;
    private final double mostRadiusPx;

    private BallOutline(Frame frame, View view, double focalPx, ImagePoint near) {
        this.frame = frame;
        this.farOff = view != View.TEE;
        this.mostRadiusPx = farOff ? MOST_OF_HEIGHT / 2 * frame.height() : RimSearch.MOST_RADIUS_PX;
        this.stretch = Stretch.at(near, frame, focalPx);
        this.colours = colours(near.xPx(), near.yPx());
    }

    /**
     * The ball at a click; empty when what is there is no ball. Pixels as everywhere: centres at half-integers.
     *
     * @param view    what the picture shows: where a whole player stands in it, nothing large is a ball
     * @param focalPx about the focal length, pixels; infinite for a picture that is no camera's
     */
    public static Optional<BallMark> fit(Frame frame, View view, double focalPx, ImagePoint near) {
        return new BallOutline(frame, view, focalPx, near).fit(near.xPx(), near.yPx());
    }

    private Optional<BallMark> fit(double x, double y) {
        List<Candidate> candidates = new RimSearch(frame, mostRadiusPx, Edges.FALLS).near(x, y);
        boolean large = candidates.stream().limit(1).anyMatch(c -> c.circle().r() > Hypotheses.LARGE_PX);
        Optional<BallFit> chosen = large ? large(candidates, x, y) : likeliest(inTurn(candidates, x, y), x, y);
        return chosen.flatMap(this::weighed);
    }

    /**
     * Close by, what circles from many beginnings come to: a ball before a white shoe scores no better than other circles there do,
     * but those end each elsewhere. Where that is not plain, or where fewer agree, the one that looks most like a ball.
     */
    private Optional<BallFit> large(List<Candidate> candidates, double x, double y) {
        List<List<BallFit>> things = farOff ? List.of() : things(candidates, x, y);
        boolean one = !things.isEmpty()
                && things.get(0).size() >= AGREED
                && (things.size() == 1
                        || 2 * things.get(1).size() < things.get(0).size());
        return (one ? Optional.of(best(things.get(0))) : Optional.<BallFit>empty())
                .filter(b -> evidence(b).isAgreed())
                .or(() -> clearest(together(candidates, BallEvidence::isBall, x, y), x, y));
    }

    /** What more than one circle comes to and is white and may be round; what most come to first. */
    private List<List<BallFit>> things(List<Candidate> candidates, double x, double y) {
        List<Candidate> all = new ArrayList<>(candidates);
        all.addAll(plain(x, y));
        List<List<BallFit>> things = new ArrayList<>();
        for (BallFit fit : together(all, BallEvidence::isWhite, x, y)) {
            double near = Math.max(1, THE_SAME * fit.circle().r());
            things.stream()
                    .filter(t -> t.get(0).circle().apart(fit.circle()) < near)
                    .findFirst()
                    .ifPresentOrElse(t -> t.add(fit), () -> things.add(new ArrayList<>(List.of(fit))));
        }
        return things.stream()
                .filter(t -> t.size() > 1 && evidence(best(t)).mayBeAgreed())
                .sorted(Comparator.comparingInt((List<BallFit> t) -> t.size()).reversed())
                .toList();
    }

    private BallFit best(List<BallFit> fits) {
        return Collections.max(fits, Comparator.comparingDouble(f -> evidence(f).score()));
    }

    private List<Candidate> plain(double x, double y) {
        return new RimSearch(frame, mostRadiusPx, Edges.ALL)
                .near(x, y).stream()
                        .filter(c -> c.rays() >= MOST_OF_RIM * RimSearch.RAYS)
                        .toList();
    }

    /** Small circles are fitted quickly, and one that explains the picture ends it. */
    private List<BallFit> inTurn(List<Candidate> candidates, double x, double y) {
        List<BallFit> balls = new ArrayList<>();
        for (Candidate candidate : candidates) {
            Optional<BallFit> ball = ball(colours, candidate, BallEvidence::isBall, x, y);
            ball.ifPresent(balls::add);
            if (ball.filter(BallFit::explains).isPresent()) {
                break;
            }
        }
        return balls;
    }

    /** Large ones take their time, and all are needed: as many at once as there are processors. */
    private List<BallFit> together(List<Candidate> candidates, Predicate<BallEvidence> isBall, double x, double y) {
        return candidates.parallelStream()
                .map(c -> ball(colours(x, y), c, isBall, x, y))
                .flatMap(Optional::stream)
                .toList();
    }

    private Optional<BallFit> ball(
            Colours of, Candidate candidate, Predicate<BallEvidence> isBall, double x, double y) {
        return new Hypotheses(of, stretch, candidate.circle(), open(candidate))
                .best(fit -> holds(fit.circle(), x, y) && isBall.test(evidence(fit)));
    }

    private BallEvidence evidence(BallFit fit) {
        return BallEvidence.of(frame, fit, farOff);
    }

    private Colours colours(double x, double y) {
        double reach = 2 * RimSearch.MOST_RADIUS_PX + 8;
        return new Colours(frame, x - reach, y - reach, x + reach, y + reach);
    }

    /** As little of a small ball's rim speaks for itself: the one that explains the picture best. */
    private Optional<BallFit> likeliest(List<BallFit> balls, double x, double y) {
        double reach = balls.stream()
                .mapToDouble(f -> f.circle().r()
                        + Math.hypot(f.circle().x() - x, f.circle().y() - y))
                .max()
                .orElse(0);
        return Hypotheses.likeliest(
                balls, new BallPatch(colours, stretch, new Circle(x, y, reach), BallPixels.GROUND_PX));
    }

    /**
     * Of large balls the one that looks most like one; and close by, where a white shoe behind the ball may make one circle
     * with it, what lies in front, or nothing where it is not plain what does.
     */
    private Optional<BallFit> clearest(List<BallFit> balls, double x, double y) {
        Optional<BallFit> clearest =
                balls.stream().max(Comparator.comparingDouble(f -> evidence(f).score()));
        Optional<BallFit> front = farOff ? Optional.empty() : inFront(clearest, x, y);
        return front.isEmpty() ? clearest : front.filter(b -> evidence(b).isWhole());
    }

    /** A circle that has an edge around most of it, other than the one found: within it, or plainer than it. */
    private Optional<BallFit> inFront(Optional<BallFit> found, double x, double y) {
        List<Candidate> others = plain(x, y).stream()
                .filter(c -> found.isEmpty() || isOther(c.circle(), found.get().circle()))
                .toList();
        double least = found.map(f -> evidence(f).rimScore() + PLAINER).orElse(0.0);
        return together(others, BallEvidence::mayBeWhole, x, y).stream()
                .filter(b -> found.isEmpty()
                        || isOther(b.circle(), found.get().circle())
                                && (found.get().circle().surrounds(b.circle())
                                        || evidence(b).rimScore() > least))
                .max(Comparator.comparingDouble(b -> evidence(b).rimScore()));
    }

    private static boolean isOther(Circle circle, Circle than) {
        return circle.apart(than) > OTHER * than.r();
    }

    /** A click a little outside a small ball is forgiven; a large one is clicked well inside. */
    private boolean holds(Circle circle, double x, double y) {
        double off = Math.hypot(circle.x() - x, circle.y() - y);
        return circle.r() >= 3.8
                && circle.r() <= mostRadiusPx
                && off <= (circle.r() > Hypotheses.LARGE_PX ? WELL_INSIDE * circle.r() : circle.r() + 2);
    }

    /** From rays to the fewer sectors of the fit: open where at least half of the rays see the rim. */
    private static boolean[] open(Candidate candidate) {
        int sectors = Rim.sectors(candidate.circle().r());
        int[] seen = new int[sectors];
        int[] all = new int[sectors];
        for (int k = 0; k < RimSearch.RAYS; k++) {
            int sector = Rim.sector(2 * Math.PI * (k + 0.5) / RimSearch.RAYS, sectors);
            all[sector]++;
            seen[sector] += candidate.seen()[k] ? 1 : 0;
        }
        boolean[] open = new boolean[sectors];
        for (int s = 0; s < sectors; s++) {
            open[s] = 2 * seen[s] >= all[s];
        }
        return open;
    }

    /** The mean over the encodings, each as likely as the picture makes it; their differences are uncertainty too. */
    private Optional<BallMark> weighed(BallFit first) {
        List<BallFit> fits = new ArrayList<>();
        BallPatch patch = first.circle().r() <= Hypotheses.LARGE_PX
                ? first.patch()
                : new BallPatch(colours, stretch, first.circle(), Hypotheses.BEYOND_PX, TO_FIT);
        for (double gamma : GAMMAS) {
            BallFit fit = first.again(patch, gamma);
            if (fit.run() && Double.isFinite(fit.sigmas()[0])) {
                fits.add(fit);
            }
        }
        if (fits.isEmpty()) {
            return Optional.empty();
        }
        double unit = fits.stream().mapToDouble(BallFit::noise).min().orElseThrow();
        double groundUnit =
                fits.stream().mapToDouble(BallFit::groundNoise).min().orElseThrow();
        double[] misfit = fits.stream()
                .mapToDouble(f -> f.misfit(f.patch(), unit, groundUnit))
                .toArray();
        double least = Arrays.stream(misfit).min().orElseThrow();
        double[] weight = Arrays.stream(misfit)
                .map(m -> Math.exp(-(m - least) / (2 * WIDENED * WIDENED)))
                .toArray();
        double all = Arrays.stream(weight).sum();
        double x = 0;
        double y = 0;
        double r = 0;
        for (int i = 0; i < weight.length; i++) {
            x += weight[i] / all * fits.get(i).circle().x();
            y += weight[i] / all * fits.get(i).circle().y();
            r += weight[i] / all * fits.get(i).circle().r();
        }
        double[] systematic = systematic(first);
        double centre = systematic[0] * systematic[0];
        double diameter = systematic[1] * systematic[1];
        for (int i = 0; i < weight.length; i++) {
            Circle c = fits.get(i).circle();
            double[] s = fits.get(i).sigmas();
            centre += weight[i]
                    / all
                    * (Math.pow(WIDENED * s[0], 2) + (Math.pow(c.x() - x, 2) + Math.pow(c.y() - y, 2)) / 2);
            diameter += weight[i] / all * 4 * (Math.pow(WIDENED * s[1], 2) + Math.pow(c.r() - r, 2));
        }
        return Optional.of(
                new BallMark(stretch.seen(x, y), OptionalDouble.of(2 * r), Math.sqrt(centre), Math.sqrt(diameter)));
    }

    /** What no misfit shows: the rim may be anywhere in the shade of the ball. */
    private static double[] systematic(BallFit fit) {
        double unseen = 1 - fit.rim().openShare();
        return new double[] {
            Math.hypot(LEAST_CENTRE_PX, SHADED_CENTRE_PX * unseen),
            Math.hypot(LEAST_DIAMETER_PX, SHADED_DIAMETER_PX * unseen)
        };
    }
}

package org.toeline.handout;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.toeline.advice.Assessment;
import org.toeline.advice.Finding;
import org.toeline.advice.Words;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;
import org.toeline.paint.BandGauge;
import org.toeline.paint.BodyPoints;
import org.toeline.paint.GaugeSpot;
import org.toeline.paint.Ink;
import org.toeline.paint.OverlayPainter;
import org.toeline.paint.OverlayShapes;
import org.toeline.paint.OverlayShapes.Kind;
import org.toeline.paint.OverlayShapes.Line;
import org.toeline.paint.PictureFrame;

/**
 * The picture of a still: the part around the player, the lines, and the gauge of the first thing, tied to its line.
 *
 * @param gauge where the gauge stands; empty when nothing is to be changed
 */
record StillPicture(
        Assessment assessment, View view, StillOptions.Lines lines, PictureFrame picture, Optional<Rectangle2D> gauge) {

    static final double GAUGE_WIDTH = 500;
    static final double GAUGE_HEIGHT = 232;
    private static final double STROKE = 6;
    private static final double TYPE = 38;
    /** How much of the picture is shown around the player, in the player's height. */
    private static final double AROUND = 1.16;

    private static final double FARTHER_AROUND = 1.36;
    private static final double ROOM_FOR_FIGURES = 1.34;
    /** Lines shown when there is nothing to change. */
    private static final Set<Kind> WHEN_GOOD =
            EnumSet.of(Kind.SHOULDERS, Kind.TOES, Kind.PLUMB, Kind.GAP, Kind.TARGET, Kind.CROWN);
    /** All that may be shown at once and still be told apart. */
    private static final Set<Kind> WHOLE_SET = EnumSet.of(
            Kind.SHOULDERS,
            Kind.LEVEL,
            Kind.TOES,
            Kind.HEELS,
            Kind.PLUMB,
            Kind.GAP,
            Kind.TARGET,
            Kind.SPINE,
            Kind.SHAFT,
            Kind.CROWN);

    static StillPicture of(
            Assessment assessment, View view, BufferedImage picture, StillOptions options, Rectangle2D frame) {
        ViewMarks marks =
                assessment.sheet().view(view).orElse(ViewMarks.empty(view, picture.getWidth(), picture.getHeight()));
        BufferedImage covered = options.face().on(picture, assessment.posture(), view);
        List<ImagePoint> player = BodyPoints.of(assessment.posture(), marks);
        Optional<ImagePoint> anchor = first(assessment).flatMap(f -> anchor(assessment, view, f));
        if (anchor.isEmpty()) {
            return new StillPicture(
                    assessment,
                    view,
                    options.lines(),
                    PictureFrame.of(
                            parts(player, covered, frame, ROOM_FOR_FIGURES).get(0), frame, covered),
                    Optional.empty());
        }
        List<Rectangle2D> parts = new ArrayList<>(parts(player, covered, frame, AROUND));
        parts.addAll(parts(player, covered, frame, FARTHER_AROUND));
        List<ImagePoint> drawn = new ArrayList<>();
        Set<Kind> kinds =
                first(assessment).map(f -> OverlayShapes.mattersFor(f.kind())).orElse(WHEN_GOOD);
        OverlayShapes.of(assessment, view).stream()
                .filter(l -> kinds.contains(l.kind()))
                .forEach(l -> drawn.addAll(l.points()));
        GaugeSpot spot = GaugeSpot.best(parts, frame, GAUGE_WIDTH, GAUGE_HEIGHT, anchor.get(), player, drawn);
        return new StillPicture(
                assessment,
                view,
                options.lines(),
                PictureFrame.of(spot.part(), frame, covered),
                Optional.of(spot.gauge()));
    }

    private static Optional<Finding> first(Assessment assessment) {
        return assessment.advice().first().map(f -> f.finding());
    }

    /** The middle of the line that shows a finding. */
    static Optional<ImagePoint> anchor(Assessment assessment, View view, Finding finding) {
        Kind shows = OverlayShapes.shows(finding.kind());
        return OverlayShapes.of(assessment, view).stream()
                .filter(l -> l.kind() == shows)
                .findFirst()
                .map(StillPicture::middle);
    }

    private static ImagePoint middle(Line line) {
        int last = line.points().size() - 1;
        ImagePoint a = line.points().get((last - 1) / 2);
        ImagePoint b = line.points().get((last - 1) / 2 + 1);
        return new ImagePoint((a.xPx() + b.xPx()) / 2, (a.yPx() + b.yPx()) / 2);
    }

    /** Parts of the picture that hold the player, in the frame's shape: in the middle, to one side, to the other. */
    private static List<Rectangle2D> parts(
            List<ImagePoint> player, BufferedImage picture, Rectangle2D frame, double around) {
        double w = picture.getWidth();
        double h = picture.getHeight();
        Rectangle2D box = player.isEmpty() ? new Rectangle2D.Double(0, 0, w, h) : BodyPoints.box(player);
        double shape = frame.getWidth() / frame.getHeight();
        double height =
                Math.min(Math.min(h, w / shape), Math.max(box.getHeight() * around, box.getWidth() * around / shape));
        double width = height * shape;
        double margin = box.getHeight() * 0.13;
        List<Rectangle2D> parts = new ArrayList<>();
        for (double x :
                new double[] {box.getCenterX() - width / 2, box.getMinX() - margin, box.getMaxX() + margin - width}) {
            parts.add(new Rectangle2D.Double(
                    Math.max(0, Math.min(w - width, x)),
                    Math.max(0, Math.min(h - height, box.getCenterY() - height / 2)),
                    width,
                    height));
        }
        return parts;
    }

    void paint(Graphics2D g, Words words) {
        picture.paint(g);
        java.awt.Shape clip = g.getClip();
        g.clip(picture.frame());
        OverlayPainter painter = new OverlayPainter(words, STROKE, TYPE);
        Optional<Finding> first = first(assessment);
        if (first.isPresent() && gauge.isPresent()) {
            if (lines == StillOptions.Lines.ALL) {
                painter.paint(g, assessment, view, picture.toDevice(), WHOLE_SET);
            }
            painter.paintFor(g, assessment, view, picture.toDevice(), first.get());
            if (OverlayShapes.mattersFor(first.get().kind()).contains(Kind.TARGET)) {
                painter.paintTarget(g, assessment, view, picture.toDevice(), picture.frame());
            }
            plate(g, words, first.get(), gauge.get());
        } else {
            painter.paint(
                    g, assessment, view, picture.toDevice(), lines == StillOptions.Lines.ALL ? WHOLE_SET : WHEN_GOOD);
        }
        g.setClip(clip);
    }

    /** The gauge on light paper, with a thin line to what it tells of. */
    private void plate(Graphics2D g, Words words, Finding finding, Rectangle2D place) {
        ImagePoint anchor = anchor(assessment, view, finding).orElseThrow();
        Point2D at = picture.toDevice().transform(new Point2D.Double(anchor.xPx(), anchor.yPx()), null);
        Point2D from = new Point2D.Double(
                Math.max(place.getMinX(), Math.min(place.getMaxX(), at.getX())),
                Math.max(place.getMinY(), Math.min(place.getMaxY(), at.getY())));
        Line2D tie = new Line2D.Double(from, at);
        g.setColor(new Color(0x111111));
        g.setStroke(new BasicStroke(8, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
        g.draw(tie);
        g.setColor(Ink.PAPER);
        g.setStroke(new BasicStroke(4, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
        g.draw(tie);
        RoundRectangle2D paper =
                new RoundRectangle2D.Double(place.getX(), place.getY(), place.getWidth(), place.getHeight(), 20, 20);
        g.setColor(Ink.PAPER);
        g.fill(paper);
        g.setColor(Ink.TEXT);
        g.setStroke(new BasicStroke(2));
        g.draw(paper);
        new BandGauge(words)
                .paintSmall(
                        g,
                        finding,
                        new Rectangle2D.Double(
                                place.getX() + 20, place.getY() + 16, place.getWidth() - 40, place.getHeight() - 32));
    }
}

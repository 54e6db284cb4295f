package org.toeline.paint;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.toeline.advice.Assessment;
import org.toeline.advice.Finding;
import org.toeline.advice.Verdict;
import org.toeline.advice.Words;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.View;
import org.toeline.paint.OverlayShapes.Kind;
import org.toeline.paint.OverlayShapes.Line;

/**
 * The one painter of the lines over a picture, for the screen, the still and the page: halos so that they stand out over
 * anything, the verdict's colour and mark, the figure at the line.
 */
public final class OverlayPainter {

    private static final Color REFERENCE = new Color(0xFFFFFF);
    private static final Color REFERENCE_HALO = new Color(0, 0, 0, 150);
    private static final Color UNJUDGED = new Color(0x56B4E9);

    /** Where a figure is tried when another lies there, in steps downwards. */
    private static final int[] STEPS = {0, 1, -1, 2, -2, 3, -3, 4, -4, 5, -5};

    private final Words words;
    private final double strokePx;
    private final double textPx;

    /**
     * @param strokePx width of a line, device units
     * @param textPx   size of the figures' type, device units; 0 for none
     */
    public OverlayPainter(Words words, double strokePx, double textPx) {
        this.words = words;
        this.strokePx = strokePx;
        this.textPx = textPx;
    }

    /**
     * Paints the lines of a view, each with the figure of its reading.
     *
     * @param toDevice from picture pixels to the device
     * @param kinds    which lines
     */
    public void paint(Graphics2D g, Assessment assessment, View view, AffineTransform toDevice, Set<Kind> kinds) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        List<Line> lines = OverlayShapes.of(assessment, view).stream()
                .filter(l -> kinds.contains(l.kind()))
                .toList();
        for (Line line : lines) {
            draw(g, line, color(line, finding(assessment, line)), toDevice);
        }
        List<Rectangle2D> taken = new ArrayList<>();
        for (Line line : lines) {
            label(g, line, finding(assessment, line), toDevice, taken);
        }
    }

    /**
     * Paints the lines that matter for one finding and no figures: the line that shows it in the colour of its verdict,
     * what it is seen against dashed.
     */
    public void paintFor(Graphics2D g, Assessment assessment, View view, AffineTransform toDevice, Finding finding) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        Set<Kind> kinds = OverlayShapes.mattersFor(finding.kind());
        Kind shows = OverlayShapes.shows(finding.kind());
        List<Line> lines = OverlayShapes.of(assessment, view).stream()
                .filter(l -> kinds.contains(l.kind()))
                .toList();
        lines.stream().filter(l -> l.kind() != shows).forEach(l -> draw(g, l, REFERENCE, toDevice));
        lines.stream()
                .filter(l -> l.kind() == shows)
                .forEach(l -> draw(g, l, verdictColor(Optional.of(finding)), toDevice));
    }

    /**
     * Paints an arrow head and the word where the target line leaves a frame towards the target, or where it ends within it.
     */
    public void paintTarget(
            Graphics2D g, Assessment assessment, View view, AffineTransform toDevice, Rectangle2D frame) {
        OverlayShapes.of(assessment, view).stream()
                .filter(l -> l.kind() == Kind.TARGET)
                .findFirst()
                .flatMap(l -> Arrow.along(l, toDevice, frame, textPx))
                .ifPresent(arrow -> {
                    g.setColor(REFERENCE);
                    g.fill(arrow.head());
                    String word = words.text("handout.target");
                    double width = Ink.width(word, Ink.bold(textPx));
                    double x = Math.max(
                            frame.getMinX() + textPx,
                            Math.min(
                                    frame.getMaxX() - textPx - width,
                                    arrow.tip().getX() - width / 2));
                    double below = arrow.tip().getY() + textPx * 1.5;
                    double y = below < frame.getMaxY() - textPx * 0.4
                            ? below
                            : arrow.tip().getY() - textPx * 0.8;
                    Ink.textOverPicture(g, word, Ink.bold(textPx), Color.WHITE, x, y);
                });
    }

    private static Optional<Finding> finding(Assessment assessment, Line line) {
        return line.reading().flatMap(assessment.advice()::finding);
    }

    /** A line as it falls on the device. */
    public static Path2D path(Line line, AffineTransform toDevice) {
        Path2D path = new Path2D.Double();
        for (ImagePoint p : line.points()) {
            Point2D at = toDevice.transform(new Point2D.Double(p.xPx(), p.yPx()), null);
            if (path.getCurrentPoint() == null) {
                path.moveTo(at.getX(), at.getY());
            } else {
                path.lineTo(at.getX(), at.getY());
            }
        }
        return path;
    }

    /** White lines are what others are seen against, and dashed. */
    private void draw(Graphics2D g, Line line, Color color, AffineTransform toDevice) {
        Path2D path = path(line, toDevice);
        boolean reference = color == REFERENCE;
        float width = (float) (reference ? strokePx * 0.7 : strokePx);
        g.setColor(reference ? REFERENCE_HALO : Ink.halo(color));
        g.setStroke(new BasicStroke(width * 2.2f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(path);
        g.setColor(color);
        float dash = (float) strokePx * 3;
        g.setStroke(
                reference
                        ? new BasicStroke(
                                width,
                                BasicStroke.CAP_BUTT,
                                BasicStroke.JOIN_ROUND,
                                1,
                                new float[] {dash, dash * 0.7f},
                                0)
                        : new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(path);
    }

    private static Color color(Line line, Optional<Finding> finding) {
        return line.reading().isEmpty() ? REFERENCE : verdictColor(finding);
    }

    private static Color verdictColor(Optional<Finding> finding) {
        return finding.flatMap(Finding::verdict).isPresent() ? Ink.color(finding.flatMap(Finding::verdict)) : UNJUDGED;
    }

    private void label(
            Graphics2D g, Line line, Optional<Finding> finding, AffineTransform toDevice, List<Rectangle2D> taken) {
        if (textPx <= 0 || finding.isEmpty() || finding.get().verdict().equals(Optional.of(Verdict.WITHHELD))) {
            return;
        }
        ImagePoint end = line.points().get(line.points().size() - 1);
        ImagePoint start = line.points().get(0);
        boolean gap = line.kind() == Kind.GAP;
        ImagePoint anchor = gap ? new ImagePoint((start.xPx() + end.xPx()) / 2, (start.yPx() + end.yPx()) / 2) : end;
        Point2D at = toDevice.transform(new Point2D.Double(anchor.xPx(), anchor.yPx()), null);
        boolean cannot = finding.get().verdict().equals(Optional.of(Verdict.CANNOT_TELL));
        String text = cannot ? "?" : words.figure(finding.get());
        Font font = Ink.bold(textPx);
        double x = at.getX() + textPx * 0.7;
        double y = gap ? at.getY() + textPx * 1.9 : at.getY() - textPx * 0.4;
        if (gap) {
            x = at.getX() - Ink.width(text, font) / 2;
        }
        double radius = textPx * 0.33;
        y = free(new Rectangle2D.Double(x, y - textPx, radius * 2.6 + Ink.width(text, font), textPx * 1.3), taken);
        Ink.textOverPicture(g, text, font, Color.WHITE, x + radius * 2.6, y);
        Ink.verdictMark(g, finding.get().verdict(), x + radius, y - textPx * 0.35, radius);
    }

    /** The baseline nearest to the one wanted at which a figure lies over no other, which it takes. */
    private double free(Rectangle2D wanted, List<Rectangle2D> taken) {
        Rectangle2D best = wanted;
        for (int step : STEPS) {
            Rectangle2D tried = new Rectangle2D.Double(
                    wanted.getX(), wanted.getY() + step * textPx * 0.65, wanted.getWidth(), wanted.getHeight());
            if (taken.stream().noneMatch(tried::intersects)) {
                best = tried;
                break;
            }
        }
        taken.add(best);
        return best.getY() + textPx;
    }
}

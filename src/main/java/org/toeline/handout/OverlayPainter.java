package org.toeline.handout;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.toeline.advice.Assessment;
import org.toeline.advice.Finding;
import org.toeline.advice.Verdict;
import org.toeline.advice.Words;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.View;
import org.toeline.handout.OverlayShapes.Kind;
import org.toeline.handout.OverlayShapes.Line;

/**
 * The one painter of the lines over a picture, for the screen, the still and the page: halos so that they stand out over
 * anything, the verdict's colour and mark, the figure at the line.
 */
public final class OverlayPainter {

    private static final Color REFERENCE = new Color(0xFFFFFF);
    private static final Color UNJUDGED = new Color(0x56B4E9);

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
     * Paints the lines of a view.
     *
     * @param toDevice from picture pixels to the device
     * @param kinds    which lines
     */
    public void paint(Graphics2D g, Assessment assessment, View view, AffineTransform toDevice, Set<Kind> kinds) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        List<Line> lines = OverlayShapes.of(assessment, view).stream().filter(l -> kinds.contains(l.kind())).toList();
        for (Line line : lines) {
            draw(g, line, finding(assessment, line), toDevice);
        }
        for (Line line : lines) {
            label(g, line, finding(assessment, line), toDevice);
        }
    }

    private static Optional<Finding> finding(Assessment assessment, Line line) {
        return line.reading().flatMap(assessment.advice()::finding);
    }

    private void draw(Graphics2D g, Line line, Optional<Finding> finding, AffineTransform toDevice) {
        Path2D path = new Path2D.Double();
        boolean begun = false;
        for (ImagePoint p : line.points()) {
            Point2D at = toDevice.transform(new Point2D.Double(p.xPx(), p.yPx()), null);
            if (begun) {
                path.lineTo(at.getX(), at.getY());
            } else {
                path.moveTo(at.getX(), at.getY());
            }
            begun = true;
        }
        Color color = color(line, finding);
        boolean reference = line.reading().isEmpty();
        float width = (float) (reference ? strokePx * 0.7 : strokePx);
        g.setColor(reference ? new Color(0, 0, 0, 150) : Ink.halo(color));
        g.setStroke(new BasicStroke(width * 2.2f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(path);
        g.setColor(color);
        float dash = (float) strokePx * 3;
        g.setStroke(reference ? new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1,
                new float[] {dash, dash * 0.7f}, 0)
                : new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(path);
    }

    private static Color color(Line line, Optional<Finding> finding) {
        if (line.reading().isEmpty()) {
            return REFERENCE;
        }
        return finding.flatMap(Finding::verdict).isPresent() ? Ink.color(finding.flatMap(Finding::verdict)) : UNJUDGED;
    }

    private void label(Graphics2D g, Line line, Optional<Finding> finding, AffineTransform toDevice) {
        if (textPx <= 0 || finding.isEmpty()) {
            return;
        }
        ImagePoint end = line.points().get(line.points().size() - 1);
        ImagePoint start = line.points().get(0);
        boolean gap = line.kind() == Kind.GAP;
        ImagePoint anchor = gap ? new ImagePoint((start.xPx() + end.xPx()) / 2, (start.yPx() + end.yPx()) / 2) : end;
        Point2D at = toDevice.transform(new Point2D.Double(anchor.xPx(), anchor.yPx()), null);
        boolean cannot = finding.get().verdict().equals(Optional.of(Verdict.CANNOT_TELL));
        String text = cannot ? "?" : words.figure(finding.get().reading());
        Font font = Ink.bold(textPx);
        double x = at.getX() + textPx * 0.7;
        double y = gap ? at.getY() + textPx * 1.9 : at.getY() - textPx * 0.4;
        if (gap) {
            x = at.getX() - Ink.width(text, font) / 2;
        }
        double radius = textPx * 0.33;
        Ink.textOverPicture(g, text, font, Color.WHITE, x + radius * 2.6, y);
        Ink.verdictMark(g, finding.get().verdict(), x + radius, y - textPx * 0.35, radius);
    }
}

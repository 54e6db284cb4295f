package org.toeline.paint;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.toeline.advice.Assessment;
import org.toeline.advice.Finding;
import org.toeline.advice.Words;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.PinnedWords;
import org.toeline.mark.View;
import org.toeline.paint.OverlayShapes.Kind;
import org.toeline.paint.OverlayShapes.Line;

/**
 * What a still draws over its picture: the lines, where what is out of range should be and the arrow that leads there, the
 * target by name, what a bent line is, and a number at each other line, which stands in a list beside the picture with its
 * figure. No writing lies over other writing, nor over the player where there is room.
 */
public final class StillOverlay {

    private static final double STROKE = 6;
    private static final double TYPE = 36;
    private static final double BADGE = 23;
    private static final double SHORTEST_ARROW = 90;
    private static final double BESIDE = 46;

    private final Assessment assessment;
    private final View view;
    private final PictureFrame picture;
    private final Optional<Finding> first;
    private final Set<Kind> kinds;
    private final OverlayPainter painter;
    private final List<Line> lines;
    private final Optional<Ghost> ghost;
    private final Optional<Arrow> target;
    private final List<Line2D> arrows = new ArrayList<>();
    private final List<Label> labels = new ArrayList<>();
    private final List<PinnedNote> notes;
    private final List<Numbered> numbered = new ArrayList<>();

    /** A word in the picture and where it stands, in the drawing. */
    public record Label(String text, Rectangle2D box) {}

    /** A line with a number: what it shows. */
    public record Numbered(int number, Finding finding) {}

    /**
     * @param first what is shown above all; empty when nothing is to be changed
     * @param kinds lines that are drawn besides those that matter for it
     * @param pinned what the coach wrote on the picture
     */
    public StillOverlay(
            Assessment assessment,
            Words words,
            View view,
            PictureFrame picture,
            Optional<Finding> first,
            Set<Kind> kinds,
            List<PinnedWords> pinned) {
        this.assessment = assessment;
        this.view = view;
        this.picture = picture;
        this.first = first;
        this.kinds = EnumSet.of(Kind.TARGET);
        this.kinds.addAll(kinds);
        this.painter = new OverlayPainter(words, STROKE, 0);
        this.lines = OverlayShapes.of(assessment, view);
        this.ghost = first.flatMap(f -> Ghost.of(assessment.posture(), view, f));
        this.target = line(Kind.TARGET).flatMap(l -> Arrow.along(l, to(), picture.frame(), TYPE));
        ghost.ifPresent(g -> g.moves().forEach(m -> arrows.add(arrow(m))));
        this.notes = pinned.stream()
                .map(w -> PinnedNote.of(w, to(), picture.frame(), TYPE))
                .toList();
        arrange(words);
    }

    private AffineTransform to() {
        return picture.toDevice();
    }

    private Point2D on(ImagePoint p) {
        return to().transform(new Point2D.Double(p.xPx(), p.yPx()), null);
    }

    private Optional<Line> line(Kind kind) {
        return lines.stream().filter(l -> l.kind() == kind).findFirst();
    }

    /** From a place beside what moves, as long as can be seen. */
    private Line2D arrow(Ghost.Move move) {
        Point2D a = on(move.from());
        Point2D b = on(move.to());
        double dx = b.getX() - a.getX();
        double dy = b.getY() - a.getY();
        double length = Math.max(1e-9, Math.hypot(dx, dy));
        double drawn = Math.max(SHORTEST_ARROW, length);
        boolean across = Math.abs(dx) >= Math.abs(dy);
        double x = a.getX() + (across ? 0 : BESIDE);
        double y = a.getY() - (across ? BESIDE : 0);
        return new Line2D.Double(x, y, x + dx / length * drawn, y + dy / length * drawn);
    }

    private void arrange(Words words) {
        List<Point2D> avoided = new ArrayList<>();
        assessment
                .sheet()
                .view(view)
                .ifPresent(marks -> BodyPoints.of(assessment.posture(), marks).forEach(p -> avoided.add(on(p))));
        arrows.forEach(a -> {
            avoided.add(a.getP1());
            avoided.add(a.getP2());
            avoided.add(new Point2D.Double((a.getX1() + a.getX2()) / 2, (a.getY1() + a.getY2()) / 2));
        });
        ghost.ifPresent(g -> g.circles().forEach(c -> avoided.add(on(c.get(0)))));
        LabelRoom room = new LabelRoom(picture.frame(), avoided);
        notes.forEach(n -> room.take(n.box()));
        targetHead().ifPresent(head -> room.take(head.getBounds2D()));
        target.ifPresent(arrow -> label(
                room,
                words.text("handout.target"),
                new Point2D.Double(arrow.tip().getX(), arrow.tip().getY() + TYPE)));
        List<Point2D> drawn = new ArrayList<>();
        lines.stream().filter(l -> l.kind() != Kind.TARGET && isDrawn(l)).forEach(l -> along(l, drawn));
        first.filter(f -> OverlayShapes.mattersFor(f.kind()).contains(Kind.PLUMB))
                .flatMap(f -> line(Kind.PLUMB))
                .ifPresent(plumb -> captions(room.clearOf(drawn), plumb, words));
        for (Line line : lines) {
            Optional<Finding> finding = line.reading().flatMap(assessment.advice()::finding);
            if (kinds.contains(line.kind()) && finding.isPresent() && !isFirst(line)) {
                numbered.add(new Numbered(numbered.size() + 1, finding.get()));
                Point2D end = on(line.points().get(line.points().size() - 1));
                Rectangle2D box = room.place(2 * BADGE, 2 * BADGE, end);
                labels.add(new Label(Integer.toString(numbered.size()), box));
            }
        }
    }

    private boolean isDrawn(Line line) {
        return kinds.contains(line.kind())
                || first.filter(f -> OverlayShapes.mattersFor(f.kind()).contains(line.kind()))
                        .isPresent();
    }

    /** So that no writing hides a line. */
    private void along(Line line, List<Point2D> points) {
        for (int i = 1; i < line.points().size(); i++) {
            Point2D a = on(line.points().get(i - 1));
            Point2D b = on(line.points().get(i));
            int steps = (int) (a.distance(b) / TYPE) + 1;
            for (int k = 0; k <= steps; k++) {
                double f = k / (double) steps;
                points.add(
                        new Point2D.Double(a.getX() + f * (b.getX() - a.getX()), a.getY() + f * (b.getY() - a.getY())));
            }
        }
    }

    private boolean isFirst(Line line) {
        return first.filter(f -> OverlayShapes.shows(f.kind()) == line.kind()).isPresent();
    }

    private void captions(LabelRoom room, Line plumb, Words words) {
        List<ImagePoint> p = plumb.points();
        label(room, words.text("handout.line.down"), middle(on(p.get(0)), on(p.get(1))));
        if (p.size() > 2) {
            label(room, words.text("handout.line.across"), middle(on(p.get(1)), on(p.get(2))));
        }
    }

    private static Point2D middle(Point2D a, Point2D b) {
        return new Point2D.Double((a.getX() + b.getX()) / 2, (a.getY() + b.getY()) / 2);
    }

    private void label(LabelRoom room, String text, Point2D near) {
        labels.add(new Label(text, room.place(Ink.width(text, Ink.bold(TYPE)), TYPE * 1.2, near)));
    }

    /** What stands in the picture in words and numbers. */
    public List<Label> labels() {
        return List.copyOf(labels);
    }

    /** The coach's words on the picture. */
    public List<PinnedNote> notes() {
        return notes;
    }

    /** The lines that have a number, in its order. */
    public List<Numbered> numbered() {
        return List.copyOf(numbered);
    }

    /** The arrow head at the visible end of the line to the target, in the drawing. */
    public Optional<Shape> targetHead() {
        return target.map(Arrow::head);
    }

    /** The arrows to where things should be, from tail to head, in the drawing. */
    public List<Line2D> arrows() {
        return List.copyOf(arrows);
    }

    public void paint(Graphics2D g) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        Shape clip = g.getClip();
        g.clip(picture.frame());
        painter.paint(g, assessment, view, to(), kinds);
        first.ifPresent(f -> painter.paintFor(g, assessment, view, to(), f));
        ghost.ifPresent(gh -> ghost(g, gh));
        arrows.forEach(a -> arrow(g, a));
        targetHead().ifPresent(head -> {
            g.setColor(Color.WHITE);
            g.fill(head);
        });
        labels.forEach(l -> label(g, l));
        notes.forEach(n -> n.paint(g));
        g.setClip(clip);
    }

    private void label(Graphics2D g, Label label) {
        Rectangle2D box = label.box();
        if (Character.isDigit(label.text().charAt(0))) {
            badge(g, label.text(), box.getCenterX(), box.getCenterY());
        } else {
            Ink.textOverPicture(
                    g, label.text(), Ink.bold(TYPE), Color.WHITE, box.getX(), box.getY() + box.getHeight() * 0.8);
        }
    }

    static void badge(Graphics2D g, String number, double x, double y) {
        Shape disc = new Ellipse2D.Double(x - BADGE, y - BADGE, 2 * BADGE, 2 * BADGE);
        g.setColor(Ink.PAPER);
        g.fill(disc);
        g.setColor(Ink.TEXT);
        g.setStroke(new BasicStroke(3));
        g.draw(disc);
        double width = Ink.width(number, Ink.bold(33));
        Ink.text(g, number, Ink.bold(33), Ink.TEXT, x - width / 2, y + 12);
    }

    private void ghost(Graphics2D g, Ghost shown) {
        shown.lines().forEach(points -> {
            Path2D path = new Path2D.Double();
            points.forEach(p -> {
                Point2D at = on(p);
                if (path.getCurrentPoint() == null) {
                    path.moveTo(at.getX(), at.getY());
                } else {
                    path.lineTo(at.getX(), at.getY());
                }
            });
            dashed(g, path);
        });
        shown.circles().forEach(c -> {
            Point2D middle = on(c.get(0));
            double r = middle.distance(on(c.get(1)));
            dashed(g, new Ellipse2D.Double(middle.getX() - r, middle.getY() - r, 2 * r, 2 * r));
        });
    }

    private static void dashed(Graphics2D g, Shape shape) {
        g.setColor(Color.WHITE);
        g.setStroke(new BasicStroke((float) STROKE * 1.7f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(shape);
        g.setColor(Ink.BLUE);
        g.setStroke(new BasicStroke(
                (float) STROKE * 0.8f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {16, 9}, 0));
        g.draw(shape);
    }

    private static void arrow(Graphics2D g, Line2D arrow) {
        double angle = Math.atan2(arrow.getY2() - arrow.getY1(), arrow.getX2() - arrow.getX1());
        Path2D head = new Path2D.Double();
        head.moveTo(0, 0);
        head.lineTo(-34, 20);
        head.lineTo(-34, -20);
        head.closePath();
        AffineTransform at = AffineTransform.getTranslateInstance(arrow.getX2(), arrow.getY2());
        at.rotate(angle);
        Shape tip = at.createTransformedShape(head);
        Line2D shaft = new Line2D.Double(
                arrow.getX1(),
                arrow.getY1(),
                arrow.getX2() - 26 * Math.cos(angle),
                arrow.getY2() - 26 * Math.sin(angle));
        g.setColor(Color.WHITE);
        g.setStroke(new BasicStroke(20, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(shaft);
        g.setStroke(new BasicStroke(9, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(tip);
        g.setColor(Ink.BLUE);
        g.fill(tip);
        g.setStroke(new BasicStroke(11, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
        g.draw(shaft);
    }
}

package org.toeline.paint;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.toeline.flight.Flight;
import org.toeline.flight.FlightPoint;
import org.toeline.flight.ShotFigure;
import org.toeline.flight.compare.SetupFigure;
import org.toeline.geometry.ImagePoint;

/** The shots of one setup in one of the two views. */
record ShotTraces(Graphics2D g, ShotPen pen, PlotView view) {

    private static final double RADIUS = 4;
    static final double MIDDLE_RADIUS = 6;
    private static final double CAP = 5;
    /** So much paper around a shot's number. */
    private static final float HALO = 2;

    /** So many and more shots are drawn with smaller points. */
    private static final int MANY = 30;
    /** A flight's points lie closer together than anyone sees its curve bend. */
    private static final double STEP_PX = 4;

    void paint(ShotPicture.Setup setup) {
        Color faint = pen.faint(setup.shots().size());
        for (ShotPicture.Trace shot : setup.shots()) {
            curve(shot).ifPresent(f -> curve(f, faint, pen.stroke(1.3f)));
        }
        double radius = setup.shots().size() < MANY ? RADIUS : RADIUS * 0.6;
        setup.shots().forEach(shot -> view.measured(shot).ifPresent(p -> pen.point(g, p.xPx(), p.yPx(), radius)));
        List<Flight> middle = view.sees(setup.tellsSide()) ? setup.middle() : List.of();
        for (int i = 1; i < middle.size(); i++) {
            curve(
                    middle.get(i),
                    pen.color(),
                    new BasicStroke(1.4f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND, 1, new float[] {0.1f, 4f}, 0));
        }
        middle.stream().findFirst().ifPresent(f -> curve(f, pen.color(), pen.stroke(2.6f)));
        if (view.figure() == ShotFigure.SIDE) {
            half(setup.shots());
        }
        setup.shots().stream().filter(s -> !s.pickedLabel().isEmpty()).forEach(this::picked);
        middle(setup);
    }

    /** From above, an ellipse that holds about half of the shots: by the spread of where they landed. */
    private void half(List<ShotPicture.Trace> shots) {
        List<ImagePoint> landed = shots.stream()
                .flatMap(s -> view
                        .measured(s)
                        .or(() -> curve(s).map(f -> new ImagePoint(view.x(f.landing()), view.y(f.landing()))))
                        .stream())
                .toList();
        LandingEllipse.of(landed).ifPresent(e -> {
            g.setColor(new Color(
                    pen.color().getRed(), pen.color().getGreen(), pen.color().getBlue(), 40));
            g.fill(e);
            g.setColor(pen.color());
            g.setStroke(pen.stroke(1.6f));
            g.draw(e);
        });
    }

    /** The shot's computed flight, if it is to be seen from here. */
    private Optional<Flight> curve(ShotPicture.Trace shot) {
        return shot.computed().filter(f -> view.sees(shot.tellsSide()));
    }

    private void curve(Flight flight, Color color, BasicStroke stroke) {
        Path2D path = new Path2D.Double();
        List<FlightPoint> points = flight.points();
        double lastX = view.x(points.get(0));
        double lastY = view.y(points.get(0));
        path.moveTo(lastX, lastY);
        for (int i = 1; i < points.size(); i++) {
            double x = view.x(points.get(i));
            double y = view.y(points.get(i));
            if (i == points.size() - 1 || Math.abs(x - lastX) + Math.abs(y - lastY) > STEP_PX) {
                path.lineTo(x, y);
                lastX = x;
                lastY = y;
            }
        }
        g.setColor(color);
        g.setStroke(stroke);
        g.draw(path);
    }

    /** The shot whose row is being typed: dark, with its number, which stays within the plot. */
    private void picked(ShotPicture.Trace shot) {
        curve(shot).ifPresent(f -> curve(f, Ink.TEXT, pen.stroke(1.8f)));
        Font font = Ink.bold(11);
        curve(shot).map(f -> f.points().get(f.points().size() / 2)).ifPresent(p -> {
            Rectangle2D plot = g.getClipBounds();
            double x = Math.min(view.x(p), plot.getMaxX() - HALO - Ink.width(shot.pickedLabel(), font));
            double y = Math.max(view.y(p) - 6, plot.getMinY() + HALO + font.getSize2D());
            g.setColor(Ink.PAPER);
            g.setStroke(new BasicStroke(2 * HALO, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            g.draw(Ink.outline(shot.pickedLabel(), font, x, y));
            Ink.text(g, shot.pickedLabel(), font, Ink.TEXT, x, y);
        });
        view.measured(shot).ifPresent(p -> {
            pen.point(g, p.xPx(), p.yPx(), RADIUS);
            g.setColor(Ink.TEXT);
            g.setStroke(new BasicStroke(1.6f));
            g.draw(pen.shape(p.xPx(), p.yPx(), RADIUS + 2));
        });
    }

    /** The middle as a ring, its interval as whiskers: along and, in this view's own figure, across. */
    private void middle(ShotPicture.Setup setup) {
        Optional<SetupFigure> carry = Optional.ofNullable(setup.middles().get(ShotFigure.CARRY));
        Optional<SetupFigure> across = Optional.ofNullable(setup.middles().get(view.figure()));
        if (carry.isEmpty() || across.isEmpty()) {
            return;
        }
        double side = Optional.ofNullable(setup.middles().get(ShotFigure.SIDE))
                .map(SetupFigure::centre)
                .orElse(0.0);
        double along = view.middleAlong(
                carry.get().centre(), side, setup.middle().stream().findFirst());
        double x = view.x(along);
        double y = view.y(across.get().centre());
        whisker(x, y, 0, across.get().halfWidth());
        if (view.figure() == ShotFigure.SIDE) {
            whisker(x, y, 1, carry.get().halfWidth());
        } else {
            double landing = view.x(PlotView.along(carry.get().centre(), side));
            whisker(landing, view.y(0), 1, carry.get().halfWidth());
            ring(landing, view.y(0));
        }
        ring(x, y);
    }

    private void ring(double x, double y) {
        g.setColor(Color.WHITE);
        g.fill(pen.shape(x, y, MIDDLE_RADIUS));
        g.setColor(pen.color());
        g.setStroke(new BasicStroke(2.6f));
        g.draw(pen.shape(x, y, MIDDLE_RADIUS));
    }

    /** @param level 1 for one along, 0 for one across */
    private void whisker(double x, double y, int level, OptionalDouble halfM) {
        if (halfM.isEmpty()) {
            return;
        }
        double half = Math.abs(view.x(halfM.getAsDouble()) - view.x(0));
        double dx = level * half;
        double dy = (1 - level) * half;
        double cx = (1 - level) * CAP;
        double cy = level * CAP;
        for (float width : new float[] {5f, 2.4f}) {
            g.setColor(width > 3 ? Ink.PAPER : pen.color());
            g.setStroke(new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            g.draw(new Line2D.Double(x - dx, y - dy, x + dx, y + dy));
            g.draw(new Line2D.Double(x - dx - cx, y - dy - cy, x - dx + cx, y - dy + cy));
            g.draw(new Line2D.Double(x + dx - cx, y + dy - cy, x + dx + cx, y + dy + cy));
        }
    }
}

package org.toeline.paint;

import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.Arrays;
import java.util.Optional;
import org.toeline.across.AcrossLessons;
import org.toeline.across.ChangeCall;
import org.toeline.across.ChangeWords;
import org.toeline.across.Comparison;
import org.toeline.across.LessonChange;
import org.toeline.advice.Verdict;
import org.toeline.advice.Words;
import org.toeline.ledger.store.rows.StatedFinding.StatedRange;
import org.toeline.reading.ReadingKind;

/**
 * One reading over lessons: for each lesson, from left to right in their order, the range as it was that day, the value with
 * the whisker of its 95 % interval and the verdict's mark; above it the name and the change between the chosen lessons, below it
 * both figures and the trend. Works at any size; the height sets the type.
 */
public final class AcrossRow {

    private static final double GUTTER = 0.62;
    /** By so much the bands of two lessons overlap, so that no light comes through between them. */
    private static final double SEAM = 0.4;

    /** Size of type, and the room for a change's mark, by a row's height. */
    private static final double NAME = 0.165;

    private static final double CALLED = 0.15;
    private static final double BETWEEN = 0.32;
    /** Type is not made smaller than this share of its size to stand in one line. */
    private static final double SMALLEST = 0.85;

    private static final double ABOVE = 0.2;

    private final Words words;
    private final ChangeWords changes;
    private final Comparison comparison;
    /** How wide the longest name with what its change is called is, by a row's height: all rows have one size of type. */
    private final double longest;

    public AcrossRow(Words words, Comparison comparison) {
        this.words = words;
        this.changes = new ChangeWords(words);
        this.comparison = comparison;
        this.longest = comparison.rows().stream()
                .filter(AcrossRow::isKnown)
                .mapToDouble(this::wide)
                .max()
                .orElse(0);
    }

    private double wide(Comparison.Row row) {
        ReadingKind kind = ReadingKind.of(row.across().reading()).orElseThrow();
        double h = 100;
        double called = row.change()
                .map(change -> Ink.width(changes.change(kind, change), called(change, h)) + h * BETWEEN)
                .orElse(0.0);
        return (Ink.width(words.name(kind), Ink.bold(h * NAME)) + called) / h;
    }

    private static Font called(LessonChange change, double h) {
        return change.call() == ChangeCall.REAL ? Ink.bold(h * CALLED) : Ink.plain(h * CALLED);
    }

    /** Whether this program knows the reading: one of a newer program is left out. */
    public static boolean isKnown(Comparison.Row row) {
        return ReadingKind.of(row.across().reading()).isPresent();
    }

    /** Paints into a rectangle of device units on a light ground, and into what {@link #above} asks for; {@code row} is known. */
    public void paint(Graphics2D g, Comparison.Row row, Rectangle2D area) {
        ReadingKind kind = ReadingKind.of(row.across().reading()).orElseThrow();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        double h = area.getHeight();
        double baseline = area.getY() + h * 0.18;
        double above = above(area.getWidth(), h);
        double type = above > 0 ? h : Math.min(h, area.getWidth() / longest);
        row.change().ifPresent(change -> called(g, kind, change, type, area, baseline));
        Font name = Ink.fitting(words.name(kind), Ink.bold(type * NAME), area.getWidth());
        Ink.text(g, words.name(kind), name, Ink.TEXT, area.getX(), baseline - above);
        plot(g, kind, row, plotArea(area));
        below(g, kind, row, area);
    }

    /**
     * So much height must be left above a row of some width and height: there the name stands, where it would be small print beside
     * what the change is called. The same for all rows.
     */
    public double above(double width, double height) {
        return width / longest < SMALLEST * height ? ABOVE * height : 0;
    }

    /** Writes what the change is called, at the right end. */
    private void called(
            Graphics2D g, ReadingKind kind, LessonChange change, double type, Rectangle2D area, double baseline) {
        String text = changes.change(kind, change);
        Font font = Ink.fitting(text, called(change, type), area.getWidth() - type * BETWEEN);
        double x = area.getMaxX() - Ink.width(text, font);
        Ink.text(g, text, font, change.call() == ChangeCall.REAL ? Ink.TEXT : Ink.GREY, x, baseline);
        callMark(g, change.call(), change.difference(), x - type * 0.11, baseline - type * 0.05, type * 0.065);
    }

    /** The part of a row in which lessons stand, so that a header can stand above them. */
    static Rectangle2D plotArea(Rectangle2D area) {
        double h = area.getHeight();
        return new Rectangle2D.Double(
                area.getX() + h * GUTTER, area.getY() + h * 0.28, area.getWidth() - h * GUTTER, h * 0.50);
    }

    /** Where the middle of a lesson's cell is, the {@code index}-th from 0. */
    static double middle(Rectangle2D plot, int index, int lessons) {
        return plot.getX() + (index + 0.5) * plot.getWidth() / lessons;
    }

    /** An arrow for what is real, filled; hollow for what is too close to call; a level bar for what is not shown. */
    static void callMark(Graphics2D g, ChangeCall call, double difference, double x, double y, double r) {
        g.setColor(call == ChangeCall.REAL ? Ink.TEXT : Ink.GREY);
        g.setStroke(new BasicStroke((float) (r * 0.35)));
        if (call == ChangeCall.NOT_SHOWN) {
            g.fill(new Rectangle2D.Double(x - r, y - r * 0.2, 2 * r, r * 0.4));
            return;
        }
        double up = difference > 0 ? -r : r;
        Path2D arrow = new Path2D.Double();
        arrow.moveTo(x, y + up);
        arrow.lineTo(x + r, y - up * 0.8);
        arrow.lineTo(x - r, y - up * 0.8);
        arrow.closePath();
        if (call == ChangeCall.REAL) {
            g.fill(arrow);
        } else {
            g.draw(arrow);
        }
    }

    private void plot(Graphics2D g, ReadingKind kind, Comparison.Row row, Rectangle2D plot) {
        int lessons = comparison.lessons().size();
        double cell = plot.getWidth() / lessons;
        chosen(g, plot, cell);
        g.setColor(Ink.RULE);
        g.setStroke(new BasicStroke(1));
        g.draw(new Line2D.Double(plot.getX(), plot.getMaxY(), plot.getMaxX(), plot.getMaxY()));
        Scale scale = Scale.of(row.across(), plot);
        labels(g, kind, row, scale, plot);
        for (AcrossLessons.Point point : row.across().points()) {
            double x = middle(plot, comparison.indexOf(point.lessonId()), lessons);
            point.finding().range().ifPresent(range -> band(g, range, x, cell, scale, plot.getHeight()));
        }
        trend(g, row.across(), scale, plot);
        double radius = Math.max(plot.getHeight() * 0.045, Math.min(plot.getHeight() * 0.13, cell * 0.36));
        for (AcrossLessons.Point point : row.across().points()) {
            value(g, point, middle(plot, comparison.indexOf(point.lessonId()), lessons), scale, radius);
        }
    }

    private void chosen(Graphics2D g, Rectangle2D plot, double cell) {
        double width = Math.min(cell, plot.getHeight() * 0.7);
        g.setColor(Ink.CHOSEN);
        for (int id : new int[] {comparison.earlier(), comparison.later()}) {
            double x = middle(plot, comparison.indexOf(id), comparison.lessons().size());
            g.fill(new Rectangle2D.Double(x - width / 2, plot.getY(), width, plot.getHeight()));
        }
    }

    /** The recommended limits as they were in the later lesson, at their heights; else what the scale spans. */
    private void labels(Graphics2D g, ReadingKind kind, Comparison.Row row, Scale scale, Rectangle2D plot) {
        Optional<StatedRange> range =
                row.across().point(comparison.later()).flatMap(p -> p.finding().range());
        Font font = Ink.plain(plot.getHeight() * 0.21);
        double[] at = {
            range.map(StatedRange::high).orElse(scale.high),
            range.map(StatedRange::low).orElse(scale.low)
        };
        double last = -1e9;
        for (double value : at) {
            double y = Math.max(plot.getY() + font.getSize2D() * 0.7, scale.y(value) + font.getSize2D() * 0.36);
            if (y - last > font.getSize2D() * 0.95) {
                String text = changes.amount(kind, value);
                Font fitted = Ink.fitting(text, font, plot.getHeight() * 1.12);
                Ink.text(g, text, fitted, Ink.GREY, plot.getX() - Ink.width(text, fitted) - plot.getHeight() * 0.1, y);
                last = y;
            }
        }
    }

    private static void band(Graphics2D g, StatedRange range, double x, double cell, Scale scale, double height) {
        double top = scale.y(range.high());
        g.setColor(Ink.BAND);
        g.fill(new Rectangle2D.Double(x - cell / 2 - SEAM, top, cell + 2 * SEAM, scale.y(range.low()) - top));
        g.setColor(Ink.TEXT);
        double reach = Math.min(cell / 2, height * 0.35);
        g.fill(new Rectangle2D.Double(x - reach, scale.y(range.aim()) - height * 0.01, 2 * reach, height * 0.02));
    }

    private static void value(Graphics2D g, AcrossLessons.Point point, double x, Scale scale, double radius) {
        Optional<Verdict> verdict = point.finding().verdict().flatMap(AcrossRow::verdict);
        double low = scale.y(point.finding().low());
        double high = scale.y(point.finding().high());
        g.setColor(Ink.color(verdict));
        g.setStroke(new BasicStroke((float) Math.max(1, radius * 0.34)));
        g.draw(new Line2D.Double(x, scale.within(low), x, scale.within(high)));
        for (double end : new double[] {low, high}) {
            if (scale.within(end) == end) {
                g.draw(new Line2D.Double(x - radius * 0.7, end, x + radius * 0.7, end));
            }
        }
        Ink.verdictMark(g, verdict, x, scale.within(scale.y(point.finding().value())), radius);
    }

    private static Optional<Verdict> verdict(String id) {
        return Arrays.stream(Verdict.values()).filter(v -> v.id().equals(id)).findFirst();
    }

    private void trend(Graphics2D g, AcrossLessons across, Scale scale, Rectangle2D plot) {
        across.trend().filter(t -> t.call() == ChangeCall.REAL).ifPresent(t -> {
            Path2D line = new Path2D.Double();
            for (int i = 0; i < across.points().size(); i++) {
                double x = middle(
                        plot,
                        comparison.indexOf(across.points().get(i).lessonId()),
                        comparison.lessons().size());
                double y = scale.within(scale.y(t.meanValue() + t.slope() * (i - t.meanX())));
                if (i == 0) {
                    line.moveTo(x, y);
                } else {
                    line.lineTo(x, y);
                }
            }
            float dash = (float) (plot.getHeight() * 0.1);
            g.setColor(Ink.GREY);
            g.setStroke(new BasicStroke(
                    dash * 0.22f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {dash, dash * 0.7f}, 0));
            g.draw(line);
        });
    }

    private void below(Graphics2D g, ReadingKind kind, Comparison.Row row, Rectangle2D area) {
        double baseline = area.getY() + area.getHeight() * 0.94;
        Font font = Ink.plain(area.getHeight() * 0.125);
        String trend = row.across().trend().map(t -> changes.trend(kind, t)).orElse("");
        Font small = Ink.fitting(trend, font, area.getWidth() * 0.52);
        Ink.text(g, trend, small, Ink.GREY, area.getMaxX() - Ink.width(trend, small), baseline);
        String figures = figures(kind, row);
        Ink.text(
                g,
                figures,
                Ink.fitting(figures, font, area.getWidth() * (trend.isEmpty() ? 1 : 0.45)),
                Ink.TEXT,
                area.getX(),
                baseline);
    }

    private String figures(ReadingKind kind, Comparison.Row row) {
        Optional<AcrossLessons.Point> earlier = row.across().point(comparison.earlier());
        Optional<AcrossLessons.Point> later = row.across().point(comparison.later());
        if (earlier.isPresent() && later.isPresent() && row.change().isPresent()) {
            return changes.fromTo(kind, earlier.get().measured(), later.get().measured());
        }
        return later.or(() -> earlier)
                .map(p -> changes.figure(kind, p.measured()))
                .orElse("");
    }

    /** The same in words, for who listens to the screen. */
    public String spoken(Comparison.Row row) {
        ReadingKind kind = ReadingKind.of(row.across().reading()).orElseThrow();
        return words.name(kind) + ". "
                + row.change().map(c -> changes.change(kind, c) + ". ").orElse("")
                + figures(kind, row)
                + row.across().trend().map(t -> ". " + changes.trend(kind, t)).orElse("")
                + ". " + changes.spread(kind, row.across().spread());
    }

    /**
     * From the unit a person reads to device units, upwards. Spans all values and ranges; a whisker that reaches far beyond
     * them is cut off at the edge.
     */
    private record Scale(double low, double high, Rectangle2D plot) {

        private static final double MARGIN = 0.12;

        static Scale of(AcrossLessons across, Rectangle2D plot) {
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            double whiskerLow = low;
            double whiskerHigh = high;
            for (AcrossLessons.Point point : across.points()) {
                double value = point.finding().value();
                low = Math.min(
                        low,
                        Math.min(
                                value,
                                point.finding().range().map(StatedRange::low).orElse(value)));
                high = Math.max(
                        high,
                        Math.max(
                                value,
                                point.finding().range().map(StatedRange::high).orElse(value)));
                whiskerLow = Math.min(whiskerLow, point.finding().low());
                whiskerHigh = Math.max(whiskerHigh, point.finding().high());
            }
            double span = high > low ? high - low : Math.max(1e-6, whiskerHigh - whiskerLow);
            return new Scale(
                    Math.max(low - span, Math.min(low - span * MARGIN, whiskerLow)),
                    Math.min(high + span, Math.max(high + span * MARGIN, whiskerHigh)),
                    plot);
        }

        double y(double value) {
            return plot.getMaxY() - (value - low) / (high - low) * plot.getHeight();
        }

        double within(double y) {
            return Math.max(plot.getY(), Math.min(plot.getMaxY(), y));
        }
    }
}

package org.toeline.paint;

import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.toeline.advice.Finding;
import org.toeline.advice.Range;
import org.toeline.advice.Verdict;
import org.toeline.advice.Words;
import org.toeline.reading.Reading;
import org.toeline.reading.ReadingKind;

/**
 * One finding as a band: its name and figure above, then the recommended range as a bar with the aim as a tick, the
 * value with the whisker of its 95 % interval, and the verdict in words below. Works at any size; the height sets the
 * type.
 */
public final class BandGauge {

    private static final double MARGIN_SHARE = 0.06;
    /** Size of the type of name and figure, by a gauge's height. */
    private static final double HEAD = 0.2;
    /** As wide as most figures, with the space before it. */
    private static final String FIGURE = " +88.8 ± 88.8 cm";

    private final Words words;

    public BandGauge(Words words) {
        this.words = words;
    }

    /**
     * How wide the longest name of some readings with a figure beside it is, by a gauge's height: gauges below each other have one
     * size of type, whatever their figures are.
     */
    public double longest(Collection<ReadingKind> kinds) {
        double h = 100;
        return kinds.stream()
                                .mapToDouble(kind -> Ink.width(words.name(kind), Ink.bold(h * HEAD)))
                                .max()
                                .orElse(0)
                        / h
                + Ink.width(FIGURE, Ink.bold(h * HEAD)) / h;
    }

    /** What stands above another in a gauge, each within its own share of the height. */
    public enum Part {
        /** Name and figure. */
        HEAD(0, 0.3),
        /** The band and the value with its whisker. */
        SCALE(0.3, 0.7),
        /** The verdict and what is recommended. */
        BELOW(0.7, 1);

        private final double from;
        private final double to;

        Part(double from, double to) {
            this.from = from;
            this.to = to;
        }

        /** Where it lies in a gauge. */
        public Rectangle2D in(Rectangle2D area) {
            return new Rectangle2D.Double(
                    area.getX(),
                    area.getY() + from * area.getHeight(),
                    area.getWidth(),
                    (to - from) * area.getHeight());
        }
    }

    /**
     * What a part of a gauge shows: parts whose looks are equal are painted alike, to a quarter of a unit.
     *
     * @param said   the words on it
     * @param places where its marks stand, in quarters of a unit
     */
    public record Look(List<String> said, Optional<Verdict> verdict, List<Long> places) {}

    /**
     * Paints into a rectangle of device units on a light ground; the ground itself is left as it is.
     *
     * @param longest that of all gauges it stands among
     */
    public void paint(Graphics2D g, Finding finding, Rectangle2D area, double longest) {
        for (Part part : Part.values()) {
            paint(g, part, finding, area, longest);
        }
    }

    /** @param area of the whole gauge */
    public void paint(Graphics2D g, Part part, Finding finding, Rectangle2D area, double longest) {
        switch (part) {
            case HEAD -> head(g, finding, area, longest);
            case SCALE ->
                scale(
                        g,
                        finding,
                        Extent.of(finding),
                        new Rectangle2D.Double(
                                area.getX(),
                                area.getY() + area.getHeight() * 0.34,
                                area.getWidth(),
                                area.getHeight() * 0.32));
            case BELOW -> below(g, finding, area);
        }
    }

    /** What is painted of a part in so much width. */
    public Look look(Part part, Finding finding, double width) {
        return switch (part) {
            case HEAD -> new Look(List.of(words.name(finding.kind()), shown(finding)), Optional.empty(), List.of());
            case SCALE -> new Look(List.of(), finding.verdict(), places(finding, width));
            case BELOW ->
                new Look(
                        Stream.concat(
                                        Stream.of(words.verdict(finding)),
                                        finding.range().map(words::recommendedShort).stream())
                                .toList(),
                        finding.verdict(),
                        List.of());
        };
    }

    private static List<Long> places(Finding finding, double width) {
        Extent extent = Extent.of(finding);
        Reading reading = finding.reading();
        DoubleStream of = DoubleStream.of(reading.low(), reading.value(), reading.high());
        DoubleStream band = finding.range()
                .map(r -> DoubleStream.of(r.low(), r.aim(), r.high()))
                .orElse(DoubleStream.empty());
        return DoubleStream.concat(of, band)
                .mapToObj(p -> Math.round(4 * extent.at(p, width)))
                .toList();
    }

    private void head(Graphics2D g, Finding finding, Rectangle2D area, double longest) {
        Font head = Ink.bold(HEAD * Math.min(area.getHeight(), area.getWidth() / longest));
        double baseline = area.getY() + area.getHeight() * 0.22;
        String name = words.name(finding.kind());
        Ink.text(g, name, head, Ink.TEXT, area.getX(), baseline);
        String shown = shown(finding);
        Font figure = Ink.fitting(shown, head, area.getWidth() - Ink.width(name, head) - head.getSize2D() / 2);
        Ink.text(g, shown, figure, Ink.TEXT, area.getMaxX() - Ink.width(shown, figure), baseline);
    }

    /** What stands at the two ends of a gauge and whether its lower end is on the right, as the picture beside it runs. */
    public record Ends(String low, String high, boolean turned) {}

    /** Paints the gauge of one thing below its picture: name and figure, the band, and what its two ends mean. */
    public void paintBelow(Graphics2D g, Finding finding, String name, Ends ends, Rectangle2D area) {
        double type = area.getHeight() * 0.19;
        double baseline = area.getY() + type;
        String shown = shown(finding);
        Font figure = Ink.bold(type);
        double left = area.getMaxX() - Ink.width(shown, figure);
        Ink.text(
                g,
                name,
                Ink.fitting(name, Ink.bold(type), left - area.getX() - type * 2),
                Ink.TEXT,
                area.getX(),
                baseline);
        Ink.text(g, shown, figure, Ink.TEXT, left, baseline);
        Ink.verdictMark(g, finding.verdict(), left - type * 0.7, baseline - type * 0.36, type * 0.36);
        scale(
                g,
                finding,
                Extent.of(finding),
                new Rectangle2D.Double(
                        area.getX(), area.getY() + area.getHeight() * 0.32, area.getWidth(), area.getHeight() * 0.32),
                ends.turned);
        Font plain = Ink.plain(type * 0.92);
        double below = area.getMaxY() - type * 0.2;
        String one = "◂ " + (ends.turned ? ends.high : ends.low);
        String other = (ends.turned ? ends.low : ends.high) + " ▸";
        double right = area.getMaxX() - Ink.width(other, plain);
        Ink.text(g, one, plain, Ink.TEXT, area.getX(), below);
        Ink.text(g, other, plain, Ink.TEXT, right, below);
        double from = area.getX() + Ink.width(one, plain) + type;
        finding.range().ifPresent(range -> {
            String text = words.recommendedShort(range);
            Font fits = Ink.fitting(text, plain, right - type - from);
            Ink.text(g, text, fits, Ink.GREY, (from + right - type) / 2 - Ink.width(text, fits) / 2, below);
        });
    }

    /** Paints a line of a list: a number, the name, the figure with its mark. */
    public void paintNumbered(Graphics2D g, int number, String name, Finding finding, Rectangle2D area) {
        double type = area.getHeight() * 0.62;
        double baseline = area.getY() + area.getHeight() * 0.7;
        StillOverlay.badge(g, Integer.toString(number), area.getX() + 24, area.getCenterY());
        String shown = shown(finding);
        Font bold = Ink.bold(type);
        double left = area.getMaxX() - Ink.width(shown, bold);
        Ink.text(g, shown, bold, Ink.TEXT, left, baseline);
        Ink.verdictMark(g, finding.verdict(), left - type * 0.8, baseline - type * 0.36, type * 0.36);
        Ink.text(
                g,
                name,
                Ink.fitting(name, Ink.plain(type), left - area.getX() - 110),
                Ink.TEXT,
                area.getX() + 66,
                baseline);
    }

    /** The figure with its interval, or that none can be told. */
    private String shown(Finding finding) {
        return finding.verdict().filter(v -> v == Verdict.CANNOT_TELL).isPresent() ? "?" : words.figure(finding);
    }

    private void below(Graphics2D g, Finding finding, Rectangle2D area) {
        double baseline = area.getY() + area.getHeight() * 0.92;
        String verdict = words.verdict(finding);
        Font font = Ink.bold(area.getHeight() * 0.165);
        double radius = area.getHeight() * 0.06;
        Ink.verdictMark(g, finding.verdict(), area.getX() + radius * 1.3, baseline - radius, radius);
        Ink.text(g, verdict, font, Ink.TEXT, area.getX() + radius * 3.4, baseline);
        double left = area.getX() + radius * 5 + Ink.width(verdict, font);
        finding.range().ifPresent(range -> {
            String text = words.recommendedShort(range);
            Font small = Ink.fitting(text, Ink.plain(area.getHeight() * 0.165), area.getMaxX() - left);
            Ink.text(g, text, small, Ink.GREY, area.getMaxX() - Ink.width(text, small), baseline);
        });
    }

    /** A finding with what it is called among others of the same reading. */
    public record Row(String label, Finding finding) {}

    /** Paints findings of one reading below each other on one scale, each with its label and figure; at least one. */
    public void paintRows(Graphics2D g, String name, List<Row> rows, Rectangle2D area) {
        double title = area.getHeight() / (1 + 1.37 * rows.size());
        double row = (area.getHeight() - title) / rows.size();
        Ink.text(
                g,
                name,
                Ink.fitting(name, Ink.bold(title * 0.52), area.getWidth() * 0.56),
                Ink.TEXT,
                area.getX(),
                area.getY() + title * 0.6);
        rows.get(0).finding().range().ifPresent(range -> {
            String text = words.recommendedShort(range);
            Font font = Ink.fitting(text, Ink.plain(title * 0.48), area.getWidth() * 0.42);
            Ink.text(g, text, font, Ink.GREY, area.getMaxX() - Ink.width(text, font), area.getY() + title * 0.6);
        });
        Extent extent = rows.stream()
                .map(r -> Extent.of(r.finding()))
                .reduce(Extent::with)
                .orElseThrow();
        for (int i = 0; i < rows.size(); i++) {
            Finding finding = rows.get(i).finding();
            double top = area.getY() + title + i * row;
            Font font = Ink.fitting(rows.get(i).label(), Ink.plain(row * 0.38), area.getWidth() * 0.15);
            Ink.text(g, rows.get(i).label(), font, Ink.TEXT, area.getX(), top + row * 0.55);
            scale(
                    g,
                    finding,
                    extent,
                    new Rectangle2D.Double(
                            area.getX() + area.getWidth() * 0.17, top + row * 0.1, area.getWidth() * 0.51, row * 0.64));
            String shown = shown(finding);
            Font bold = Ink.fitting(shown, Ink.bold(row * 0.38), area.getWidth() * 0.29);
            Ink.text(g, shown, bold, Ink.TEXT, area.getMaxX() - Ink.width(shown, bold), top + row * 0.55);
        }
    }

    /** What a scale reaches over, in the reading's inside unit. */
    private record Extent(double low, double high) {

        static Extent of(Finding finding) {
            Reading reading = finding.reading();
            return new Extent(
                    Math.min(reading.low(), finding.range().map(Range::low).orElse(reading.low())),
                    Math.max(reading.high(), finding.range().map(Range::high).orElse(reading.high())));
        }

        /** How far from the left a value stands in so much width. */
        double at(double value, double width) {
            double margin = (high - low) * MARGIN_SHARE;
            return (value - low + margin) * width / (high - low + 2 * margin);
        }

        Extent with(Extent other) {
            return new Extent(Math.min(low, other.low), Math.max(high, other.high));
        }
    }

    private static void scale(Graphics2D g, Finding finding, Extent extent, Rectangle2D area) {
        scale(g, finding, extent, area, false);
    }

    private static void scale(Graphics2D g, Finding finding, Extent extent, Rectangle2D area, boolean turned) {
        Reading reading = finding.reading();
        DoubleUnaryOperator x = value -> turned
                ? area.getMaxX() - extent.at(value, area.getWidth())
                : area.getX() + extent.at(value, area.getWidth());
        double middle = area.getCenterY();
        double thick = area.getHeight();
        g.setColor(Ink.RULE);
        g.fill(new Rectangle2D.Double(area.getX(), middle - thick * 0.03, area.getWidth(), thick * 0.06));
        finding.range().ifPresent(range -> band(g, range, area, x));
        double x1 = x.applyAsDouble(reading.low());
        double x2 = x.applyAsDouble(reading.high());
        g.setColor(Ink.color(finding.verdict()));
        g.setStroke(new BasicStroke((float) (thick * 0.10)));
        g.draw(new Line2D.Double(x1, middle, x2, middle));
        g.draw(new Line2D.Double(x1, middle - thick * 0.2, x1, middle + thick * 0.2));
        g.draw(new Line2D.Double(x2, middle - thick * 0.2, x2, middle + thick * 0.2));
        Ink.verdictMark(g, finding.verdict(), x.applyAsDouble(reading.value()), middle, thick * 0.30);
    }

    private static void band(Graphics2D g, Range range, Rectangle2D area, DoubleUnaryOperator x) {
        double a = x.applyAsDouble(range.low());
        double b = x.applyAsDouble(range.high());
        double thick = area.getHeight();
        g.setColor(Ink.BAND);
        g.fill(new RoundRectangle2D.Double(
                Math.min(a, b), area.getY() + thick * 0.1, Math.abs(b - a), thick * 0.8, thick * 0.2, thick * 0.2));
        double aim = x.applyAsDouble(range.aim());
        g.setColor(Ink.TEXT);
        g.fill(new Rectangle2D.Double(aim - thick * 0.03, area.getY() - thick * 0.02, thick * 0.06, thick * 1.04));
    }
}

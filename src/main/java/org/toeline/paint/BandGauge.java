package org.toeline.paint;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.List;
import org.toeline.advice.Finding;
import org.toeline.advice.Range;
import org.toeline.advice.Verdict;
import org.toeline.advice.Words;
import org.toeline.reading.Reading;

/**
 * One finding as a band: its name and figure above, then the recommended range as a bar with the aim as a tick, the
 * value with the whisker of its 95 % interval, and the verdict in words below. Works at any size; the height sets the
 * type.
 */
public final class BandGauge {

    static final Color BAND = new Color(0xBFD9EA);
    private static final double MARGIN_SHARE = 0.06;

    private final Words words;

    public BandGauge(Words words) {
        this.words = words;
    }

    /** Paints into a rectangle of device units on a light ground; the ground itself is left as it is. */
    public void paint(Graphics2D g, Finding finding, Rectangle2D area) {
        Font name = Ink.fitting(words.name(finding.kind()), Ink.bold(area.getHeight() * 0.20), area.getWidth() * 0.58);
        double baseline = area.getY() + area.getHeight() * 0.22;
        Ink.text(g, words.name(finding.kind()), name, Ink.TEXT, area.getX(), baseline);
        String shown = shown(finding);
        Font figure = Ink.fitting(shown, Ink.bold(area.getHeight() * 0.22), area.getWidth() * 0.40);
        Ink.text(g, shown, figure, Ink.TEXT, area.getMaxX() - Ink.width(shown, figure), baseline);
        scale(
                g,
                finding,
                Extent.of(finding),
                new Rectangle2D.Double(
                        area.getX(), area.getY() + area.getHeight() * 0.34, area.getWidth(), area.getHeight() * 0.32));
        below(g, finding, area);
    }

    /**
     * Paints the gauge of one thing alone, higher than wide: the name, the band, the figure with its verdict's mark, and
     * what is recommended, below each other.
     */
    public void paintSmall(Graphics2D g, Finding finding, Rectangle2D area) {
        double height = area.getHeight();
        double width = area.getWidth();
        String name = words.name(finding.kind());
        Ink.text(
                g,
                name,
                Ink.fitting(name, Ink.bold(height * 0.18), width),
                Ink.TEXT,
                area.getX(),
                area.getY() + height * 0.16);
        scale(
                g,
                finding,
                Extent.of(finding),
                new Rectangle2D.Double(area.getX(), area.getY() + height * 0.26, width, height * 0.26));
        String shown = shown(finding);
        double radius = height * 0.075;
        Font font = Ink.fitting(shown, Ink.bold(height * 0.22), width - radius * 3.4);
        double baseline = area.getY() + height * 0.76;
        Ink.verdictMark(g, finding.verdict(), area.getX() + radius * 1.3, baseline - radius, radius);
        Ink.text(g, shown, font, Ink.TEXT, area.getX() + radius * 3.4, baseline);
        finding.range().ifPresent(range -> {
            String text = words.recommendedShort(range);
            Ink.text(
                    g,
                    text,
                    Ink.fitting(text, Ink.plain(height * 0.165), width),
                    Ink.GREY,
                    area.getX(),
                    area.getY() + height * 0.97);
        });
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
    public void paintRows(Graphics2D g, List<Row> rows, Rectangle2D area) {
        double title = area.getHeight() / (1 + 1.37 * rows.size());
        double row = (area.getHeight() - title) / rows.size();
        String name = words.name(rows.get(0).finding().kind());
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

        Extent with(Extent other) {
            return new Extent(Math.min(low, other.low), Math.max(high, other.high));
        }
    }

    private static void scale(Graphics2D g, Finding finding, Extent extent, Rectangle2D area) {
        Reading reading = finding.reading();
        double margin = (extent.high - extent.low) * MARGIN_SHARE;
        double from = extent.low - margin;
        double perUnit = area.getWidth() / (extent.high - extent.low + 2 * margin);
        double middle = area.getCenterY();
        double thick = area.getHeight();
        g.setColor(Ink.RULE);
        g.fill(new Rectangle2D.Double(area.getX(), middle - thick * 0.03, area.getWidth(), thick * 0.06));
        finding.range().ifPresent(range -> band(g, range, area, from, perUnit));
        double x = area.getX() + (reading.value() - from) * perUnit;
        double x1 = area.getX() + (reading.low() - from) * perUnit;
        double x2 = area.getX() + (reading.high() - from) * perUnit;
        g.setColor(Ink.color(finding.verdict()));
        g.setStroke(new BasicStroke((float) (thick * 0.10)));
        g.draw(new Line2D.Double(x1, middle, x2, middle));
        g.draw(new Line2D.Double(x1, middle - thick * 0.2, x1, middle + thick * 0.2));
        g.draw(new Line2D.Double(x2, middle - thick * 0.2, x2, middle + thick * 0.2));
        Ink.verdictMark(g, finding.verdict(), x, middle, thick * 0.30);
    }

    private static void band(Graphics2D g, Range range, Rectangle2D area, double from, double perUnit) {
        double x = area.getX() + (range.low() - from) * perUnit;
        double width = (range.high() - range.low()) * perUnit;
        double thick = area.getHeight();
        g.setColor(BAND);
        g.fill(new RoundRectangle2D.Double(x, area.getY() + thick * 0.1, width, thick * 0.8, thick * 0.2, thick * 0.2));
        double aim = area.getX() + (range.aim() - from) * perUnit;
        g.setColor(Ink.TEXT);
        g.fill(new Rectangle2D.Double(aim - thick * 0.03, area.getY() - thick * 0.02, thick * 0.06, thick * 1.04));
    }
}

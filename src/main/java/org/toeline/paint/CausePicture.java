package org.toeline.paint;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.CubicCurve2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.toeline.advice.CauseChain.Link;
import org.toeline.advice.CauseGraph;
import org.toeline.advice.CauseGraph.Node;
import org.toeline.advice.CauseGraph.Role;
import org.toeline.advice.CauseWords;
import org.toeline.advice.Verdict;
import org.toeline.advice.Words;
import org.toeline.reading.ReadingKind;

/**
 * The small picture of the chain of causes: a box a reading, with its figure and the mark of its verdict, and arrows from
 * causes down to what may follow. The one to change first has a thick frame, what may follow from it a thin one of its colour.
 */
public final class CausePicture implements Drawing {

    private static final double BOX_WIDTH = 320;
    private static final double BOX_HEIGHT = 74;
    private static final double DOWN = 34;
    private static final double BETWEEN = 24;
    private static final double MARGIN = 10;

    private final CauseGraph graph;
    private final Words words;
    private final Map<ReadingKind, Rectangle2D> boxes = new EnumMap<>(ReadingKind.class);
    private final double width;
    private final double height;

    public CausePicture(CauseGraph graph, Words words) {
        this.graph = graph;
        this.words = words;
        List<List<Node>> rows = new ArrayList<>();
        for (Node node : graph.nodes()) {
            while (rows.size() <= node.step()) {
                rows.add(new ArrayList<>());
            }
            rows.get(node.step()).add(node);
        }
        int most = rows.stream().mapToInt(List::size).max().orElse(1);
        this.width = 2 * MARGIN + most * BOX_WIDTH + (most - 1) * BETWEEN;
        this.height = 2 * MARGIN + Math.max(1, rows.size()) * (BOX_HEIGHT + DOWN) - DOWN;
        for (int r = 0; r < rows.size(); r++) {
            int count = rows.get(r).size();
            double left = (width - count * BOX_WIDTH - (count - 1) * BETWEEN) / 2;
            for (int c = 0; c < count; c++) {
                boxes.put(
                        rows.get(r).get(c).kind(),
                        new Rectangle2D.Double(
                                left + c * (BOX_WIDTH + BETWEEN),
                                MARGIN + r * (BOX_HEIGHT + DOWN),
                                BOX_WIDTH,
                                BOX_HEIGHT));
            }
        }
    }

    /** Where each reading stands, for pointing at it. */
    public Map<ReadingKind, Rectangle2D> boxes() {
        return Collections.unmodifiableMap(boxes);
    }

    @Override
    public double width() {
        return width;
    }

    @Override
    public double height() {
        return height;
    }

    @Override
    public void paint(Graphics2D g) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setColor(Ink.PAPER);
        g.fill(new Rectangle2D.Double(0, 0, width, height));
        graph.edges().forEach(e -> arrow(g, e));
        graph.nodes().forEach(n -> box(g, n));
    }

    private void arrow(Graphics2D g, Link link) {
        Rectangle2D from = Objects.requireNonNull(boxes.get(link.cause()));
        Rectangle2D to = Objects.requireNonNull(boxes.get(link.effect()));
        double x1 = from.getCenterX();
        double x2 = to.getCenterX();
        double y1 = from.getMaxY();
        double y2 = to.getMinY() - 3;
        g.setColor(runs(link) ? Ink.VERMILION : Ink.GREY);
        g.setStroke(new BasicStroke(runs(link) ? 3 : 1.5f));
        double bend = (y2 - y1) / 2;
        g.draw(new CubicCurve2D.Double(x1, y1, x1, y1 + bend, x2, y2 - 8 - bend, x2, y2 - 8));
        Path2D head = new Path2D.Double();
        head.moveTo(x2, y2);
        head.lineTo(x2 - 6, y2 - 12);
        head.lineTo(x2 + 6, y2 - 12);
        head.closePath();
        g.fill(head);
    }

    /** Whether both ends belong to the one chain that is to be undone. */
    private boolean runs(Link link) {
        return graph.nodes().stream()
                        .filter(n -> n.role() != Role.BESIDE)
                        .filter(n -> n.kind() == link.cause() || n.kind() == link.effect())
                        .count()
                == 2;
    }

    private void box(Graphics2D g, Node node) {
        Rectangle2D at = Objects.requireNonNull(boxes.get(node.kind()));
        RoundRectangle2D frame =
                new RoundRectangle2D.Double(at.getX(), at.getY(), at.getWidth(), at.getHeight(), 14, 14);
        g.setColor(Color.WHITE);
        g.fill(frame);
        g.setColor(node.role() == Role.BESIDE ? Ink.GREY : Ink.VERMILION);
        g.setStroke(new BasicStroke(node.role() == Role.FIRST ? 5 : node.role() == Role.MAY_FOLLOW ? 2.5f : 1));
        g.draw(frame);
        String name = words.name(node.kind());
        Font bold = Ink.fitting(name, Ink.bold(19), at.getWidth() - 24);
        Ink.text(g, name, bold, Ink.TEXT, at.getX() + 12, at.getY() + 28);
        boolean untold =
                node.finding().verdict().filter(v -> v == Verdict.CANNOT_TELL).isPresent();
        String figure = untold ? words.verdict(node.finding()) : words.figure(node.finding());
        Ink.verdictMark(g, node.finding().verdict(), at.getX() + 22, at.getY() + 52, 8);
        Ink.text(
                g,
                figure,
                Ink.fitting(figure, Ink.plain(19), at.getWidth() - 52),
                Ink.TEXT,
                at.getX() + 40,
                at.getY() + 59);
    }

    @Override
    public String title() {
        return words.text("handout.chain");
    }

    /** Every step in words. */
    @Override
    public String described() {
        StringBuilder said = new StringBuilder();
        graph.edges()
                .forEach(e -> said.append(words.name(e.cause()))
                        .append(" → ")
                        .append(words.name(e.effect()))
                        .append(": ")
                        .append(new CauseWords(words).step(e, graph.out(e.cause())))
                        .append(' ')
                        .append(new CauseWords(words).grounds(e))
                        .append(' '));
        return said.toString().strip();
    }
}

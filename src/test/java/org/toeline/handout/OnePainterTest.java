package org.toeline.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.geom.PathIterator;
import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import javafx.embed.swing.SwingFXUtils;
import javafx.scene.canvas.Canvas;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.jfree.fx.FXGraphics2D;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;
import org.toeline.advice.Finding;
import org.toeline.paint.Ink;
import org.toeline.paint.OverlayPainter;
import org.toeline.paint.OverlayShapes;
import org.toeline.paint.OverlayShapes.Kind;
import org.toeline.paint.OverlayShapes.Line;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Screen, PNG, PDF and SVG come from one painter: in each, the line of the first thing runs where its landmarks are. */
class OnePainterTest {

    /** SVG is written with two decimals, PDF with about four. */
    private static final double ROUNDED = 0.02;

    /** The line that shows the first thing, as it falls on the still. */
    private static List<Point2D> line(Handout handout) {
        StillPicture picture = handout.still().picture().orElseThrow();
        Finding first = handout.assessment().advice().first().orElseThrow().finding();
        Kind shows = OverlayShapes.shows(first.kind());
        Line line = OverlayShapes.of(handout.assessment(), picture.view()).stream()
                .filter(l -> l.kind() == shows)
                .findFirst()
                .orElseThrow();
        List<Point2D> points = new ArrayList<>();
        double[] at = new double[6];
        for (PathIterator i =
                        OverlayPainter.path(line, picture.picture().toDevice()).getPathIterator(null);
                !i.isDone();
                i.next()) {
            i.currentSegment(at);
            points.add(new Point2D.Double(at[0], at[1]));
        }
        return points;
    }

    private static boolean same(List<Point2D> a, List<Point2D> b, double within) {
        if (a.size() != b.size()) {
            return false;
        }
        for (int i = 0; i < a.size(); i++) {
            if (a.get(i).distance(b.get(i)) > within) {
                return false;
            }
        }
        return true;
    }

    @Test
    void svgHasTheLine() throws Exception {
        Handout handout = Samples.handout("before");
        Document svg = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(PictureFormat.SVG.of(handout.still())));
        List<List<Point2D>> drawn = new ArrayList<>();
        NodeList paths = svg.getElementsByTagName("path");
        for (int i = 0; i < paths.getLength(); i++) {
            drawn.add(numbers(((Element) paths.item(i)).getAttribute("d")));
        }
        NodeList lines = svg.getElementsByTagName("line");
        for (int i = 0; i < lines.getLength(); i++) {
            Element e = (Element) lines.item(i);
            drawn.add(numbers(e.getAttribute("x1") + " " + e.getAttribute("y1") + " " + e.getAttribute("x2") + " "
                    + e.getAttribute("y2")));
        }
        assertThat(drawn)
                .as("halo and line")
                .filteredOn(d -> same(d, line(handout), ROUNDED))
                .hasSize(2);
    }

    private static List<Point2D> numbers(String text) {
        List<Double> all = Pattern.compile("-?[0-9.]+")
                .matcher(text)
                .results()
                .map(MatchResult::group)
                .map(Double::valueOf)
                .toList();
        List<Point2D> points = new ArrayList<>();
        for (int i = 0; i + 1 < all.size(); i += 2) {
            points.add(new Point2D.Double(all.get(i), all.get(i + 1)));
        }
        return points;
    }

    @Test
    void pdfHasTheLine() throws Exception {
        Handout handout = Samples.handout("before");
        Still still = handout.still();
        try (PDDocument pdf = Loader.loadPDF(handout.pdf(Paper.A4))) {
            Strokes strokes = new Strokes(pdf.getPage(0));
            strokes.processPage(pdf.getPage(0));
            // The still's frame on the page, from its own background: the first thing that is filled.
            double scale = strokes.still.getWidth() / still.width();
            List<Point2D> expected = line(handout).stream()
                    .map(p -> (Point2D) new Point2D.Double(
                            strokes.still.getMinX() + scale * p.getX(), strokes.still.getMaxY() - scale * p.getY()))
                    .toList();
            assertThat(scale).isBetween(0.2, 0.6);
            assertThat(strokes.lines)
                    .as("halo and line")
                    .filteredOn(d -> same(d, expected, ROUNDED))
                    .hasSize(2);
        }
    }

    @Test
    void pngAndScreenHaveTheLine() throws Exception {
        Handout handout = Samples.handout("before");
        Still still = handout.still();
        hasLine(ImageIO.read(new ByteArrayInputStream(PictureFormat.PNG.of(still))), handout);
        FxToolkit.registerPrimaryStage();
        BufferedImage screen = WaitForAsyncUtils.asyncFx(() -> {
                    Canvas canvas = new Canvas(still.width(), still.height());
                    still.paint(new FXGraphics2D(canvas.getGraphicsContext2D()));
                    return SwingFXUtils.fromFXImage(canvas.snapshot(null, null), null);
                })
                .get();
        assertThat(screen.getWidth()).isEqualTo((int) still.width());
        hasLine(screen, handout);
    }

    /** Vermilion along the line and none a little beside it. */
    private static void hasLine(BufferedImage image, Handout handout) {
        List<Point2D> line = line(handout);
        Point2D a = line.get(0);
        Point2D b = line.get(1);
        double length = a.distance(b);
        for (double f : new double[] {0.1, 0.25, 0.4}) {
            double x = a.getX() + f * (b.getX() - a.getX());
            double y = a.getY() + f * (b.getY() - a.getY());
            assertThat(off(image, x, y)).as("at " + f).isLessThan(40);
            double besideX = x - 14 * (b.getY() - a.getY()) / length;
            double besideY = y + 14 * (b.getX() - a.getX()) / length;
            assertThat(off(image, besideX, besideY)).as("beside " + f).isGreaterThan(80);
        }
    }

    private static int off(BufferedImage image, double x, double y) {
        Color c = new Color(image.getRGB((int) x, (int) y));
        return Math.abs(c.getRed() - Ink.VERMILION.getRed())
                + Math.abs(c.getGreen() - Ink.VERMILION.getGreen())
                + Math.abs(c.getBlue() - Ink.VERMILION.getBlue());
    }

    /** What a page strokes, in its own points. */
    private static final class Strokes extends PDFGraphicsStreamEngine {

        private final List<List<Point2D>> lines = new ArrayList<>();
        private List<Point2D> path = new ArrayList<>();
        private java.awt.geom.Rectangle2D still = new java.awt.geom.Rectangle2D.Double();

        Strokes(PDPage page) {
            super(page);
        }

        @Override
        public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
            path.addAll(List.of(p0, p1, p2, p3));
        }

        @Override
        public void moveTo(float x, float y) {
            path.add(new Point2D.Double(x, y));
        }

        @Override
        public void lineTo(float x, float y) {
            path.add(new Point2D.Double(x, y));
        }

        @Override
        public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
            path.add(new Point2D.Double(x3, y3));
        }

        @Override
        public Point2D getCurrentPoint() {
            return path.isEmpty() ? new Point2D.Double() : path.get(path.size() - 1);
        }

        @Override
        public void strokePath() {
            lines.add(path);
            path = new ArrayList<>();
        }

        @Override
        public void fillPath(int rule) {
            if (still.isEmpty()) {
                java.awt.geom.Rectangle2D box = new java.awt.geom.Rectangle2D.Double(
                        path.get(0).getX(), path.get(0).getY(), 0, 0);
                path.forEach(box::add);
                still = box;
            }
            path = new ArrayList<>();
        }

        @Override
        public void fillAndStrokePath(int rule) {
            path = new ArrayList<>();
        }

        @Override
        public void endPath() {
            path = new ArrayList<>();
        }

        @Override
        public void closePath() {}

        @Override
        public void clip(int rule) {}

        @Override
        public void drawImage(PDImage image) throws IOException {}

        @Override
        public void shadingFill(COSName name) {}
    }
}

package org.toeline.paint;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.util.Matrix;
import org.toeline.across.Comparison;
import org.toeline.advice.Words;

/**
 * What changed across lessons, to be kept or sent: the stills side by side, then every reading as a row, by the painter that
 * the screen uses; as one picture, or as pages whose lines and letters are drawn, not rastered. A pure function; any thread.
 *
 * @param title    who and with what
 * @param sentence which readings really changed
 * @param days     what each lesson of the comparison is called, such as its day, in their order
 * @param stills   may be empty
 */
public record AcrossPlot(
        String title,
        String sentence,
        List<String> days,
        List<ComparedStill> stills,
        Comparison comparison,
        Words words) {

    private static final double WIDTH = 1240;
    private static final double ROW = 132;
    private static final double GAP = 26;
    private static final double MARGIN = 48;
    private static final int MOST_BESIDE = 3;
    private static final double STILL_SPACE = 14;
    private static final float PAGE_MARGIN = 32;

    public AcrossPlot {
        days = List.copyOf(days);
        stills = List.copyOf(stills);
        if (days.size() != comparison.lessons().size()) {
            throw new IllegalArgumentException(
                    days.size() + " days for " + comparison.lessons().size() + " lessons");
        }
    }

    /** A part that is not broken over two pages. */
    private record Block(double height, Painting painting) {

        private interface Painting {
            void paint(Graphics2D g, Rectangle2D area);
        }
    }

    private List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(text(title, Ink.bold(34), Ink.TEXT));
        blocks.add(text(sentence, Ink.plain(24), Ink.TEXT));
        stillRows(blocks);
        blocks.add(new Block(34, (g, area) -> AcrossHeader.paint(g, comparison, days, area, ROW)));
        AcrossRow painter = new AcrossRow(words, comparison);
        comparison.rows().stream()
                .filter(AcrossRow::isKnown)
                .forEach(row -> blocks.add(new Block(ROW, (g, area) -> painter.paint(g, row, area))));
        return blocks;
    }

    private static Block text(String text, Font font, Color color) {
        TextBlock block = TextBlock.of(text, font, WIDTH);
        return new Block(block.height(), (g, area) -> block.paint(g, color, area.getX(), area.getY()));
    }

    private void stillRows(List<Block> blocks) {
        int beside = Math.max(2, Math.min(MOST_BESIDE, stills.size()));
        double width = (WIDTH - (beside - 1) * STILL_SPACE) / beside;
        for (int from = 0; from < stills.size(); from += beside) {
            List<ComparedStill> row = stills.subList(from, Math.min(stills.size(), from + beside));
            blocks.add(new Block(width * row.get(0).shape(), (g, area) -> {
                for (int i = 0; i < row.size(); i++) {
                    row.get(i)
                            .paint(
                                    g,
                                    new Rectangle2D.Double(
                                            area.getX() + i * (width + STILL_SPACE),
                                            area.getY(),
                                            width,
                                            area.getHeight()));
                }
            }));
        }
    }

    private static double paint(Graphics2D g, List<Block> blocks, double x, double top) {
        double y = top;
        for (Block block : blocks) {
            block.painting.paint(g, new Rectangle2D.Double(x, y, WIDTH, block.height));
            y += block.height + GAP;
        }
        return y;
    }

    public BufferedImage image() {
        List<Block> blocks = blocks();
        double height = blocks.stream().mapToDouble(b -> b.height + GAP).sum() + 2 * MARGIN;
        BufferedImage image =
                new BufferedImage((int) (WIDTH + 2 * MARGIN), (int) Math.ceil(height), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        try {
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            g.setColor(Ink.PAPER);
            g.fillRect(0, 0, image.getWidth(), image.getHeight());
            paint(g, blocks, MARGIN, MARGIN);
        } finally {
            g.dispose();
        }
        return image;
    }

    public byte[] png() {
        try {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            ImageIO.write(image(), "png", out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** As many A4 pages as it takes. */
    public byte[] pdf() {
        try (PDDocument document = new PDDocument()) {
            double perUnit = (PDRectangle.A4.getWidth() - 2 * PAGE_MARGIN) / WIDTH;
            double room = (PDRectangle.A4.getHeight() - 2 * PAGE_MARGIN) / perUnit;
            List<Block> page = new ArrayList<>();
            double used = 0;
            for (Block block : blocks()) {
                if (!page.isEmpty() && used + block.height > room) {
                    page(document, page, perUnit);
                    page = new ArrayList<>();
                    used = 0;
                }
                page.add(block);
                used += block.height + GAP;
            }
            page(document, page, perUnit);
            document.getDocumentInformation().setTitle(title);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void page(PDDocument document, List<Block> blocks, double perUnit) throws IOException {
        PDPage sheet = new PDPage(PDRectangle.A4);
        document.addPage(sheet);
        double width = sheet.getMediaBox().getWidth() / perUnit;
        double height = sheet.getMediaBox().getHeight() / perUnit;
        PdfBoxGraphics2D g = new PdfBoxGraphics2D(document, (float) width, (float) height);
        paint(g, blocks, PAGE_MARGIN / perUnit, PAGE_MARGIN / perUnit);
        g.dispose();
        try (PDPageContentStream out = new PDPageContentStream(document, sheet)) {
            out.transform(Matrix.getScaleInstance((float) perUnit, (float) perUnit));
            out.drawForm(g.getXFormObject());
        }
    }
}

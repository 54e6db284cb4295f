package org.toeline.handout;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import java.awt.Image;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDPropertyList;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.image.JPEGFactory;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.util.Matrix;
import org.toeline.paint.Drawing;
import org.toeline.paint.Ink;
import org.toeline.paint.Script;

/**
 * The page as a PDF of one page: selectable text, fonts embedded, the still drawn by its own painter, headings and an
 * alternative text for those who have it read to them.
 */
final class PdfPage {

    private static final float PHOTO_QUALITY = 0.92f;

    private final PDDocument document;
    private final PDFont plain;
    private final PDFont bold;
    private final float paperWidth;

    private PdfPage(PDDocument document, Paper paper) throws IOException {
        this.document = document;
        this.paperWidth = paper.widthPt();
        this.plain = font("DejaVuSans.ttf");
        this.bold = font("DejaVuSans-Bold.ttf");
    }

    /** Without ligatures, which would be copied as letters nobody can search for. */
    private PDFont font(String name) throws IOException {
        try (InputStream in = Ink.fontFile(name)) {
            TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(in));
            font.setEnableGsub(false);
            return PDType0Font.load(document, font, true);
        }
    }

    static byte[] of(Page page, Drawing still, String language, Paper paper) {
        try (PDDocument document = new PDDocument()) {
            new PdfPage(document, paper).write(page, still, language, paper);
            document.getDocumentInformation().setTitle(page.title());
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void write(Page page, Drawing still, String language, Paper paper) throws IOException {
        PDPage sheet = new PDPage(new PDRectangle(paper.widthPt(), paper.heightPt()));
        document.addPage(sheet);
        PdfLayout layout = PdfLayout.of(page, still.height() / still.width(), paper);
        PdfTags tags = new PdfTags(document, sheet);
        PDFormXObject drawn = drawn(still);
        try (PDPageContentStream out = new PDPageContentStream(document, sheet)) {
            boolean drawnYet = false;
            for (PdfLayout.Block block : layout.blocks()) {
                boolean text = block.role() == PdfLayout.Role.PARAGRAPH || block.role() == PdfLayout.Role.HEADING;
                if (text && !drawnYet) {
                    figure(out, tags, drawn, still, layout, paper);
                    drawnYet = true;
                }
                String type =
                        switch (block.role()) {
                            case TITLE -> "H1";
                            case HEADING -> "H2";
                            default -> "P";
                        };
                tags.tagged(out, type, "", () -> text(out, block, paper));
            }
        }
        tags.close(language, page.title());
    }

    private static void figure(
            PDPageContentStream out, PdfTags tags, PDFormXObject drawn, Drawing still, PdfLayout layout, Paper paper)
            throws IOException {
        tags.tagged(out, "Figure", Plain.line(still.described()), () -> picture(out, drawn, still, layout, paper));
    }

    private PDFormXObject drawn(Drawing still) throws IOException {
        PdfBoxGraphics2D g = new PdfBoxGraphics2D(document, (float) still.width(), (float) still.height());
        g.setImageEncoder((to, content, image, wanted) -> photo(to, image));
        still.paint(g);
        g.dispose();
        return g.getXFormObject();
    }

    private static PDImageXObject photo(PDDocument to, Image image) {
        try {
            return JPEGFactory.createFromImage(to, (BufferedImage) image, PHOTO_QUALITY);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void picture(
            PDPageContentStream out, PDFormXObject drawn, Drawing still, PdfLayout layout, Paper paper)
            throws IOException {
        float scale = layout.still() / (float) still.width();
        out.saveGraphicsState();
        out.transform(new Matrix(
                scale,
                0,
                0,
                scale,
                layout.stillX(),
                paper.heightPt() - layout.stillY() - scale * (float) still.height()));
        out.drawForm(drawn);
        out.restoreGraphicsState();
    }

    private void text(PDPageContentStream out, PdfLayout.Block block, Paper paper) throws IOException {
        PDFont font = block.bold() ? bold : plain;
        float y = paper.heightPt() - block.baseline();
        for (String line : block.lines()) {
            if (Script.isDrawn(line)) {
                drawn(out, line, block, y);
            } else {
                out.beginText();
                out.setFont(font, block.size());
                out.newLineAtOffset(block.x(), y);
                out.showText(writable(line, font) + " ");
                out.endText();
            }
            y -= block.leading();
        }
    }

    /** Letters that join or run from right to left are drawn as they join; the text they stand for goes with them. */
    private void drawn(PDPageContentStream out, String line, PdfLayout.Block block, float y) throws IOException {
        float width = paperWidth;
        PdfBoxGraphics2D g = new PdfBoxGraphics2D(document, width, block.leading() * 1.4f);
        Ink.line(g, line, block.bold() ? Ink.bold(block.size()) : Ink.plain(block.size()), block.leading());
        g.dispose();
        COSDictionary actual = new COSDictionary();
        actual.setString(COSName.ACTUAL_TEXT, line + " ");
        out.beginMarkedContent(COSName.getPDFName("Span"), PDPropertyList.create(actual));
        out.saveGraphicsState();
        out.transform(Matrix.getTranslateInstance(block.x(), y - block.leading() * 0.4f));
        out.drawForm(g.getXFormObject());
        out.restoreGraphicsState();
        out.endMarkedContent();
    }

    /** Characters the font lacks become question marks: a name must not stop the page. */
    private static String writable(String line, PDFont font) {
        StringBuilder kept = new StringBuilder();
        line.codePoints().forEach(c -> {
            String one = Character.toString(c);
            try {
                font.encode(one);
                kept.append(one);
            } catch (IOException | IllegalArgumentException e) {
                kept.append('?');
            }
        });
        return kept.toString();
    }
}

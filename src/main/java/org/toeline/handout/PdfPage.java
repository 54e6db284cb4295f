package org.toeline.handout;

import java.awt.Font;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;

/** The page as a PDF of one page: the still on the left, the text beside it; selectable text, fonts embedded. */
final class PdfPage {

    private static final float MARGIN = 36;
    private static final float GAP = 18;

    private final PDDocument document;
    private final PDFont plain;
    private final PDFont bold;

    private PdfPage(PDDocument document) throws IOException {
        this.document = document;
        this.plain = font("DejaVuSans.ttf");
        this.bold = font("DejaVuSans-Bold.ttf");
    }

    private PDFont font(String name) throws IOException {
        try (InputStream in = Ink.fontFile(name)) {
            return PDType0Font.load(document, in, true);
        }
    }

    static byte[] of(Page page, BufferedImage still) {
        try (PDDocument document = new PDDocument()) {
            new PdfPage(document).write(page, still);
            document.getDocumentInformation().setTitle(page.title());
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void write(Page page, BufferedImage still) throws IOException {
        PDPage sheet = new PDPage(PDRectangle.A4);
        document.addPage(sheet);
        float width = sheet.getMediaBox().getWidth();
        float height = sheet.getMediaBox().getHeight();
        float pictureWidth = (width - 2 * MARGIN - GAP) * 0.52f;
        float pictureHeight = pictureWidth * still.getHeight() / still.getWidth();
        PDImageXObject image = LosslessFactory.createFromImage(document, still);
        float textX = MARGIN + pictureWidth + GAP;
        float textWidth = width - MARGIN - textX;
        float size = fitting(page, textWidth, height - 2 * MARGIN - 40);
        try (PDPageContentStream out = new PDPageContentStream(document, sheet)) {
            float y = height - MARGIN - 16;
            text(out, page.title(), bold, 17, MARGIN, y, width - 2 * MARGIN);
            y -= 24;
            out.drawImage(image, MARGIN, y - pictureHeight, pictureWidth, pictureHeight);
            y -= size;
            if (!page.coachsWords().isBlank()) {
                y = text(out, page.coachsWords(), bold, size, textX, y, textWidth) - size * 0.6f;
            }
            for (Page.Section section : page.sections()) {
                y = text(out, section.heading(), bold, size * 1.15f, textX, y, textWidth) - size * 0.15f;
                for (String paragraph : section.paragraphs()) {
                    y = text(out, paragraph, plain, size, textX, y, textWidth) - size * 0.25f;
                }
                y -= size * 0.6f;
            }
        }
    }

    /** The largest type with which everything fits, 6 to 10 points. */
    private float fitting(Page page, float width, float height) {
        for (float size = 10; size > 6; size -= 0.25f) {
            float used = page.coachsWords().isBlank() ? 0 : lines(page.coachsWords(), size, width) * size * 1.35f;
            for (Page.Section section : page.sections()) {
                used += lines(section.heading(), size * 1.15f, width) * size * 1.55f + size;
                for (String paragraph : section.paragraphs()) {
                    used += lines(paragraph, size, width) * size * 1.35f + size * 0.25f;
                }
            }
            if (used < height) {
                return size;
            }
        }
        return 6;
    }

    private static int lines(String text, float size, float width) {
        return TextBlock.of(text, font(size), width).lines().size();
    }

    private static Font font(float size) {
        return Ink.bold(size);
    }

    /** Writes a block of text downwards; returns the baseline after it. */
    private static float text(PDPageContentStream out, String text, PDFont font, float size, float x, float y,
                              float width) throws IOException {
        float at = y;
        for (String line : TextBlock.of(text, font(size), width).lines()) {
            out.beginText();
            out.setFont(font, size);
            out.newLineAtOffset(x, at);
            out.showText(writable(line, font));
            out.endText();
            at -= size * 1.35f;
        }
        return at;
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

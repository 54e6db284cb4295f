package org.toeline.handout;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/** The two pages for the bay: on the screen from Help, and as a PDF to print. */
public final class Guide {

    private Guide() {}

    public static List<GuidePage> pages(Path lessons, Path settings) {
        return List.of(new GuidePage(1, lessons, settings), new GuidePage(2, lessons, settings));
    }

    /** On A4, in the person's language. */
    public static byte[] pdf(List<GuidePage> pages) {
        try (PDDocument document = new PDDocument()) {
            for (GuidePage page : pages) {
                PDPage sheet = new PDPage(PDRectangle.A4);
                document.addPage(sheet);
                PdfBoxGraphics2D g = new PdfBoxGraphics2D(document, (float) page.width(), (float) page.height());
                page.paint(g);
                g.dispose();
                try (PDPageContentStream out = new PDPageContentStream(document, sheet)) {
                    out.drawForm(g.getXFormObject());
                }
            }
            document.getDocumentInformation().setTitle(pages.get(0).title());
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

package org.toeline.desk.handover;

import java.awt.print.PrinterException;
import java.awt.print.PrinterJob;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.print.PrintService;
import javax.print.PrintServiceLookup;
import javax.print.attribute.HashPrintRequestAttributeSet;
import javax.print.attribute.PrintRequestAttributeSet;
import javax.print.attribute.standard.Copies;
import javax.print.attribute.standard.JobName;
import javax.print.attribute.standard.MediaSizeName;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.printing.PDFPageable;
import org.toeline.handout.Paper;

/** The printers of this machine, and a page printed by one of them. Not on the interface thread: printers answer slowly. */
final class Printers {

    /** As many as a class has players. */
    static final int MOST_COPIES = 30;

    private Printers() {}

    /** The usual one first; none where none is set up. */
    static List<PrintService> all() {
        List<PrintService> found = new ArrayList<>(List.of(PrintServiceLookup.lookupPrintServices(null, null)));
        Optional.ofNullable(PrintServiceLookup.lookupDefaultPrintService()).ifPresent(usual -> {
            found.remove(usual);
            found.add(0, usual);
        });
        return found;
    }

    /** A page in its own size, neither shrunk nor turned. */
    static void print(byte[] pdf, Paper paper, PrintService by, int copies, String name)
            throws IOException, PrinterException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PrinterJob job = PrinterJob.getPrinterJob();
            job.setPrintService(by);
            job.setPageable(new PDFPageable(document));
            PrintRequestAttributeSet asked = new HashPrintRequestAttributeSet();
            asked.add(paper == Paper.A4 ? MediaSizeName.ISO_A4 : MediaSizeName.NA_LETTER);
            asked.add(new Copies(copies));
            asked.add(new JobName(name, null));
            job.print(asked);
        }
    }
}

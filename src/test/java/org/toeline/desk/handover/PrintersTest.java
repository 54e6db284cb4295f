package org.toeline.desk.handover;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.print.DocFlavor;
import javax.print.StreamPrintService;
import javax.print.StreamPrintServiceFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.toeline.advice.Assessment;
import org.toeline.advice.Words;
import org.toeline.handout.Handout;
import org.toeline.handout.Paper;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.LessonDocument;

/**
 * The page as a printer gets it, by the printer that Java has of its own: PostScript into memory (PostScript Language Reference,
 * 3rd edition: {@code showpage} ends a page, {@code PageSize} is in points of 1/72 inch).
 */
class PrintersTest {

    @ParameterizedTest
    @EnumSource(Paper.class)
    void aPageIsPrintedOnceInItsOwnSize(Paper paper) throws Exception {
        Lesson lesson = LessonDocument.read(Path.of("sample-media", "before", "before.lesson.json"));
        byte[] pdf = Handout.of(lesson, Assessment.of(lesson.sheet()), Map.of(), Words.english())
                .pdf(paper);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        StreamPrintService printer = StreamPrintServiceFactory.lookupStreamPrintServiceFactories(
                DocFlavor.SERVICE_FORMATTED.PRINTABLE, "application/postscript")[0]
                .getPrintService(out);
        Printers.print(pdf, paper, printer, 1, "page");
        String printed = out.toString(StandardCharsets.ISO_8859_1);
        assertThat(printed).startsWith("%!PS");
        assertThat(printed.lines().filter(l -> l.strip().equals("showpage"))).hasSize(1);
        Matcher size = Pattern.compile("/PageSize \\[([\\d.]+) ([\\d.]+)").matcher(printed);
        assertThat(size.find()).isTrue();
        assertThat(Double.parseDouble(size.group(1))).isBetween(paper.widthPt() - 1.0, paper.widthPt() + 1.0);
        assertThat(Double.parseDouble(size.group(2))).isBetween(paper.heightPt() - 1.0, paper.heightPt() + 1.0);
        // words and gauges are outlines: a page without them has hardly any
        assertThat(printed.lines().filter(l -> l.endsWith(" C"))).hasSizeGreaterThan(500);
    }
}

package org.toeline.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.GraphicsEnvironment;
import java.io.ByteArrayInputStream;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import nu.validator.client.EmbeddedValidator;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.toeline.advice.LengthUnit;
import org.toeline.advice.Words;
import org.toeline.handout.PdfLayout.Block;
import org.toeline.handout.PdfLayout.Role;

/** The pages as other programs judge them: HTML by the Nu checker, PDF as read by PDFBox. */
class PageValidityTest {

    private static Handout full(String name) throws Exception {
        return Samples.handout(Samples.lesson("before").withPlayerName(Optional.of(name)), "before")
                .withOptions(StillOptions.USUAL.withSigned(Signed.FULL_NAME_AND_DATE))
                .withCoachsWords("Well <done>.\n\n& so on");
    }

    @Test
    void theHtmlIsValid() throws Exception {
        EmbeddedValidator checker = new EmbeddedValidator();
        checker.setOutputFormat(EmbeddedValidator.OutputFormat.GNU);
        for (Handout handout : java.util.List.of(
                full("A <b>& \"C\" \u0000\u202E"),
                Samples.handout("all-good").withWords(Words.of(Locale.GERMAN, LengthUnit.INCH)))) {
            assertThat(checker.validate(new ByteArrayInputStream(handout.html())))
                    .isEmpty();
        }
        assertThat(checker.validate(new ByteArrayInputStream("<!doctype html><p><b></p>".getBytes())))
                .as("the checker checks")
                .contains("error");
    }

    /** Whether this machine has a font for the letters or not: the name is drawn, or named as what cannot be before a file is. */
    @ParameterizedTest
    @ValueSource(strings = {"王小明", "سلمى حداد", "Ana \uD83C\uDFCC", "Ana \u0378"})
    void lettersThatNoFontHasAreSaid(String name) throws Exception {
        Handout handout = full(name);
        boolean drawn = name.codePoints()
                .filter(c -> c > 0x250)
                .allMatch(c -> Arrays.stream(GraphicsEnvironment.getLocalGraphicsEnvironment()
                                .getAllFonts())
                        .anyMatch(f -> f.canDisplay(c)));
        // the shipped font has Arabic; U+0378 is assigned to no letter and no font has it
        if (drawn || name.startsWith("س")) {
            assertThat(handout.lacks()).isEmpty();
        } else {
            assertThat(handout.lacks().orElseThrow()).contains(name.substring(name.length() - 1));
        }
        assertThat(full("Ana \u0378").lacksAdvice())
                .as("neither still nor page")
                .isPresent();
    }

    /** One page, fonts embedded, headings, paragraphs and a figure with its text in reading order, the language stated. */
    @ParameterizedTest
    @EnumSource(Paper.class)
    void thePdfIsOneTaggedPage(Paper paper) throws Exception {
        Handout handout = full("A. Sample");
        try (PDDocument pdf = Loader.loadPDF(handout.pdf(paper))) {
            assertThat(pdf.getNumberOfPages()).isEqualTo(1);
            PDPage page = pdf.getPage(0);
            assertThat(page.getMediaBox().getHeight())
                    .isCloseTo(paper.heightPt(), org.assertj.core.api.Assertions.within(0.5f));
            for (var name : page.getResources().getFontNames()) {
                PDFont font = page.getResources().getFont(name);
                assertThat(font.isEmbedded()).as(font.getName()).isTrue();
            }
            assertThat(pdf.getDocumentCatalog().getLanguage()).isEqualTo("en");
            assertThat(pdf.getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
            PDStructureElement whole = (PDStructureElement)
                    pdf.getDocumentCatalog().getStructureTreeRoot().getKids().get(0);
            assertThat(whole.getKids())
                    .extracting(k -> ((PDStructureElement) k).getStructureType())
                    .startsWith("P", "H1", "P", "P", "Figure", "H2", "P")
                    .containsOnly("H1", "Figure", "H2", "P");
            assertThat(((PDStructureElement) whole.getKids().get(4)).getAlternateDescription())
                    .contains("Ball to left shoulder: measured");
            String text = new PDFTextStripper().getText(pdf);
            assertThat(text)
                    .contains("From your coach")
                    .contains("Well <done>.")
                    .contains("Check it yourself")
                    .contains("Take care");
        }
    }

    /** A name of 255 characters takes several lines; nothing lies on top of something else, nothing leaves the paper. */
    @ParameterizedTest
    @EnumSource(Paper.class)
    void nothingOverlapsWhateverIsWritten(Paper paper) throws Exception {
        Handout long_ = full("Maximiliane-Friederike von und zu ".repeat(4))
                .withCoachsWords("Long words. ".repeat(66))
                .withWords(Words.of(Locale.GERMAN, LengthUnit.CENTIMETRE));
        Page page = Page.of(
                long_.assessment(),
                long_.words(),
                Signed.FULL_NAME_AND_DATE.text(long_.lesson(), long_.words()),
                long_.coachsWords(),
                "Somebody, somewhere, at some number");
        Still still = long_.still();
        double shape = still.height() / still.width();
        PdfLayout layout = PdfLayout.of(page, shape, paper);
        assertThat(layout.blocks().get(0).role()).isEqualTo(Role.WHO);
        assertThat(layout.blocks().get(1).role()).isEqualTo(Role.TITLE);
        assertThat(layout.end()).isLessThanOrEqualTo(paper.heightPt() - PdfLayout.MARGIN);
        assertThat(layout.blocks()).allMatch(b -> b.size() >= 7);
        for (int i = 0; i < layout.blocks().size(); i++) {
            Block a = layout.blocks().get(i);
            boolean beside = a.x() > layout.stillX() + layout.still()
                    || bottom(a) <= layout.stillY()
                    || top(a) >= layout.stillY() + layout.still() * shape;
            assertThat(beside).as("clear of the still: " + a.lines()).isTrue();
            for (Block b : layout.blocks().subList(i + 1, layout.blocks().size())) {
                assertThat(a.x() != b.x() || bottom(a) <= top(b) + 0.01 || bottom(b) <= top(a) + 0.01)
                        .as(a.lines() + " and " + b.lines())
                        .isTrue();
            }
        }
        try (PDDocument pdf = Loader.loadPDF(long_.pdf(paper))) {
            new PDFTextStripper() {
                @Override
                protected void processTextPosition(TextPosition position) {
                    assertThat(position.getXDirAdj() + position.getWidthDirAdj())
                            .isLessThan(paper.widthPt() - 30);
                }
            }.getText(pdf);
        }
    }

    /** A sheet is used, not half of it left empty; what stands below begins where what stands beside the still does. */
    @ParameterizedTest
    @ValueSource(strings = {"before", "after", "left-handed", "all-good"})
    void aSheetIsFilled(String sample) throws Exception {
        for (Locale locale : List.of(Locale.ENGLISH, Locale.GERMAN)) {
            Handout handout = Samples.handout(sample).withWords(Words.of(locale, LengthUnit.CENTIMETRE));
            Page page = Page.of(handout.assessment(), handout.words(), "AS", "", "");
            Still still = handout.onPage();
            for (Paper paper : Paper.values()) {
                PdfLayout layout = PdfLayout.of(page, still.height() / still.width(), paper);
                assertThat(layout.end())
                        .as(sample + " " + locale + " " + paper)
                        .isBetween(0.8f * paper.heightPt(), paper.heightPt() - PdfLayout.MARGIN);
                if (layout.still() == (paper.widthPt() - 2 * PdfLayout.MARGIN - 18) / 2) {
                    assertThat(layout.blocks().stream().map(Block::x).distinct())
                            .hasSize(2);
                }
            }
        }
    }

    private static float top(Block block) {
        return block.baseline() - block.size();
    }

    private static float bottom(Block block) {
        return top(block) + block.lines().size() * block.leading();
    }
}

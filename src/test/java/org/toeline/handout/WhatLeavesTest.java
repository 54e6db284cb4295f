package org.toeline.handout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.drew.imaging.ImageMetadataReader;
import com.drew.metadata.Directory;
import com.drew.metadata.Metadata;
import com.drew.metadata.Tag;
import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.toeline.advice.LengthUnit;
import org.toeline.advice.Words;
import org.toeline.geometry.ImagePoint;
import org.toeline.ledger.Lesson;
import org.toeline.mark.Landmark;
import org.toeline.mark.View;
import org.toeline.paint.Ink;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** What leaves: nothing of place, device or time, no face that was to be covered, and names and notes only as text. */
class WhatLeavesTest {

    /** Faults H3 and H4. */
    private static final String HOSTILE =
            "<script>alert(1)</script> \"O'Neil\" & ]]> --> \u202Egnp.exe\u202C \u0007\uFFFE\uD800 CON ..";

    private static Handout hostile() throws Exception {
        Lesson plain = Samples.lesson("before");
        return Samples.handout(
                        plain.withPlayerName(Optional.of(HOSTILE))
                                .withPlace("Hidden Links, bay 4")
                                .withNotes("bad back"),
                        "before")
                .withOptions(StillOptions.USUAL.withSigned(Signed.FULL_NAME_AND_DATE))
                .withCoachsWords("</section><img src=x onerror=alert(1)>\n=cmd()\n" + HOSTILE);
    }

    /** The parts of a JPEG and a PNG that a second reader finds: only what is needed to show the pixels. */
    @ParameterizedTest
    @EnumSource(
            value = PictureFormat.class,
            names = {"PNG", "JPEG"})
    void picturesCarryNothingButPixels(PictureFormat format) throws Exception {
        Metadata found = ImageMetadataReader.readMetadata(
                new ByteArrayInputStream(format.of(hostile().still())));
        List<String> directories = new ArrayList<>();
        for (Directory directory : found.getDirectories()) {
            directories.add(directory.getName());
            for (Tag tag : directory.getTags()) {
                assertThat(tag.toString())
                        .doesNotContainIgnoringCase("gps")
                        .doesNotContainIgnoringCase("make")
                        .doesNotContainIgnoringCase("date")
                        .doesNotContain("Hidden Links");
            }
        }
        assertThat(directories).isSubsetOf("PNG-IHDR", "JPEG", "JFIF", "Huffman", "File Type");
    }

    @Test
    void thePdfCarriesATitleAndNoMore() throws Exception {
        try (PDDocument pdf = Loader.loadPDF(hostile().pdf(Paper.A4))) {
            Set<COSName> known = pdf.getDocumentInformation().getCOSObject().keySet();
            assertThat(known).containsExactly(COSName.TITLE);
            String said = new String(pdf.getDocumentCatalog().getMetadata().toByteArray(), StandardCharsets.UTF_8);
            assertThat(Pattern.compile("<(\\w+:\\w+)[ >]")
                            .matcher(said)
                            .results()
                            .map(m -> m.group(1)))
                    .as("that the page is accessible, and its title; no time, no program")
                    .containsExactly(
                            "x:xmpmeta", "rdf:RDF", "rdf:Description", "pdfuaid:part", "dc:title", "rdf:Alt", "rdf:li");
            String text = new PDFTextStripper().getText(pdf);
            assertThat(text)
                    .contains("<script>alert(1)</script>")
                    .doesNotContain("Hidden Links")
                    .doesNotContain("bad back")
                    .doesNotContain("\u202E");
            assertThat(pdf.getDocumentCatalog().getOpenAction()).isNull();
        }
    }

    /** Well formed, one image inside it, no script, and nothing of the name but text. */
    @Test
    void theSvgIsPlain() throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        DocumentBuilder builder = factory.newDocumentBuilder();
        Document svg = builder.parse(
                new ByteArrayInputStream(PictureFormat.SVG.of(hostile().still())));
        NodeList all = svg.getElementsByTagName("*");
        for (int i = 0; i < all.getLength(); i++) {
            Element e = (Element) all.item(i);
            assertThat(e.getTagName()).isNotIn("script", "foreignObject", "a", "text");
            assertThat(e.getAttribute("xlink:href") + e.getAttribute("href")).matches("|data:image/jpeg;base64,.*");
        }
        assertThat(svg.getElementsByTagName("image").getLength()).isEqualTo(1);
        assertThat(svg.getDocumentElement().getAttribute("role")).isEqualTo("img");
    }

    /** No script, no handler, and nothing that a browser would go and fetch. */
    @Test
    void thePageFetchesNothing() throws Exception {
        String html = new String(hostile().html(), StandardCharsets.UTF_8);
        String without = html.replaceAll("data:image/jpeg;base64,[A-Za-z0-9+/=]+", "data:");
        assertThat(without)
                .doesNotContain("<script")
                .doesNotContain("<img src=x")
                .contains("&lt;script&gt;")
                .contains("&lt;img src=x onerror=alert(1)&gt;")
                .doesNotContain("\u202E")
                .doesNotContain("\u0007")
                .doesNotContain("Hidden Links")
                .doesNotContain("url(")
                .doesNotContain("@import")
                .doesNotContain("http");
        Matcher attributes = Pattern.compile("<[a-z0-9]+((?:\\s+[a-z-]+(?:=\"[^\"]*\")?)*)\\s*>")
                .matcher(without);
        List<String> names = new ArrayList<>();
        while (attributes.find()) {
            Matcher one = Pattern.compile("([a-z-]+)(?:=\"([^\"]*)\")?").matcher(attributes.group(1));
            while (one.find()) {
                names.add(one.group(1));
                if (Set.of("src", "href", "srcset", "action", "data").contains(one.group(1))) {
                    assertThat(one.group(2)).isEqualTo("data:");
                }
            }
        }
        assertThat(names)
                .contains("alt", "lang", "src")
                .isSubsetOf("lang", "charset", "name", "content", "class", "alt", "src");
    }

    /** Headings in order, one main part, an alternative text that tells what to change, the language stated. */
    @ParameterizedTest
    @ValueSource(strings = {"en", "de"})
    void thePageIsThereForThoseWhoHaveItRead(String language) throws Exception {
        Handout handout = Samples.handout("before")
                .withWords(Words.of(Locale.forLanguageTag(language), LengthUnit.CENTIMETRE))
                .withCoachsWords("Well done.");
        String html = new String(handout.html(), StandardCharsets.UTF_8);
        assertThat(html).startsWith("<!doctype html>\n<html lang=\"" + language + "\">");
        assertThat(html.split("<h1>", -1)).hasSize(2);
        assertThat(html.split("<main>", -1)).hasSize(2);
        List<String> parts = Pattern.compile("<section class=\"([a-z]+)\">\n<h2>")
                .matcher(html)
                .results()
                .map(m -> m.group(1))
                .toList();
        assertThat(parts)
                .containsExactly(
                        "coach", "why", "check", "drill", "feel", "next", "good", "untold", "measured", "cautions");
        assertThat(html.indexOf("<h1>")).isLessThan(html.indexOf("<img"));
        Matcher alt = Pattern.compile("alt=\"([^\"]+)\"").matcher(html);
        assertThat(alt.find()).isTrue();
        String told = alt.group(1).replace("&#39;", "'");
        assertThat(told)
                .contains(
                        language.equals("de")
                                ? "Ball zur linken Schulter: gemessen"
                                : "Ball to left shoulder: measured");
        assertThat(html).containsPattern(language.equals("de") ? "\\d,\\d\\s?±" : "\\d\\.\\d\\s?±");
    }

    /** WCAG 2.2: text 4.5:1 at least. */
    @Test
    void typeStandsOutFromItsGround() {
        for (Color ink : List.of(Ink.TEXT, Ink.GREY, Ink.BLUE, Ink.VERMILION.darker())) {
            assertThat(contrast(ink, Ink.PAPER)).as(ink.toString()).isGreaterThan(4.5);
        }
        assertThat(contrast(Ink.VERMILION, Color.WHITE))
                .as("a line and its halo")
                .isGreaterThan(3);
    }

    private static double contrast(Color a, Color b) {
        double light = Math.max(luminance(a), luminance(b));
        return (light + 0.05) / (Math.min(luminance(a), luminance(b)) + 0.05);
    }

    /** WCAG 2.2, relative luminance. */
    private static double luminance(Color c) {
        double[] rgb = {c.getRed() / 255.0, c.getGreen() / 255.0, c.getBlue() / 255.0};
        for (int i = 0; i < 3; i++) {
            rgb[i] = rgb[i] <= 0.04045 ? rgb[i] / 12.92 : Math.pow((rgb[i] + 0.055) / 1.055, 2.4);
        }
        return 0.2126 * rgb[0] + 0.7152 * rgb[1] + 0.0722 * rgb[2];
    }

    /** Nowhere in any file is a pixel of what was covered, nor of what the still does not show. */
    @Test
    void aCoveredFaceIsInNoFile() throws Exception {
        Color secret = new Color(0xFF00FF);
        Handout plain = Samples.handout("before");
        ImagePoint head = plain.lesson()
                .sheet()
                .view(View.FACE_ON)
                .orElseThrow()
                .mark(Landmark.HEAD_CENTRE)
                .orElseThrow()
                .at();
        BufferedImage picture = Samples.grey(1280, 720);
        for (int y = -12; y < 12; y++) {
            for (int x = -12; x < 12; x++) {
                picture.setRGB((int) head.xPx() + x, (int) head.yPx() + y, secret.getRGB());
                picture.setRGB(1240 + x, 20 + y + 12, secret.getRGB());
            }
        }
        Handout shown = new Handout(
                plain.lesson(),
                plain.assessment(),
                Map.of(View.FACE_ON, picture),
                plain.words(),
                StillOptions.USUAL,
                "");
        assertThat(embedded(shown)).as("shown when nobody asked").anyMatch(i -> holds(i, secret));
        for (FaceCover cover : List.of(
                FaceCover.headMark(), new FaceCover.Drawn(Map.of(View.FACE_ON, new FaceCover.Oval(head, 40, 50))))) {
            assertThat(embedded(shown.withOptions(StillOptions.USUAL.withFace(cover))))
                    .hasSize(3)
                    .noneMatch(i -> holds(i, secret));
        }
    }

    /** The pictures in PNG, SVG and HTML. */
    private static List<BufferedImage> embedded(Handout handout) throws Exception {
        List<BufferedImage> images = new ArrayList<>();
        images.add(ImageIO.read(new ByteArrayInputStream(handout.png())));
        for (byte[] file : List.of(PictureFormat.SVG.of(handout.still()), handout.html())) {
            Matcher data =
                    Pattern.compile("base64,([A-Za-z0-9+/=]+)").matcher(new String(file, StandardCharsets.UTF_8));
            while (data.find()) {
                images.add(ImageIO.read(
                        new ByteArrayInputStream(Base64.getDecoder().decode(data.group(1)))));
            }
        }
        return images;
    }

    private static boolean holds(BufferedImage image, Color color) {
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                Color c = new Color(image.getRGB(x, y));
                if (Math.abs(c.getRed() - color.getRed())
                                + Math.abs(c.getGreen() - color.getGreen())
                                + Math.abs(c.getBlue() - color.getBlue())
                        < 120) {
                    return true;
                }
            }
        }
        return false;
    }

    @Test
    void aFaceNobodyMarkedCannotBeCoveredUnseen() throws Exception {
        Lesson lesson = Samples.lesson("before");
        var sheet = lesson.sheet();
        for (View view : View.values()) {
            if (sheet.view(view).isPresent()) {
                sheet = sheet.withView(sheet.view(view).get().withoutMark(Landmark.HEAD_CENTRE));
            }
        }
        Handout headless = Samples.handout(lesson.withSheet(sheet), "before without its head")
                .withOptions(StillOptions.USUAL.withFace(FaceCover.headMark()));
        assertThat(headless.lacks().orElseThrow()).contains("head was not marked");
        assertThatThrownBy(headless::still)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("head");
    }

    /** Fault H4: whatever the player is called, the file has a name on every system, and the full one only when asked. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "..",
                "CON",
                "a/b\\c:d*e?\"<>|",
                "Åke Österström",
                "  ",
                "x.",
                "\u202Egnp",
                "- -",
                "Li\u0000n",
                "李 小龙"
            })
    void filesHavePlainNames(String name) throws Exception {
        Lesson lesson = Samples.lesson("before").withPlayerName(Optional.of(name));
        for (Signed signed : Signed.values()) {
            String stem = signed.fileStem(lesson);
            assertThat(stem).matches("[\\p{L}\\p{Nd}][\\p{L}\\p{M}\\p{Nd}-]*").hasSizeLessThan(90);
            assertThat(stem).matches(s -> signed == Signed.NOT || s.endsWith("-2026-05-14"));
        }
        String longest = Signed.FULL_NAME_AND_DATE.fileStem(lesson.withPlayerName(Optional.of("x".repeat(255))));
        assertThat(longest).hasSizeLessThan(90);
    }

    /** Reference: the first letters of the words, and the day of the lesson's own offset. */
    @Test
    void namesAreInitialsUnlessAsked() throws Exception {
        Lesson lesson = Samples.lesson("before").withPlayerName(Optional.of("Anna-Lena de la Cruz y Soto"));
        assertThat(lesson.recorded()).contains(OffsetDateTime.parse("2026-05-14T10:20:00+02:00"));
        assertThat(Signed.INITIALS_AND_DATE.fileStem(lesson)).isEqualTo("ALDL-2026-05-14");
        assertThat(Signed.FULL_NAME_AND_DATE.fileStem(lesson)).isEqualTo("Anna-Lena-de-la-Cruz-y-Soto-2026-05-14");
        assertThat(Signed.INITIALS_AND_DATE.text(lesson, Words.of(Locale.GERMAN, LengthUnit.CENTIMETRE)))
                .isEqualTo("ALDL · 14. Mai 2026");
        assertThat(Signed.NOT.text(lesson, Words.english())).isEmpty();
    }
}

package org.toeline.handout;

import java.awt.Dimension;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.svggen.ImageHandlerBase64Encoder;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** A drawing as one SVG file: pictures inside it, nothing fetched, title and description for those who do not see it. */
final class SvgPicture {

    private static final String SVG = "http://www.w3.org/2000/svg";

    private SvgPicture() {
    }

    static byte[] of(Drawing drawing) {
        try {
            Document document = DocumentBuilderFactory.newInstance().newDocumentBuilder().getDOMImplementation()
                    .createDocument(SVG, "svg", null);
            SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
            context.setComment(null);
            context.setImageHandler(new ImageHandlerBase64Encoder());
            context.setPrecision(2);
            SVGGraphics2D g = new SVGGraphics2D(context, true);
            g.setSVGCanvasSize(new Dimension((int) Math.ceil(drawing.width()), (int) Math.ceil(drawing.height())));
            drawing.paint(g);
            Element root = g.getRoot();
            root.setAttribute("viewBox", "0 0 " + root.getAttribute("width") + " " + root.getAttribute("height"));
            root.setAttribute("role", "img");
            told(document, root, "desc", drawing.described());
            told(document, root, "title", drawing.title());
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            try (Writer writer = new OutputStreamWriter(out, StandardCharsets.UTF_8)) {
                g.stream(root, writer, false, false);
            }
            return out.toByteArray();
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException("this Java has no XML parser", e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void told(Document document, Element root, String name, String text) {
        Element element = document.createElementNS(SVG, name);
        element.setTextContent(Plain.text(text));
        root.insertBefore(element, root.getFirstChild());
    }
}

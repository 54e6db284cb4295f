package org.toeline.handout;

import java.awt.Dimension;
import java.awt.Image;
import java.awt.image.BufferedImage;
import java.awt.image.RenderedImage;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.svggen.DefaultImageHandler;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.toeline.paint.Drawing;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.ls.DOMImplementationLS;
import org.w3c.dom.ls.LSOutput;

/** A drawing as one SVG file: pictures inside it, nothing fetched, title and description for those who do not see it. */
final class SvgPicture {

    private static final String XLINK = "http://www.w3.org/1999/xlink";
    private static final String SVG = "http://www.w3.org/2000/svg";

    private SvgPicture() {}

    /** Puts pictures into the file itself. */
    private static final class Inside extends DefaultImageHandler {

        @Override
        protected void handleHREF(Image image, Element element, SVGGeneratorContext context) {
            put((BufferedImage) image, element);
        }

        @Override
        protected void handleHREF(RenderedImage image, Element element, SVGGeneratorContext context) {
            put((BufferedImage) image, element);
        }

        private static void put(BufferedImage image, Element element) {
            element.setAttributeNS(
                    XLINK,
                    "xlink:href",
                    "data:image/jpeg;base64," + Base64.getEncoder().encodeToString(PictureFormat.jpeg(image)));
        }
    }

    static byte[] of(Drawing drawing) {
        try {
            Document document = DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .getDOMImplementation()
                    .createDocument(SVG, "svg", null);
            SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
            context.setComment(null);
            context.setImageHandler(new Inside());
            context.setPrecision(2);
            SVGGraphics2D g = new SVGGraphics2D(context, true);
            g.setSVGCanvasSize(new Dimension((int) Math.ceil(drawing.width()), (int) Math.ceil(drawing.height())));
            drawing.paint(g);
            Element root = g.getRoot();
            root.setAttribute("viewBox", "0 0 " + root.getAttribute("width") + " " + root.getAttribute("height"));
            root.setAttribute("role", "img");
            told(document, root, "desc", drawing.described());
            told(document, root, "title", drawing.title());
            return written(document, root);
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException("this Java has no XML parser", e);
        }
    }

    /** Without a document type: readers would look for it on the net. */
    private static byte[] written(Document document, Element root) {
        DOMImplementationLS xml =
                (DOMImplementationLS) document.getImplementation().getFeature("LS", "3.0");
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        LSOutput to = xml.createLSOutput();
        to.setEncoding(StandardCharsets.UTF_8.name());
        to.setByteStream(out);
        xml.createLSSerializer().write(root, to);
        return out.toByteArray();
    }

    private static void told(Document document, Element root, String name, String text) {
        Element element = document.createElementNS(SVG, name);
        element.setTextContent(Plain.text(text));
        root.insertBefore(element, root.getFirstChild());
    }
}

package org.toeline.handout;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.common.PDNumberTreeNode;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkInfo;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDParentTreeValue;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDMarkedContent;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDPropertyList;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/** The structure of a page for those who have it read to them: headings, paragraphs and the figure, in reading order. */
final class PdfTags {

    private final PDDocument document;
    private final PDPage sheet;
    private final PDStructureTreeRoot root = new PDStructureTreeRoot();
    private final PDStructureElement whole = new PDStructureElement("Document", root);
    private final COSArray parents = new COSArray();

    PdfTags(PDDocument document, PDPage sheet) {
        this.document = document;
        this.sheet = sheet;
        root.appendKid(whole);
    }

    /** What writes a part of the page. */
    interface Part {
        void write() throws IOException;
    }

    /** Writes a part as a structure element of that type; the alternative text may be empty. */
    void tagged(PDPageContentStream out, String type, String alternative, Part part) throws IOException {
        PDStructureElement element = new PDStructureElement(type, whole);
        element.setPage(sheet);
        if (!alternative.isEmpty()) {
            element.setAlternateDescription(alternative);
        }
        COSDictionary number = new COSDictionary();
        number.setInt(COSName.MCID, parents.size());
        COSName name = COSName.getPDFName(type);
        element.appendKid(new PDMarkedContent(name, number));
        whole.appendKid(element);
        parents.add(element.getCOSObject());
        out.beginMarkedContent(name, PDPropertyList.create(number));
        part.write();
        out.endMarkedContent();
    }

    /** To be called once, when all is written. */
    void close(String language, String title) throws IOException {
        PDNumberTreeNode tree = new PDNumberTreeNode(PDParentTreeValue.class);
        tree.setNumbers(Map.of(0, new PDParentTreeValue(parents)));
        root.setParentTree(tree);
        root.setParentTreeNextKey(1);
        sheet.setStructParents(0);
        sheet.getCOSObject().setItem(COSName.getPDFName("Tabs"), COSName.S);
        var catalog = document.getDocumentCatalog();
        catalog.setStructureTreeRoot(root);
        catalog.setLanguage(language);
        PDMarkInfo marked = new PDMarkInfo();
        marked.setMarked(true);
        catalog.setMarkInfo(marked);
        catalog.setMetadata(new PDMetadata(document, new ByteArrayInputStream(accessible(title))));
        PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
        preferences.setDisplayDocTitle(true);
        catalog.setViewerPreferences(preferences);
    }

    /** Says that the page keeps PDF/UA-1 (ISO 14289-1, clause 5), and its title; nothing else. */
    private static byte[] accessible(String title) {
        return """
            <?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>
            <x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
            <rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/"
             xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/">
            <pdfuaid:part>1</pdfuaid:part>
            <dc:title><rdf:Alt><rdf:li xml:lang="x-default">%s</rdf:li></rdf:Alt></dc:title>
            </rdf:Description></rdf:RDF></x:xmpmeta>
            <?xpacket end="w"?>""".formatted(HtmlPage.escaped(title)).getBytes(StandardCharsets.UTF_8);
    }
}

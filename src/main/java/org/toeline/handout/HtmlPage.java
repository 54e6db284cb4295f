package org.toeline.handout;

import java.util.Base64;
import java.util.List;

/** The page as one HTML file that opens offline: the still inside it, no scripts, nothing fetched. */
final class HtmlPage {

    /** Dark on light with contrasts above 7:1; on a wide window the text stands beside the still. */
    private static final String STYLE = """
        body{font:18px/1.5 'DejaVu Sans',Verdana,sans-serif;color:#1a1a1a;background:#faf9f6;margin:0}
        main{max-width:72rem;margin:0 auto;padding:1rem}
        h1{font-size:1.4rem;line-height:1.25;margin:.2rem 0 1rem}
        h2{font-size:1.12rem;line-height:1.3;margin:1.3rem 0 .3rem}
        p{margin:.4rem 0;overflow-wrap:anywhere}
        img{display:block;width:100%;height:auto;border-radius:6px}
        .coach{padding:.1rem 1rem .5rem;margin-bottom:1rem;border-left:4px solid #0072b2;background:#fff}
        .coach h2{margin-top:.5rem}
        .first p:last-child{font-size:1.2rem;line-height:1.4;font-weight:bold}
        @media (min-width:60rem){.top{display:grid;grid-template-columns:minmax(0,27rem) minmax(0,1fr);gap:0 2rem}
        .beside section:first-child h2{margin-top:0}.below{columns:2;column-gap:2rem;margin-top:1rem}
        .below section{break-inside:avoid;padding-top:1px}}
        @media print{body{font-size:11px;background:#fff}main{padding:0}.first p:last-child{font-size:13px}
        .top{display:grid;grid-template-columns:45% 1fr;gap:0 1rem}.below{columns:2}}
        """;

    private HtmlPage() {}

    static String of(Page page, String language, String alternative, byte[] stillJpeg) {
        StringBuilder html = new StringBuilder("<!doctype html>\n<html lang=\"")
                .append(escaped(language))
                .append("\">\n<head>\n<meta charset=\"utf-8\">\n")
                .append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>")
                .append(escaped(page.title()))
                .append("</title>\n<style>\n")
                .append(STYLE)
                .append("</style>\n</head>\n<body>\n<main>\n<h1>")
                .append(escaped(page.title()))
                .append("</h1>\n");
        page.coach().ifPresent(c -> section(html, c));
        html.append("<div class=\"top\">\n<img alt=\"")
                .append(escaped(alternative))
                .append("\" src=\"data:image/jpeg;base64,")
                .append(Base64.getEncoder().encodeToString(stillJpeg))
                .append("\">\n");
        sections(html, "beside", page.beside());
        html.append("</div>\n");
        sections(html, "below", page.below());
        return html.append("</main>\n</body>\n</html>\n").toString();
    }

    private static void sections(StringBuilder html, String where, List<Page.Section> sections) {
        html.append("<div class=\"").append(where).append("\">\n");
        sections.forEach(s -> section(html, s));
        html.append("</div>\n");
    }

    private static void section(StringBuilder html, Page.Section section) {
        html.append("<section class=\"")
                .append(escaped(section.part()))
                .append("\">\n<h2>")
                .append(escaped(section.heading()))
                .append("</h2>\n");
        section.paragraphs().forEach(p -> html.append("<p>").append(escaped(p)).append("</p>\n"));
        html.append("</section>\n");
    }

    static String escaped(String text) {
        return Plain.text(text)
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replace("'", "&#39;");
    }
}

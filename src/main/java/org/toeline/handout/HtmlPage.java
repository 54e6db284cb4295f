package org.toeline.handout;

import java.util.Base64;

/** The page as one HTML file that opens offline: the still inside it, no scripts, nothing fetched. */
final class HtmlPage {

    private HtmlPage() {
    }

    static String of(Page page, String language, String alternative, byte[] stillPng) {
        StringBuilder html = new StringBuilder("<!doctype html>\n<html lang=\"").append(escaped(language))
                .append("\">\n<head>\n<meta charset=\"utf-8\">\n")
                .append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>")
                .append(escaped(page.title())).append("</title>\n<style>\n")
                .append("body{font:18px/1.5 'DejaVu Sans',sans-serif;color:#1a1a1a;background:#faf9f6;margin:0 auto;")
                .append("max-width:44rem;padding:1rem}h1{font-size:1.5rem;line-height:1.25}h2{font-size:1.15rem;")
                .append("margin:1.4rem 0 .3rem}p{margin:.4rem 0}img{width:100%;height:auto;border-radius:6px}")
                .append("blockquote{margin:0 0 1rem;padding:.6rem 1rem;border-left:4px solid #0072b2;background:#fff}\n")
                .append("</style>\n</head>\n<body>\n<main>\n<h1>").append(escaped(page.title())).append("</h1>\n");
        if (!page.coachsWords().isBlank()) {
            html.append("<blockquote>").append(escaped(page.coachsWords())).append("</blockquote>\n");
        }
        html.append("<img alt=\"").append(escaped(alternative)).append("\" src=\"data:image/png;base64,")
                .append(Base64.getEncoder().encodeToString(stillPng)).append("\">\n");
        for (Page.Section section : page.sections()) {
            html.append("<h2>").append(escaped(section.heading())).append("</h2>\n");
            section.paragraphs().forEach(p -> html.append("<p>").append(escaped(p)).append("</p>\n"));
        }
        return html.append("</main>\n</body>\n</html>\n").toString();
    }

    static String escaped(String text) {
        StringBuilder out = new StringBuilder();
        text.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                case '\'' -> out.append("&#39;");
                default -> {
                    if (c >= 32 || c == '\n' || c == '\t') {
                        out.appendCodePoint(c);
                    }
                }
            }
        });
        return out.toString();
    }
}

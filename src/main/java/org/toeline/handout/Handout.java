package org.toeline.handout;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.imageio.ImageIO;
import org.toeline.advice.Assessment;
import org.toeline.advice.Words;
import org.toeline.ledger.Lesson;
import org.toeline.mark.View;

/**
 * What the player takes home from a lesson: the annotated still, and the page with it. A pure function of what goes in;
 * any thread. Nothing but what is shown leaves: the picture carries no place, device or time.
 *
 * @param pictures    the address frame of each view that has one, as shown
 * @param coachsWords what the coach adds in own words; may be empty
 */
public record Handout(Lesson lesson, Assessment assessment, Map<View, BufferedImage> pictures, Words words,
                      StillOptions options, String coachsWords) {

    public Handout {
        pictures = Map.copyOf(pictures);
    }

    /** With initials and date below, the lines that matter, and no words of the coach's own. */
    public static Handout of(Lesson lesson, Assessment assessment, Map<View, BufferedImage> pictures, Words words) {
        return new Handout(lesson, assessment, pictures, words,
                new StillOptions(footer(lesson, words), StillOptions.Lines.THAT_MATTER), "");
    }

    private static String footer(Lesson lesson, Words words) {
        String initials = lesson.playerName().map(Handout::initials).orElse("");
        String date = lesson.recorded().map(r -> r.format(DateTimeFormatter.ofLocalizedDate(FormatStyle.LONG)
                .withLocale(Locale.forLanguageTag(words.language())))).orElse("");
        return initials.isEmpty() || date.isEmpty() ? initials + date : initials + " · " + date;
    }

    /** The first letters of a name's words. */
    static String initials(String name) {
        return java.util.Arrays.stream(name.strip().split("\\s+")).filter(w -> !w.isEmpty())
                .map(w -> Character.toString(w.codePointAt(0)).toUpperCase(Locale.ROOT)).limit(4)
                .collect(Collectors.joining());
    }

    public BufferedImage still() {
        return new Still(assessment, words, options).paint(pictures);
    }

    public byte[] png() {
        try {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            ImageIO.write(still(), "png", out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Page page() {
        return Page.of(assessment, words, title(), coachsWords);
    }

    private String title() {
        return options.footer().isEmpty() ? words.text("handout.title")
                : words.text("handout.title") + " – " + options.footer();
    }

    /** One page, A4. */
    public byte[] pdf() {
        return PdfPage.of(page(), still());
    }

    /** One file that opens offline. */
    public String html() {
        Optional<View> view = new Still(assessment, words, options).view(pictures.keySet());
        String said = assessment.advice().first().map(words::instruction).orElseGet(() -> words.nothing(assessment.advice()));
        String alternative = words.text("handout.alt", view.map(words::name).orElse(""), said);
        return HtmlPage.of(page(), words.language(), alternative, png());
    }
}

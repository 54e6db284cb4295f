package org.toeline.handout;

import java.awt.image.BufferedImage;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.toeline.advice.Assessment;
import org.toeline.advice.Words;
import org.toeline.language.Sentences;
import org.toeline.ledger.Lesson;
import org.toeline.mark.View;

/**
 * What the player takes home from a lesson: the annotated still, and the page with it. A pure function of what goes in;
 * any thread. Nothing but what is shown leaves: no file carries a place, a device or a time.
 *
 * @param pictures    the address frame of each view that has one, as shown
 * @param coachsWords what the coach adds in own words; may be empty, at most {@link #MOST_COACHS_WORDS} characters, so that
 *                    the page stays one page
 */
public record Handout(
        Lesson lesson,
        Assessment assessment,
        Map<View, BufferedImage> pictures,
        Words words,
        StillOptions options,
        String coachsWords) {

    public static final int MOST_COACHS_WORDS = 800;

    public Handout {
        pictures = Map.copyOf(pictures);
        if (coachsWords.length() > MOST_COACHS_WORDS) {
            throw new IllegalArgumentException(
                    Sentences.of(Handout.class).of("coach.long", coachsWords.length(), MOST_COACHS_WORDS));
        }
    }

    /** With initials and date below, the lines that matter, and no words of the coach's own. */
    public static Handout of(Lesson lesson, Assessment assessment, Map<View, BufferedImage> pictures, Words words) {
        return new Handout(lesson, assessment, pictures, words, StillOptions.USUAL, "");
    }

    public Handout withOptions(StillOptions changed) {
        return new Handout(lesson, assessment, pictures, words, changed, coachsWords);
    }

    public Handout withWords(Words changed) {
        return new Handout(lesson, assessment, pictures, changed, options, coachsWords);
    }

    public Handout withCoachsWords(String changed) {
        return new Handout(lesson, assessment, pictures, words, options, changed);
    }

    /** @throws IllegalArgumentException when the face is to be covered and nobody knows where the head is */
    public Still still() {
        return new Still(assessment, words, options, pictures, signed());
    }

    private String signed() {
        return options.signed().text(lesson, words);
    }

    private Page page() {
        String signed = signed();
        return Page.of(
                assessment,
                words,
                signed.isEmpty() ? words.text("handout.title") : words.text("handout.title") + " – " + signed,
                coachsWords);
    }

    /** The still as a PNG. */
    public byte[] png() {
        return PictureFormat.PNG.of(still());
    }

    /** One page. */
    public byte[] pdf(Paper paper) {
        return PdfPage.of(page(), still(), words.language(), paper);
    }

    /** One file that opens offline, UTF-8. */
    public byte[] html() {
        Still still = still();
        return html(still, PictureFormat.image(still));
    }

    private byte[] html(Still still, BufferedImage painted) {
        return HtmlPage.of(page(), words.language(), still.described(), PictureFormat.jpeg(painted))
                .getBytes(StandardCharsets.UTF_8);
    }

    /**
     * Why the still cannot be made as asked, in a sentence: the marks contradict each other, so that there is nothing to say,
     * or the face is to be covered and nobody marked the head.
     */
    public Optional<String> lacks() {
        return assessment
                .advice()
                .withheld()
                .map(c -> words.text("withheld.refused", words.contradiction(c)))
                .or(this::lacksHead);
    }

    /** Why there is no page to hand over: what {@link #lacks()} says, or that nothing was judged. */
    public Optional<String> lacksAdvice() {
        return lacks().or(() ->
                assessment.advice().isJudged() ? Optional.empty() : Optional.of(words.text("handout.refused")));
    }

    private Optional<String> lacksHead() {
        return shows(assessment, options, pictures.keySet())
                .filter(v -> !options.face().isPossible(assessment.posture(), v))
                .map(v -> Sentences.of(Handout.class).of("face.no-head-in", words.name(v)));
    }

    /** All of it, by file name: the still as PNG, the page as PDF and as HTML. The still is painted once. */
    public Map<String, byte[]> files(Paper paper) {
        Still still = still();
        BufferedImage painted = PictureFormat.image(still);
        return Map.of(
                fileName("still", "png"),
                PictureFormat.png(painted),
                fileName("page", "pdf"),
                PdfPage.of(page(), still, words.language(), paper),
                fileName("page", "html"),
                html(still, painted));
    }

    /** The view that the still will show, of those whose frame is at hand. */
    public static Optional<View> shows(Assessment assessment, StillOptions options, Set<View> pictured) {
        return options.view().filter(pictured::contains).or(() -> Still.view(assessment, pictured));
    }

    /** The name of one of its files, such as AS-2026-05-14-still.png, from what it is signed with. */
    public String fileName(String what, String ending) {
        return options.signed().fileStem(lesson) + "-" + what + "." + ending;
    }
}

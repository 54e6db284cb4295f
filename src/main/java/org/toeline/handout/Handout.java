package org.toeline.handout;

import java.awt.image.BufferedImage;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.toeline.advice.Assessment;
import org.toeline.advice.ContradictionWords;
import org.toeline.advice.Words;
import org.toeline.language.Sentences;
import org.toeline.ledger.Lesson;
import org.toeline.mark.PinnedWords;
import org.toeline.mark.View;
import org.toeline.paint.Script;

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
        return new Still(assessment, words, options, pictures, lesson.words(), who(), Still.Below.WORDS);
    }

    /** For a screen of that shape, its width by its height; the picture alone where nothing may be said. */
    public ShownLarge large(double shape) {
        return new ShownLarge(
                assessment,
                words,
                options,
                pictures,
                lesson.words(),
                lacksAdvice().isPresent(),
                shape);
    }

    /** The still that stands on the page, where the words stand too. */
    Still onPage() {
        return new Still(assessment, words, options, pictures, lesson.words(), "", Still.Below.FIGURES_ALONE);
    }

    /** Whose it is, with which club, and when. */
    String who() {
        String signed = options.signed().text(lesson, words);
        String club = Words.sentenceCase(words.name(lesson.sheet().club()));
        return signed.isEmpty() ? club : signed + " · " + club;
    }

    Page page() {
        return Page.of(assessment, words, who(), coachsWords, options.contact());
    }

    /** The still as a PNG. */
    public byte[] png() {
        return PictureFormat.PNG.of(still());
    }

    /** One page. */
    public byte[] pdf(Paper paper) {
        return PdfPage.of(page(), onPage(), words.language(), paper);
    }

    /** One file that opens offline, UTF-8. */
    public byte[] html() {
        Still still = onPage();
        return HtmlPage.of(page(), words.language(), still.described(), PictureFormat.jpeg(PictureFormat.image(still)))
                .getBytes(StandardCharsets.UTF_8);
    }

    /**
     * Why the still cannot be made as asked, in a sentence: the marks contradict each other, so that there is nothing to say,
     * the face is to be covered and nobody marked the head, what was drawn to cover it covers nothing that is shown, or no font
     * has a letter of the name.
     */
    public Optional<String> lacks() {
        return assessment
                .advice()
                .withheld()
                .map(c -> words.text("withheld.refused", new ContradictionWords(words).sentence(c)))
                .or(this::lacksLetters)
                .or(this::lacksCover);
    }

    /** Why there is no page to hand over: what {@link #lacks()} says, or that nothing was judged. */
    public Optional<String> lacksAdvice() {
        return lacks().or(() ->
                assessment.advice().isJudged() ? Optional.empty() : Optional.of(words.text("handout.refused")));
    }

    private Optional<String> lacksLetters() {
        String missing = Script.missing(who()
                + lesson.words().stream()
                        .filter(PinnedWords::onStill)
                        .map(PinnedWords::text)
                        .collect(Collectors.joining()));
        return missing.isEmpty()
                ? Optional.empty()
                : Optional.of(Sentences.of(Handout.class).of("letters.none", missing));
    }

    private Optional<String> lacksCover() {
        return shows(assessment, options, pictures.keySet()).flatMap(v -> {
            if (options.face() instanceof FaceCover.Drawn drawn) {
                return drawn.misses(v, Objects.requireNonNull(pictures.get(v)), words.name(v));
            }
            return options.face().isPossible(assessment.posture(), v)
                    ? Optional.empty()
                    : Optional.of(Sentences.of(Handout.class).of("face.no-head-in", words.name(v)));
        });
    }

    /** What the names of its files begin with, such as AS-2026-05-14. */
    public String stem() {
        return options.signed().fileStem(lesson);
    }

    /** All of it, by file name: the still as PNG, the page as PDF and as HTML. */
    public Map<String, byte[]> files(String stem, Paper paper) {
        return Map.of(stem + "-still.png", png(), stem + "-page.pdf", pdf(paper), stem + "-page.html", html());
    }

    /** A stem that no file of the folder begins with: that one, or with a number; so that nobody's handout is replaced. */
    public static String freeStem(Path folder, String stem) {
        String free = stem;
        for (int n = 2; isTaken(folder, free); n++) {
            free = stem + "-" + n;
        }
        return free;
    }

    private static boolean isTaken(Path folder, String stem) {
        return Stream.of(
                        "still.png",
                        "page.pdf",
                        "page.html",
                        "before-after.png",
                        "before-after.pdf",
                        "before-after.html")
                .anyMatch(end -> Files.exists(folder.resolve(stem + "-" + end), LinkOption.NOFOLLOW_LINKS));
    }

    /** The view that the still will show, of those whose frame is at hand. */
    public static Optional<View> shows(Assessment assessment, StillOptions options, Set<View> pictured) {
        return options.view().filter(pictured::contains).or(() -> Still.view(assessment, pictured));
    }

    /** The name of one of its files, such as AS-2026-05-14-still.png, from what it is signed with. */
    public String fileName(String what, String ending) {
        return stem() + "-" + what + "." + ending;
    }
}

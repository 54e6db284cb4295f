package org.toeline.handout;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.toeline.advice.Advice;
import org.toeline.advice.Assessment;
import org.toeline.advice.Finding;
import org.toeline.advice.FindingWords;
import org.toeline.advice.FirstThing;
import org.toeline.advice.Verdict;
import org.toeline.advice.Words;
import org.toeline.advice.page.PlayerWords;
import org.toeline.mark.PinnedWords;
import org.toeline.mark.View;
import org.toeline.paint.BandGauge;
import org.toeline.paint.Drawing;
import org.toeline.paint.Ink;
import org.toeline.paint.OverlayShapes;
import org.toeline.paint.PinnedNote;
import org.toeline.paint.StillOverlay;
import org.toeline.paint.TextBlock;
import org.toeline.reading.ReadingKind;

/**
 * The annotated still: the address frame around the player with the lines that matter, below it the gauge and what to
 * change, in one sentence. Upright, made for a phone: 1080 units wide, and no type under 33 of them, which is 11 pixels on a
 * screen of 360.
 */
public final class Still implements Drawing {

    static final int WIDTH = 1080;
    static final int PICTURE = 1060;
    private static final int MARGIN = 48;
    private static final int MOST_NAMED = 6;

    private static final double GAUGE = 190;
    private static final double ROW = 58;

    private final Assessment assessment;
    private final Words words;
    private final PlayerWords player;
    private final Below below;
    private final Optional<StillPicture> picture;
    private final Optional<Rectangle2D> gauge;
    private final List<Placed> texts = new ArrayList<>();
    private final List<Rectangle2D> rows = new ArrayList<>();
    private double end;

    /** A text and where it stands. */
    record Placed(TextBlock block, Color color, double x, double top) {}

    /** What is below the picture. */
    enum Below {
        /** What to change, in words. */
        WORDS,
        /** Nothing in words, since they stand beside the still. */
        FIGURES_ALONE
    }

    /**
     * @param pictures the address frame of each view that has one
     * @param written  what the coach wrote on the pictures; only what is for the still is shown
     * @param who      whose it is and with which club; may be empty
     */
    Still(
            Assessment assessment,
            Words words,
            StillOptions options,
            Map<View, BufferedImage> pictures,
            List<PinnedWords> written,
            String who,
            Below below) {
        this.assessment = assessment;
        this.words = words;
        this.below = below;
        this.player = PlayerWords.of(words, assessment);
        Optional<View> view = Handout.shows(assessment, options, pictures.keySet());
        this.picture = view.map(v -> StillPicture.of(
                assessment,
                words,
                v,
                Objects.requireNonNull(pictures.get(v)),
                options,
                written,
                new Rectangle2D.Double(0, 0, WIDTH, PICTURE)));
        this.end = picture.isPresent() ? PICTURE + 22 : 34;
        this.gauge = assessment.advice().first().map(f -> strip(GAUGE, 14));
        picture.ifPresent(p -> p.overlay().numbered().forEach(n -> rows.add(strip(ROW, 0))));
        if (below == Below.WORDS) {
            this.end += 12;
            panel(who);
        }
        this.end += 24;
    }

    private Rectangle2D strip(double height, double after) {
        Rectangle2D strip = new Rectangle2D.Double(MARGIN, end, WIDTH - 2.0 * MARGIN, height);
        end += height + after;
        return strip;
    }

    /** The view that shows the first thing best, of those with a picture. */
    static Optional<View> view(Assessment assessment, Set<View> pictured) {
        Optional<ReadingKind> first =
                assessment.advice().first().map(f -> f.finding().kind());
        return Stream.concat(
                        first.map(OverlayShapes::bestView).stream(),
                        Stream.of(View.FACE_ON, View.DOWN_THE_LINE, View.TEE))
                .filter(pictured::contains)
                .findFirst();
    }

    private void panel(String who) {
        put(who, Ink.bold(36), Ink.GREY, 10);
        Optional<FirstThing> first = assessment.advice().first();
        if (first.isPresent()) {
            Finding finding = first.get().finding();
            put(player.instruction(finding), Ink.bold(52), Ink.TEXT, 12);
            put(player.fault(finding) + ". " + player.sure(finding) + ".", Ink.plain(40), Ink.TEXT, 0);
        } else {
            nothing();
        }
    }

    private void nothing() {
        Advice advice = assessment.advice();
        if (!advice.isJudged()) {
            put(new FindingWords(words).nothing(advice), Ink.bold(52), Ink.TEXT, 8);
            put(new FindingWords(words).unjudged(advice), Ink.plain(40), Ink.TEXT, 0);
            return;
        }
        put(new FindingWords(words).nothing(advice), Ink.bold(52), advice.allInRange() ? Ink.BLUE : Ink.TEXT, 8);
        List<String> inRange = named(Set.of(Verdict.IN_RANGE));
        put(
                inRange.isEmpty()
                        ? words.text("handout.none.good")
                        : words.text("handout.good.lead", words.list(inRange)),
                Ink.plain(40),
                Ink.TEXT,
                12);
        List<String> unsure = named(Set.of(Verdict.TOO_CLOSE, Verdict.CANNOT_TELL));
        if (!unsure.isEmpty()) {
            put(words.text("handout.untold.lead", words.list(unsure)), Ink.plain(36), Ink.GREY, 0);
        }
    }

    /** At most six; the first as it is, the others as within a sentence. */
    private List<String> named(Set<Verdict> verdicts) {
        return assessment.advice().findings().stream()
                .filter(f -> f.verdict().filter(verdicts::contains).isPresent())
                .limit(MOST_NAMED)
                .map(f -> player.nameInSentence(f.kind()))
                .toList();
    }

    private void put(String text, Font font, Color color, double after) {
        if (!text.isBlank()) {
            TextBlock block = TextBlock.of(Plain.line(text), font, WIDTH - 2.0 * MARGIN);
            texts.add(new Placed(block, color, MARGIN, end));
            end += block.height() + after;
        }
    }

    /** Where the gauge of the first thing stands. */
    Optional<Rectangle2D> gauge() {
        return gauge;
    }

    /** Where the figures of the numbered lines stand. */
    List<Rectangle2D> rows() {
        return List.copyOf(rows);
    }

    @Override
    public double width() {
        return WIDTH;
    }

    @Override
    public double height() {
        return Math.ceil(end);
    }

    @Override
    public void paint(Graphics2D g) {
        g.setColor(Ink.PAPER);
        g.fill(new Rectangle2D.Double(0, 0, width(), height()));
        picture.ifPresent(p -> p.paint(g));
        BandGauge drawn = new BandGauge(words);
        assessment
                .advice()
                .first()
                .ifPresent(f -> gauge.ifPresent(at -> {
                    ReadingKind kind = f.finding().kind();
                    boolean turned = picture.filter(
                                    p -> p.turned(kind, assessment.sheet().handedness()))
                            .isPresent();
                    drawn.paintBelow(
                            g,
                            f.finding(),
                            player.name(kind),
                            new BandGauge.Ends(player.lowEnd(kind), player.highEnd(kind), turned),
                            at);
                }));
        picture.ifPresent(p -> {
            for (int i = 0; i < rows.size(); i++) {
                StillOverlay.Numbered n = p.overlay().numbered().get(i);
                drawn.paintNumbered(g, n.number(), player.name(n.finding().kind()), n.finding(), rows.get(i));
            }
        });
        texts.forEach(t -> t.block().paint(g, t.color(), t.x(), t.top()));
    }

    /** The picture, where a clip gave one. */
    Optional<StillPicture> picture() {
        return picture;
    }

    List<Placed> texts() {
        return List.copyOf(texts);
    }

    @Override
    public String title() {
        return words.text("handout.title");
    }

    /** Beside the page's words only what the picture adds to them: the figures; alone, all of it. */
    @Override
    public String described() {
        String said = assessment
                .advice()
                .first()
                .map(f -> described(f.finding()))
                .orElseGet(() -> new FindingWords(words).nothing(assessment.advice()));
        return picture.map(p -> words.text("handout.alt", words.name(p.view()), said) + written(p))
                .orElse(said);
    }

    private String written(StillPicture shown) {
        List<String> notes =
                shown.overlay().notes().stream().map(PinnedNote::said).toList();
        return notes.isEmpty() ? "" : ". " + words.text("handout.alt.written", String.join(" · ", notes));
    }

    private String described(Finding finding) {
        String figures = player.name(finding.kind()) + ": " + player.small(finding);
        return below == Below.FIGURES_ALONE
                ? figures
                : player.fault(finding) + ". " + player.instruction(finding) + " " + figures;
    }
}

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
import org.toeline.advice.Assessment;
import org.toeline.advice.FirstThing;
import org.toeline.advice.Verdict;
import org.toeline.advice.Words;
import org.toeline.mark.View;
import org.toeline.paint.Drawing;
import org.toeline.paint.Ink;
import org.toeline.paint.OverlayShapes;
import org.toeline.paint.TextBlock;
import org.toeline.reading.ReadingKind;

/**
 * The annotated still: the address frame around the player with the lines that matter and the gauge, and below it what to
 * change, in one sentence. Upright, made for a phone: 1080 units wide, and no type under 33 of them, which is 11 pixels on a
 * screen of 360.
 */
public final class Still implements Drawing {

    static final int WIDTH = 1080;
    static final int PICTURE = 1120;
    private static final int MARGIN = 48;
    private static final int MOST_NAMED = 6;
    private static final int SMALLEST = 33;

    private final Assessment assessment;
    private final Words words;
    private final Optional<StillPicture> picture;
    private final List<Placed> texts = new ArrayList<>();
    private double end;

    /** A text where it stands. */
    record Placed(TextBlock block, Color color, double x, double top) {}

    /**
     * @param pictures the address frame of each view that has one
     * @param signed   whose it is; may be empty
     */
    Still(Assessment assessment, Words words, StillOptions options, Map<View, BufferedImage> pictures, String signed) {
        this.assessment = assessment;
        this.words = words;
        Optional<View> view = Handout.shows(assessment, options, pictures.keySet());
        this.picture = view.map(v -> StillPicture.of(
                assessment,
                v,
                Objects.requireNonNull(pictures.get(v)),
                options,
                new Rectangle2D.Double(0, 0, WIDTH, PICTURE)));
        this.end = (picture.isPresent() ? PICTURE : 0) + 34;
        panel(signed);
        this.end += 30;
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

    private void panel(String signed) {
        Optional<FirstThing> first = assessment.advice().first();
        if (first.isPresent()) {
            put(words.text("handout.first"), Ink.bold(36), Ink.GREY, 4);
            put(words.fault(first.get().finding()), Ink.bold(58), Ink.VERMILION.darker(), 6);
            put(words.instruction(first.get()), Ink.plain(46), Ink.TEXT, 16);
            if (picture.flatMap(StillPicture::gauge).isEmpty()) {
                put(words.sentence(first.get().finding()), Ink.plain(38), Ink.TEXT, 16);
            }
        } else {
            nothing();
        }
        put(words.text("handout.terms"), Ink.plain(SMALLEST), Ink.GREY, 8);
        put(signed, Ink.plain(SMALLEST), Ink.GREY, 0);
    }

    private void nothing() {
        boolean good = assessment.advice().allInRange();
        put(words.nothing(assessment.advice()), Ink.bold(58), good ? Ink.BLUE : Ink.TEXT, 6);
        List<String> inRange =
                named(Set.of(Verdict.IN_RANGE)).stream().limit(MOST_NAMED).toList();
        put(
                inRange.isEmpty()
                        ? words.text("handout.none.good")
                        : words.text("handout.good.lead", words.list(inRange)),
                Ink.plain(40),
                Ink.TEXT,
                12);
        List<String> unsure = named(Set.of(Verdict.TOO_CLOSE, Verdict.CANNOT_TELL));
        if (!unsure.isEmpty()) {
            put(words.text("handout.untold.lead", words.list(unsure)), Ink.plain(36), Ink.GREY, 8);
        }
    }

    private List<String> named(Set<Verdict> verdicts) {
        return assessment.advice().findings().stream()
                .filter(f -> f.verdict().filter(verdicts::contains).isPresent())
                .map(f -> words.name(f.kind()))
                .toList();
    }

    private void put(String text, Font font, Color color, double after) {
        if (!text.isBlank()) {
            TextBlock block = TextBlock.of(Plain.line(text), font, WIDTH - 2.0 * MARGIN);
            texts.add(new Placed(block, color, MARGIN, end));
            end += block.height() + after;
        }
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
        picture.ifPresent(p -> p.paint(g, words));
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

    @Override
    public String described() {
        String said = assessment
                .advice()
                .first()
                .map(f -> words.sentence(f.finding()) + " " + words.instruction(f))
                .orElseGet(() -> words.nothing(assessment.advice()));
        return picture.map(p -> words.text("handout.alt", words.name(p.view()), said))
                .orElse(said);
    }
}

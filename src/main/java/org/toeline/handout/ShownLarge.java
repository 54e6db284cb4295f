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
import org.toeline.advice.Assessment;
import org.toeline.advice.Finding;
import org.toeline.advice.FindingWords;
import org.toeline.advice.Words;
import org.toeline.advice.page.PlayerWords;
import org.toeline.mark.PinnedWords;
import org.toeline.mark.View;
import org.toeline.paint.BandGauge;
import org.toeline.paint.Drawing;
import org.toeline.paint.Ink;
import org.toeline.paint.PictureFrame;
import org.toeline.paint.TextBlock;
import org.toeline.reading.ReadingKind;

/**
 * What a player is shown on a screen from two metres: the address frame with the lines that matter, and beside it the one thing to
 * change, large. Where nothing may be said it is the picture alone.
 */
public final class ShownLarge implements Drawing {

    /** Units from top to bottom, on every screen. */
    public static final int HEIGHT = 1080;

    /** As much of a wide screen as the words get at least, and the picture at most, which shows an upright player. */
    private static final double LEAST_WORDS = 620;

    private static final double MOST_PICTURE = 1180;
    private static final double MARGIN = 48;
    private static final double GAUGE = 170;
    private static final double APART = 30;

    private final Assessment assessment;
    private final Words words;
    private final PlayerWords player;
    private final double width;
    private final Optional<View> view;
    private final Optional<StillPicture> marked;
    private final Optional<PictureFrame> picture;
    private final List<Still.Placed> texts = new ArrayList<>();
    private final Optional<Rectangle2D> gauge;

    /**
     * @param pictures the address frame of each view that has one
     * @param written  what the coach wrote on the pictures; only what is for the still is shown
     * @param silent   nothing may be said
     * @param shape    of the screen, its width by its height
     */
    ShownLarge(
            Assessment assessment,
            Words words,
            StillOptions options,
            Map<View, BufferedImage> pictures,
            List<PinnedWords> written,
            boolean silent,
            double shape) {
        this.assessment = assessment;
        this.words = words;
        this.player = PlayerWords.of(words, assessment);
        this.width = HEIGHT * shape;
        this.view = Handout.shows(assessment, options, pictures.keySet());
        double room = silent ? width : Math.min(MOST_PICTURE, width - LEAST_WORDS);
        Rectangle2D frame = new Rectangle2D.Double(0, 0, room, HEIGHT);
        this.marked = view.filter(v -> !silent)
                .map(v -> StillPicture.of(
                        assessment, words, v, Objects.requireNonNull(pictures.get(v)), options, written, frame));
        this.picture = silent
                ? view.map(v -> whole(Objects.requireNonNull(pictures.get(v)), frame))
                : marked.map(StillPicture::picture);
        this.gauge = silent ? Optional.empty() : said(marked.isPresent() ? room : 0);
    }

    private static PictureFrame whole(BufferedImage image, Rectangle2D frame) {
        double scale = Math.min(frame.getWidth() / image.getWidth(), frame.getHeight() / image.getHeight());
        double w = frame.getWidth() / scale;
        double h = frame.getHeight() / scale;
        return PictureFrame.of(
                new Rectangle2D.Double((image.getWidth() - w) / 2, (image.getHeight() - h) / 2, w, h), frame, image);
    }

    /** The words in the middle of what the picture leaves, and below them the gauge of the first thing. */
    private Optional<Rectangle2D> said(double left) {
        double x = left + MARGIN;
        double wide = width - left - 2 * MARGIN;
        Optional<Finding> first = assessment.advice().first().map(f -> f.finding());
        double end = 0;
        if (first.isPresent()) {
            end = put(player.instruction(first.get()), Ink.bold(64), x, wide, end) + APART;
            end = put(player.fault(first.get()) + ". " + player.sure(first.get()) + ".", Ink.plain(42), x, wide, end);
            end += 2 * APART + GAUGE;
        } else {
            end = put(new FindingWords(words).nothing(assessment.advice()), Ink.bold(64), x, wide, end);
        }
        double down = Math.max(MARGIN, (HEIGHT - end) / 2);
        texts.replaceAll(t -> new Still.Placed(t.block(), t.color(), t.x(), t.top() + down));
        double gaugeTop = end + down - GAUGE;
        return first.map(f -> new Rectangle2D.Double(x, gaugeTop, wide, GAUGE));
    }

    /** Answers where it ends. */
    private double put(String text, Font font, double x, double wide, double top) {
        TextBlock block = TextBlock.of(Plain.line(text), font, wide);
        texts.add(new Still.Placed(block, Ink.TEXT, x, top));
        return top + block.height();
    }

    /** Which view it shows, where a clip gave a picture. */
    public Optional<View> view() {
        return view;
    }

    /** Where its picture lies. */
    public Optional<PictureFrame> picture() {
        return picture;
    }

    @Override
    public double width() {
        return width;
    }

    @Override
    public double height() {
        return HEIGHT;
    }

    @Override
    public void paint(Graphics2D g) {
        g.setColor(marked.isPresent() || !texts.isEmpty() ? Ink.PAPER : Color.BLACK);
        g.fill(new Rectangle2D.Double(0, 0, width, HEIGHT));
        marked.ifPresentOrElse(m -> m.paint(g), () -> picture.ifPresent(p -> p.paint(g)));
        texts.forEach(t -> t.block().paint(g, t.color(), t.x(), t.top()));
        assessment
                .advice()
                .first()
                .ifPresent(f -> gauge.ifPresent(at -> {
                    ReadingKind kind = f.finding().kind();
                    boolean turned = marked.filter(
                                    p -> p.turned(kind, assessment.sheet().handedness()))
                            .isPresent();
                    new BandGauge(words)
                            .paintBelow(
                                    g,
                                    f.finding(),
                                    player.name(kind),
                                    new BandGauge.Ends(player.lowEnd(kind), player.highEnd(kind), turned),
                                    at);
                }));
    }

    /** What is written on it. */
    public List<String> lines() {
        return texts.stream().flatMap(t -> t.block().lines().stream()).toList();
    }

    @Override
    public String title() {
        return words.text("handout.title");
    }

    @Override
    public String described() {
        return String.join(" ", lines());
    }
}

package org.toeline.handout;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.toeline.across.Family;
import org.toeline.advice.Advice;
import org.toeline.advice.Finding;
import org.toeline.advice.Verdict;
import org.toeline.advice.Words;
import org.toeline.advice.page.ClubKind;
import org.toeline.advice.page.PlayerWords;
import org.toeline.language.Sentences;
import org.toeline.ledger.Lesson;
import org.toeline.mark.Club;
import org.toeline.mark.View;
import org.toeline.paint.BandGauge;
import org.toeline.paint.Drawing;
import org.toeline.paint.Ink;
import org.toeline.paint.OverlayPainter;
import org.toeline.paint.OverlayShapes;
import org.toeline.paint.OverlayShapes.Kind;
import org.toeline.paint.PictureFrame;
import org.toeline.paint.TextBlock;
import org.toeline.reading.ReadingKind;

/**
 * Two lessons of a player in one picture: the address frames beside each other with as many pixels to a metre at the player
 * and the ball in one place, the gauge of the one thing in both, and whether it really changed. 1080 units wide.
 */
public final class BeforeAfter implements Drawing {

    private static final double GAP = 16;
    private static final double PANEL_HEIGHT = 900;
    private static final double MARGIN = 40;
    private static final double TYPE = 36;

    private final Words words;
    private final PlayerWords player;
    private final String said;
    private final ReadingKind kind;
    private final SameScale scale;
    private final Side before;
    private final Side after;
    private final List<Still.Placed> texts = new ArrayList<>();
    private double end = PANEL_HEIGHT + 26;
    private final Rectangle2D gauges;

    /** One of the two: its handout, its picture in its place, and what was found. */
    private record Side(Handout handout, SameScale.Placed placed, String caption, Optional<Finding> finding) {}

    private BeforeAfter(Handout before, Handout after, ReadingKind kind, SameScale scale, Still.Below below) {
        this.words = after.words();
        this.kind = kind;
        this.scale = scale;
        this.before = side(before, scale.left(), "handout.before");
        this.after = side(after, scale.right(), "handout.after");
        this.player = PlayerWords.of(words, after.assessment());
        this.said = new ChangeWords(words, player)
                .of(kind, this.before.finding, this.after.finding, readInBoth(before, after));
        if (below == Still.Below.WORDS) {
            put(said, Ink.bold(44), Ink.TEXT, 18);
        }
        int rows = (int) Stream.of(this.before, this.after)
                .filter(s -> s.finding.isPresent())
                .count();
        this.gauges = new Rectangle2D.Double(MARGIN, end, Still.WIDTH - 2 * MARGIN, 70 + 96.0 * rows);
        end = gauges.getMaxY() + 20;
        if (below == Still.Below.WORDS) {
            next();
        }
    }

    private void next() {
        after.finding
                .filter(f -> f.verdict().filter(Verdict::isOut).isPresent())
                .ifPresent(f -> {
                    put(player.instruction(f), Ink.bold(TYPE), Ink.TEXT, 12);
                });
        put(after.handout.who(), Ink.plain(33), Ink.GREY, 28);
    }

    /**
     * Beside each other, in the view that shows best what was to be changed first; in the words of the later one. Empty when
     * no view has a picture and an estimated camera in both.
     */
    public static Optional<BeforeAfter> of(Handout before, Handout after) {
        Optional<View> view = Handout.shows(before.assessment(), before.options(), SameScale.views(before, after));
        return view.flatMap(v -> kind(before, after)
                .flatMap(kind -> SameScale.of(
                                before,
                                after,
                                v,
                                new Rectangle2D.Double(0, 0, (Still.WIDTH - GAP) / 2, PANEL_HEIGHT),
                                new Rectangle2D.Double(
                                        (Still.WIDTH + GAP) / 2, 0, (Still.WIDTH - GAP) / 2, PANEL_HEIGHT))
                        .map(scale -> new BeforeAfter(before, after, kind, scale, Still.Below.WORDS))));
    }

    /** What was to be changed first before, or is now, or else what both have. */
    private static Optional<ReadingKind> kind(Handout before, Handout after) {
        Advice then = before.assessment().advice();
        Advice now = after.assessment().advice();
        return then.first()
                .or(now::first)
                .map(f -> f.finding().kind())
                .or(() -> then.findings().stream()
                        .map(Finding::kind)
                        .filter(k -> now.finding(k).isPresent())
                        .findFirst());
    }

    private Side side(Handout handout, SameScale.Placed placed, String key) {
        String signed = Signed.DATE.text(handout.lesson(), words);
        boolean dated = handout.options().signed() != Signed.NOT && !signed.isEmpty();
        return new Side(
                handout,
                placed,
                words.text(key) + (dated ? " · " + signed : ""),
                handout.assessment().advice().finding(kind));
    }

    private static Family readInBoth(Handout before, Handout after) {
        Advice later = after.assessment().advice();
        return new Family(Math.max(1, (int) before.assessment().advice().findings().stream()
                .filter(f -> later.finding(f.kind()).isPresent())
                .count()));
    }

    /** Why two lessons cannot stand beside each other, a clause; what is not known of them hinders nothing. */
    public static Optional<String> hindrance(Handout before, Handout after) {
        Sentences say = Sentences.of(BeforeAfter.class);
        Words words = Words.usual();
        Lesson one = before.lesson();
        Lesson two = after.lesson();
        if (one.playerName().isPresent()
                && two.playerName().isPresent()
                && !sameName(one.playerName().get(), two.playerName().get())) {
            return Optional.of(say.of(
                    "both.player",
                    Plain.line(one.playerName().get()),
                    Plain.line(two.playerName().get())));
        }
        if (one.sheet().handedness() != two.sheet().handedness()) {
            return Optional.of(say.of("both.hand"));
        }
        Club club = one.sheet().club();
        Club other = two.sheet().club();
        if (ClubKind.of(club) != ClubKind.of(other)) {
            return Optional.of(say.of("both.club", words.name(club), words.name(other)));
        }
        return one.recorded()
                .filter(t -> two.recorded().filter(t::isAfter).isPresent())
                .map(t -> say.of("both.order", Signed.DATE.text(one, words), Signed.DATE.text(two, words)));
    }

    private static boolean sameName(String one, String other) {
        return Normalizer.normalize(Plain.line(one), Normalizer.Form.NFKC)
                .equalsIgnoreCase(Normalizer.normalize(Plain.line(other), Normalizer.Form.NFKC));
    }

    private void put(String text, Font font, Color color, double after) {
        TextBlock block = TextBlock.of(Plain.line(text), font, Still.WIDTH - 2 * MARGIN);
        texts.add(new Still.Placed(block, color, MARGIN, end));
        end += block.height() + after;
    }

    @Override
    public double width() {
        return Still.WIDTH;
    }

    @Override
    public double height() {
        return Math.ceil(end);
    }

    @Override
    public void paint(Graphics2D g) {
        g.setColor(Ink.PAPER);
        g.fill(new Rectangle2D.Double(0, 0, width(), height()));
        panel(g, before);
        panel(g, after);
        texts.forEach(t -> t.block().paint(g, t.color(), t.x(), t.top()));
        List<BandGauge.Row> rows = new ArrayList<>();
        before.finding.ifPresent(f -> rows.add(new BandGauge.Row(words.text("handout.before"), f)));
        after.finding.ifPresent(f -> rows.add(new BandGauge.Row(words.text("handout.after"), f)));
        if (!rows.isEmpty()) {
            new BandGauge(words).paintRows(g, player.name(kind), rows, gauges);
        }
    }

    private void panel(Graphics2D g, Side side) {
        PictureFrame picture = side.placed.picture();
        picture.paint(g);
        Shape clip = g.getClip();
        g.clip(picture.frame());
        OverlayPainter painter = new OverlayPainter(words, 5, 32);
        side.finding.ifPresent(
                f -> painter.paintFor(g, side.handout.assessment(), side.placed.view(), picture.toDevice(), f));
        if (OverlayShapes.mattersFor(kind).contains(Kind.TARGET)) {
            painter.paintTarget(g, side.handout.assessment(), side.placed.view(), picture.toDevice(), picture.frame());
        }
        double x = picture.frame().getX() + 20;
        Ink.textOverPicture(
                g,
                side.caption,
                Ink.fitting(side.caption, Ink.bold(TYPE), picture.frame().getWidth() - 40),
                Color.WHITE,
                x,
                52);
        g.setClip(clip);
    }

    /** The same number for both pictures: drawing units to a metre at the player. */
    double unitsPerMetre() {
        return before.placed.unitsPerMetre();
    }

    List<SameScale.Placed> placed() {
        return List.of(before.placed, after.placed);
    }

    /** What became of it, in one sentence. */
    String said() {
        return said;
    }

    /** The page of the later lesson with both pictures and what became of it on top, as PDF and HTML, and the picture itself. */
    public Map<String, byte[]> files(String stem, Paper paper) {
        Handout later = after.handout;
        Page page =
                later.page().compared(said, later.assessment().advice().first().isPresent(), words);
        BeforeAfter onPage = new BeforeAfter(before.handout, later, kind, scale, Still.Below.FIGURES_ALONE);
        return Map.of(
                stem + "-before-after.png",
                PictureFormat.PNG.of(this),
                stem + "-before-after.pdf",
                PdfPage.of(page, onPage, words.language(), paper),
                stem + "-before-after.html",
                HtmlPage.of(page, words.language(), described(), PictureFormat.jpeg(PictureFormat.image(onPage)))
                        .getBytes(StandardCharsets.UTF_8));
    }

    @Override
    public String title() {
        return words.text("handout.before-after");
    }

    @Override
    public String described() {
        return Stream.of(before, after)
                .map(s -> s.caption + ": " + s.finding.map(words::figure).orElse("–"))
                .reduce(said + " " + player.name(kind), (a, b) -> a + " " + b);
    }
}

package org.toeline.handout;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.toeline.advice.Assessment;
import org.toeline.advice.Finding;
import org.toeline.advice.FirstThing;
import org.toeline.advice.Verdict;
import org.toeline.advice.Words;
import org.toeline.geometry.ImagePoint;
import org.toeline.handout.OverlayShapes.Kind;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;
import org.toeline.reading.ReadingKind;

/**
 * The annotated still: the address frame around the player with the lines that matter, and below it what to change, in
 * one sentence, its band and what may follow from it. Upright, made for a phone: 1080 pixels wide.
 */
final class Still {

    static final int WIDTH = 1080;
    private static final int PICTURE = 1120;
    private static final int MARGIN = 48;
    private static final int MOST_NAMED = 6;
    /** Readings the still shows when there is nothing to change. */
    private static final Set<Kind> WHEN_GOOD = EnumSet.of(Kind.SHOULDERS, Kind.TOES, Kind.PLUMB, Kind.GAP, Kind.TARGET);

    private final Assessment assessment;
    private final Words words;
    private final StillOptions options;

    Still(Assessment assessment, Words words, StillOptions options) {
        this.assessment = assessment;
        this.words = words;
        this.options = options;
    }

    /** The view that shows the first thing best, of those with a picture. */
    Optional<View> view(Set<View> pictured) {
        Optional<ReadingKind> first = assessment.advice().first().map(f -> f.finding().kind());
        List<View> order = first.map(kind -> switch (kind) {
            case BALL_ABOVE_CROWN, TEE_HEIGHT -> List.of(View.TEE, View.FACE_ON, View.DOWN_THE_LINE);
            case FEET_TO_TARGET, SHOULDERS_TO_TARGET, SHOULDERS_TO_FEET, FORWARD_BEND, KNEE_FLEX, BALL_DISTANCE,
                    LEAD_FOOT_FLARE, TRAIL_FOOT_FLARE -> List.of(View.DOWN_THE_LINE, View.FACE_ON, View.TEE);
            default -> List.of(View.FACE_ON, View.DOWN_THE_LINE, View.TEE);
        }).orElse(List.of(View.FACE_ON, View.DOWN_THE_LINE, View.TEE));
        return order.stream().filter(pictured::contains).findFirst();
    }

    BufferedImage paint(Map<View, BufferedImage> pictures) {
        Optional<View> view = view(pictures.keySet());
        BufferedImage tall = new BufferedImage(WIDTH, 2400, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = tall.createGraphics();
        try {
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
            g.setColor(Ink.PAPER);
            g.fillRect(0, 0, WIDTH, tall.getHeight());
            double top = 0;
            if (view.isPresent()) {
                picture(g, view.get(), pictures.get(view.get()));
                top = PICTURE;
            }
            int end = (int) Math.ceil(panel(g, top + 36)) + 36;
            BufferedImage still = new BufferedImage(WIDTH, end, BufferedImage.TYPE_INT_RGB);
            still.getRaster().setRect(tall.getRaster().createChild(0, 0, WIDTH, end, 0, 0, null));
            return still;
        } finally {
            g.dispose();
        }
    }

    private void picture(Graphics2D g, View view, BufferedImage picture) {
        Rectangle2D crop = crop(view, picture);
        double scale = WIDTH / crop.getWidth();
        AffineTransform toDevice = new AffineTransform(scale, 0, 0, scale, -scale * crop.getX(), -scale * crop.getY());
        g.setColor(Color.DARK_GRAY);
        g.fillRect(0, 0, WIDTH, PICTURE);
        g.setClip(0, 0, WIDTH, PICTURE);
        g.drawImage(picture, toDevice, null);
        new OverlayPainter(words, 6, 40).paint(g, assessment, view, toDevice, kinds());
        g.setClip(null);
    }

    private Set<Kind> kinds() {
        if (options.lines() == StillOptions.Lines.ALL) {
            return EnumSet.allOf(Kind.class);
        }
        return assessment.advice().first().map(f -> OverlayShapes.mattersFor(f.finding().kind())).orElse(WHEN_GOOD);
    }

    /** The part of the picture around everything marked, in the still's shape, within the picture. */
    private Rectangle2D crop(View view, BufferedImage picture) {
        ViewMarks marks = assessment.sheet().view(view).orElseThrow();
        Rectangle2D box = null;
        List<ImagePoint> points = new java.util.ArrayList<>();
        marks.marks().forEach(m -> points.add(m.at()));
        marks.ball().ifPresent(b -> points.add(b.centre()));
        for (ImagePoint p : points) {
            Rectangle2D at = new Rectangle2D.Double(p.xPx(), p.yPx(), 0.1, 0.1);
            box = box == null ? at : box.createUnion(at);
        }
        double w = picture.getWidth();
        double h = picture.getHeight();
        if (box == null) {
            box = new Rectangle2D.Double(0, 0, w, h);
        }
        double height = Math.min(h, Math.max(box.getHeight() * 1.28, box.getWidth() * 1.25 * PICTURE / WIDTH));
        double width = Math.min(w, height * WIDTH / PICTURE);
        height = width * PICTURE / WIDTH;
        double x = Math.max(0, Math.min(w - width, box.getCenterX() - width / 2));
        double y = Math.max(0, Math.min(h - height, box.getCenterY() - height / 2));
        return new Rectangle2D.Double(x, y, width, height);
    }

    private double panel(Graphics2D g, double top) {
        double width = WIDTH - 2.0 * MARGIN;
        double y = top;
        Optional<FirstThing> first = assessment.advice().first();
        if (first.isPresent()) {
            Finding finding = first.get().finding();
            y = TextBlock.of(words.text("handout.first"), Ink.bold(34), width).paint(g, Ink.GREY, MARGIN, y) + 4;
            y = TextBlock.of(words.fault(finding), Ink.bold(58), width).paint(g, Ink.VERMILION.darker(), MARGIN, y) + 6;
            y = TextBlock.of(words.instruction(first.get()), Ink.plain(46), width).paint(g, Ink.TEXT, MARGIN, y) + 22;
            new BandGauge(words).paint(g, finding, new Rectangle2D.Double(MARGIN, y, width, 190));
            y += 210;
            if (words.mayFollow(first.get()).isPresent()) {
                y = TextBlock.of(words.mayFollow(first.get()).get(), Ink.plain(34), width)
                        .paint(g, Ink.GREY, MARGIN, y) + 8;
            }
        } else {
            y = nothing(g, y, width);
        }
        y = TextBlock.of(words.text("handout.terms"), Ink.plain(26), width).paint(g, Ink.GREY, MARGIN, y + 6);
        if (!options.footer().isEmpty()) {
            y = TextBlock.of(options.footer(), Ink.plain(28), width).paint(g, Ink.GREY, MARGIN, y + 8);
        }
        return y;
    }

    private double nothing(Graphics2D g, double top, double width) {
        boolean good = assessment.advice().allInRange();
        double y = TextBlock.of(words.nothing(assessment.advice()), Ink.bold(58), width)
                .paint(g, good ? Ink.BLUE : Ink.TEXT, MARGIN, top) + 6;
        List<String> inRange = named(Set.of(Verdict.IN_RANGE)).stream().limit(MOST_NAMED).toList();
        String text = inRange.isEmpty() ? words.text("handout.none.good")
                : words.text("handout.good.lead", words.list(inRange));
        y = TextBlock.of(text, Ink.plain(40), width).paint(g, Ink.TEXT, MARGIN, y) + 12;
        List<String> unsure = named(Set.of(Verdict.TOO_CLOSE, Verdict.CANNOT_TELL));
        return unsure.isEmpty() ? y : TextBlock.of(words.text("handout.untold.lead", words.list(unsure)),
                Ink.plain(34), width).paint(g, Ink.GREY, MARGIN, y) + 8;
    }

    private List<String> named(Set<Verdict> verdicts) {
        return assessment.advice().findings().stream().filter(f -> f.verdict().filter(verdicts::contains).isPresent())
                .map(f -> words.name(f.kind())).toList();
    }
}

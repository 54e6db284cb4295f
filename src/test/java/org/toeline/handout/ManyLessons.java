package org.toeline.handout;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.lang.ref.SoftReference;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import javax.imageio.ImageIO;
import org.toeline.advice.Assessment;
import org.toeline.advice.LengthUnit;
import org.toeline.advice.Words;
import org.toeline.geometry.ImagePoint;
import org.toeline.ledger.Lesson;
import org.toeline.mark.Club;
import org.toeline.mark.Mark;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;
import org.toeline.paint.BodyPoints;
import org.toeline.study.Scenes;

/**
 * Sixty lessons that differ in club, hand, views, rods, size and what was marked, in both languages; the players are drawn
 * as sticks. {@code main FOLDER} writes the still of each, the picture of some pages, and sheets of six stills to look at.
 */
public final class ManyLessons {

    static final int COUNT = 60;
    private static final List<String> NAMES = List.of(
            "A. Sample",
            "Maximiliane-Friederike von und zu Hohenstein-Sternberg",
            "Łukasz Żółć",
            "Ελένη Νίκου",
            "Юлия Крылова",
            "سلمى حداد");
    private static final int ACROSS = 3;
    private static final int SHRUNK = 4;

    /** As long as there is room for the pictures. */
    private static final Map<Integer, SoftReference<Handout>> MADE = new ConcurrentHashMap<>();

    private ManyLessons() {}

    /** Lesson number i, its assessment and its pictures, ready to be handed out. */
    static Handout lesson(int i) {
        SoftReference<Handout> kept = MADE.get(i);
        Handout made = kept == null ? null : kept.get();
        if (made == null) {
            made = make(i);
            MADE.put(i, new SoftReference<>(made));
        }
        return made;
    }

    private static Handout make(int i) {
        MarkSheet sheet = sheet(i);
        Lesson lesson = Lesson.of(sheet)
                .withPlayerName(Optional.of(NAMES.get(i % NAMES.size())))
                .withRecorded(OffsetDateTime.parse("2026-05-14T10:20:00+02:00"));
        Assessment assessment = Assessment.of(sheet);
        Map<View, BufferedImage> pictures = new EnumMap<>(View.class);
        sheet.views().forEach(v -> pictures.put(v.view(), figure(assessment, v)));
        Words words = i % 2 == 0
                ? Words.of(Locale.UK, LengthUnit.CENTIMETRE)
                : Words.of(Locale.GERMANY, LengthUnit.CENTIMETRE);
        StillOptions options = i % 10 == 7 ? StillOptions.USUAL.withLines(StillOptions.Lines.ALL) : StillOptions.USUAL;
        return Handout.of(lesson, assessment, pictures, words).withOptions(options);
    }

    private static MarkSheet sheet(int i) {
        MarkSheet drawn = Scenes.any(i, 5000 + i);
        MarkSheet sheet = drawn.withClub(Club.values()[i % Club.values().length]);
        for (ViewMarks view : drawn.views()) {
            ViewMarks kept = view;
            for (Mark mark : view.marks()) {
                boolean dropped =
                        i == COUNT - 1 || i % 9 == 4 && mark.landmark().ordinal() % 3 == i % 3;
                kept = dropped ? kept.withoutMark(mark.landmark()) : kept;
            }
            sheet = sheet.withView(kept);
        }
        return sheet;
    }

    /** A figure of dots along the limbs over plain ground. */
    private static BufferedImage figure(Assessment assessment, ViewMarks view) {
        BufferedImage image = Samples.grey(view.widthPx(), view.heightPx());
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setColor(new Color(0x3A4450));
        g.setStroke(new BasicStroke(26, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        for (ImagePoint p : BodyPoints.of(assessment.posture(), view)) {
            g.draw(new Line2D.Double(p.xPx(), p.yPx(), p.xPx(), p.yPx()));
        }
        view.ball().ifPresent(b -> {
            double d = b.diameterPx().orElse(16);
            g.setColor(Color.WHITE);
            g.fill(new java.awt.geom.Ellipse2D.Double(
                    b.centre().xPx() - d / 2, b.centre().yPx() - d / 2, d, d));
        });
        g.dispose();
        return image;
    }

    public static void main(String... args) throws IOException {
        Path folder = Files.createDirectories(Path.of(args[0]));
        List<BufferedImage> stills = new ArrayList<>();
        for (int i = 0; i < COUNT; i++) {
            Handout handout = lesson(i);
            BufferedImage still = PictureFormat.image(handout.still());
            stills.add(still);
            Files.write(folder.resolve(String.format(Locale.ROOT, "%02d.pdf", i)), handout.pdf(Paper.A4));
            Files.write(folder.resolve(String.format(Locale.ROOT, "%02d.html", i)), handout.html());
            if (stills.size() == 2 * ACROSS) {
                ImageIO.write(
                        sheet(stills),
                        "png",
                        folder.resolve("sheet-" + i / (2 * ACROSS) + ".png").toFile());
                stills.clear();
            }
        }
    }

    private static BufferedImage sheet(List<BufferedImage> stills) {
        int width = Still.WIDTH * 10 / (SHRUNK * 5);
        int height = 2000 * 10 / (SHRUNK * 5);
        BufferedImage sheet = new BufferedImage(ACROSS * width, 2 * height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = sheet.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
        for (int i = 0; i < stills.size(); i++) {
            BufferedImage still = stills.get(i);
            g.drawImage(
                    still,
                    i % ACROSS * width,
                    i / ACROSS * height,
                    width - 6,
                    still.getHeight() * (width - 6) / still.getWidth(),
                    null);
        }
        g.dispose();
        return sheet;
    }
}

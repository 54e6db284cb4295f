package org.toeline.handout;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.toeline.advice.Assessment;
import org.toeline.advice.Words;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.LessonDocument;
import org.toeline.mark.View;

/** The sample lessons, each assessed once, with plain grey pictures in the place of their frames. */
final class Samples {

    static final Color GREY = new Color(0x708070);
    private static final Map<String, Assessment> ASSESSED = new ConcurrentHashMap<>();

    private Samples() {}

    static Lesson lesson(String id) throws Exception {
        return LessonDocument.read(Path.of("sample-media", id, id + ".lesson.json"));
    }

    static Handout handout(String id) throws Exception {
        return handout(lesson(id), id);
    }

    /** A lesson that has the marks of a sample. */
    static Handout handout(Lesson lesson, String id) {
        Map<View, BufferedImage> pictures = new EnumMap<>(View.class);
        lesson.sheet().views().forEach(v -> pictures.put(v.view(), grey(v.widthPx(), v.heightPx())));
        return Handout.of(
                lesson, ASSESSED.computeIfAbsent(id, i -> Assessment.of(lesson.sheet())), pictures, Words.english());
    }

    static BufferedImage grey(int width, int height) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(GREY);
        g.fillRect(0, 0, width, height);
        g.dispose();
        return image;
    }
}

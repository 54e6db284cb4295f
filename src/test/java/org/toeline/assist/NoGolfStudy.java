package org.toeline.assist;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.toeline.mark.Handedness;
import org.toeline.mark.View;
import org.toeline.video.Clip;
import org.toeline.video.Frame;

/**
 * Pictures in which nobody plays golf: noise, stripes, coloured shapes, balls and rods on the ground without a player, and
 * players who lie, hang or are cut off at the hips. COUNT: how many in all. Said of each kind: in how many something was
 * suggested.
 */
final class NoGolfStudy {

    private static final int WIDTH = 640;
    private static final int HEIGHT = 360;
    private static final List<String> LESSONS = List.of("before", "after", "left-handed", "all-good");
    private static final List<String> KINDS = List.of(
            "noise",
            "stripes",
            "coloured shapes",
            "balls and rods, nobody",
            "turned upside down",
            "lying",
            "head to hips");

    private NoGolfStudy() {}

    public static void main(String[] arguments) throws Exception {
        int count = Integer.parseInt(arguments[0]);
        Map<String, int[]> tallies = new TreeMap<>();
        try (LandmarkSuggester suggester = LandmarkSuggester.load().orElseThrow()) {
            for (int n = 0; n < count; n++) {
                String kind = KINDS.get(n % KINDS.size());
                SplittableRandom random = new SplittableRandom(77_000 + n);
                View view = random.nextBoolean() ? View.FACE_ON : View.DOWN_THE_LINE;
                Frame frame = frame(picture(kind, random));
                ViewSuggestion seen =
                        suggester.suggest(new Asked(frame, view, Handedness.RIGHT, List.of(), 480), () -> false);
                int[] tally = tallies.computeIfAbsent(kind, k -> new int[4]);
                tally[0]++;
                tally[1] += seen.isEmpty() ? 0 : 1;
                tally[2] += seen.ball().isPresent() ? 1 : 0;
                tally[3] += seen.rods().isEmpty() ? 0 : 1;
            }
        }
        System.out.println("| pictures | how many | anything | ball and shaft | rods |");
        System.out.println("| --- | --- | --- | --- | --- |");
        tallies.forEach((kind, t) ->
                System.out.printf(Locale.ROOT, "| %s | %d | %d | %d | %d |%n", kind, t[0], t[1], t[2], t[3]));
    }

    private static BufferedImage picture(String kind, SplittableRandom random) throws Exception {
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        switch (kind) {
            case "noise" -> noise(image, random, random.nextInt(1, 9));
            case "stripes" -> stripes(g, random);
            case "coloured shapes" -> shapes(g, random);
            case "balls and rods, nobody" -> ground(g, random);
            case "turned upside down" -> player(g, random, Math.PI);
            case "lying" -> player(g, random, random.nextBoolean() ? Math.PI / 2 : -Math.PI / 2);
            default -> halfPlayer(g, random);
        }
        g.dispose();
        return image;
    }

    private static void noise(BufferedImage image, SplittableRandom random, int grain) {
        for (int y = 0; y < HEIGHT; y += grain) {
            for (int x = 0; x < WIDTH; x += grain) {
                int rgb = random.nextInt(0x1000000);
                for (int i = 0; i < grain * grain; i++) {
                    int px = x + i % grain;
                    int py = y + i / grain;
                    if (px < WIDTH && py < HEIGHT) {
                        image.setRGB(px, py, rgb);
                    }
                }
            }
        }
    }

    private static void stripes(Graphics2D g, SplittableRandom random) {
        g.rotate(random.nextDouble(0, Math.PI), WIDTH / 2.0, HEIGHT / 2.0);
        int width = random.nextInt(3, 60);
        for (int x = -WIDTH; x < 2 * WIDTH; x += width) {
            g.setColor(colour(random));
            g.fillRect(x, -WIDTH, width, 3 * WIDTH);
        }
    }

    private static void shapes(Graphics2D g, SplittableRandom random) {
        for (int i = 0; i < 60; i++) {
            g.setColor(colour(random));
            double x = random.nextDouble(-50, WIDTH);
            double y = random.nextDouble(-50, HEIGHT);
            double size = random.nextDouble(5, 150);
            if (random.nextBoolean()) {
                g.fill(new Ellipse2D.Double(x, y, size, size * random.nextDouble(0.4, 2)));
            } else {
                g.setStroke(new BasicStroke((float) random.nextDouble(1, 12)));
                g.draw(new Line2D.Double(x, y, x + random.nextDouble(-300, 300), y + random.nextDouble(-300, 300)));
            }
        }
    }

    private static void ground(Graphics2D g, SplittableRandom random) {
        g.setColor(new Color(150 + random.nextInt(80), 150 + random.nextInt(80), 150 + random.nextInt(80)));
        g.fillRect(0, 0, WIDTH, HEIGHT / 2);
        g.setColor(new Color(40 + random.nextInt(40), 90 + random.nextInt(60), 40 + random.nextInt(40)));
        g.fillRect(0, HEIGHT / 2, WIDTH, HEIGHT / 2);
        for (int i = 0; i < 3; i++) {
            g.setColor(Color.getHSBColor((float) random.nextDouble(0, 0.15), 0.9f, 0.9f));
            g.setStroke(new BasicStroke((float) random.nextDouble(1.5, 3)));
            double x = random.nextDouble(50, WIDTH - 50);
            double y = random.nextDouble(HEIGHT * 0.6, HEIGHT * 0.9);
            g.draw(new Line2D.Double(x, y, x + random.nextDouble(-250, 250), y + random.nextDouble(-60, 60)));
            g.setColor(Color.WHITE);
            double size = random.nextDouble(6, 14);
            g.fill(new Ellipse2D.Double(x + random.nextDouble(-60, 60), y, size, size));
            g.setColor(Color.DARK_GRAY);
            g.draw(new Line2D.Double(x, y, x + random.nextDouble(-80, 80), y - random.nextDouble(80, 160)));
        }
    }

    private static BufferedImage filmed(SplittableRandom random) throws Exception {
        String lesson = LESSONS.get(random.nextInt(LESSONS.size()));
        String view = random.nextBoolean() ? "face-on" : "down-the-line";
        try (Clip clip = Clip.open(Path.of("sample-media", lesson, view + ".mp4"))) {
            return clip.frameAt(random.nextDouble(0.2, 2.7)).toImage();
        }
    }

    private static void player(Graphics2D g, SplittableRandom random, double turnRad) throws Exception {
        g.rotate(turnRad, WIDTH / 2.0, HEIGHT / 2.0);
        g.drawImage(filmed(random), 0, 0, WIDTH, HEIGHT, null);
    }

    /** The upper part of the picture, in which the players' legs are not. */
    private static void halfPlayer(Graphics2D g, SplittableRandom random) throws Exception {
        g.drawImage(filmed(random), 0, 0, WIDTH, HEIGHT, 0, 0, 1280, 290 + random.nextInt(60), null);
    }

    private static Color colour(SplittableRandom random) {
        return new Color(random.nextInt(0x1000000));
    }

    private static Frame frame(BufferedImage image) {
        return new Frame(0, 0, WIDTH, HEIGHT, image.getRGB(0, 0, WIDTH, HEIGHT, null, 0, WIDTH));
    }
}

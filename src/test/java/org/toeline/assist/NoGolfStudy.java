package org.toeline.assist;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.toeline.camera.UsualLens;
import org.toeline.mark.Handedness;
import org.toeline.mark.Landmark;
import org.toeline.mark.View;
import org.toeline.video.Clip;
import org.toeline.video.Frame;

/**
 * Pictures in which nobody plays golf, or not one alone: noise, stripes, coloured shapes, grain like grass, balls and rods on
 * the ground without a player, a figure drawn with a club, two players beside each other, and players who lie, hang or are cut
 * off at the hips. COUNT [FOLDER]: how many drawn, and other pictures, which are no part of the project: the kind is what their
 * name begins with, up to a hyphen. Said of each kind: in how many something was suggested.
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
            "grain",
            "figure drawn with a club",
            "two players",
            "turned upside down",
            "lying",
            "head to hips");
    /** Anything, ball, shaft, rods, uprights, body. */
    private static final Map<String, int[]> TALLIES = new TreeMap<>();

    private NoGolfStudy() {}

    public static void main(String[] arguments) throws Exception {
        int count = Integer.parseInt(arguments[0]);
        try (LandmarkSuggester suggester = LandmarkSuggester.load().orElseThrow()) {
            for (int n = 0; n < count; n++) {
                String kind = KINDS.get(n % KINDS.size());
                SplittableRandom random = new SplittableRandom(77_000 + n);
                look(suggester, kind, kind + " " + n, random, picture(kind, random));
            }
            if (arguments.length > 1) {
                SplittableRandom random = new SplittableRandom(78_000);
                try (Stream<Path> files = Files.list(Path.of(arguments[1]))) {
                    for (Path file : files.sorted().toList()) {
                        String name = file.getFileName().toString();
                        look(suggester, name.split("-")[0], name, random, ImageIO.read(file.toFile()));
                    }
                }
            }
        }
        System.out.println("| pictures | how many | anything | ball | shaft | rods | uprights | body |");
        System.out.println("| --- | --- | --- | --- | --- | --- | --- | --- |");
        TALLIES.forEach((kind, t) -> System.out.printf(
                Locale.ROOT,
                "| %s | %d | %d | %d | %d | %d | %d | %d |%n",
                kind,
                t[0],
                t[1],
                t[2],
                t[3],
                t[4],
                t[5],
                t[6]));
    }

    private static void look(
            LandmarkSuggester suggester, String kind, String name, SplittableRandom random, BufferedImage image) {
        View view = random.nextBoolean() ? View.FACE_ON : View.DOWN_THE_LINE;
        double focalPx = UsualLens.MAIN.focalPx(image.getWidth(), image.getHeight());
        ViewSuggestion seen =
                suggester.suggest(new Asked(frame(image), view, Handedness.RIGHT, List.of(), focalPx), () -> false);
        boolean club = seen.landmarks().stream().anyMatch(m -> m.landmark() == Landmark.CLUB_HEAD);
        boolean[] there = {
            true,
            !seen.isEmpty(),
            seen.ball().isPresent(),
            club,
            !seen.rods().isEmpty(),
            !seen.uprights().isEmpty(),
            seen.landmarks().size() > (club ? 2 : 0)
        };
        int[] tally = TALLIES.computeIfAbsent(kind, k -> new int[there.length]);
        for (int i = 0; i < there.length; i++) {
            tally[i] += there[i] ? 1 : 0;
        }
        System.out.printf("%s, %s: %s%n", name, view.id(), seen.isEmpty() ? seen.missing() : Arrays.toString(there));
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
            case "grain" -> grain(image, random);
            case "figure drawn with a club" -> figure(g, random);
            case "two players" -> twoPlayers(g, random);
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

    /** Grain of several sizes in one colour, as of grass, sand or cloth. */
    private static void grain(BufferedImage image, SplittableRandom random) {
        float hue = (float) random.nextDouble();
        double size = random.nextDouble(1.5, 25);
        int seed = random.nextInt(1 << 20);
        for (int y = 0; y < HEIGHT; y++) {
            for (int x = 0; x < WIDTH; x++) {
                double rough = Drawn.grain(x / size, y / size, seed) + Drawn.grain(x / 3.1, y / 5.7, seed + 1) / 2;
                float light = (float) Math.max(0, Math.min(1, 0.5 + 0.35 * rough));
                image.setRGB(x, y, Color.HSBtoRGB(hue, 0.5f, light));
            }
        }
    }

    /** A figure of lines and a round head, on plain ground, with a club, a ball and a rod. */
    private static void figure(Graphics2D g, SplittableRandom random) {
        g.setColor(new Color(200 + random.nextInt(56), 200 + random.nextInt(56), 200 + random.nextInt(56)));
        g.fillRect(0, 0, WIDTH, HEIGHT);
        g.translate(random.nextInt(200, 440), 40);
        g.setColor(random.nextBoolean() ? Color.BLACK : colour(random));
        g.setStroke(new BasicStroke((float) random.nextDouble(2, 26), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        double wide = random.nextDouble(10, 45);
        g.fill(new Ellipse2D.Double(-20, 0, 40, 46));
        for (int side = -1; side <= 1; side += 2) {
            g.draw(new Line2D.Double(side * wide, 60, 0, 140));
            g.draw(new Line2D.Double(side * wide / 2, 150, side * wide, 270));
        }
        g.draw(new Line2D.Double(-wide, 60, wide, 60));
        g.draw(new Line2D.Double(0, 60, 0, 150));
        g.setStroke(new BasicStroke(3));
        g.setColor(Color.DARK_GRAY);
        g.draw(new Line2D.Double(0, 140, 20, 275));
        g.setColor(Color.WHITE);
        g.fill(new Ellipse2D.Double(24, 268, 11, 11));
        g.setColor(Color.RED);
        g.draw(new Line2D.Double(-120, 285, 120, 290));
    }

    /** Two who are as tall as each other; which of them is meant nobody can tell. */
    private static void twoPlayers(Graphics2D g, SplittableRandom random) throws Exception {
        for (int half = 0; half < 2; half++) {
            BufferedImage one = filmed(random);
            int left = one.getWidth() / 4;
            int x = half * WIDTH / 2;
            g.drawImage(one, x, 0, x + WIDTH / 2, HEIGHT, left, 0, 3 * left, one.getHeight(), null);
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
        int w = image.getWidth();
        int h = image.getHeight();
        return new Frame(0, 0, w, h, image.getRGB(0, 0, w, h, null, 0, w));
    }
}

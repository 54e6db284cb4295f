package org.toeline.scene;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.image.BufferedImage;
import java.io.File;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import javax.imageio.ImageIO;
import org.toeline.camera.Camera;
import org.toeline.camera.Lens;
import org.toeline.camera.Pose;
import org.toeline.geometry.ImagePoint;
import org.toeline.geometry.WorldPoint;
import org.toeline.mark.BallMark;
import org.toeline.mark.FloorMark;
import org.toeline.mark.FloorReference;
import org.toeline.mark.Landmark;
import org.toeline.mark.Mark;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.Takes;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;
import org.toeline.posture.PostureEstimator;
import org.toeline.reading.Reading;
import org.toeline.reading.ReadingKind;
import org.toeline.reading.Readings;

/**
 * A command: draws {@code docs/placements.png}, one address filmed from three places, with what a protractor and a ruler
 * on the picture read and what the tool reads from marks with 2 px clicks on that view and the down-the-line one.
 */
public final class PlacementPicture {

    private static final int WIDTH = 620;
    private static final int HEIGHT = 420;
    /** The part of the picture that is shown: left, top, width. */
    private static final int[] SHOWN = {240, 95, 812};

    private static final int CAPTION = 176;
    private static final double CLICK_PX = 2;

    private final Scenario base = Scenarios.after();
    private final SplittableRandom random = new SplittableRandom(6);

    private PlacementPicture() {}

    public static void main(String[] args) throws Exception {
        new PlacementPicture().draw(new File(args.length > 0 ? args[0] : "docs/placements.png"));
    }

    private void draw(File file) throws Exception {
        String[] words = {"Square, opposite the ball", "0.9 m towards the target", "1.0 m the other way, leaning 3°"};
        double[][] stands = {{0, -2.8, 1.0, 0}, {0.9, -2.6, 1.0, 0}, {-1.0, -2.6, 1.3, 3}};
        BufferedImage all = new BufferedImage(3 * WIDTH + 40, HEIGHT + CAPTION, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = all.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setColor(new Color(0xFAF9F6));
        g.fillRect(0, 0, all.getWidth(), all.getHeight());
        for (int i = 0; i < 3; i++) {
            panel(g, i * (WIDTH + 20), words[i], stands[i]);
        }
        g.dispose();
        ImageIO.write(all, "png", file);
    }

    private void panel(Graphics2D g, int left, String words, double[] stand) throws Exception {
        Camera camera = new Camera(
                Lens.centred(950, Scenario.WIDTH, Scenario.HEIGHT),
                Pose.looking(
                        new WorldPoint(stand[0], stand[1], stand[2]),
                        new WorldPoint(-0.15, 0.6, 0.78),
                        Math.toRadians(stand[3])));
        Map<View, Camera> cameras = new EnumMap<>(base.cameras());
        cameras.put(View.FACE_ON, camera);
        Scenario scene = new Scenario(
                base.id(),
                base.handedness(),
                base.build(),
                base.address(),
                base.club(),
                base.outfit(),
                base.floor(),
                cameras,
                base.wall(),
                base.panel());
        Stage stage = new Stage(scene);
        BufferedImage picture = new Filming(scene, stage, View.FACE_ON, Scenario.WIDTH, Scenario.HEIGHT)
                .frame(stage.moves(Motion.at(Motion.addressS())), 0)
                .image();
        double share = WIDTH / (double) SHOWN[2];
        g.setClip(left, 0, WIDTH, HEIGHT);
        g.drawImage(picture, new AffineTransform(share, 0, 0, share, left - share * SHOWN[0], -share * SHOWN[1]), null);
        Map<Landmark, WorldPoint> at = scene.landmarks();
        ImagePoint lead = camera.project(at.get(Landmark.LEAD_SHOULDER)).orElseThrow();
        ImagePoint trail = camera.project(at.get(Landmark.TRAIL_SHOULDER)).orElseThrow();
        ImagePoint ball = camera.project(scene.ball()).orElseThrow();
        line(g, left, share, trail, lead, new Color(0xF0E442));
        line(g, left, share, lead, new ImagePoint(lead.xPx(), ball.yPx()), Color.WHITE);
        line(g, left, share, new ImagePoint(lead.xPx(), ball.yPx()), ball, new Color(0xF0E442));
        g.setClip(null);
        double tilt = Math.toDegrees(Math.atan2(trail.yPx() - lead.yPx(), lead.xPx() - trail.xPx()));
        double ruler =
                100 * ClubModel.BALL_M / (camera.lens().focalPx() * ClubModel.BALL_M / camera.depthM(scene.ball()));
        double gap = (ball.xPx() - lead.xPx()) * ruler;
        MarkSheet sheet = sheet(scene);
        caption(
                g,
                left,
                words,
                tilt,
                gap,
                reading(sheet, ReadingKind.SHOULDER_TILT),
                reading(sheet, ReadingKind.BALL_TO_LEAD_SHOULDER),
                Truth.of(scene).readings());
    }

    private static void line(Graphics2D g, int left, double share, ImagePoint a, ImagePoint b, Color color) {
        Line2D line = new Line2D.Double(
                left + share * (a.xPx() - SHOWN[0]),
                share * (a.yPx() - SHOWN[1]),
                left + share * (b.xPx() - SHOWN[0]),
                share * (b.yPx() - SHOWN[1]));
        g.setColor(new Color(0, 0, 0, 160));
        g.setStroke(new BasicStroke(5));
        g.draw(line);
        g.setColor(color);
        g.setStroke(new BasicStroke(2.4f));
        g.draw(line);
    }

    private static Reading reading(MarkSheet sheet, ReadingKind kind) {
        return Readings.of(kind, PostureEstimator.estimate(sheet)).orElseThrow();
    }

    private MarkSheet sheet(Scenario scene) {
        MarkSheet sheet = new MarkSheet(
                scene.handedness(), scene.club().club(), Takes.SIMULTANEOUS, scene.floor(), List.of(), CLICK_PX);
        Map<Landmark, WorldPoint> at = scene.landmarks();
        for (View view : List.of(View.FACE_ON, View.DOWN_THE_LINE)) {
            Camera camera = scene.camera(view);
            ViewMarks marks = ViewMarks.empty(view, Scenario.WIDTH, Scenario.HEIGHT);
            for (Map.Entry<Landmark, WorldPoint> e : at.entrySet()) {
                boolean ofTheTeeView = e.getKey() == Landmark.CROWN || e.getKey() == Landmark.GROUND;
                if (!ofTheTeeView) {
                    marks = marks.withMark(Mark.placed(e.getKey(), clicked(camera, e.getValue()), CLICK_PX));
                }
            }
            for (FloorReference p : scene.floor().points()) {
                marks = marks.withFloorMark(
                        new FloorMark(p.id(), clicked(camera, new WorldPoint(p.t(), p.h(), 0)), CLICK_PX));
            }
            double diameter = camera.lens().focalPx() * ClubModel.BALL_M / camera.depthM(scene.ball());
            sheet = sheet.withView(marks.withBall(Optional.of(new BallMark(
                    clicked(camera, scene.ball()),
                    OptionalDouble.of(diameter + 0.5 * random.nextGaussian()),
                    CLICK_PX,
                    0.6))));
        }
        return sheet;
    }

    private ImagePoint clicked(Camera camera, WorldPoint p) {
        return camera.project(p).orElseThrow().plus(CLICK_PX * random.nextGaussian(), CLICK_PX * random.nextGaussian());
    }

    private static void caption(
            Graphics2D g,
            int left,
            String words,
            double tilt,
            double gap,
            Reading tiltRead,
            Reading gapRead,
            Map<String, Truth.Value> truth) {
        Font bold = new Font("DejaVu Sans", Font.BOLD, 21);
        Font plain = new Font("DejaVu Sans", Font.PLAIN, 18);
        int y = HEIGHT + 30;
        g.setColor(new Color(0x1A1A1A));
        g.setFont(bold);
        g.drawString(words, left + 8, y);
        g.setFont(plain);
        g.drawString(
                String.format(
                        Locale.ROOT,
                        "Truth: tilt %.1f°, ball %+.1f cm from the lead shoulder",
                        truth.get("shoulder-tilt").value(),
                        truth.get("ball-to-lead-shoulder").value()),
                left + 8,
                y + 34);
        g.setColor(new Color(0x9A4300));
        g.drawString(
                String.format(Locale.ROOT, "Protractor and ruler: tilt %.1f°, ball %+.1f cm", tilt, gap),
                left + 8,
                y + 66);
        g.setColor(new Color(0x005A8C));
        g.setFont(plain.deriveFont(Font.BOLD));
        g.drawString(
                String.format(
                        Locale.ROOT,
                        "The tool: tilt %.1f ± %.1f°, ball %+.1f ± %.1f cm",
                        tiltRead.shownValue(),
                        (tiltRead.shownHigh() - tiltRead.shownLow()) / 2,
                        gapRead.shownValue(),
                        (gapRead.shownHigh() - gapRead.shownLow()) / 2),
                left + 8,
                y + 98);
    }
}

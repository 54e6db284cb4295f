package org.toeline.scene;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.SplittableRandom;
import org.toeline.camera.Camera;
import org.toeline.camera.Lens;
import org.toeline.camera.Pose;
import org.toeline.geometry.ImagePoint;
import org.toeline.geometry.WorldPoint;
import org.toeline.mark.View;
import org.toeline.video.Clip;
import org.toeline.video.ClipException;
import org.toeline.video.Frame;

/** Balls of the sample lessons' players filmed from other places, coded as the sample clips are, with their truth. */
public final class SceneBalls {

    /** Frames of a clip, the last of which is looked at: coding has settled by then. */
    private static final int FRAMES = 8;

    private final Scenario[] scenarios = Scenarios.all().toArray(new Scenario[0]);
    private final Map<String, Stage> stages = new HashMap<>();
    private final Path folder;

    /** @param centre in the frame, pixels */
    public record Filmed(View view, Frame frame, ImagePoint centre, double diameterPx) {

        /** Whether all of it is in the picture, with some of what is round it. */
        public boolean inside() {
            return centre.xPx() > diameterPx
                    && centre.yPx() > diameterPx
                    && centre.xPx() < frame.width() - diameterPx
                    && centre.yPx() < frame.height() - diameterPx;
        }

        public ImagePoint click() {
            return SceneBalls.click(centre, diameterPx);
        }
    }

    /** @param folder for clips, which are deleted again */
    public SceneBalls(Path folder) {
        this.folder = folder;
    }

    /** The next one: views in turn, everything else by chance. */
    public Filmed film(int number, SplittableRandom random) throws IOException, ClipException {
        Scenario base = scenarios[number % scenarios.length];
        View view = View.values()[number / scenarios.length % View.values().length];
        Map<View, Camera> cameras = new EnumMap<>(base.cameras());
        cameras.put(view, camera(view, random));
        Scenario scenario = new Scenario(
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
        Stage stage = stages.computeIfAbsent(base.id(), id -> new Stage(base));
        Filming filming = new Filming(scenario, stage, view, Scenario.WIDTH, Scenario.HEIGHT);
        Path file = folder.resolve("ball-" + number + ".mp4");
        try (ClipWriter writer =
                new ClipWriter(file, Scenario.WIDTH, Scenario.HEIGHT, Motion.FRAMES_PER_SECOND, 4_300_000)) {
            for (int f = 0; f < FRAMES; f++) {
                writer.add(filming.frame(stage.moves(Motion.at(Motion.addressS())), f));
            }
        }
        try (Clip clip = Clip.open(file)) {
            Truth.Outline ball = Truth.ball(scenario, view);
            return new Filmed(view, clip.frame(FRAMES - 1), ball.centre(), ball.diameterPx());
        } finally {
            Files.deleteIfExists(file);
        }
    }

    /** Near where coaches put phones: common practice, as the sample lessons. */
    private static Camera camera(View view, SplittableRandom random) {
        double focal = random.nextDouble(880, 1080);
        double roll = Math.toRadians(random.nextDouble(-2.5, 2.5));
        WorldPoint at =
                switch (view) {
                    case FACE_ON ->
                        new WorldPoint(
                                random.nextDouble(-0.8, 0.5),
                                random.nextDouble(-3.6, -2.3),
                                random.nextDouble(0.7, 1.5));
                    case DOWN_THE_LINE ->
                        new WorldPoint(
                                random.nextDouble(-3.8, -2.5),
                                random.nextDouble(-0.45, 0.5),
                                random.nextDouble(0.7, 1.4));
                    case TEE ->
                        new WorldPoint(
                                random.nextDouble(-0.15, 0.1),
                                random.nextDouble(-0.9, -0.5),
                                random.nextDouble(0.06, 0.16));
                };
        WorldPoint to = view == View.TEE
                ? new WorldPoint(-0.04 + random.nextDouble(-0.05, 0.05), 0.02, 0.06)
                : new WorldPoint(
                        random.nextDouble(-0.2, 0.1), random.nextDouble(0.4, 0.6), random.nextDouble(0.65, 0.85));
        return new Camera(Lens.centred(focal, Scenario.WIDTH, Scenario.HEIGHT), Pose.looking(at, to, roll));
    }

    /** Where a coach would click on a ball: up and to the side a little. */
    public static ImagePoint click(ImagePoint centre, double diameterPx) {
        return centre.plus(diameterPx / 6, -diameterPx / 8);
    }
}

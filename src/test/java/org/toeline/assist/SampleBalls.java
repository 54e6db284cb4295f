package org.toeline.assist;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.toeline.camera.UsualLens;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.BallMark;
import org.toeline.mark.View;
import org.toeline.scene.SceneBalls;
import org.toeline.video.Clip;
import org.toeline.video.ClipException;
import org.toeline.video.Frame;

/** The address pictures of the sample clips, with where the ball is in truth and where it is not. */
record SampleBalls(String lesson, View view, Frame frame, ImagePoint centre, double diameterPx, JsonNode truth) {

    static final List<String> LESSONS = List.of("before", "after", "left-handed", "all-good");
    private static final Path MEDIA = Path.of("sample-media");
    private static final double ADDRESS_S = 2.3;

    static SampleBalls of(String lesson, View view) throws IOException, ClipException {
        Path folder = MEDIA.resolve(lesson);
        JsonNode truth = new ObjectMapper()
                .readTree(folder.resolve(view.id() + ".truth.json").toFile());
        JsonNode ball = truth.path("ball");
        try (Clip clip = Clip.open(folder.resolve(view.id() + ".mp4"))) {
            return new SampleBalls(
                    lesson,
                    view,
                    clip.frameAt(view == View.TEE ? 0.5 : ADDRESS_S),
                    new ImagePoint(ball.path("x").asDouble(), ball.path("y").asDouble()),
                    ball.path("diameter").asDouble(),
                    truth);
        }
    }

    /** Where a coach would click: up and to the side a little. */
    ImagePoint click() {
        return SceneBalls.click(centre, diameterPx);
    }

    /** What a click gives, through the lens the desk takes for clips of which nothing is known. */
    Optional<BallMark> fit(ImagePoint at) {
        return BallOutline.fit(frame, view, UsualLens.MAIN.focalPx(frame.width(), frame.height()), at);
    }

    ImagePoint landmark(String id) {
        JsonNode l = truth.path("landmarks").path(id);
        return new ImagePoint(l.path(3).asDouble(), l.path(4).asDouble());
    }

    /** The ends of the rods on the floor. */
    List<ImagePoint> rodEnds() {
        List<ImagePoint> ends = new ArrayList<>();
        truth.path("floor")
                .forEach(end -> ends.add(
                        new ImagePoint(end.path("x").asDouble(), end.path("y").asDouble())));
        return ends;
    }

    /** Places on and about a landmark, so many pixels apart in a square of so many to a side. */
    List<ImagePoint> about(String landmark, double apartPx, int side) {
        ImagePoint middle = landmark(landmark);
        List<ImagePoint> places = new ArrayList<>();
        for (int i = 0; i < side * side; i++) {
            places.add(middle.plus(apartPx * (i % side - (side - 1) / 2.0), apartPx * (i / side - (side - 1) / 2.0)));
        }
        return places;
    }
}

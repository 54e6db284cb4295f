package org.toeline.assist;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.toeline.geometry.ImagePoint;
import org.toeline.video.Clip;
import org.toeline.video.ClipException;
import org.toeline.video.Frame;

/** The address pictures of the sample clips, with where the ball is in truth and where it is not. */
record SampleBalls(String lesson, String view, Frame frame, ImagePoint centre, double diameterPx, JsonNode truth) {

    static final List<String> LESSONS = List.of("before", "after", "left-handed", "all-good");
    static final List<String> VIEWS = List.of("face-on", "down-the-line", "tee");
    private static final Path MEDIA = Path.of("sample-media");
    private static final double ADDRESS_S = 2.3;

    static SampleBalls of(String lesson, String view) throws IOException, ClipException {
        Path folder = MEDIA.resolve(lesson);
        JsonNode truth = new ObjectMapper().readTree(folder.resolve(view + ".truth.json").toFile());
        JsonNode ball = truth.path("ball");
        try (Clip clip = Clip.open(folder.resolve(view + ".mp4"))) {
            return new SampleBalls(lesson, view, clip.frameAt(view.equals("tee") ? 0.5 : ADDRESS_S),
                    new ImagePoint(ball.path("x").asDouble(), ball.path("y").asDouble()), ball.path("diameter").asDouble(), truth);
        }
    }

    /** Where a coach would click: up and to the side a little. */
    ImagePoint click() {
        return centre.plus(diameterPx / 6, -diameterPx / 8);
    }

    /** Places on and about a landmark, so many pixels apart in a square of so many to a side. */
    List<ImagePoint> about(String landmark, double apartPx, int side) {
        JsonNode l = truth.path("landmarks").path(landmark);
        List<ImagePoint> places = new ArrayList<>();
        for (int i = 0; i < side * side; i++) {
            places.add(new ImagePoint(l.path(3).asDouble() + apartPx * (i % side - (side - 1) / 2.0),
                    l.path(4).asDouble() + apartPx * (i / side - (side - 1) / 2.0)));
        }
        return places;
    }
}

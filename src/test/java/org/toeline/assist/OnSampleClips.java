package org.toeline.assist;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.Handedness;
import org.toeline.mark.View;
import org.toeline.video.Clip;
import org.toeline.video.Frame;

/** The suggester, loaded once, and frames of the sample clips with their truth. */
abstract class OnSampleClips {

    private static final Path MEDIA = Path.of("sample-media");
    static LandmarkSuggester suggester;

    @BeforeAll
    static void load() {
        suggester = LandmarkSuggester.load().orElseThrow();
    }

    @AfterAll
    static void close() {
        suggester.close();
    }

    static ViewSuggestion suggest(Frame frame, View view, Handedness hand, List<ImagePoint> hints) {
        return suggester.suggest(new Asked(frame, view, hand, hints, 960), () -> false);
    }

    /** At address. */
    static Frame frame(String lesson, String view) throws Exception {
        return frameAt(lesson, view, 2.3);
    }

    static Frame frameAt(String lesson, String view, double seconds) throws Exception {
        try (Clip clip = Clip.open(MEDIA.resolve(lesson).resolve(view + ".mp4"))) {
            return clip.frameAt(seconds);
        }
    }

    static JsonNode truth(String lesson, String view) throws Exception {
        return new ObjectMapper()
                .readTree(MEDIA.resolve(lesson).resolve(view + ".truth.json").toFile());
    }

    static ImagePoint ball(JsonNode truth) {
        return new ImagePoint(
                truth.path("ball").path("x").asDouble(),
                truth.path("ball").path("y").asDouble());
    }

    static ImagePoint landmark(JsonNode truth, String id) {
        JsonNode l = truth.path("landmarks").path(id);
        return new ImagePoint(l.path(3).asDouble(), l.path(4).asDouble());
    }
}

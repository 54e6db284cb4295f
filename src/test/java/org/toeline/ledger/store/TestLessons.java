package org.toeline.ledger.store;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.toeline.document.Json;
import org.toeline.ledger.DocumentException;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.LessonDocument;
import org.toeline.ledger.store.rows.StatedFinding;
import org.toeline.ledger.store.rows.StatedFinding.Place;
import org.toeline.ledger.store.rows.StatedFinding.StatedRange;

/** Lessons and findings for the ledger's tests. */
public final class TestLessons {

    private TestLessons() {}

    /** A lesson with unknown keys at every depth. */
    public static Lesson lesson(String player, String notes, double xPx) {
        String text = """
            {"format": "toeline-lesson", "version": 1, "weather": {"wind": "none", "degrees": 14.5},
             "player": {"name": "%s", "handedness": "right", "shirt": "blue"},
             "recorded": "2026-04-03T09:05:00+01:00", "club": "driver", "place": "Bay 2", "notes": "%s",
             "floor": {"points": [{"id": "a", "t": -0.5, "h": 0.1, "colour": "red"}, {"id": "b", "t": 0.5, "h": 0.1}]},
             "views": [{"view": "face-on", "clip": "one.mp4", "time": 1.25, "width": 1280, "height": 720,
               "floorMarks": [{"point": "a", "x": 400.5, "y": 600.25}],
               "verticals": [{"x1": 120.0, "y1": 80.0, "x2": 124.5, "y2": 690.0, "what": "post"}],
               "marks": [{"landmark": "lead-shoulder", "x": %s, "y": 202.5, "sd": 1.5, "by": "hand"}]}]}
            """.formatted(player, notes, xPx);
        try {
            return LessonDocument.parse(text.getBytes(StandardCharsets.UTF_8), "test lesson");
        } catch (DocumentException e) {
            throw new IllegalStateException(e);
        }
    }

    public static Lesson lesson(String player) {
        return lesson(player, "Grip first, then ball forward.", 635);
    }

    public static List<StatedFinding> findings(double tiltDeg) {
        List<StatedFinding> findings = new ArrayList<>();
        findings.add(new StatedFinding(
                "shoulder-tilt",
                tiltDeg,
                1.25,
                tiltDeg - 2.45,
                tiltDeg + 2.45,
                "deg",
                Optional.of(new StatedRange(5, 15, 9, "common-practice")),
                Optional.of("too-close"),
                Place.FIRST));
        findings.add(new StatedFinding(
                "stance-width", 51.5, 0.5, 50.52, 52.48, "cm", Optional.empty(), Optional.empty(), Place.ONE_OF_MANY));
        return findings;
    }

    public static Set<String> verdicts(String... ids) {
        return Set.of(ids);
    }

    /** A lesson that says in its document that it is one setup addressed again. */
    static Lesson ofSetup(String name, String setup) throws Exception {
        ObjectNode document = (ObjectNode) Json.read(LessonDocument.bytes(lesson(name)));
        return LessonDocument.parse(Json.bytes(document.put("setup", setup)), name);
    }
}

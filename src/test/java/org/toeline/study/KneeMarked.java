package org.toeline.study;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import org.toeline.document.Json;
import org.toeline.geometry.ImagePoint;
import org.toeline.ledger.LessonDocument;
import org.toeline.mark.Landmark;
import org.toeline.mark.Mark;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.View;

/**
 * The sample lessons with the trail knee marked too, down the line: nobody marked it there, and two readings need it. It is
 * put two pixels off its truth, as far as a click may be.
 */
public final class KneeMarked {

    private static final double OFF_PX = 2 / Math.sqrt(2);

    private KneeMarked() {}

    public static MarkSheet sheet(String sample) throws Exception {
        Path folder = Path.of("sample-media", sample);
        MarkSheet sheet =
                LessonDocument.read(folder.resolve(sample + ".lesson.json")).sheet();
        JsonNode knee = Json.read(Files.readAllBytes(folder.resolve("down-the-line.truth.json")))
                .path("landmarks")
                .path(Landmark.TRAIL_KNEE.id());
        ImagePoint at =
                new ImagePoint(knee.path(3).asDouble() + OFF_PX, knee.path(4).asDouble() - OFF_PX);
        return sheet.withView(sheet.view(View.DOWN_THE_LINE)
                .orElseThrow()
                .withMark(Mark.placed(Landmark.TRAIL_KNEE, at, sheet.clickSigmaPx())));
    }
}

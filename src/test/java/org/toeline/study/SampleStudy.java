package org.toeline.study;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.toeline.posture.Posture;
import org.toeline.posture.PostureEstimator;
import org.toeline.reading.Reading;
import org.toeline.reading.Readings;

/**
 * Prints the readings of the sample lessons, whose marks were placed on the frames (the trail knee beside its truth), beside their truth, all of them; then
 * what changed from the lesson before to the lesson after, by the tool and by a protractor and a ruler on the pictures.
 */
public final class SampleStudy {

    private static final ObjectMapper JSON = new ObjectMapper();

    private SampleStudy() {}

    public static void main(String[] args) throws Exception {
        int held = 0;
        int all = 0;
        System.out.println("| lesson | reading | unit | truth | reading, 95 % interval | holds |");
        System.out.println("| --- | --- | --- | ---: | ---: | --- |");
        for (String lesson : List.of("before", "after", "left-handed", "all-good")) {
            Path folder = Path.of("sample-media", lesson);
            JsonNode truth =
                    JSON.readTree(folder.resolve("face-on.truth.json").toFile()).path("readings");
            Posture posture = PostureEstimator.estimate(KneeMarked.sheet(lesson));
            for (Reading r : Readings.of(posture)) {
                double t = truth.path(r.kind().id()).path("value").asDouble();
                boolean holds = r.shownLow() <= t && t <= r.shownHigh();
                all++;
                held += holds ? 1 : 0;
                System.out.printf(
                        Locale.ROOT,
                        "| %s | %s | %s | %.2f | %.2f (%.2f to %.2f) | %s |%n",
                        lesson,
                        r.kind().id(),
                        r.kind().unit().id(),
                        t,
                        r.shownValue(),
                        r.shownLow(),
                        r.shownHigh(),
                        holds ? "yes" : "**no**");
            }
            posture.doubts()
                    .forEach(d -> System.out.printf(
                            Locale.ROOT,
                            "| %s | *in doubt: %s, %s* | px | | %.1f | |%n",
                            lesson,
                            d.view().id(),
                            d.mark(),
                            d.offPx()));
        }
        System.out.printf(
                Locale.ROOT, "%n%d of %d intervals hold the truth (%.0f %%).%n", held, all, 100.0 * held / all);
        changes();
    }

    private static void changes() throws Exception {
        System.out.println(
                "\n| reading | unit | truth | change | tool, change | called | picture | change | so the picture is |");
        System.out.println("| --- | --- | ---: | ---: | ---: | --- | ---: | ---: | --- |");
        for (LessonsByPicture.Row r : LessonsByPicture.rows("before", "after")) {
            System.out.printf(
                    Locale.ROOT,
                    "| %s | %s | %.2f → %.2f | %+.2f | %+.2f ± %.2f | %s | %.2f → %.2f | %+.2f ± %.2f | %s |%n",
                    r.kind().id(),
                    r.kind().unit().id(),
                    r.truth().before(),
                    r.truth().after(),
                    r.truth().difference(),
                    r.tool().difference(),
                    r.tool().by(),
                    r.called().call().id(),
                    r.picture().before(),
                    r.picture().after(),
                    r.picture().difference(),
                    r.picture().by(),
                    r.picture().isFalse(r.truth()) ? "**false**" : "right");
        }
    }
}

package org.toeline.assist;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.toeline.geometry.ImagePoint;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.LessonDocument;
import org.toeline.mark.Mark;
import org.toeline.mark.View;
import org.toeline.video.Clip;
import org.toeline.video.Progress;

/** Property: marks of the address that are kept with a frame of the swing are found out; others are left alone. */
class ShiftedFrameTest {

    private static final Path SAMPLES = Path.of("sample-media");

    @Test
    void marksOfTheAddressKeptWithAFrameOfTheSwingAreFound() throws Exception {
        Path document = SAMPLES.resolve(Path.of("before", "before.lesson.json"));
        Lesson lesson = LessonDocument.read(document);
        for (View view : new View[] {View.FACE_ON, View.DOWN_THE_LINE}) {
            List<ImagePoint> points = lesson.sheet().view(view).orElseThrow().marks().stream()
                    .map(Mark::at)
                    .toList();
            double marked = lesson.clips().get(view).seconds().orElseThrow();
            try (Clip clip =
                    Clip.open(document.resolveSibling(lesson.clips().get(view).clip()))) {
                List<StillSpan> moments = AddressFinder.moments(clip, Progress.NONE);
                assertThat(ShiftedFrame.belongsTo(clip, marked, moments, points, Progress.NONE))
                        .as(view.id())
                        .isEmpty();
                double takeaway = moments.get(0).endSeconds() + 0.45;
                assertThat(ShiftedFrame.belongsTo(clip, takeaway, moments, points, Progress.NONE)
                                .orElse(Double.NaN))
                        .as(view.id())
                        .isCloseTo(moments.get(0).addressSeconds(), within(0.02));
            }
        }
    }
}

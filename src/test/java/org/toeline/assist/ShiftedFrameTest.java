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

    /** From the hands on their way to the top of the backswing. */
    private static final double[] AFTER_TAKEAWAY_S = {0.45, 0.6, 0.75, 0.9};

    @Test
    void marksOfTheAddressKeptWithAFrameOfTheSwingAreFound() throws Exception {
        for (View view : List.of(View.FACE_ON, View.DOWN_THE_LINE)) {
            List<ImagePoint> points = points(view);
            try (Clip clip = clip(view)) {
                List<StillSpan> moments = AddressFinder.moments(clip, Progress.NONE);
                double marked = lesson().clips().get(view).seconds().orElseThrow();
                assertThat(ShiftedFrame.belongsTo(clip, marked, moments, points, Progress.NONE))
                        .as(view.id())
                        .isEmpty();
                for (double later : AFTER_TAKEAWAY_S) {
                    double swing = moments.get(0).endSeconds() + later;
                    assertThat(ShiftedFrame.belongsTo(clip, swing, moments, points, Progress.NONE)
                                    .orElse(Double.NaN))
                            .as("%s, %s s after the takeaway", view.id(), later)
                            .isCloseTo(moments.get(0).addressSeconds(), within(0.02));
                }
            }
        }
    }

    /** Marked in the swing on purpose, or with the marks following: they lie where they belong. */
    @Test
    void marksOfTheSwingAreLeftAlone() throws Exception {
        for (View view : List.of(View.FACE_ON, View.DOWN_THE_LINE)) {
            try (Clip clip = clip(view)) {
                List<StillSpan> moments = AddressFinder.moments(clip, Progress.NONE);
                for (double later : AFTER_TAKEAWAY_S) {
                    double swing = moments.get(0).endSeconds() + later;
                    List<ImagePoint> there = Follow.to(
                                    clip,
                                    clip.indexAt(moments.get(0).addressSeconds()),
                                    clip.indexAt(swing),
                                    points(view),
                                    Progress.NONE)
                            .orElseThrow()
                            .stream()
                            .filter(Track::held)
                            .map(t -> t.steps().get(t.steps().size() - 1).at())
                            .toList();
                    assertThat(ShiftedFrame.belongsTo(clip, swing, moments, there, Progress.NONE))
                            .as("%s, %s s after the takeaway", view.id(), later)
                            .isEmpty();
                }
            }
        }
    }

    private static Path document() {
        return SAMPLES.resolve(Path.of("before", "before.lesson.json"));
    }

    private static Lesson lesson() throws Exception {
        return LessonDocument.read(document());
    }

    private static Clip clip(View view) throws Exception {
        return Clip.open(document().resolveSibling(lesson().clips().get(view).clip()));
    }

    private static List<ImagePoint> points(View view) throws Exception {
        return lesson().sheet().view(view).orElseThrow().marks().stream()
                .map(Mark::at)
                .toList();
    }
}

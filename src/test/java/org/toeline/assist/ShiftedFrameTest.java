package org.toeline.assist;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
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
    private static final String FIRST = "before";

    /** From the hands on their way to the top of the backswing. */
    private static final double[] AFTER_TAKEAWAY_S = {0.45, 0.6, 0.75, 0.9};

    /** Its arms and club are lost in the blur before they lead two marks away; the club leaves bare ground. */
    private static final String BLURRED = "left-handed";

    @Test
    void marksOfAPlayerLostInTheBlurAreFoundByWhatIsLeftBare() throws Exception {
        List<ImagePoint> points = points(BLURRED, View.DOWN_THE_LINE);
        try (Clip clip = clip(BLURRED, View.DOWN_THE_LINE)) {
            List<StillSpan> moments = AddressFinder.moments(clip, Progress.NONE);
            for (double later : new double[] {0.6, 0.75, 0.9}) {
                double swing = moments.get(0).endSeconds() + later;
                assertThat(ShiftedFrame.belongsTo(clip, swing, moments, points, Progress.NONE)
                                .orElse(Double.NaN))
                        .as("%s s after the takeaway", later)
                        .isCloseTo(moments.get(0).addressSeconds(), within(0.02));
            }
        }
    }

    @Test
    void marksOfTheAddressKeptWithAFrameOfTheSwingAreFound() throws Exception {
        for (View view : List.of(View.FACE_ON, View.DOWN_THE_LINE)) {
            List<ImagePoint> points = points(FIRST, view);
            try (Clip clip = clip(FIRST, view)) {
                List<StillSpan> moments = AddressFinder.moments(clip, Progress.NONE);
                double marked = lesson(FIRST).clips().get(view).seconds().orElseThrow();
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
    @ParameterizedTest
    @ValueSource(strings = {FIRST, BLURRED})
    void marksOfTheSwingAreLeftAlone(String name) throws Exception {
        for (View view : List.of(View.FACE_ON, View.DOWN_THE_LINE)) {
            try (Clip clip = clip(name, view)) {
                List<StillSpan> moments = AddressFinder.moments(clip, Progress.NONE);
                for (double later : AFTER_TAKEAWAY_S) {
                    double swing = moments.get(0).endSeconds() + later;
                    List<ImagePoint> there = Follow.to(
                                    clip,
                                    clip.indexAt(moments.get(0).addressSeconds()),
                                    clip.indexAt(swing),
                                    points(name, view),
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

    private static Path document(String name) {
        return SAMPLES.resolve(Path.of(name, name + ".lesson.json"));
    }

    private static Lesson lesson(String name) throws Exception {
        return LessonDocument.read(document(name));
    }

    private static Clip clip(String name, View view) throws Exception {
        return Clip.open(
                document(name).resolveSibling(lesson(name).clips().get(view).clip()));
    }

    private static List<ImagePoint> points(String name, View view) throws Exception {
        return lesson(name).sheet().view(view).orElseThrow().marks().stream()
                .map(Mark::at)
                .toList();
    }
}

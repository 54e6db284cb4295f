package org.toeline.video;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Path;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Real time is told from the clip's own. */
class SlowMotionTest {

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({"240, 30, 8", "240, 240, 1", "120, 30, 4", "240, 239.8, 1", "30, 60, 1", "240, 0, 1"})
    void howMuchSlowerThanReal(double captured, double shown, double factor) {
        SlowMotion slow = SlowMotion.of(captured, shown);
        assertThat(slow.factor()).isEqualTo(factor);
        assertThat(slow.realSeconds(4)).isEqualTo(4 / factor);
        assertThat(slow.captureRate()).hasValue(captured);
    }

    @Test
    void whatFilesSay() {
        assertThat(SlowMotion.captureRate(Map.of("com.android.capture.fps", "240.000000", "encoder", "x")))
                .hasValue(240);
        assertThat(SlowMotion.captureRate(Map.of("maker.CaptureFrameRate", "119.88")))
                .hasValue(119.88);
        assertThat(SlowMotion.captureRate(Map.of("com.android.capture.fps", "many", "rate", "30")))
                .isEmpty();
        assertThat(SlowMotion.captureRate(Map.of("com.android.capture.fps", "-1")))
                .isEmpty();
        assertThat(SlowMotion.captureRate(Map.of("com.android.capture.fps", "NaN")))
                .isEmpty();
    }

    @Test
    void impossibleRatesAreRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new SlowMotion(OptionalDouble.of(0), 1));
        assertThatIllegalArgumentException().isThrownBy(() -> new SlowMotion(OptionalDouble.empty(), Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> SlowMotion.of(Double.NaN, 30));
    }

    @Test
    void aClipCapturedFasterThanItPlays() throws Exception {
        assumeTrue(PhoneClips.canMake("libx264"), "ffmpeg with libx264 is not installed");
        Path file = PhoneClips.make(
                PhoneClips.source(folder, 30),
                folder.resolve("slow.mp4"),
                "|-c:v libx264 -preset veryfast -movflags use_metadata_tags -metadata com.android.capture.fps=240");
        try (Clip clip = Clip.open(file)) {
            assertThat(clip.captureRate()).hasValue(240);
            assertThat(clip.slowMotion().factor()).isCloseTo(8, within(0.1));
            assertThat(clip.slowMotion().realSeconds(clip.info().durationSeconds()))
                    .isCloseTo(0.125, within(0.01));
            assertThat(clip.capturedAt(120).factor())
                    .as("what a person knows counts")
                    .isCloseTo(4, within(0.05));
        }
    }

    @Test
    void aClipThatSaysNothingPlaysInRealTime() throws Exception {
        try (Clip clip = Clip.open(PhoneClips.source(folder, 10))) {
            assertThat(clip.captureRate()).isEmpty();
            assertThat(clip.slowMotion()).isEqualTo(SlowMotion.NONE);
        }
    }
}

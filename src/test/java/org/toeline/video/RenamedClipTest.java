package org.toeline.video;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Property: what a file is called does not decide what it is. */
class RenamedClipTest {

    private static final Path CLIP = Path.of("sample-media", "before", "tee.mp4");

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "clip",
                "clip.mov",
                "clip.txt",
                "clip.jpg",
                "clip.jpeg",
                "clip.png",
                "clip.gif",
                "clip.heic",
                "clip.webp",
                "clip.bmp",
                "clip.tiff",
                "clip.ts",
                "clip.mpg",
                "clip.mkv",
                "clip.avi",
                "clip.h264",
                "clip.wav",
                "clip.mp3",
                "clip.m3u8",
                "clip.mp4.part",
                "clip %03d.mp4",
                "clip %03d.jpg"
            })
    void aClipUnderAnyNameIsRead(String name) throws Exception {
        Path renamed = Files.copy(CLIP, folder.resolve(name));
        try (Clip one = Clip.open(renamed);
                Clip as = Clip.open(CLIP)) {
            assertThat(one.info().frames()).isEqualTo(as.info().frames());
            assertThat(one.frame(3).argb()).isEqualTo(as.frame(3).argb());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {".avi", ".mkv", ".ts", ".mov"})
    void aClipInAnotherContainerToo(String suffix) throws Exception {
        long[] times = {0, 40, 80, 120, 160, 200, 240, 280};
        // in a transport stream a size is told only by codings that repeat it in their pictures
        String coder = suffix.equals(".ts") ? "libopenh264" : "mpeg4";
        Path written =
                TestClips.write(folder.resolve("a" + suffix), new TestClips.Coding(coder, suffix, 12, 0, 0), times);
        for (String name : new String[] {"clip.jpg", "clip.txt", "clip", "clip.mp4"}) {
            Path renamed = Files.copy(written, folder.resolve(name));
            try (Clip clip = Clip.open(renamed)) {
                assertThat(clip.frameCount()).as(name).isEqualTo(times.length);
            }
        }
    }
}

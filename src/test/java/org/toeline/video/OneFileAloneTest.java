package org.toeline.video;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A file that is called a clip opens no other: the formats of lists are those of RFC 8216, and of the library's own manual. */
class OneFileAloneTest {

    private static final Path CLIP = Path.of("sample-media/before/face-on.mp4");

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
        a playlist;#EXTM3U|#EXT-X-TARGETDURATION:10|#EXTINF:4,|other.mp4|#EXT-X-ENDLIST|
        a list of clips;ffconcat version 1.0|file 'other.mp4'|
        a text;The players' names: A. Sample, B. Sample|
        a text in colours;\u001b[2J\u001b[31mA. Sample|
        a list of pictures;file 'other.mp4'|file 'other.mp4'|
        a session description;v=0|o=- 0 0 IN IP4 127.0.0.1|s=x|t=0 0|m=video 9 RTP/AVP 96|a=rtpmap:96 H264/90000|
        """)
    @Timeout(value = 20, unit = TimeUnit.SECONDS)
    void isRefusedWhateverItIsCalled(String what, String text) throws IOException {
        Files.copy(CLIP, folder.resolve("other.mp4"));
        for (String ending : new String[] {"mp4", "mov", "m3u8", "concat", "ffconcat", "txt", "sdp", "mkv"}) {
            Path named = Files.writeString(folder.resolve("clip." + ending), text.replace('|', '\n'));
            assertThatThrownBy(() -> Clip.open(named).close())
                    .as("%s called %s", what, named.getFileName())
                    .isInstanceOf(ClipException.class)
                    .hasMessageContaining("clip." + ending);
        }
    }

    @Test
    void neitherDevicesNorPipesNorFoldersAreOpened() throws Exception {
        Path pipe = folder.resolve("pipe.mp4");
        assertThat(new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor())
                .isZero();
        for (Path no : new Path[] {pipe, folder, Path.of("/dev/zero")}) {
            assertThatThrownBy(() -> Clip.open(no).close()).isInstanceOf(ClipException.class);
        }
    }
}

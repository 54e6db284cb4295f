package org.toeline.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What stands under About: the list the build makes, and what the libraries carry. */
class LicenceTextsTest {

    @Test
    void namesTheLibrariesAndShowsTheirTexts() throws IOException {
        String text = LicenceTexts.all();
        assertThat(text).contains("\norg.bytedeco:ffmpeg ", "GNU Lesser General Public License, version 3");
        assertThat(List.of("pdfbox-", "commons-csv-", "jackson-databind-", "flyway-core-"))
                .allSatisfy(library -> assertThat(text).contains("――― " + library));
        assertThat(text).contains("TERMS AND CONDITIONS FOR USE, REPRODUCTION, AND DISTRIBUTION");
    }

    @Test
    void theListIsReadWithoutItsMarks() {
        assertThat(LicenceTexts.plain(String.join(
                        "\n",
                        "# Libraries",
                        "",
                        "Written by `mvn` from what",
                        "they say.",
                        "",
                        "| library | version | licence |",
                        "| --- | --- | ---: |",
                        "| org.a:b | 1.2 | MIT |",
                        "",
                        "- FFmpeg: a licence, and",
                        "  its source.",
                        "- OpenCV: another.")))
                .isEqualTo(String.join(
                        "\n",
                        "Libraries",
                        "",
                        "Written by mvn from what they say.",
                        "",
                        "library version · licence",
                        "org.a:b 1.2 · MIT",
                        "",
                        "- FFmpeg: a licence, and its source.",
                        "- OpenCV: another.",
                        ""));
    }
}

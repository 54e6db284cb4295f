package org.toeline.desk.across;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import javafx.stage.Stage;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import org.toeline.across.Comparison;
import org.toeline.across.StatedFindings;
import org.toeline.advice.Words;
import org.toeline.desk.across.AcrossExport.Format;
import org.toeline.desk.work.Background;
import org.toeline.ledger.LessonDocument;
import org.toeline.ledger.store.rows.LessonFindings;
import org.toeline.paint.AcrossPlot;

/** What changed, written where the coach wants it. */
@ExtendWith(ApplicationExtension.class)
class AcrossExportTest {

    @TempDir
    private Path folder;

    @Start
    void start(Stage stage) {
        // answers come back on its thread
    }

    private static LessonFindings lesson(int id, String name) throws Exception {
        return new LessonFindings(
                id,
                Optional.empty(),
                "",
                StatedFindings.of(LessonDocument.read(Path.of("sample-media", name, name + ".lesson.json"))));
    }

    private static AcrossPlot plot() throws Exception {
        return new AcrossPlot(
                "A. Sample, driver",
                "Really changed: tee height.",
                List.of("May 14", "Jun 11"),
                List.of(),
                Comparison.of(List.of(lesson(1, "before"), lesson(2, "after")), 1, 2),
                Words.english());
    }

    @ParameterizedTest
    @EnumSource(Format.class)
    void everyFormatIsWritten(Format format) throws Exception {
        List<String> said = new CopyOnWriteArrayList<>();
        Path file = folder.resolve("kept." + format.name().toLowerCase(Locale.ROOT));
        new AcrossExport(new Background(said::add), said::add).write(plot(), format, file);
        WaitForAsyncUtils.waitFor(180, TimeUnit.SECONDS, () -> !said.isEmpty());
        assertThat(said).containsExactly("What changed is in " + file);
        String begins = new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1);
        assertThat(begins)
                .startsWith(
                        switch (format) {
                            case PNG -> "\u0089PNG";
                            case PDF -> "%PDF-";
                            case CSV -> "reading,unit,lesson,";
                        });
        if (format == Format.CSV) {
            assertThat(begins.lines())
                    .as("each reading of both lessons")
                    .hasSize(1 + 2 * plot().comparison().rows().size());
        }
    }
}

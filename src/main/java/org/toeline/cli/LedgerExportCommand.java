package org.toeline.cli;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.toeline.ledger.DocumentException;
import org.toeline.ledger.LessonDocument;
import org.toeline.ledger.store.Ledger;
import org.toeline.ledger.store.Media;
import org.toeline.ledger.store.exchange.LessonArchive;
import org.toeline.ledger.store.exchange.ReadingsCsv;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.place.LedgerPlace;
import org.toeline.ledger.store.place.Stills;
import org.toeline.ledger.store.rows.KeptLesson;
import org.toeline.ledger.store.rows.Take;
import org.toeline.mark.View;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Gives lessons out. */
@Command(
        name = "export",
        mixinStandardHelpOptions = true,
        versionProvider = Commands.Version.class,
        description =
                "Gives lessons out: as documents, as archives with their clips and stills, or all readings as a table.")
final class LedgerExportCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Mixin
    private LedgerOptions options;

    @Option(names = "--lesson", paramLabel = "NUMBER", description = "Only this lesson; may be given several times.")
    private List<Integer> lessons = new ArrayList<>();

    @Option(names = "--player", paramLabel = "NUMBER", description = "Only this player's lessons.")
    private @org.jspecify.annotations.Nullable Integer player;

    @Option(names = "--out", paramLabel = "DIR", description = "Where documents or archives go, lesson-NUMBER.…")
    private @org.jspecify.annotations.Nullable Path out;

    @Option(names = "--archive", description = "Archives, each with its clips and stills as far as they are found.")
    private boolean archive;

    @Option(
            names = "--clips",
            paramLabel = "DIR",
            defaultValue = ".",
            description = "The folder that relative clip names are " + "relative to (default: where the command runs).")
    private Path clips;

    @Option(names = "--csv", paramLabel = "FILE.csv", description = "All readings of all lessons, one a row.")
    private @org.jspecify.annotations.Nullable Path csv;

    @Override
    public Integer call() throws LedgerException, DocumentException, IOException {
        if (out == null && csv == null) {
            throw new ParameterException(spec.commandLine(), "say where to: --out DIR, --csv FILE.csv or both");
        }
        try (Ledger ledger = options.open()) {
            if (csv != null) {
                StringWriter table = new StringWriter();
                ReadingsCsv.write(ledger, table);
                OutFiles.write(csv, table.toString().getBytes(StandardCharsets.UTF_8), true);
            }
            if (out != null) {
                List<Integer> ids = lessons.isEmpty() ? ids(ledger, player) : lessons;
                for (int id : ids) {
                    spec.commandLine().getOut().println(give(ledger, id, out));
                }
            }
            return Commands.DONE;
        }
    }

    /** All lessons, or a player's, in their order. */
    static List<Integer> ids(Ledger ledger, @org.jspecify.annotations.Nullable Integer player) throws LedgerException {
        return ledger.lessonNumbers(Optional.ofNullable(player));
    }

    private Path give(Ledger ledger, int id, Path folder) throws LedgerException, DocumentException, IOException {
        KeptLesson kept = ledger.lesson(id)
                .orElseThrow(() -> new ParameterException(
                        spec.commandLine(),
                        "there is no lesson " + id + " in " + ledger.place().name()));
        Path file = folder.resolve(
                String.format(Locale.ROOT, "lesson-%06d.%s", id, archive ? "lesson.zip" : "lesson.json"));
        if (archive) {
            archive(ledger, options.folder(), kept, clips, file);
        } else {
            LessonDocument.write(kept.lesson(), file);
        }
        return file;
    }

    static void archive(Ledger ledger, LedgerPlace.Folder files, KeptLesson kept, Path clips, Path file)
            throws LedgerException, DocumentException, IOException {
        Media media = new Media(files.media());
        Map<View, Path> found = new EnumMap<>(View.class);
        for (Take take : ledger.takes(kept.id())) {
            media.locate(take, clips).ifPresent(path -> found.put(take.view(), path));
        }
        LessonArchive.write(
                kept.lesson(), kept.identity(), kept.findings(), found, Stills.of(files, kept.identity()), file);
    }
}

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
import org.toeline.language.Sentences;
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
@Command(name = "export", mixinStandardHelpOptions = true, versionProvider = Commands.Version.class)
final class LedgerExportCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Mixin
    private LedgerOptions options;

    @Option(names = "--lesson", paramLabel = "NUMBER")
    private List<Integer> lessons = new ArrayList<>();

    @Option(names = "--player", paramLabel = "NUMBER")
    private @org.jspecify.annotations.Nullable Integer player;

    @Option(names = "--out", paramLabel = "DIR")
    private @org.jspecify.annotations.Nullable Path out;

    @Option(names = "--archive")
    private boolean archive;

    @Option(names = "--clips", paramLabel = "DIR", defaultValue = ".")
    private Path clips;

    @Option(names = "--csv", paramLabel = "FILE.csv")
    private @org.jspecify.annotations.Nullable Path csv;

    @Override
    public Integer call() throws LedgerException, DocumentException, IOException {
        if (out == null && csv == null) {
            throw new ParameterException(
                    spec.commandLine(), Sentences.of(LedgerExportCommand.class).of("export.where"));
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
                        Sentences.of(LedgerExportCommand.class)
                                .of("export.no-lesson", id, ledger.place().name())));
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

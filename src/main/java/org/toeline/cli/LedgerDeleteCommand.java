package org.toeline.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.toeline.language.Sentences;
import org.toeline.ledger.DocumentException;
import org.toeline.ledger.store.Deleted;
import org.toeline.ledger.store.Ledger;
import org.toeline.ledger.store.backup.OldBackups;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.place.LedgerPlace;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Deletes a player or a lesson for good. */
@Command(name = "delete", mixinStandardHelpOptions = true, versionProvider = Commands.Version.class)
final class LedgerDeleteCommand implements Callable<Integer> {

    private static final Sentences SENTENCES = Sentences.of(LedgerDeleteCommand.class);

    @Spec
    private CommandSpec spec;

    @Mixin
    private LedgerOptions options;

    @ArgGroup(multiplicity = "1")
    private What what;

    @Option(names = "--export-first", paramLabel = "DIR")
    private @org.jspecify.annotations.Nullable Path exportFirst;

    @Option(names = "--backups-too")
    private boolean backupsToo;

    /** A player or a lesson. */
    static final class What {

        @Option(names = "--player", required = true, paramLabel = "NUMBER")
        private @org.jspecify.annotations.Nullable Integer player;

        @Option(names = "--lesson", required = true, paramLabel = "NUMBER")
        private @org.jspecify.annotations.Nullable Integer lesson;
    }

    @Override
    public Integer call() throws LedgerException, DocumentException, IOException {
        PrintWriter out = spec.commandLine().getOut();
        try (Ledger ledger = options.open()) {
            if (exportFirst != null) {
                List<Integer> ids =
                        what.lesson != null ? List.of(what.lesson) : LedgerExportCommand.ids(ledger, what.player);
                for (int id : ids) {
                    Path file = exportFirst.resolve(String.format(Locale.ROOT, "lesson-%06d.lesson.zip", id));
                    LedgerExportCommand.archive(
                            ledger,
                            options.folder(),
                            ledger.lesson(id)
                                    .orElseThrow(() -> new DocumentException(SENTENCES.of("delete.no-lesson", id))),
                            Path.of("."),
                            file);
                    out.println(file);
                }
            }
            OldBackups backups = backupsToo ? OldBackups.REPLACE : OldBackups.KEEP;
            Deleted deleted = what.lesson != null
                    ? ledger.deleteLesson(what.lesson, backups, options.folder())
                    : ledger.deletePlayer(what.player == null ? 0 : what.player, backups, options.folder());
            out.println(SENTENCES.of("delete.done", deleted.lessons(), deleted.clips()));
            deleted.stillHolding().forEach(b -> out.println(SENTENCES.of("delete.holds", b)));
            if (deleted.unfinished().isPresent()) {
                spec.commandLine()
                        .getErr()
                        .println(SENTENCES.of(
                                "delete.unfinished", deleted.unfinished().get()));
                return Commands.FAILED;
            }
            if (options.place() instanceof LedgerPlace.Server) {
                out.println(SENTENCES.of("delete.out-of-reach"));
            }
            return Commands.DONE;
        }
    }
}

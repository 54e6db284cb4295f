package org.toeline.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.toeline.language.Sentences;
import org.toeline.ledger.DocumentException;
import org.toeline.ledger.store.Ledger;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.place.LedgerPlace;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Puts a backup in the ledger's place. */
@Command(name = "restore", mixinStandardHelpOptions = true, versionProvider = Commands.Version.class)
final class LedgerRestoreCommand implements Callable<Integer> {

    private static final Sentences SENTENCES = Sentences.of(LedgerRestoreCommand.class);

    @Spec
    private CommandSpec spec;

    @Mixin
    private LedgerOptions options;

    @Parameters(arity = "0..1", paramLabel = "BACKUP")
    private @org.jspecify.annotations.Nullable Path backup;

    @Override
    public Integer call() throws LedgerException, DocumentException, IOException {
        Path chosen = backup;
        if (options.place() instanceof LedgerPlace.Server server) {
            if (chosen == null) {
                throw new ParameterException(spec.commandLine(), SENTENCES.of("restore.name"));
            }
            Ledger.restore(server, chosen);
            spec.commandLine().getOut().println(SENTENCES.of("restore.done", server.name(), chosen.getFileName()));
            return Commands.DONE;
        }
        if (chosen == null) {
            List<Path> all = Ledger.backups(options.folder());
            if (all.isEmpty()) {
                throw new DocumentException(
                        SENTENCES.of("restore.none", options.folder().backups()));
            }
            chosen = all.get(0);
        }
        Path name = chosen.getFileName();
        Path file = options.folder().file();
        spec.commandLine()
                .getOut()
                .println(Ledger.restore(options.folder(), chosen)
                        .map(aside -> SENTENCES.of("restore.done-aside", file, name, aside))
                        .orElseGet(() -> SENTENCES.of("restore.done", file, name)));
        return Commands.DONE;
    }
}

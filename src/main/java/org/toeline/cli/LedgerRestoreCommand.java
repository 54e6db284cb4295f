package org.toeline.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
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
@Command(
        name = "restore",
        mixinStandardHelpOptions = true,
        versionProvider = Commands.Version.class,
        description = "Puts a backup in the ledger's place, the newest unless another is named. What was there is kept"
                + " beside it. With --server, the backup that is named is put into a database that has no ledger"
                + " yet.")
final class LedgerRestoreCommand implements Callable<Integer> {

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
                throw new ParameterException(
                        spec.commandLine(), "name the backup that is to be put into the server's database");
            }
            Ledger.restore(server, chosen);
            spec.commandLine().getOut().println(server.name() + " is " + chosen.getFileName() + " now");
            return Commands.DONE;
        }
        if (chosen == null) {
            List<Path> all = Ledger.backups(options.folder());
            if (all.isEmpty()) {
                throw new DocumentException(options.folder().backups() + ": there is no backup here; name one");
            }
            chosen = all.get(0);
        }
        Optional<Path> aside = Ledger.restore(options.folder(), chosen);
        spec.commandLine()
                .getOut()
                .println(options.folder().file() + " is " + chosen.getFileName() + " now"
                        + aside.map(a -> "; what was there is " + a).orElse(""));
        return Commands.DONE;
    }
}

package org.toeline.cli;

import java.util.concurrent.Callable;
import org.toeline.ledger.store.Ledger;
import org.toeline.ledger.store.place.LedgerException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Makes a checked copy. */
@Command(name = "backup", mixinStandardHelpOptions = true, versionProvider = Commands.Version.class)
final class LedgerBackupCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Mixin
    private LedgerOptions options;

    @Override
    public Integer call() throws LedgerException {
        try (Ledger ledger = options.open()) {
            spec.commandLine().getOut().println(ledger.backUp(options.folder()));
            return Commands.DONE;
        }
    }
}

package org.toeline.cli;

import java.util.Optional;
import java.util.concurrent.Callable;
import org.toeline.ledger.store.Ledger;
import org.toeline.ledger.store.place.LedgerException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Reads the whole ledger. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        versionProvider = Commands.Version.class,
        description = "Reads the whole ledger and compares every lesson with the sum that was kept of it.")
final class LedgerCheckCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Mixin
    private LedgerOptions options;

    @Override
    public Integer call() throws LedgerException {
        try (Ledger ledger = options.open()) {
            Optional<String> fault = ledger.check();
            if (fault.isPresent()) {
                spec.commandLine()
                        .getErr()
                        .println(ledger.place().name() + ": the ledger is damaged (" + fault.get()
                                + "); go back to a backup with “ledger restore”");
                return Commands.FAILED;
            }
            spec.commandLine().getOut().println(ledger.place().name() + ": whole");
            return Commands.DONE;
        }
    }
}

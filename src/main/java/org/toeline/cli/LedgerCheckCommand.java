package org.toeline.cli;

import java.util.Optional;
import java.util.concurrent.Callable;
import org.toeline.language.Sentences;
import org.toeline.ledger.store.Ledger;
import org.toeline.ledger.store.place.LedgerException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Reads the whole ledger. */
@Command(name = "check", mixinStandardHelpOptions = true, versionProvider = Commands.Version.class)
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
                        .println(Sentences.of(LedgerCheckCommand.class)
                                .of("ledger.damaged", ledger.place().name(), fault.get()));
                return Commands.FAILED;
            }
            spec.commandLine()
                    .getOut()
                    .println(Sentences.of(LedgerCheckCommand.class)
                            .of("ledger.whole", ledger.place().name()));
            return Commands.DONE;
        }
    }
}

package org.toeline.cli;

import org.toeline.language.Sentences;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** What can be done with the ledger of players and lessons. */
@Command(name = "ledger", mixinStandardHelpOptions = true, versionProvider = Commands.Version.class)
final class LedgerCommand implements Runnable {

    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        throw new CommandLine.ParameterException(
                spec.commandLine(), Sentences.of(LedgerCommand.class).of("ledger.say"));
    }
}

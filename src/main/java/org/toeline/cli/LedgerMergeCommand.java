package org.toeline.cli;

import java.util.concurrent.Callable;
import org.toeline.language.Sentences;
import org.toeline.ledger.store.Ledger;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.rows.Merged;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Makes one player of two who are one. */
@Command(name = "merge", mixinStandardHelpOptions = true, versionProvider = Commands.Version.class)
final class LedgerMergeCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Mixin
    private LedgerOptions options;

    @Option(names = "--player", required = true, paramLabel = "NUMBER")
    private int player;

    @Option(names = "--into", required = true, paramLabel = "NUMBER")
    private int into;

    @Override
    public Integer call() throws LedgerException {
        try (Ledger ledger = options.open()) {
            Merged merged = ledger.merge(into, player);
            spec.commandLine()
                    .getOut()
                    .println(Sentences.of(LedgerMergeCommand.class)
                            .of(
                                    "merge.done",
                                    merged.versions().size(),
                                    player,
                                    into,
                                    merged.player().details().name().orElse("")));
            return Commands.DONE;
        }
    }
}

package org.toeline.cli;

import java.nio.file.Path;
import java.util.Optional;
import org.toeline.language.Sentences;
import org.toeline.ledger.store.Ledger;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.place.LedgerPlace;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Which ledger a command is about. */
final class LedgerOptions {

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    @Option(names = "--ledger", paramLabel = "DIR")
    private @org.jspecify.annotations.Nullable Path folder;

    @Option(names = "--server", paramLabel = "URL")
    private @org.jspecify.annotations.Nullable String server;

    @Option(names = "--user", paramLabel = "NAME", defaultValue = "toeline")
    private String user;

    @Option(names = "--bay", paramLabel = "NAME")
    private @org.jspecify.annotations.Nullable String bay;

    Ledger open() throws LedgerException {
        Ledger ledger = Ledger.open(
                place(), bay == null ? Sentences.of(LedgerOptions.class).of("ledger.this-bay") : bay);
        if (server != null) {
            ledger.finishDeletions(folder());
        }
        return ledger;
    }

    LedgerPlace place() {
        if (server == null) {
            return folder();
        }
        try {
            return new LedgerPlace.Server(
                    server,
                    user,
                    Optional.ofNullable(System.getenv("TOELINE_LEDGER_PASSWORD"))
                            .orElse(""));
        } catch (IllegalArgumentException e) {
            throw new ParameterException(spec.commandLine(), "--server: " + e.getMessage());
        }
    }

    /** Where files go. */
    LedgerPlace.Folder folder() {
        return new LedgerPlace.Folder(folder == null ? LedgerPlace.usualFolder() : folder);
    }
}

package org.toeline.cli;

import java.nio.file.Path;
import java.util.Optional;
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

    @Option(
            names = "--ledger",
            paramLabel = "DIR",
            description = "The folder of the ledger (default: the user's data folder); "
                    + "with --server, the folder for clips and stills.")
    private @org.jspecify.annotations.Nullable Path folder;

    @Option(
            names = "--server",
            paramLabel = "URL",
            description =
                    "A PostgreSQL ledger that several bays share: jdbc:postgresql://host:port/database. The password"
                            + " is taken from the environment, TOELINE_LEDGER_PASSWORD.")
    private @org.jspecify.annotations.Nullable String server;

    @Option(
            names = "--user",
            paramLabel = "NAME",
            defaultValue = "toeline",
            description = "The server's user (${DEFAULT-VALUE}).")
    private String user;

    @Option(
            names = "--bay",
            paramLabel = "NAME",
            defaultValue = "this bay",
            description = "What others are told this bay is called.")
    private String bay;

    Ledger open() throws LedgerException {
        return Ledger.open(place(), bay);
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

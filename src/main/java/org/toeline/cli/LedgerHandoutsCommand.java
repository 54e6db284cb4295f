package org.toeline.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.jspecify.annotations.Nullable;
import org.toeline.ledger.store.Ledger;
import org.toeline.ledger.store.Media;
import org.toeline.ledger.store.place.LedgerException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Handouts of many lessons at once. */
@Command(
        name = "handouts",
        mixinStandardHelpOptions = true,
        versionProvider = Commands.Version.class,
        description = "Writes the handouts of all lessons, a player's, or those named: still and page, by the player's"
                + " initials, the date and the lesson's number. One that cannot be made is said, and the others"
                + " are made.")
final class LedgerHandoutsCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Mixin
    private LedgerOptions options;

    @Mixin
    private HandoutChoices choices;

    @Option(names = "--lesson", paramLabel = "NUMBER", description = "Only this lesson; may be given several times.")
    private List<Integer> lessons = new ArrayList<>();

    @Option(names = "--player", paramLabel = "NUMBER", description = "Only this player's lessons.")
    private @Nullable Integer player;

    @Option(names = "--out", required = true, paramLabel = "DIR", description = "The folder they go into.")
    private Path out;

    @Option(
            names = "--clips",
            paramLabel = "DIR",
            defaultValue = ".",
            description = "The folder that relative clip names are " + "relative to (default: where the command runs).")
    private Path clips;

    @Override
    public Integer call() throws LedgerException, InterruptedException {
        try (Ledger ledger = options.open()) {
            KeptHandout made =
                    new KeptHandout(ledger, new Media(options.folder().media()), clips, out, choices);
            List<Integer> ids = lessons.isEmpty() ? ledger.lessonNumbers(Optional.ofNullable(player)) : lessons;
            ExecutorService workers = Executors.newFixedThreadPool(
                    Math.min(Math.max(1, ids.size()), Runtime.getRuntime().availableProcessors()));
            try {
                List<Future<String>> under = new ArrayList<>();
                ids.forEach(id -> under.add(workers.submit(() -> made.write(id))));
                return finished(ids, under);
            } finally {
                workers.shutdownNow();
            }
        }
    }

    /** Says each as it is done, in the lessons' order, and how many are. */
    private int finished(List<Integer> ids, List<Future<String>> under) throws InterruptedException {
        PrintWriter print = spec.commandLine().getOut();
        int failed = 0;
        for (int i = 0; i < ids.size(); i++) {
            String count = (i + 1) + " of " + ids.size() + ": lesson " + ids.get(i) + ": ";
            try {
                print.println(count + under.get(i).get());
            } catch (ExecutionException e) {
                failed++;
                spec.commandLine()
                        .getErr()
                        .println(count + Commands.sentence((Exception) wrapped(Objects.requireNonNull(e.getCause()))));
            }
            print.flush();
        }
        if (failed > 0) {
            spec.commandLine()
                    .getErr()
                    .println(failed + " of " + ids.size() + " handouts could not be made; the others are in " + out);
        }
        return failed > 0 ? Commands.AT_FAULT : Commands.DONE;
    }

    /** What is no exception but an error stops everything. */
    private static Throwable wrapped(Throwable cause) {
        if (cause instanceof Error error) {
            throw error;
        }
        return cause;
    }
}

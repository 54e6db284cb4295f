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
import org.toeline.language.Sentences;
import org.toeline.ledger.store.Ledger;
import org.toeline.ledger.store.Media;
import org.toeline.ledger.store.place.LedgerException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Handouts of many lessons at once. */
@Command(name = "handouts", mixinStandardHelpOptions = true, versionProvider = Commands.Version.class)
final class LedgerHandoutsCommand implements Callable<Integer> {

    private static final Sentences SENTENCES = Sentences.of(LedgerHandoutsCommand.class);

    @Spec
    private CommandSpec spec;

    @Mixin
    private LedgerOptions options;

    @Mixin
    private HandoutChoices choices;

    @Option(names = "--lesson", paramLabel = "NUMBER")
    private List<Integer> lessons = new ArrayList<>();

    @Option(names = "--before", paramLabel = "NUMBER")
    private @Nullable Integer before;

    @Option(names = "--player", paramLabel = "NUMBER")
    private @Nullable Integer player;

    @Option(names = "--out", required = true, paramLabel = "DIR")
    private Path out;

    @Option(names = "--clips", paramLabel = "DIR", defaultValue = ".")
    private Path clips;

    @Override
    public Integer call() throws LedgerException, InterruptedException {
        try (Ledger ledger = options.open()) {
            KeptHandout made =
                    new KeptHandout(ledger, new Media(options.folder().media()), clips, out, choices);
            List<Integer> named = lessons.isEmpty() ? ledger.lessonNumbers(Optional.ofNullable(player)) : lessons;
            List<Integer> ids = named.stream().filter(id -> !id.equals(before)).toList();
            ExecutorService workers = Executors.newFixedThreadPool(
                    Math.min(Math.max(1, ids.size()), Runtime.getRuntime().availableProcessors()));
            try {
                List<Future<String>> under = new ArrayList<>();
                Optional<Integer> earlier = Optional.ofNullable(before);
                ids.forEach(id -> under.add(
                        workers.submit(() -> earlier.isPresent() ? made.write(earlier.get(), id) : made.write(id))));
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
            try {
                print.println(SENTENCES.of(
                        "handouts.of",
                        i + 1,
                        ids.size(),
                        ids.get(i),
                        under.get(i).get()));
            } catch (ExecutionException e) {
                failed++;
                spec.commandLine()
                        .getErr()
                        .println(
                                SENTENCES.of("handouts.of", i + 1, ids.size(), ids.get(i), Commands.sentence((Exception)
                                        wrapped(Objects.requireNonNull(e.getCause())))));
            }
            print.flush();
        }
        if (failed > 0) {
            spec.commandLine().getErr().println(SENTENCES.of("handouts.failed", failed, ids.size(), out));
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

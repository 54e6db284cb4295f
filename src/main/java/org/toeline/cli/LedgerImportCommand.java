package org.toeline.cli;

import java.nio.file.Path;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.toeline.across.StatedFindings;
import org.toeline.language.Sentences;
import org.toeline.ledger.DocumentException;
import org.toeline.ledger.LessonDocument;
import org.toeline.ledger.store.Ledger;
import org.toeline.ledger.store.exchange.LessonImport;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.place.LedgerException.Fault;
import org.toeline.ledger.store.rows.TakenIn;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Takes lessons into the ledger. */
@Command(name = "import", mixinStandardHelpOptions = true, versionProvider = Commands.Version.class)
final class LedgerImportCommand implements Callable<Integer> {

    private static final Sentences SENTENCES = Sentences.of(LedgerImportCommand.class);

    @Spec
    private CommandSpec spec;

    @Mixin
    private LedgerOptions options;

    @Parameters(arity = "1..*", paramLabel = "LESSON")
    private List<Path> files = new ArrayList<>();

    @Option(names = "--player", paramLabel = "NUMBER")
    private @org.jspecify.annotations.Nullable Integer player;

    @Override
    public Integer call() throws LedgerException {
        try (Ledger ledger = options.open()) {
            LessonImport imports = new LessonImport(ledger, options.folder(), StatedFindings::of);
            int status = Commands.DONE;
            for (Path file : inOrder()) {
                try {
                    TakenIn taken = imports.take(file, Optional.ofNullable(player));
                    spec.commandLine()
                            .getOut()
                            .println(
                                    taken instanceof TakenIn.New added
                                            ? SENTENCES.of("import.new", file, taken.lessonId(), added.playerId())
                                            : SENTENCES.of("import.there", file, taken.lessonId()));
                } catch (DocumentException e) {
                    status = Commands.AT_FAULT;
                    spec.commandLine().getErr().println(e.getMessage());
                } catch (LedgerException e) {
                    if (e.fault() != Fault.UNKNOWN) {
                        throw e;
                    }
                    status = Commands.AT_FAULT;
                    spec.commandLine().getErr().println(file + ": " + e.getMessage());
                }
            }
            return status;
        }
    }

    /** Documents by the moment they were recorded; what states none stays after those, as given. */
    private List<Path> inOrder() {
        Map<Path, Instant> recorded = new HashMap<>();
        for (Path file : files) {
            try {
                LessonDocument.read(file)
                        .recorded()
                        .map(OffsetDateTime::toInstant)
                        .ifPresent(t -> recorded.put(file, t));
            } catch (DocumentException e) {
                // it is an archive, or will be said to be at fault when it is its turn
                continue;
            }
        }
        List<Path> sorted = new ArrayList<>(files);
        sorted.sort(Comparator.comparing(file -> recorded.getOrDefault(file, Instant.MAX)));
        return sorted;
    }
}

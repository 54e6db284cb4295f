package org.toeline.cli;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.toeline.language.Sentences;
import org.toeline.ledger.store.Ledger;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.rows.LessonLine;
import org.toeline.ledger.store.rows.Search;
import org.toeline.mark.Club;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Finds lessons. */
@Command(name = "find", mixinStandardHelpOptions = true, versionProvider = Commands.Version.class)
final class LedgerFindCommand implements Callable<Integer> {

    private static final Sentences SENTENCES = Sentences.of(LedgerFindCommand.class);

    @Spec
    private CommandSpec spec;

    @Mixin
    private LedgerOptions options;

    @Parameters(arity = "0..1", paramLabel = "TEXT", defaultValue = "")
    private String text;

    @Option(names = "--player", paramLabel = "NUMBER")
    private @org.jspecify.annotations.Nullable Integer player;

    @Option(names = "--club", paramLabel = "CLUB")
    private @org.jspecify.annotations.Nullable String club;

    @Option(names = "--finding", paramLabel = "READING")
    private @org.jspecify.annotations.Nullable String finding;

    @Option(names = "--verdict", paramLabel = "VERDICT")
    private Set<String> verdicts = new LinkedHashSet<>();

    @Option(names = "--from", paramLabel = "DAY")
    private @org.jspecify.annotations.Nullable LocalDate from;

    @Option(names = "--to", paramLabel = "DAY")
    private @org.jspecify.annotations.Nullable LocalDate to;

    @Option(names = "--most", paramLabel = "NUMBER", defaultValue = "50")
    private int most;

    @Option(names = "--json")
    private boolean json;

    @Override
    public Integer call() throws LedgerException {
        Search search;
        try {
            search = new Search(
                    text,
                    Optional.ofNullable(player),
                    club(),
                    Optional.ofNullable(finding),
                    verdicts,
                    Optional.ofNullable(from),
                    Optional.ofNullable(to),
                    most);
        } catch (IllegalArgumentException e) {
            throw new ParameterException(spec.commandLine(), e.getMessage());
        }
        try (Ledger ledger = options.open()) {
            for (LessonLine line : ledger.find(search)) {
                spec.commandLine().getOut().println(json ? object(line).toString() : text(line));
            }
            return Commands.DONE;
        }
    }

    private Optional<Club> club() {
        String named = club;
        if (named == null) {
            return Optional.empty();
        }
        return Optional.of(Club.of(named)
                .orElseThrow(() -> new ParameterException(spec.commandLine(), SENTENCES.of("ledger.no-club", named))));
    }

    private static ObjectNode object(LessonLine line) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("lesson", line.id()).put("player", line.playerId());
        line.playerName().ifPresent(n -> node.put("name", n));
        line.recorded().ifPresent(r -> node.put("recorded", r));
        node.put("club", line.club()).put("place", line.place()).put("notes", line.notes());
        line.first().ifPresent(f -> node.put("first", f));
        return node;
    }

    /** On one line, whatever is in the notes. */
    private static String text(LessonLine line) {
        String notes = plain(line.notes());
        return "%6d  %-25s  %s (%d)  %s  %s  %s"
                .formatted(
                        line.id(),
                        line.recorded().orElse(SENTENCES.of("find.no-date")),
                        plain(line.playerName().orElse(SENTENCES.of("find.no-name"))),
                        line.playerId(),
                        line.club(),
                        line.judged() == LessonLine.Judged.DAMAGED
                                ? SENTENCES.of("find.damaged")
                                : line.first()
                                        .map(f -> SENTENCES.of("find.first", f))
                                        .orElse(""),
                        notes.length() > 60 ? notes.substring(0, 60) + " …" : notes)
                .stripTrailing();
    }

    /** Without characters that would do something to a terminal. */
    static String plain(String text) {
        return text.replaceAll("[\\p{C}\\s]+", " ").strip();
    }
}

package org.toeline.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import org.toeline.across.AcrossLessons;
import org.toeline.across.ChangeCall;
import org.toeline.language.Sentences;
import org.toeline.language.Written;
import org.toeline.ledger.store.Ledger;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.mark.Club;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** A player's readings over lessons. */
@Command(name = "across", mixinStandardHelpOptions = true, versionProvider = Commands.Version.class)
final class LedgerAcrossCommand implements Callable<Integer> {

    private static final Sentences SENTENCES = Sentences.of(LedgerAcrossCommand.class);

    @Spec
    private CommandSpec spec;

    @Mixin
    private LedgerOptions options;

    @Option(names = "--player", required = true, paramLabel = "NUMBER")
    private int player;

    @Option(names = "--club", required = true, paramLabel = "CLUB")
    private String club;

    @Option(names = "--json")
    private boolean json;

    @Override
    public Integer call() throws LedgerException {
        Club chosen = Club.of(club)
                .orElseThrow(() -> new ParameterException(spec.commandLine(), SENTENCES.of("ledger.no-club", club)));
        try (Ledger ledger = options.open()) {
            List<AcrossLessons> readings = AcrossLessons.of(ledger.acrossLessons(player, chosen));
            PrintWriter out = spec.commandLine().getOut();
            if (json) {
                ObjectNode object = JsonNodeFactory.instance
                        .objectNode()
                        .put("format", "toeline-across")
                        .put("version", 1);
                ArrayNode array = object.putArray("readings");
                readings.forEach(r -> array.add(object(r)));
                out.println(object);
            } else {
                readings.forEach(r -> print(r, out));
            }
            return Commands.DONE;
        }
    }

    private static ObjectNode object(AcrossLessons r) {
        ObjectNode node = JsonNodeFactory.instance
                .objectNode()
                .put("reading", r.reading())
                .put("unit", r.unit());
        ArrayNode lessons = node.putArray("lessons");
        r.points()
                .forEach(p -> lessons.addObject()
                        .put("lesson", p.lessonId())
                        .put("value", p.measured().value())
                        .put("u", p.measured().standardUncertainty()));
        r.change()
                .ifPresent(c -> node.putObject("change")
                        .put("difference", c.difference())
                        .put("smallestDetectable", c.smallestDetectable())
                        .put("call", c.call().id()));
        r.trend()
                .ifPresent(t -> node.putObject("trend")
                        .put("perLesson", t.slope())
                        .put("u", t.slopeStandardUncertainty())
                        .put("misfit", t.misfit())
                        .put("call", t.call().id()));
        if (r.spread().isKnown()) {
            node.put("ownSpread", r.spread().standardDeviation());
        }
        return node;
    }

    private static void print(AcrossLessons r, PrintWriter out) {
        StringBuilder line = new StringBuilder(String.format("%-27s %-8s", r.reading(), r.unit()));
        r.points()
                .forEach(p -> line.append(' ')
                        .append(Written.number("%.1f", p.measured().value()))
                        .append('±')
                        .append(Written.number("%.1f", 1.96 * p.measured().standardUncertainty())));
        r.change()
                .ifPresent(c -> line.append("  ")
                        .append(SENTENCES.of("across.change", signed("%+.1f", c.difference()), words(c.call()))));
        r.trend()
                .ifPresent(t -> line.append(", ")
                        .append(SENTENCES.of("across.trend", signed("%+.2f", t.slope()), words(t.call()))));
        out.println(line);
    }

    private static String signed(String format, double value) {
        return Written.number(format, value);
    }

    private static String words(ChangeCall call) {
        return SENTENCES.of("across." + call.id());
    }
}

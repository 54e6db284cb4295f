package org.toeline.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.toeline.flight.Air;
import org.toeline.flight.ComputedFigures;
import org.toeline.flight.FlightBand;
import org.toeline.flight.Implausible;
import org.toeline.flight.Plausibility;
import org.toeline.flight.RoughRun;
import org.toeline.flight.Shot;
import org.toeline.flight.Trajectory;
import org.toeline.flight.compare.SetupComparison;
import org.toeline.language.Sentences;
import org.toeline.ledger.DocumentException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Shots out of tables: their flights, what is odd about them, and what changed from one setup to another. */
@Command(name = "shots", mixinStandardHelpOptions = true, versionProvider = Commands.Version.class)
final class ShotsCommand implements Callable<Integer> {

    private static final Sentences SENTENCES = Sentences.of(ShotsCommand.class);

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE.csv")
    private Path file;

    @Option(names = "--template", paramLabel = "T.json")
    private @Nullable Path template;

    @Option(names = "--save-template", paramLabel = "T.json")
    private @Nullable Path saveTemplate;

    @Option(names = "--against", paramLabel = "OTHER.csv")
    private @Nullable Path against;

    @Option(names = "--only", paramLabel = "HEADING=VALUE")
    private Map<String, String> only = new LinkedHashMap<>();

    @Option(names = "--turns", paramLabel = "HEADING")
    private @Nullable String turns;

    @Option(names = "--units", paramLabel = "metric|yards", defaultValue = "metric")
    private String units = "metric";

    @Option(names = "--temperature", paramLabel = "C", defaultValue = "20")
    private double temperatureC;

    @Option(names = "--humidity", paramLabel = "PERCENT", defaultValue = "50")
    private double humidityPercent;

    @Option(names = "--altitude", paramLabel = "M", defaultValue = "0")
    private double altitudeM;

    @Option(names = "--wind", paramLabel = "M/S", defaultValue = "0")
    private double windMps;

    @Option(names = "--json")
    private boolean json;

    /** What is odd about a shot; line 0 is all of them together. */
    record Flag(int line, Implausible found) {}

    /** The flights of one launch. */
    record Flown(FlightBand.Figures band, RoughRun run) {}

    /** A table with all that follows from it. */
    record Setup(ShotTable table, ComputedFigures figures, List<Flag> flags, List<Optional<Flown>> flights) {

        /** Why a shot does not count: no flight could give its figures. */
        Optional<String> aside(int shot) {
            int line = table.imported().lines().get(shot);
            return flags.stream()
                    .filter(f -> f.line() == line && f.found().grade() == Implausible.Grade.IMPOSSIBLE)
                    .map(f -> f.found().reason())
                    .findFirst();
        }

        /** The shots that count. */
        List<Shot> counted() {
            return IntStream.range(0, figures.shots().size())
                    .filter(i -> aside(i).isEmpty())
                    .mapToObj(figures.shots()::get)
                    .toList();
        }

        /** Clubs, players, days or titles that would be thrown together. */
        Map<String, Map<String, Integer>> pooled() {
            return table.imported().filters();
        }

        /** The same without what stands under one heading. */
        Map<String, Map<String, Integer>> pooledBeside(String heading) {
            Map<String, Map<String, Integer>> others = new LinkedHashMap<>(pooled());
            others.remove(heading);
            return others;
        }
    }

    @Override
    public Integer call() throws DocumentException, IOException {
        Air air = air();
        ShownShots shown =
                switch (units) {
                    case "metric" -> ShownShots.METRIC;
                    case "yards" -> ShownShots.YARDS;
                    default -> throw new ParameterException(spec.commandLine(), SENTENCES.of("shots.units", units));
                };
        List<ShotTable> tables = new ArrayList<>(
                List.of(ShotTable.read(file, Optional.ofNullable(template)).only(only)));
        if (saveTemplate != null) {
            ShotTable.write(tables.get(0).template(), saveTemplate);
        }
        if (against != null) {
            tables.add(ShotTable.read(against, Optional.ofNullable(template)).only(only));
        }
        List<Setup> setups = setups(tables, air);
        Setup before = setups.get(0);
        Optional<Setup> after = setups.stream().skip(1).findFirst();
        Optional<SetupsOfTable> inTurns = inTurns(before);
        Optional<SetupComparison> comparison = inTurns.map(t -> SetupComparison.of(t.order()))
                .or(() -> after.filter(
                                a -> before.pooled().isEmpty() && a.pooled().isEmpty())
                        .map(a -> SetupComparison.of(before.counted(), a.counted())));
        if (json) {
            spec.commandLine().getOut().println(ShotsDocument.of(before, after, inTurns, comparison));
            return Commands.DONE;
        }
        ShotsReport report = new ShotsReport(spec.commandLine().getOut(), shown);
        report.print(before, inTurns);
        after.ifPresent(a -> report.print(a, Optional.empty()));
        comparison.ifPresent(c -> report.print(
                c,
                inTurns.map(SetupsOfTable::first)
                        .orElseGet(() -> before.table.file().toString()),
                inTurns.map(SetupsOfTable::second)
                        .orElseGet(() -> after.orElseThrow().table.file().toString())));
        return Commands.DONE;
    }

    /** Two setups of the one table: under the heading that is given, else under the one that surely names setups. */
    private Optional<SetupsOfTable> inTurns(Setup table) {
        if (turns == null) {
            return against == null
                    ? table.table.imported().setups().flatMap(h -> SetupsOfTable.under(h, table))
                    : Optional.empty();
        }
        String heading = turns;
        Optional<SetupsOfTable> found = SetupsOfTable.under(heading, table);
        if (found.isEmpty()) {
            List<String> names = SetupsOfTable.names(heading, table);
            String why = names.size() == 2
                    ? SENTENCES.of("shots.turns-pooled", table.pooledBeside(heading))
                    : SENTENCES.of("shots.turns", heading, names);
            throw new ParameterException(spec.commandLine(), why);
        }
        return found;
    }

    private Air air() {
        try {
            return Air.atAltitude(temperatureC, altitudeM, humidityPercent / 100)
                    .withWind(windMps, 0);
        } catch (IllegalArgumentException e) {
            throw new ParameterException(spec.commandLine(), e.getMessage());
        }
    }

    /** Figures are computed for all tables alike, so that no measured figure is held against a computed one. */
    private static List<Setup> setups(List<ShotTable> tables, Air air) {
        ComputedFigures all = ComputedFigures.of(
                tables.stream().flatMap(t -> t.imported().shots().stream()).toList(),
                new Trajectory(air, FlightBand.MODELS.get(0)));
        List<Setup> setups = new ArrayList<>();
        int from = 0;
        for (ShotTable table : tables) {
            int to = from + table.imported().shots().size();
            setups.add(
                    setup(table, new ComputedFigures(all.shots().subList(from, to), all.computed(), all.model()), air));
            from = to;
        }
        return setups;
    }

    private static Setup setup(ShotTable table, ComputedFigures figures, Air air) {
        List<Shot> shots = table.imported().shots();
        Plausibility plausibility = new Plausibility(air);
        FlightBand band = new FlightBand(air);
        List<Flag> flags = new ArrayList<>();
        List<Optional<Flown>> flights = new ArrayList<>();
        for (int i = 0; i < shots.size(); i++) {
            int line = table.imported().lines().get(i);
            plausibility.check(shots.get(i)).forEach(found -> flags.add(new Flag(line, found)));
            flights.add(shots.get(i).launch().map(band::of).map(b -> new Flown(b, RoughRun.after(b.first()))));
        }
        plausibility.checkTogether(shots).ifPresent(found -> flags.add(new Flag(0, found)));
        return new Setup(table, figures, flags, flights);
    }
}

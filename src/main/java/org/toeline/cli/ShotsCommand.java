package org.toeline.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
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
import org.toeline.flight.compare.HitOrder;
import org.toeline.flight.compare.SetupComparison;
import org.toeline.language.Sentences;
import org.toeline.ledger.DocumentException;
import picocli.CommandLine;
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
    private java.util.Map<String, String> only = new java.util.LinkedHashMap<>();

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

        /** What stands under a heading, in the order of the table. */
        List<String> setupsUnder(String heading) {
            return table.imported().groups().stream()
                    .flatMap(g -> Optional.ofNullable(g.get(heading)).stream())
                    .distinct()
                    .toList();
        }

        /** The shots that count, of the two setups named under a heading, in the order they were hit. */
        HitOrder inTurns(String heading, CommandLine line) {
            List<String> names = setupsUnder(heading);
            if (names.size() != 2) {
                throw new ParameterException(line, SENTENCES.of("shots.turns", heading, names));
            }
            List<Shot> shots = new ArrayList<>();
            List<Boolean> second = new ArrayList<>();
            for (int i = 0; i < figures.shots().size(); i++) {
                String name = table.imported().groups().get(i).get(heading);
                if (aside(i).isEmpty() && name != null) {
                    shots.add(figures.shots().get(i));
                    second.add(name.equals(names.get(1)));
                }
            }
            return new HitOrder(shots, second);
        }

        /** Clubs, players, days or titles that would be thrown together. */
        Map<String, Map<String, Integer>> pooled() {
            return table.imported().filters();
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
        Optional<SetupComparison> comparison = turns != null
                ? Optional.of(SetupComparison.of(before.inTurns(turns, spec.commandLine())))
                : after.filter(a -> before.pooled().isEmpty() && a.pooled().isEmpty())
                        .map(a -> SetupComparison.of(before.counted(), a.counted()));
        if (json) {
            spec.commandLine().getOut().println(ShotsDocument.of(before, after, comparison));
            return Commands.DONE;
        }
        ShotsReport report = new ShotsReport(spec.commandLine().getOut(), shown);
        report.print(before);
        after.ifPresent(report::print);
        comparison.ifPresent(c -> report.print(
                c,
                turns == null
                        ? before.table.file().toString()
                        : before.setupsUnder(turns).get(0),
                turns == null
                        ? after.orElseThrow().table.file().toString()
                        : before.setupsUnder(turns).get(1)));
        return Commands.DONE;
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

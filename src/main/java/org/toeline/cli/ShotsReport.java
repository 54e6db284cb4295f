package org.toeline.cli;

import java.io.PrintWriter;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.toeline.flight.ComputedFigures;
import org.toeline.flight.FlightBand;
import org.toeline.flight.Shot;
import org.toeline.flight.ShotFigure;
import org.toeline.flight.compare.Difference;
import org.toeline.flight.compare.SetupComparison;
import org.toeline.flight.compare.SetupFigure;
import org.toeline.flight.table.LeftOut;

/** Shots, what is odd about them and what changed, as lines of text. */
final class ShotsReport {

    private final PrintWriter out;
    private final ShownShots shown;

    ShotsReport(PrintWriter out, ShownShots shown) {
        this.out = out;
        this.shown = shown;
    }

    void print(ShotsCommand.Setup setup) {
        ShotTable table = setup.table();
        out.printf("%s: %d shots%n", table.file(), setup.figures().shots().size());
        for (var column : table.template().columns()) {
            out.printf(
                    "  “%s” is %s in %s%n",
                    column.header(), column.meaning().id(), column.unit().id());
        }
        table.asked()
                .forEach(a -> out.printf(
                        "  to decide: “%s”%s: %s; %s%n",
                        a.heading(),
                        a.perhaps().map(c -> ", perhaps " + c.meaning().id()).orElse(""),
                        a.why(),
                        String.join(" · ", a.values())));
        if (!table.unmapped().isEmpty()) {
            out.println("  not read: "
                    + table.unmapped().stream().map(h -> "“" + h + "”").collect(Collectors.joining(", ")));
        }
        table.imported().notes().forEach(n -> out.println("  " + n));
        table.imported()
                .leftOut()
                .forEach(l -> out.printf(
                        "  line %d%s: %s%n",
                        l.line(), l.extent() == LeftOut.Extent.ROW ? " left out" : "", l.reason()));
        out.println();
        shots(setup);
        setup.flags()
                .forEach(flag -> out.println((flag.line() == 0 ? "all shots" : "line " + flag.line()) + ", "
                        + flag.found().grade().name().toLowerCase(Locale.ROOT) + ": "
                        + flag.found().reason()));
        if (!setup.flags().isEmpty()) {
            out.println();
        }
        for (int i = 0; i < setup.figures().shots().size(); i++) {
            int line = table.imported().lines().get(i);
            setup.aside(i).ifPresent(why -> out.printf("line %d does not count: %s%n", line, why));
        }
        if (setup.pooled().isEmpty()) {
            figures(SetupFigure.of(setup.counted()));
        } else {
            setup.pooled()
                    .forEach((heading, values) -> out.printf(
                            "shots of different “%s” are not thrown together: choose with --only \"%s=VALUE\" from"
                                    + " %s%n",
                            heading, heading, values));
        }
    }

    private void shots(ShotsCommand.Setup setup) {
        ComputedFigures figures = setup.figures();
        List<ShotFigure> columns = Arrays.stream(ShotFigure.values())
                .filter(f -> figures.shots().stream().anyMatch(s -> s.figure(f).isPresent()))
                .toList();
        out.println("line"
                + columns.stream()
                        .map(f -> String.format(
                                "%18s", f.words() + (figures.computed().contains(f) ? "*" : "")))
                        .collect(Collectors.joining())
                + String.format("%24s", "carry, all models") + String.format("%20s", "run, rough"));
        out.println("    "
                + columns.stream()
                        .map(f -> String.format("%18s", shown.unit(f).id()))
                        .collect(Collectors.joining())
                + String.format("%24s", shown.unit(ShotFigure.CARRY).id())
                + String.format("%20s", shown.unit(ShotFigure.TOTAL).id()));
        for (int i = 0; i < figures.shots().size(); i++) {
            Shot shot = figures.shots().get(i);
            out.println(String.format("%4d", setup.table().imported().lines().get(i))
                    + columns.stream()
                            .map(f -> String.format(
                                    "%18s",
                                    shot.figure(f).isPresent()
                                            ? shown.number(f, shot.figure(f).getAsDouble())
                                            : "–"))
                            .collect(Collectors.joining())
                    + setup.flights().get(i).map(this::band).orElse(String.format("%24s%20s", "–", "–")));
        }
        if (!figures.computed().isEmpty()) {
            out.println("* computed, " + figures.model() + "; nobody measured it");
        }
        out.println("carry, all models: the least and the most of "
                + FlightBand.MODELS.stream().map(m -> m.words()).collect(Collectors.joining("; "))
                + ". Against published tour means the first is 5 % off by root mean square: 2 % short to 10 % long.");
        out.println();
    }

    private String band(ShotsCommand.Flown flown) {
        return String.format(
                        "%24s",
                        shown.width(ShotFigure.CARRY, flown.band().shortestM()) + " to "
                                + shown.width(ShotFigure.CARRY, flown.band().longestM()))
                + String.format(
                        "%20s",
                        shown.width(ShotFigure.TOTAL, flown.run().softM()) + " to "
                                + shown.width(ShotFigure.TOTAL, flown.run().firmM()));
    }

    private void figures(List<SetupFigure> figures) {
        for (SetupFigure f : figures) {
            out.printf(
                    "%-18s %14s %s (%d shots)%n",
                    f.figure().words(),
                    shown.figure(f.figure(), f.centre()),
                    f.halfWidth().isPresent()
                            ? "± " + shown.half(f.figure(), f.halfWidth().getAsDouble())
                            : "too few for an interval",
                    f.count());
        }
        out.println();
    }

    void print(SetupComparison comparison, String before, String after) {
        out.printf("From %s to %s, with 95 %% intervals:%n", before, after);
        for (Difference d : comparison.differences()) {
            String change = d.estimate()
                    .map(e -> String.format(
                            "%8s (%s to %s) %s",
                            shown.change(d.figure(), e.difference()),
                            shown.change(d.figure(), e.low()),
                            shown.change(d.figure(), e.high()),
                            shown.unit(d.figure()).id()))
                    .orElse(String.format("%8s", "–"));
            out.printf("%-18s %-40s %s%n", d.figure().words(), change, d.words());
        }
        out.printf(
                "L and R: as seen looking at the target. Real: allowing for %d figures looked at together and for"
                        + " shots like the one before.%nWith three to five shots a mishit cannot be told from the others;"
                        + " from six on, one far from the rest counts for nothing.%nHit the setups in turns (A B A B):"
                        + " then fewer shots tell more.%n",
                comparison.differences().size());
    }
}

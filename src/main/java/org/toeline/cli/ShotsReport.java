package org.toeline.cli;

import java.io.PrintWriter;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.toeline.flight.ComputedFigures;
import org.toeline.flight.FlightBand;
import org.toeline.flight.Shot;
import org.toeline.flight.ShotFigure;
import org.toeline.flight.compare.Difference;
import org.toeline.flight.compare.SetupComparison;
import org.toeline.flight.compare.SetupFigure;
import org.toeline.flight.table.Asked;
import org.toeline.flight.table.Imported;
import org.toeline.flight.table.LeftOut;
import org.toeline.language.Sentences;

/** Shots, what is odd about them and what changed, as lines of text. */
final class ShotsReport {

    private static final Sentences SENTENCES = Sentences.of(ShotsReport.class);

    private final PrintWriter out;
    private final ShownShots shown;

    ShotsReport(PrintWriter out, ShownShots shown) {
        this.out = out;
        this.shown = shown;
    }

    /** @param inTurns two setups of it that are compared */
    void print(ShotsCommand.Setup setup, Optional<SetupsOfTable> inTurns) {
        ShotTable table = setup.table();
        out.println(
                SENTENCES.of("shots.file", table.file(), setup.figures().shots().size()));
        columns(table);
        table.imported().notes().forEach(n -> out.println("  " + n));
        table.imported()
                .leftOut()
                .forEach(l -> out.println("  "
                        + SENTENCES.of(
                                l.extent() == LeftOut.Extent.ROW ? "shots.left-out" : "shots.line",
                                l.line(),
                                l.reason())));
        out.println();
        shots(setup);
        setup.flags().forEach(flag -> out.println(said(flag)));
        if (!setup.flags().isEmpty()) {
            out.println();
        }
        for (int i = 0; i < setup.figures().shots().size(); i++) {
            int line = table.imported().lines().get(i);
            setup.aside(i).ifPresent(why -> out.println(SENTENCES.of("shots.aside", line, why)));
        }
        if (inTurns.isPresent()) {
            inTurns(inTurns.get());
        } else if (setup.pooled().isEmpty()) {
            figures(SetupFigure.of(setup.counted()));
        } else {
            setup.pooled()
                    .forEach((heading, values) -> out.println(SENTENCES.of(
                            Imported.mayNameSetups(heading) ? "shots.apart-setups" : "shots.apart", heading, values)));
        }
    }

    private void inTurns(SetupsOfTable two) {
        if (two.neither() > 0) {
            out.println(SENTENCES.of("shots.neither", two.neither(), two.heading()));
        }
        for (boolean second : new boolean[] {false, true}) {
            out.println(SENTENCES.of("shots.setup", two.heading(), second ? two.second() : two.first()));
            figures(SetupFigure.of(two.order().of(second)));
        }
    }

    private void columns(ShotTable table) {
        for (var column : table.template().columns()) {
            out.println("  "
                    + SENTENCES.of(
                            "shots.column",
                            column.header(),
                            column.meaning().words(),
                            column.unit().id()));
        }
        for (Asked a : table.asked()) {
            String values = String.join(" · ", a.values());
            out.println("  "
                    + a.perhaps()
                            .map(c -> SENTENCES.of(
                                    "shots.ask-perhaps",
                                    a.heading(),
                                    a.why(),
                                    values,
                                    c.meaning().words()))
                            .orElseGet(() -> SENTENCES.of("shots.ask", a.heading(), a.why(), values)));
        }
        List<String> notRead = table.unmapped().stream()
                .filter(h -> table.imported().groups().stream().noneMatch(g -> g.containsKey(h)))
                .toList();
        if (!notRead.isEmpty()) {
            out.println("  "
                    + SENTENCES.of(
                            "shots.not-read",
                            notRead.stream()
                                    .map(h -> SENTENCES.of("shots.quoted", h))
                                    .collect(Collectors.joining(", "))));
        }
    }

    private static String said(ShotsCommand.Flag flag) {
        String grade = flag.found().grade().name().toLowerCase(Locale.ROOT);
        return flag.line() == 0
                ? SENTENCES.of("shots.all-" + grade, flag.found().reason())
                : SENTENCES.of("shots." + grade, flag.line(), flag.found().reason());
    }

    private void shots(ShotsCommand.Setup setup) {
        ComputedFigures figures = setup.figures();
        List<ShotFigure> columns = Arrays.stream(ShotFigure.values())
                .filter(f -> figures.shots().stream().anyMatch(s -> s.figure(f).isPresent()))
                .toList();
        out.println(String.format("%5s", SENTENCES.of("shots.head.line"))
                + columns.stream()
                        .map(f -> String.format(
                                "%18s", f.words() + (figures.computed().contains(f) ? "*" : "")))
                        .collect(Collectors.joining())
                + String.format("%24s", SENTENCES.of("shots.head.carry"))
                + String.format("%20s", SENTENCES.of("shots.head.run")));
        out.println("     "
                + columns.stream()
                        .map(f -> String.format("%18s", shown.unit(f).id()))
                        .collect(Collectors.joining())
                + String.format("%24s", shown.unit(ShotFigure.CARRY).id())
                + String.format("%20s", shown.unit(ShotFigure.TOTAL).id()));
        for (int i = 0; i < figures.shots().size(); i++) {
            Shot shot = figures.shots().get(i);
            out.println(String.format("%5d", setup.table().imported().lines().get(i))
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
            out.println(SENTENCES.of("shots.computed", figures.model()));
        }
        out.println(SENTENCES.of(
                "shots.models", FlightBand.MODELS.stream().map(m -> m.words()).collect(Collectors.joining("; "))));
        out.println();
    }

    private String band(ShotsCommand.Flown flown) {
        return String.format(
                        "%24s",
                        between(
                                ShotFigure.CARRY,
                                flown.band().shortestM(),
                                flown.band().longestM()))
                + String.format(
                        "%20s",
                        between(
                                ShotFigure.TOTAL,
                                flown.run().softM(),
                                flown.run().firmM()));
    }

    private String between(ShotFigure figure, double least, double most) {
        return SENTENCES.of("shots.to", shown.width(figure, least), shown.width(figure, most));
    }

    private void figures(List<SetupFigure> figures) {
        for (SetupFigure f : figures) {
            out.printf(
                    "%-18s %14s %s %s%n",
                    f.figure().words(),
                    shown.figure(f.figure(), f.centre()),
                    f.halfWidth().isPresent()
                            ? "± " + shown.half(f.figure(), f.halfWidth().getAsDouble())
                            : SENTENCES.of("shots.few"),
                    SENTENCES.of("shots.count", f.count()));
        }
        out.println();
    }

    void print(SetupComparison comparison, String before, String after) {
        out.println(SENTENCES.of("shots.from-to", before, after));
        for (Difference d : comparison.differences()) {
            String change = d.estimate()
                    .map(e -> SENTENCES.of(
                            "shots.interval",
                            String.format("%8s", shown.change(d.figure(), e.difference())),
                            shown.change(d.figure(), e.low()),
                            shown.change(d.figure(), e.high()),
                            shown.unit(d.figure()).id()))
                    .orElse(String.format("%8s", "–"));
            out.printf("%-18s %-40s %s%n", d.figure().words(), change, d.words());
        }
        out.println(SENTENCES.of("shots.sides", comparison.differences().size()));
        out.println(SENTENCES.of("shots.mishit"));
        out.println(SENTENCES.of("shots.in-turns"));
    }
}

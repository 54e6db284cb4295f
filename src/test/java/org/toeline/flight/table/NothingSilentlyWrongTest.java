package org.toeline.flight.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.toeline.flight.FigureUnit;
import org.toeline.flight.Shot;
import org.toeline.flight.ShotFigure;

/**
 * Ninety tables, each figure taken rightly, asked about, or refused with line and reason. Silently wrong is a figure that was
 * taken and is not what was hit, a row that counts as a shot and is none, and a shot or a figure that went without a word.
 * As a command it prints the table of {@code docs/flight.md}.
 */
class NothingSilentlyWrongTest {

    /** Half a unit in the last place that the tables write. */
    private static final Map<FigureUnit, Double> ROUNDING = Map.of(
            FigureUnit.METRES_PER_SECOND, 0.06,
            FigureUnit.METRE, 0.3,
            FigureUnit.DEGREE, 0.11,
            FigureUnit.TURNS_PER_MINUTE, 1.0,
            FigureUnit.SECOND, 0.006,
            FigureUnit.TIMES, 0.006);

    /** What became of the figures of one table. */
    private record Count(String name, int taken, int asked, int refused, List<String> wrong) {}

    private static Count count(String name, byte[] bytes, Map<Integer, Shot> truth) {
        Proposal proposal = Proposal.of(bytes, "test");
        Imported read = ShotImport.read(bytes, proposal.template());
        List<String> wrong = new ArrayList<>();
        int taken = 0;
        for (int i = 0; i < read.shots().size(); i++) {
            Shot shot = read.shots().get(i);
            Shot true_ = truth.get(read.lines().get(i));
            if (true_ == null) {
                wrong.add("line " + read.lines().get(i) + " is no shot");
                continue;
            }
            for (ShotFigure figure : shot.figures().keySet()) {
                double off = true_.figure(figure).isEmpty()
                        ? Double.NaN
                        : shot.figure(figure).orElseThrow()
                                - true_.figure(figure).orElseThrow();
                double within = figure.shownUnit().toInside(ROUNDING.get(figure.shownUnit()));
                if (Math.abs(off) <= within) {
                    taken++;
                } else {
                    wrong.add("line " + read.lines().get(i) + " " + figure.id() + " is off by " + off);
                }
            }
        }
        Set<ShotFigure> askedFor = proposal.asked().stream()
                .flatMap(a -> a.perhaps().stream())
                .flatMap(c -> c.meaning().figure().stream())
                .collect(Collectors.toSet());
        Set<Integer> out = read.leftOut().stream().map(LeftOut::line).collect(Collectors.toSet());
        int asked = 0;
        int refused = 0;
        for (Map.Entry<Integer, Shot> e : truth.entrySet()) {
            int place = read.lines().indexOf(e.getKey());
            for (ShotFigure figure : e.getValue().figures().keySet()) {
                if (place >= 0 && read.shots().get(place).figure(figure).isPresent()) {
                    continue;
                }
                if (askedFor.contains(figure)
                        || proposal.asked().stream()
                                .anyMatch(a -> a.perhaps().isPresent()
                                        && a.perhaps().get().meaning().figure().isEmpty())) {
                    asked++;
                } else if (out.contains(e.getKey())
                        || !proposal.unmapped().isEmpty()
                        || read.shots().isEmpty() && !out.isEmpty()) {
                    refused++;
                } else {
                    wrong.add("line " + e.getKey() + " " + figure.id() + " went without a word");
                }
            }
        }
        return new Count(name, taken, asked, refused, wrong);
    }

    private static List<Count> all() {
        List<Count> counts = new ArrayList<>();
        for (MadeTable table : MadeTables.all()) {
            counts.add(count(table.name, table.bytes(), table.truth()));
        }
        counts.add(count("figures down, shots across", OddTables.across(), Map.of()));
        ManyTablesTest.truths()
                .forEach((table, truth) -> counts.add(count(table.toString(), ManyTablesTest.bytes(table), truth)));
        return counts;
    }

    @Test
    void ninetyTables() {
        List<Count> counts = all();
        assertThat(counts).hasSizeGreaterThanOrEqualTo(90);
        assertThat(counts).allSatisfy(c -> assertThat(c.wrong).as(c.name).isEmpty());
        // who asks about everything is never wrong: most of what is plainly said is taken
        int taken = counts.stream().mapToInt(Count::taken).sum();
        int asked = counts.stream().mapToInt(Count::asked).sum();
        assertThat(taken).isGreaterThan(3 * asked);
    }

    public static void main(String[] args) {
        System.out.println("| table | taken | asked | refused | silently wrong |\n| --- | --- | --- | --- | --- |");
        List<Count> counts = all();
        for (Count c : counts) {
            System.out.printf("| %s | %d | %d | %d | %d |%n", c.name, c.taken, c.asked, c.refused, c.wrong.size());
            c.wrong.stream().limit(4).forEach(w -> System.err.println(c.name + ": " + w));
        }
        System.out.printf(
                "| **%d tables** | %d | %d | %d | %d |%n",
                counts.size(),
                counts.stream().mapToInt(Count::taken).sum(),
                counts.stream().mapToInt(Count::asked).sum(),
                counts.stream().mapToInt(Count::refused).sum(),
                counts.stream().mapToInt(c -> c.wrong.size()).sum());
    }
}

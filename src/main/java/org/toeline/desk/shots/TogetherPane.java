package org.toeline.desk.shots;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import javafx.geometry.Insets;
import javafx.scene.control.ScrollPane;
import org.toeline.desk.text.Texts;
import org.toeline.flight.ComputedFigures;
import org.toeline.flight.FlightBand;
import org.toeline.flight.RememberedFlights;
import org.toeline.flight.ShotFigure;
import org.toeline.flight.compare.GoesTogether;
import org.toeline.flight.compare.LessonFigures;
import org.toeline.flight.compare.RankCorrelation;
import org.toeline.flight.compare.SetupFigure;
import org.toeline.ledger.store.rows.StatedFinding;

/** What of the setup went with what of the flight over a player's lessons with one club. Never a proof. */
final class TogetherPane extends ScrollPane {

    /** More pairs than this nobody reads. */
    private static final int MOST = 20;

    private final TextGrid lines = new TextGrid(column -> true);

    TogetherPane() {
        setId("shots-together");
        setFitToWidth(true);
        lines.setPadding(new Insets(10));
        setContent(lines);
    }

    /** The pairs, the surest first; a pure function, to be reckoned off the interface thread. */
    static List<GoesTogether> of(PlayersShots all, RememberedFlights air) {
        if (withShots(all).size() < RankCorrelation.LEAST) {
            return List.of();
        }
        List<PlayersShots.OfLesson> lessons = withShots(all).stream()
                .map(l -> l.withShots(l.shots().stream()
                        .filter(s -> s.aside().isEmpty()
                                && FlownShot.of(s, air).impossible().isEmpty())
                        .toList()))
                .toList();
        ComputedFigures figures = ComputedFigures.of(
                lessons.stream().flatMap(l -> l.shots().stream()).toList(),
                FlightBand.MODELS.get(0).words(),
                air::first);
        List<LessonFigures> points = new ArrayList<>();
        int from = 0;
        for (PlayersShots.OfLesson lesson : lessons) {
            int to = from + lesson.shots().size();
            Map<ShotFigure, Double> middles = SetupFigure.of(figures.shots().subList(from, to)).stream()
                    .collect(Collectors.toMap(SetupFigure::figure, SetupFigure::centre));
            points.add(new LessonFigures(readings(lesson), middles));
            from = to;
        }
        return GoesTogether.of(points);
    }

    private static Map<String, Double> readings(PlayersShots.OfLesson lesson) {
        return lesson.findings().stream()
                .collect(Collectors.toMap(StatedFinding::reading, StatedFinding::value, (a, b) -> a, TreeMap::new));
    }

    private static List<PlayersShots.OfLesson> withShots(PlayersShots all) {
        return all.lessons().stream()
                .filter(l -> l.club() == all.club() && !l.shots().isEmpty())
                .toList();
    }

    /** Another lesson's are to be read. */
    void toTop() {
        setVvalue(0);
    }

    void show(PlayersShots all, List<GoesTogether> pairs, ExpectationWords words) {
        List<List<TextGrid.Cell>> said = new ArrayList<>();
        int lessons = withShots(all).size();
        if (lessons < RankCorrelation.LEAST) {
            said.add(line(Texts.of("shots.together.few", RankCorrelation.LEAST, lessons), "hint"));
        } else {
            long several = withShots(all).stream()
                    .filter(PlayersShots.OfLesson::ofSeveralSetups)
                    .count();
            said.add(line(
                    Texts.of("shots.together.help", lessons, pairs.size())
                            + (several > 0 ? " " + Texts.of("shots.together.pooled", several) : ""),
                    "hint"));
            pairs.stream()
                    .limit(MOST)
                    .forEach(g -> said.add(line(
                            (g.shown() ? "● " : "○ ") + words.name(g.reading()) + " – "
                                    + Texts.of("shots.figure." + g.figure().id()) + ": " + g.words(),
                            "shots-line")));
        }
        lines.show(said);
    }

    private static List<TextGrid.Cell> line(String text, String style) {
        return List.of(TextGrid.Cell.of(text, style));
    }
}

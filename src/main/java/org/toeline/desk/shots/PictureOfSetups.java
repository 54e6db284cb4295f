package org.toeline.desk.shots;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.toeline.desk.text.Texts;
import org.toeline.flight.FigureUnit;
import org.toeline.flight.Flight;
import org.toeline.flight.FlightBand;
import org.toeline.flight.Shot;
import org.toeline.flight.ShotFigure;
import org.toeline.flight.compare.SetupFigure;
import org.toeline.paint.ShotPicture;

/** What the picture shows of one or two setups, and what is said beside it. */
record PictureOfSetups(ComparedSetups compared, ShotSettings settings) {

    /**
     * @param row  the row to point out; one that is not there points out none
     */
    ShotPicture onScreen(int row) {
        return picture(
                row,
                Stream.concat(
                                Stream.of(Texts.of(
                                        "shots.picture.brief",
                                        FlightBand.MODELS.get(0).words())),
                                notAbove())
                        .toList());
    }

    /** As it is written to a file: it says all that is to be known beside it, and points out no shot. */
    ShotPicture forFile() {
        return picture(-1, notes());
    }

    private ShotPicture picture(int row, List<String> said) {
        List<ShotPicture.Setup> setups = new ArrayList<>();
        compared.setups().forEach(s -> setups.add(setup(s, s.at(row), row)));
        FigureUnit length = settings.units().length();
        return new ShotPicture(setups, length, said, inWords());
    }

    private static ShotPicture.Setup setup(ComparedSetups.Setup setup, OptionalInt pointedOut, int row) {
        List<Integer> drawn = new ArrayList<>(setup.drawn());
        pointedOut.stream()
                .filter(i -> setup.counts().get(i) && !drawn.contains(i))
                .forEach(drawn::add);
        String name = Texts.of("shots.picture.shot", row + 1);
        List<ShotPicture.Trace> traces = drawn.stream()
                .map(i -> trace(setup, i, pointedOut.equals(OptionalInt.of(i)) ? name : ""))
                .toList();
        Map<ShotFigure, SetupFigure> middles = setup.middles().stream()
                .collect(Collectors.toMap(
                        SetupFigure::figure, m -> m, (a, b) -> a, () -> new EnumMap<>(ShotFigure.class)));
        // one shot is its own middle: a second curve upon it would only hide it
        List<Flight> middle =
                setup.measured().size() < 2 ? setup.middle().stream().skip(1).toList() : setup.middle();
        return new ShotPicture.Setup(
                setup.name(),
                setup.counted(),
                traces,
                setup.measured().size() < 2 ? List.of() : middle,
                setup.middleTellsSide(),
                middles);
    }

    private static ShotPicture.Trace trace(ComparedSetups.Setup setup, int i, String name) {
        Shot shot = setup.measured().get(i);
        return new ShotPicture.Trace(
                setup.flights().get(i),
                shot.tellsSide(),
                shot.figure(ShotFigure.CARRY),
                shot.figure(ShotFigure.SIDE),
                shot.figure(ShotFigure.APEX),
                name);
    }

    private List<String> notes() {
        List<String> others =
                FlightBand.MODELS.stream().skip(1).map(m -> m.words()).toList();
        return Stream.concat(
                        Stream.of(
                                Texts.of(
                                        "shots.picture.curves",
                                        FlightBand.MODELS.get(0).words(),
                                        String.join("; ", others)),
                                Texts.of("shots.picture.points"),
                                Texts.of(
                                        "shots.picture.error",
                                        FlightBand.MODELS.get(0).words())),
                        notAbove())
                .toList();
    }

    /** What is said where a flight is computed and nobody measured where it goes sideways. */
    private Stream<String> notAbove() {
        boolean some = compared.setups().stream()
                .anyMatch(s ->
                        s.measured().stream().anyMatch(shot -> shot.launch().isPresent() && !shot.tellsSide()));
        return some ? Stream.of(Texts.of("shots.picture.not-above")) : Stream.empty();
    }

    /** The picture for who cannot see it. */
    private String inWords() {
        return compared.setups().stream()
                .map(s -> s.name() + ": "
                        + Texts.of("shots.picture.count", s.measured().size()) + middle(s, ShotFigure.CARRY)
                        + middle(s, ShotFigure.APEX) + middle(s, ShotFigure.SIDE))
                .collect(Collectors.joining(". "));
    }

    private String middle(ComparedSetups.Setup setup, ShotFigure figure) {
        Optional<SetupFigure> middle = setup.middle(figure);
        return middle.map(m -> ", " + Texts.of("shots.figure." + figure.id()) + " "
                        + settings.units().figure(figure, m.centre()))
                .orElse("");
    }
}

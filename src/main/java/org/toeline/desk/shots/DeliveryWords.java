package org.toeline.desk.shots;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.toeline.desk.text.Texts;
import org.toeline.flight.FaceAndPath;
import org.toeline.flight.LaunchWindow;
import org.toeline.flight.ShotFigure;
import org.toeline.language.Written;

/** How the club came to the ball, as far as that goes with where the ball went; and from where it would carry farthest. */
record DeliveryWords(ShotUnits units) {

    /** Face and path of a setup's middles beside where its shots start and how they bend; from three shots on. */
    Optional<String> faceAndPath(ComparedSetups.Setup setup) {
        return known(setup, ShotFigure.CLUB_PATH)
                .flatMap(path -> known(setup, ShotFigure.FACE_TO_PATH).map(face -> FaceAndPath.of(path, face)))
                .map(f -> Texts.of(
                        "shots.face-and-path",
                        setup.name(),
                        units.number(ShotFigure.LAUNCH_DIRECTION, f.leastRad()),
                        units.number(ShotFigure.LAUNCH_DIRECTION, f.mostRad()),
                        Texts.of("shots.bends." + f.bend().name().toLowerCase(Locale.ROOT)),
                        known(setup, ShotFigure.LAUNCH_DIRECTION)
                                .map(m -> Texts.of(
                                        "shots.face-and-path.measured",
                                        units.number(ShotFigure.LAUNCH_DIRECTION, m.rad()),
                                        units.half(ShotFigure.LAUNCH_DIRECTION, m.halfRad())))
                                .orElse("")));
    }

    private static Optional<FaceAndPath.Known> known(ComparedSetups.Setup setup, ShotFigure figure) {
        return setup.middle(figure)
                .filter(m -> m.halfWidth().isPresent())
                .map(m -> new FaceAndPath.Known(m.centre(), m.halfWidth().getAsDouble()));
    }

    /** From which launch and spin a ball of this speed would carry farthest, by the models. */
    String window(double speedMps, LaunchWindow window) {
        List<String> parts = new ArrayList<>();
        parts.add(units.number(ShotFigure.BALL_SPEED, speedMps) + " "
                + units.of(ShotFigure.BALL_SPEED).id());
        parts.add(span(window, LaunchWindow.OfModel::bestDeg, LaunchWindow.OfModel::bestDeg));
        parts.add(span(window, LaunchWindow.OfModel::bestRpm, LaunchWindow.OfModel::bestRpm));
        parts.add(span(window, LaunchWindow.OfModel::leastDeg, LaunchWindow.OfModel::mostDeg));
        parts.add(span(window, LaunchWindow.OfModel::leastRpm, LaunchWindow.OfModel::mostRpm));
        return Texts.of("shots.window", parts.toArray());
    }

    private static String span(
            LaunchWindow window,
            ToDoubleFunction<LaunchWindow.OfModel> least,
            ToDoubleFunction<LaunchWindow.OfModel> most) {
        double low = window.models().stream().mapToDouble(least).min().orElse(0);
        double high = window.models().stream().mapToDouble(most).max().orElse(0);
        String from = Written.number("%.0f", low);
        return low == high ? from : from + "–" + Written.number("%.0f", high);
    }
}

package org.toeline.desk.shots;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.toeline.desk.text.Texts;
import org.toeline.flight.FaceAndPath;
import org.toeline.flight.LaunchWindow;
import org.toeline.flight.Shot;
import org.toeline.flight.ShotFigure;
import org.toeline.flight.compare.SetupFigure;

/** How the club came to the ball, as far as that goes with where the ball went; and from where it would carry farthest. */
record DeliveryWords(ShotUnits units) {

    /** Face and path of a setup's middles beside where its shots start and how they bend. */
    Optional<String> faceAndPath(ComparedSetups.Setup setup) {
        Optional<SetupFigure> path = setup.middle(ShotFigure.CLUB_PATH);
        Optional<SetupFigure> face = setup.middle(ShotFigure.FACE_TO_PATH);
        if (path.isEmpty() || face.isEmpty()) {
            return Optional.empty();
        }
        Shot middle = new Shot(java.util.Map.of(
                ShotFigure.CLUB_PATH,
                path.get().centre(),
                ShotFigure.FACE_TO_PATH,
                face.get().centre()));
        return FaceAndPath.of(middle)
                .map(f -> Texts.of(
                        "shots.face-and-path",
                        setup.name(),
                        units.number(ShotFigure.LAUNCH_DIRECTION, f.leastRad()),
                        units.number(ShotFigure.LAUNCH_DIRECTION, f.mostRad()),
                        Texts.of(f.bendRad() > 0 ? "shots.bends.left" : "shots.bends.right"),
                        setup.middle(ShotFigure.LAUNCH_DIRECTION)
                                .map(m -> Texts.of(
                                        "shots.face-and-path.measured",
                                        units.number(ShotFigure.LAUNCH_DIRECTION, m.centre()),
                                        m.halfWidth().isPresent()
                                                ? units.width(
                                                        ShotFigure.LAUNCH_DIRECTION,
                                                        m.halfWidth().getAsDouble())
                                                : "?"))
                                .orElse("")));
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
        String from = String.format(Locale.ROOT, "%.0f", low);
        return low == high ? from : from + "–" + String.format(Locale.ROOT, "%.0f", high);
    }
}

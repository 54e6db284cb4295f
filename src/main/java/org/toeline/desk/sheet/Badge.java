package org.toeline.desk.sheet;

import org.toeline.advice.Assessment;
import org.toeline.desk.text.Texts;
import org.toeline.language.Written;
import org.toeline.mark.Landmark;
import org.toeline.mark.View;
import org.toeline.posture.Posture;

/** How well a view is tied to the world, in a few plain words. */
final class Badge {

    private Badge() {}

    static String text(Assessment assessment, View view) {
        Posture posture = assessment.posture();
        var marks = assessment.sheet().view(view);
        if (assessment.advice().withheld().isPresent()) {
            return Texts.of("badge.withheld");
        }
        if (marks.isEmpty()
                || posture.camera(view).isEmpty()
                || !posture.hasBall()
                || !posture.has(Landmark.LEAD_SHOULDER)) {
            return Texts.of("badge.none");
        }
        double[] gradient = new double[posture.coordinates().size()];
        gradient[posture.coordinates().indexOf(Landmark.LEAD_SHOULDER)] = 1;
        String half =
                Written.number("%.1f", 196 * Math.sqrt(posture.uncertainty().variance(gradient)));
        int points = marks.get().floorMarks().size();
        return points > 0 ? Texts.of("badge.rods", points, half) : Texts.of("badge.guess", half);
    }
}

package org.toeline.desk.bodymap;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.toeline.desk.Contrast;
import org.toeline.desk.lesson.MarkOrder;
import org.toeline.desk.look.Look;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.FloorReference;
import org.toeline.mark.Landmark;
import org.toeline.mark.View;

/** Property: every landmark that a view asks for has a place of its own in that view's drawing. */
class FigureTest {

    /** A ring has a radius of 6.5; nearer than this, one hides the other. */
    private static final double LEAST_APART_PX = 8;

    private static final double RING_PX = 6.5;

    /** As WCAG 2.2 asks of what is drawn (1.4.11). */
    @ParameterizedTest
    @EnumSource(Look.Paper.class)
    void theClubIsSeenBeforeTheBody(Look.Paper paper) {
        Look before = Look.now();
        try {
            Look.choose(new Look(before.textPercent(), paper));
            assertThat(Contrast.of(BodyMap.ink(), BodyMap.body())).isGreaterThan(3);
            assertThat(Contrast.of(BodyMap.ink(), BodyMap.farBody())).isGreaterThan(3);
        } finally {
            Look.choose(before);
        }
    }

    @ParameterizedTest
    @EnumSource(View.class)
    void everyLandmarkHasAPlaceOfItsOwn(View view) {
        Figure figure = BodyMap.of(view);
        List<Landmark> landmarks = MarkOrder.landmarks(view);
        for (Landmark one : landmarks) {
            ImagePoint p = figure.at(one);
            assertThat(p.xPx()).as(one.id()).isBetween(RING_PX, BodyFigure.WIDTH - RING_PX);
            assertThat(p.yPx()).as(one.id()).isBetween(RING_PX, BodyFigure.HEIGHT - RING_PX);
            for (Landmark other : landmarks) {
                if (one != other) {
                    assertThat(apart(p, figure.at(other)))
                            .as(one.id() + " and " + other.id())
                            .isGreaterThan(LEAST_APART_PX);
                }
            }
        }
    }

    /** Seen along the target line from behind the ball, a right-handed player stands on the left and faces right. */
    @Test
    void downTheLineIsSeenFromBehindTheBall() {
        Figure figure = BodyMap.of(View.DOWN_THE_LINE);
        assertThat(figure.at(Landmark.TRAIL_TOE).xPx())
                .isGreaterThan(figure.at(Landmark.TRAIL_HEEL).xPx())
                .isLessThan(figure.ball().xPx());
        // what is further away stands higher in the picture
        assertThat(figure.at(Landmark.LEAD_TOE).yPx())
                .isLessThan(figure.at(Landmark.TRAIL_TOE).yPx());
        ImagePoint target = figure.floor(new FloorReference("a", 0.5, 0));
        assertThat(target.yPx()).isLessThan(figure.ball().yPx());
        ImagePoint feet = figure.floor(new FloorReference("b", 0, 0.5));
        assertThat(feet.xPx()).isLessThan(figure.ball().xPx());
    }

    private static double apart(ImagePoint a, ImagePoint b) {
        return Math.hypot(a.xPx() - b.xPx(), a.yPx() - b.yPx());
    }
}

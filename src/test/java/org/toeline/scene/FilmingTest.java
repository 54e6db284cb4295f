package org.toeline.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.View;

/** What is drawn lies where the truth says, seen in small pictures. */
class FilmingTest {

    private static final int WIDTH = 640;
    private static final int HEIGHT = 360;
    private static Stage right;
    private static Stage left;

    @BeforeAll
    static void build() {
        right = new Stage(Scenarios.before());
        left = new Stage(Scenarios.leftHanded());
    }

    /** Property: the middle of the white pixels in the tee picture is the middle of the ball's outline. */
    @Test
    void theBallIsDrawnWhereTheTruthSays() {
        ballAt(Scenarios.before(), right);
        ballAt(Scenarios.leftHanded(), left);
    }

    private static void ballAt(Scenario scenario, Stage stage) {
        Picture p = new Filming(scenario, stage, View.TEE, WIDTH, HEIGHT).frame(stage.moves(Deviation.NONE), 0);
        Truth.Outline ball = Truth.ball(scenario, View.TEE);
        ImagePoint c = new ImagePoint(ball.centre().xPx() / 2, ball.centre().yPx() / 2);
        double r = ball.diameterPx() / 4;
        double inside = brightness(p, c, 0, 0.55 * r);
        double ring = brightness(p, c, 1.12 * r, 1.3 * r);
        assertThat(inside).isGreaterThan(ring + 30);
        // a displaced circle is less bright than the true one
        for (double[] d : new double[][] {{0.6, 0}, {-0.6, 0}}) {
            assertThat(brightness(p, c.plus(d[0] * r, d[1] * r), 0, 0.9 * r)).isLessThan(brightness(p, c, 0, 0.9 * r));
        }
    }

    private static double brightness(Picture p, ImagePoint c, double fromPx, double toPx) {
        double sum = 0;
        int n = 0;
        for (int y = 0; y < p.height(); y++) {
            for (int x = 0; x < p.width(); x++) {
                double d = Math.hypot(x + 0.5 - c.xPx(), y + 0.5 - c.yPx());
                if (d >= fromPx && d <= toPx) {
                    int i = 3 * (y * p.width() + x);
                    sum += (p.rgb()[i] & 255) + (p.rgb()[i + 1] & 255) + (p.rgb()[i + 2] & 255);
                    n++;
                }
            }
        }
        return sum / n;
    }

    /** Reference: the triangles enclose what the field encloses, here a ball of known volume. */
    @Test
    void surfacesAreClosedAndFaceOutwards() {
        Mesh ball = right.meshes().stream()
                .filter(m -> m.part().name().equals("ball"))
                .findFirst()
                .orElseThrow();
        double volume = 0;
        for (int i = 0; i < ball.triangles().length; i += 3) {
            Vec a = corner(ball, ball.triangles()[i]);
            Vec b = corner(ball, ball.triangles()[i + 1]);
            Vec c = corner(ball, ball.triangles()[i + 2]);
            volume += a.dot(b.cross(c)) / 6;
        }
        double wanted = Math.PI / 6 * Math.pow(ClubModel.BALL_M, 3);
        assertThat(volume).isCloseTo(wanted, within(0.01 * wanted));
    }

    private static Vec corner(Mesh m, int c) {
        return new Vec(m.at()[3 * c], m.at()[3 * c + 1], m.at()[3 * c + 2]);
    }
}

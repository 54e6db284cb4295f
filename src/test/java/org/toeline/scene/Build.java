package org.toeline.scene;

import org.toeline.geometry.Finite;

/**
 * The sizes of a player. Segment lengths follow from the stature by the usual shares of it (Drillis and Contini 1966,
 * from memory); breadths are given.
 *
 * @param statureM        standing height
 * @param biacromialM     distance between the bony tips of the shoulders
 * @param bitrochantericM distance between the greater trochanters
 * @param shoeM           length of the shoe's sole
 * @param girth           thickness of trunk and limbs, 1 for a lean grown-up
 */
public record Build(double statureM, double biacromialM, double bitrochantericM, double shoeM, double girth) {

    public Build {
        Finite.requirePositive(statureM, "statureM");
        Finite.requirePositive(biacromialM, "biacromialM");
        Finite.requirePositive(bitrochantericM, "bitrochantericM");
        Finite.requirePositive(shoeM, "shoeM");
        Finite.requirePositive(girth, "girth");
    }

    double upperArmM() {
        return 0.186 * statureM;
    }

    double forearmM() {
        return 0.146 * statureM;
    }

    double thighM() {
        return 0.243 * statureM;
    }

    /**
     * Half the thickness of the thigh in its trousers.
     *
     * @param down share of the way from hip to knee
     */
    double thighRadiusM(double down) {
        double top = 0.094 * scale() * girth();
        return top + down * (0.067 * scale() - top);
    }

    double shankM() {
        return 0.243 * statureM;
    }

    /** Middle of the hips to middle of the shoulder tips. */
    double trunkM() {
        return 0.295 * statureM;
    }

    /** Size against a player of 1.78 m, for everything that just scales. */
    double scale() {
        return statureM / 1.78;
    }
}

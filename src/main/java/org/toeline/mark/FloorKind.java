package org.toeline.mark;

import java.util.ArrayList;
import java.util.List;

/** What coaches have on the floor, as layouts to begin with: the places are for measuring and correcting. */
public enum FloorKind {
    /** Two rods of 122 cm: one along the target line, the other from its middle towards the feet. */
    RODS_AS_T("rods-t", 0.003) {
        @Override
        List<FloorReference> points() {
            return List.of(
                    new FloorReference("rod-near", -0.61, 0.15),
                    new FloorReference("rod-far", 0.61, 0.15),
                    new FloorReference("cross-ball", 0, 0.18),
                    new FloorReference("cross-feet", 0, 1.40));
        }
    },
    /** Two rods of 122 cm that meet in a corner behind the ball. */
    RODS_AS_L("rods-l", 0.003) {
        @Override
        List<FloorReference> points() {
            return List.of(
                    new FloorReference("corner", -0.61, 0.15),
                    new FloorReference("rod-far", 0.61, 0.15),
                    new FloorReference("cross-feet", -0.61, 1.37));
        }
    },
    /** A hitting mat of 150 by 150 cm, its sides along and across the target line. */
    MAT("mat", 0.005) {
        @Override
        List<FloorReference> points() {
            return List.of(
                    new FloorReference("mat-ball-trail", -0.75, 0),
                    new FloorReference("mat-ball-lead", 0.75, 0),
                    new FloorReference("mat-feet-trail", -0.75, 1.5),
                    new FloorReference("mat-feet-lead", 0.75, 1.5));
        }
    },
    /** A tape of a metre along the target line. */
    TAPE("tape", 0.002) {
        @Override
        List<FloorReference> points() {
            return List.of(new FloorReference("tape-trail", -0.5, 0.15), new FloorReference("tape-lead", 0.5, 0.15));
        }
    },
    /** The joints of tiles of 30 cm, four by five, along and across the target line. */
    TILES("tiles", 0.003) {
        @Override
        List<FloorReference> points() {
            List<FloorReference> joints = new ArrayList<>();
            for (int row = 0; row < 5; row++) {
                for (int column = 0; column < 4; column++) {
                    joints.add(new FloorReference(
                            "joint-" + (row + 1) + (char) ('a' + column), 0.3 * (column - 1.5), 0.3 * row));
                }
            }
            return joints;
        }
    };

    private final String id;
    private final double sigmaM;

    FloorKind(String id, double sigmaM) {
        this.id = id;
        this.sigmaM = sigmaM;
    }

    abstract List<FloorReference> points();

    public String id() {
        return id;
    }

    public FloorLayout layout() {
        return new FloorLayout(points(), sigmaM);
    }
}

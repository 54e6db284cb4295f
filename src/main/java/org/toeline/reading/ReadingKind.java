package org.toeline.reading;

import static org.toeline.mark.Landmark.*;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hipparchus.CalculusFieldElement;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.toeline.mark.Landmark;
import org.toeline.posture.Body;

/**
 * The readings, each one formula. Lengths in metres, angles in radians, shares as plain numbers; {@link #unit()} is the
 * unit a person reads. t, h and u are the coordinates along the target line, to the player's side, and up. To add a
 * reading, add a constant here, its words in the resource bundle and, if there is a recommendation, its range.
 */
public enum ReadingKind {

    /** (top of ball − top line of the soled head) / ball diameter; 1 = all of the ball stands above the crown. */
    BALL_ABOVE_CROWN("ball-above-crown", Unit.PERCENT, Ball.NEEDED, CROWN) {
        @Override
        public <T extends CalculusFieldElement<T>> T of(Body<T> b) {
            T top = b.ball().getZ().add(b.ballDiameter().multiply(0.5));
            return top.subtract(u(b, CROWN)).divide(b.ballDiameter());
        }
    },

    /** The underside of the ball above the ground; positive up. */
    TEE_HEIGHT("tee-height", Unit.MILLIMETRE, Ball.NEEDED) {
        @Override
        public <T extends CalculusFieldElement<T>> T of(Body<T> b) {
            return b.ball().getZ().subtract(b.ballDiameter().multiply(0.5));
        }
    },

    /** t(ball) − t(lead shoulder); positive with the ball nearer the target. */
    BALL_TO_LEAD_SHOULDER("ball-to-lead-shoulder", Unit.CENTIMETRE, Ball.NEEDED, LEAD_SHOULDER) {
        @Override
        public <T extends CalculusFieldElement<T>> T of(Body<T> b) {
            return b.ball().getX().subtract(t(b, LEAD_SHOULDER));
        }
    },

    /** (t(ball) − t(trail heel)) / (t(lead heel) − t(trail heel)); 0 at the trail heel, 1 at the lead heel. */
    BALL_IN_STANCE("ball-in-stance", Unit.PERCENT, Ball.NEEDED, LEAD_HEEL, TRAIL_HEEL) {
        @Override
        public <T extends CalculusFieldElement<T>> T of(Body<T> b) {
            T trail = t(b, TRAIL_HEEL);
            return b.ball().getX().subtract(trail).divide(t(b, LEAD_HEEL).subtract(trail));
        }
    },

    /** t(ball) − t(lead heel); positive with the ball nearer the target. */
    BALL_TO_LEAD_HEEL("ball-to-lead-heel", Unit.CENTIMETRE, Ball.NEEDED, LEAD_HEEL) {
        @Override
        public <T extends CalculusFieldElement<T>> T of(Body<T> b) {
            return b.ball().getX().subtract(t(b, LEAD_HEEL));
        }
    },

    /** t(lead heel) − t(lead shoulder); positive with the foot outside the shoulder, nearer the target. */
    LEAD_FOOT_OUTSIDE_SHOULDER(
            "lead-foot-outside-shoulder", Unit.CENTIMETRE, Ball.OF_NO_CONCERN, LEAD_HEEL, LEAD_SHOULDER) {
        @Override
        public <T extends CalculusFieldElement<T>> T of(Body<T> b) {
            return t(b, LEAD_HEEL).subtract(t(b, LEAD_SHOULDER));
        }
    },

    /** Horizontal distance between the heels. */
    STANCE_WIDTH("stance-width", Unit.CENTIMETRE, Ball.OF_NO_CONCERN, LEAD_HEEL, TRAIL_HEEL) {
        @Override
        public <T extends CalculusFieldElement<T>> T of(Body<T> b) {
            return level(span(b, TRAIL_HEEL, LEAD_HEEL));
        }
    },

    /** Horizontal distance between the heels over the distance between the bony tips of the shoulders. */
    STANCE_TO_SHOULDER_WIDTH(
            "stance-to-shoulder-width",
            Unit.RATIO,
            Ball.OF_NO_CONCERN,
            LEAD_HEEL,
            TRAIL_HEEL,
            LEAD_SHOULDER,
            TRAIL_SHOULDER) {
        @Override
        public <T extends CalculusFieldElement<T>> T of(Body<T> b) {
            return level(span(b, TRAIL_HEEL, LEAD_HEEL))
                    .divide(span(b, TRAIL_SHOULDER, LEAD_SHOULDER).getNorm());
        }
    },

    /** Heading of the toe line, trail to lead, from the target line; positive open. */
    FEET_TO_TARGET("feet-to-target", Unit.DEGREE, Ball.OF_NO_CONCERN, LEAD_TOE, TRAIL_TOE) {
        @Override
        public <T extends CalculusFieldElement<T>> T of(Body<T> b) {
            return heading(span(b, TRAIL_TOE, LEAD_TOE));
        }
    },

    /** Heading of the shoulder line, trail to lead, from the target line; positive open. */
    SHOULDERS_TO_TARGET("shoulders-to-target", Unit.DEGREE, Ball.OF_NO_CONCERN, LEAD_SHOULDER, TRAIL_SHOULDER) {
        @Override
        public <T extends CalculusFieldElement<T>> T of(Body<T> b) {
            return heading(span(b, TRAIL_SHOULDER, LEAD_SHOULDER));
        }
    },

    /** Heading of the shoulder line less heading of the toe line, in (−π, π]; positive open. */
    SHOULDERS_TO_FEET(
            "shoulders-to-feet", Unit.DEGREE, Ball.OF_NO_CONCERN, LEAD_SHOULDER, TRAIL_SHOULDER, LEAD_TOE, TRAIL_TOE) {
        @Override
        public <T extends CalculusFieldElement<T>> T of(Body<T> b) {
            FieldVector3D<T> s = span(b, TRAIL_SHOULDER, LEAD_SHOULDER);
            FieldVector3D<T> f = span(b, TRAIL_TOE, LEAD_TOE);
            T cross = s.getY().multiply(f.getX()).subtract(s.getX().multiply(f.getY()));
            T dot = s.getX().multiply(f.getX()).add(s.getY().multiply(f.getY()));
            return cross.atan2(dot);
        }
    },

    /** Elevation of the shoulder line, trail to lead; positive with the lead shoulder higher. */
    SHOULDER_TILT("shoulder-tilt", Unit.DEGREE, Ball.OF_NO_CONCERN, LEAD_SHOULDER, TRAIL_SHOULDER) {
        @Override
        public <T extends CalculusFieldElement<T>> T of(Body<T> b) {
            FieldVector3D<T> s = span(b, TRAIL_SHOULDER, LEAD_SHOULDER);
            return s.getZ().atan2(level(s));
        }
    },

    /** u(lead wrist) − u(trail wrist); positive with the trail hand lower. */
    TRAIL_HAND_LOWER("trail-hand-lower", Unit.CENTIMETRE, Ball.OF_NO_CONCERN, LEAD_WRIST, TRAIL_WRIST) {
        @Override
        public <T extends CalculusFieldElement<T>> T of(Body<T> b) {
            return u(b, LEAD_WRIST).subtract(u(b, TRAIL_WRIST));
        }
    },

    /** Middle of the hips to middle of the shoulders, against the vertical, in the t–u plane; positive away from the
     * target. */
    SIDE_BEND("side-bend", Unit.DEGREE, Ball.OF_NO_CONCERN, LEAD_HIP, TRAIL_HIP, LEAD_SHOULDER, TRAIL_SHOULDER) {
        @Override
        public <T extends CalculusFieldElement<T>> T of(Body<T> b) {
            FieldVector3D<T> spine = spine(b);
            return spine.getX().negate().atan2(spine.getZ());
        }
    },

    /** t(head centre) − t(ball); negative behind the ball. */
    HEAD_TO_BALL("head-to-ball", Unit.CENTIMETRE, Ball.NEEDED, HEAD_CENTRE) {
        @Override
        public <T extends CalculusFieldElement<T>> T of(Body<T> b) {
            return t(b, HEAD_CENTRE).subtract(b.ball().getX());
        }
    },

    /** Club head to grip end, against the vertical, in the t–u plane; positive with the grip nearer the target. */
    SHAFT_LEAN("shaft-lean", Unit.DEGREE, Ball.OF_NO_CONCERN, CLUB_HEAD, GRIP_END) {
        @Override
        public <T extends CalculusFieldElement<T>> T of(Body<T> b) {
            FieldVector3D<T> shaft = span(b, CLUB_HEAD, GRIP_END);
            return shaft.getX().atan2(shaft.getZ());
        }
    },

    /** Middle of the hips to middle of the shoulders, against the vertical, in the h–u plane; positive towards the
     * ball. */
    FORWARD_BEND("forward-bend", Unit.DEGREE, Ball.OF_NO_CONCERN, LEAD_HIP, TRAIL_HIP, LEAD_SHOULDER, TRAIL_SHOULDER) {
        @Override
        public <T extends CalculusFieldElement<T>> T of(Body<T> b) {
            FieldVector3D<T> spine = spine(b);
            return spine.getY().negate().atan2(spine.getZ());
        }
    },

    /** 180° less the angle hip–knee–ankle of the trail leg; 0 straight, positive bent. */
    KNEE_FLEX("knee-flex", Unit.DEGREE, Ball.OF_NO_CONCERN, TRAIL_HIP, TRAIL_KNEE, TRAIL_ANKLE) {
        @Override
        public <T extends CalculusFieldElement<T>> T of(Body<T> b) {
            FieldVector3D<T> thigh = span(b, TRAIL_HIP, TRAIL_KNEE);
            FieldVector3D<T> shank = span(b, TRAIL_KNEE, TRAIL_ANKLE);
            return thigh.crossProduct(shank).getNorm().atan2(thigh.dotProduct(shank));
        }
    },

    /** h of the toe line where it passes the ball. */
    BALL_DISTANCE("ball-distance", Unit.CENTIMETRE, Ball.NEEDED, LEAD_TOE, TRAIL_TOE) {
        @Override
        public <T extends CalculusFieldElement<T>> T of(Body<T> b) {
            FieldVector3D<T> line = span(b, TRAIL_TOE, LEAD_TOE);
            FieldVector3D<T> toBall = b.ball().subtract(b.at(TRAIL_TOE));
            T atBall = line.getY().multiply(toBall.getX()).divide(line.getX());
            return atBall.subtract(toBall.getY());
        }
    },

    /**
     * Level from the end of the grip to the front of the trail thigh, across the target line; positive with the hands before
     * the thigh. The thigh is taken for a rod from hip to knee, as thick as a grown-up's usually is a third of the way down:
     * half of that is 9 cm, give or take 1 (from the thigh circumferences of ANSUR II, 2012, from memory: 62.5 cm with a
     * standard deviation of 5.8 at the thickest).
     */
    HANDS_TO_BODY("hands-to-body", Unit.CENTIMETRE, Ball.OF_NO_CONCERN, GRIP_END, TRAIL_HIP, TRAIL_KNEE) {
        private static final double HALF_THIGH_M = 0.09;
        private static final double HALF_THIGH_SIGMA_M = 0.01;

        @Override
        public <T extends CalculusFieldElement<T>> T of(Body<T> b) {
            FieldVector3D<T> thigh = span(b, TRAIL_HIP, TRAIL_KNEE);
            FieldVector3D<T> toGrip = span(b, TRAIL_HIP, GRIP_END);
            T level = thigh.getY().multiply(toGrip.getZ()).divide(thigh.getZ()).subtract(toGrip.getY());
            T lengthening = thigh.getY().hypot(thigh.getZ()).divide(thigh.getZ().abs());
            return level.subtract(lengthening.multiply(HALF_THIGH_M));
        }

        @Override
        public double ownSigma() {
            return HALF_THIGH_SIGMA_M;
        }
    },

    /** Heading of the lead foot, heel to toe, from square to the target line; positive turned out, to the target. */
    LEAD_FOOT_FLARE("lead-foot-flare", Unit.DEGREE, Ball.OF_NO_CONCERN, LEAD_HEEL, LEAD_TOE) {
        @Override
        public <T extends CalculusFieldElement<T>> T of(Body<T> b) {
            FieldVector3D<T> foot = span(b, LEAD_HEEL, LEAD_TOE);
            return foot.getX().atan2(foot.getY().negate());
        }
    },

    /** Heading of the trail foot, heel to toe, from square to the target line; positive turned out, from the target. */
    TRAIL_FOOT_FLARE("trail-foot-flare", Unit.DEGREE, Ball.OF_NO_CONCERN, TRAIL_HEEL, TRAIL_TOE) {
        @Override
        public <T extends CalculusFieldElement<T>> T of(Body<T> b) {
            FieldVector3D<T> foot = span(b, TRAIL_HEEL, TRAIL_TOE);
            return foot.getX().negate().atan2(foot.getY().negate());
        }
    };

    /** Whether a reading speaks of the ball. */
    private enum Ball {
        NEEDED,
        OF_NO_CONCERN
    }

    private final String id;
    private final Unit unit;
    private final Ball ball;
    private final Set<Landmark> landmarks;

    ReadingKind(String id, Unit unit, Ball ball, Landmark... landmarks) {
        this.id = id;
        this.unit = unit;
        this.ball = ball;
        EnumSet<Landmark> all = EnumSet.noneOf(Landmark.class);
        all.addAll(List.of(landmarks));
        this.landmarks = java.util.Collections.unmodifiableSet(all);
    }

    /** The reading's formula, in metres, radians or a plain number. */
    public abstract <T extends CalculusFieldElement<T>> T of(Body<T> body);

    /** Standard deviation of what the formula itself supposes of bodies and no mark tells; inside units, usually 0. */
    public double ownSigma() {
        return 0;
    }

    /** The name in documents. */
    public String id() {
        return id;
    }

    public Unit unit() {
        return unit;
    }

    /** The landmarks the formula takes. */
    public Set<Landmark> landmarks() {
        return landmarks;
    }

    public boolean needsBall() {
        return ball == Ball.NEEDED;
    }

    public static Optional<ReadingKind> of(String id) {
        for (ReadingKind kind : values()) {
            if (kind.id.equals(id)) {
                return Optional.of(kind);
            }
        }
        return Optional.empty();
    }

    private static <T extends CalculusFieldElement<T>> T t(Body<T> b, Landmark landmark) {
        return b.at(landmark).getX();
    }

    private static <T extends CalculusFieldElement<T>> T u(Body<T> b, Landmark landmark) {
        return b.at(landmark).getZ();
    }

    private static <T extends CalculusFieldElement<T>> FieldVector3D<T> span(Body<T> b, Landmark from, Landmark to) {
        return b.at(to).subtract(b.at(from));
    }

    private static <T extends CalculusFieldElement<T>> FieldVector3D<T> spine(Body<T> b) {
        FieldVector3D<T> shoulders = b.at(LEAD_SHOULDER).add(b.at(TRAIL_SHOULDER));
        FieldVector3D<T> hips = b.at(LEAD_HIP).add(b.at(TRAIL_HIP));
        return shoulders.subtract(hips);
    }

    private static <T extends CalculusFieldElement<T>> T heading(FieldVector3D<T> v) {
        return v.getY().atan2(v.getX());
    }

    private static <T extends CalculusFieldElement<T>> T level(FieldVector3D<T> v) {
        return v.getX().hypot(v.getY());
    }
}

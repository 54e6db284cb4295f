package org.toeline.flight.table;

import java.util.Arrays;
import java.util.Optional;
import org.toeline.flight.Quantity;
import org.toeline.flight.ShotFigure;
import org.toeline.language.Sentences;

/** What a column of figures can mean: a figure of a shot, or back and side spin, which make up rate and axis. */
public enum Meaning {
    CLUB_SPEED(ShotFigure.CLUB_SPEED),
    BALL_SPEED(ShotFigure.BALL_SPEED),
    LAUNCH_ANGLE(ShotFigure.LAUNCH_ANGLE),
    LAUNCH_DIRECTION(ShotFigure.LAUNCH_DIRECTION),
    SPIN_RATE(ShotFigure.SPIN_RATE),
    SPIN_AXIS(ShotFigure.SPIN_AXIS),
    /** The part of the spin whose axis is level. */
    BACK_SPIN("back-spin", Quantity.SPIN),
    /** The part of the spin whose axis is upright, square to the flight; it bends the flight. */
    SIDE_SPIN("side-spin", Quantity.SPIN),
    CARRY(ShotFigure.CARRY),
    APEX(ShotFigure.APEX),
    SIDE(ShotFigure.SIDE),
    DESCENT_ANGLE(ShotFigure.DESCENT_ANGLE),
    HANG_TIME(ShotFigure.HANG_TIME),
    TOTAL(ShotFigure.TOTAL),
    ATTACK_ANGLE(ShotFigure.ATTACK_ANGLE),
    CLUB_PATH(ShotFigure.CLUB_PATH),
    FACE_TO_PATH(ShotFigure.FACE_TO_PATH),
    DYNAMIC_LOFT(ShotFigure.DYNAMIC_LOFT),
    SMASH_FACTOR(ShotFigure.SMASH_FACTOR);

    private final String id;
    private final Quantity quantity;
    private final Optional<ShotFigure> figure;

    Meaning(ShotFigure figure) {
        this(figure.id(), figure.quantity(), Optional.of(figure));
    }

    Meaning(String id, Quantity quantity) {
        this(id, quantity, Optional.empty());
    }

    Meaning(String id, Quantity quantity, Optional<ShotFigure> figure) {
        this.id = id;
        this.quantity = quantity;
        this.figure = figure;
    }

    /** The name in documents. */
    public String id() {
        return id;
    }

    /** The name in sentences, in the language of the person. */
    public String words() {
        return Sentences.of(Meaning.class).of("figure." + id);
    }

    public Quantity quantity() {
        return quantity;
    }

    /** The figure of a shot; none for back and side spin, which make two figures together. */
    public Optional<ShotFigure> figure() {
        return figure;
    }

    /** Whether its sign says on which side. */
    public boolean sided() {
        return this == SIDE_SPIN || figure().map(ShotFigure::sided).orElse(false);
    }

    /** Every figure of a shot is a meaning of a column, under the same name. */
    public static Meaning of(ShotFigure figure) {
        return valueOf(figure.name());
    }

    public static Optional<Meaning> of(String id) {
        return Arrays.stream(values()).filter(m -> m.id.equals(id)).findFirst();
    }
}

package org.toeline.handout;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.image.BufferedImage;
import java.util.Map;
import java.util.Optional;
import org.toeline.geometry.Finite;
import org.toeline.geometry.ImagePoint;
import org.toeline.language.Sentences;
import org.toeline.mark.Landmark;
import org.toeline.mark.View;
import org.toeline.paint.WorldScale;
import org.toeline.posture.Posture;

/**
 * Whether and how the player's face is covered. What is covered is painted over in the pixels themselves: it is in no file
 * that leaves.
 */
public sealed interface FaceCover {

    // no constants: two threads that come to an interface and to one of its kinds at once would wait for each other

    /** The face is shown. */
    static FaceCover none() {
        return new Shown();
    }

    /** A cover over the head as it was marked. */
    static FaceCover headMark() {
        return new OverHead();
    }

    /** The face is shown. */
    record Shown() implements FaceCover {}

    /** A cover over the head as it was marked in any view. */
    record OverHead() implements FaceCover {}

    /** Ovals that were drawn; a view without one shows its picture as it is. */
    record Drawn(Map<View, Oval> ovals) implements FaceCover {

        public Drawn {
            ovals = Map.copyOf(ovals);
        }

        /** Why it covers nothing of the view shown, a clause: none is drawn for it, or its middle is outside the picture. */
        Optional<String> misses(View shown, BufferedImage picture, String name) {
            Sentences say = Sentences.of(FaceCover.class);
            Oval oval = ovals.get(shown);
            if (oval == null) {
                return Optional.of(say.of("face.elsewhere", name));
            }
            ImagePoint at = oval.centre();
            boolean inside =
                    at.xPx() >= 0 && at.yPx() >= 0 && at.xPx() <= picture.getWidth() && at.yPx() <= picture.getHeight();
            return inside
                    ? Optional.empty()
                    : Optional.of(say.of("face.outside", name, picture.getWidth(), picture.getHeight()));
        }
    }

    /** An upright oval in picture pixels, as shown; half axes above zero. */
    record Oval(ImagePoint centre, double halfWidthPx, double halfHeightPx) {

        public Oval {
            Finite.requirePositive(halfWidthPx, "halfWidthPx");
            Finite.requirePositive(halfHeightPx, "halfHeightPx");
        }

        Ellipse2D shape() {
            return new Ellipse2D.Double(
                    centre.xPx() - halfWidthPx, centre.yPx() - halfHeightPx, 2 * halfWidthPx, 2 * halfHeightPx);
        }
    }

    /** A head with its cap, from its middle to its top, and some more for what the mark may be off. */
    double HEAD_REACH_M = 0.17;

    /** Whether the cover asked for can be painted on this view's picture. */
    default boolean isPossible(Posture posture, View view) {
        return !(this instanceof OverHead) || overHead(posture, view).isPresent();
    }

    /**
     * The oval to paint over on a view's picture; empty for none.
     *
     * @throws IllegalArgumentException when a cover was asked for and nobody knows where the head is
     */
    default Optional<Oval> oval(Posture posture, View view) {
        if (this instanceof Drawn drawn) {
            return Optional.ofNullable(drawn.ovals().get(view));
        }
        if (this instanceof Shown) {
            return Optional.empty();
        }
        return Optional.of(overHead(posture, view)
                .orElseThrow(() -> new IllegalArgumentException(
                        Sentences.of(FaceCover.class).of("face.no-head", view.id()))));
    }

    private static Optional<Oval> overHead(Posture posture, View view) {
        if (!posture.has(Landmark.HEAD_CENTRE)) {
            return Optional.empty();
        }
        return posture.seen(view, posture.at(Landmark.HEAD_CENTRE))
                .flatMap(centre -> WorldScale.pxPerMetre(posture, view, posture.at(Landmark.HEAD_CENTRE))
                        .map(s -> new Oval(centre, HEAD_REACH_M * s, HEAD_REACH_M * s)));
    }

    /** The picture with what is covered painted over; the picture given stays as it is. */
    default BufferedImage on(BufferedImage picture, Posture posture, View view) {
        Optional<Oval> oval = oval(posture, view);
        if (oval.isEmpty()) {
            return picture;
        }
        BufferedImage covered = new BufferedImage(picture.getWidth(), picture.getHeight(), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = covered.createGraphics();
        try {
            g.drawImage(picture, 0, 0, null);
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            g.setColor(new Color(0x8A8A8A));
            g.fill(oval.get().shape());
        } finally {
            g.dispose();
        }
        return covered;
    }
}

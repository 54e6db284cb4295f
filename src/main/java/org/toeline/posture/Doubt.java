package org.toeline.posture;

import org.toeline.mark.View;

/**
 * A mark that does not fit the rest.
 *
 * @param mark  the landmark's or the floor point's name in documents, or {@code ball}
 * @param offPx how far the mark lies from where the rest puts it, pixels
 */
public record Doubt(View view, String mark, double offPx) {}

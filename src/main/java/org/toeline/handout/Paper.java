package org.toeline.handout;

import java.util.Locale;
import java.util.Set;

/** The paper a page is printed on, upright; sizes in points of 1/72 inch. */
public enum Paper {
    /** ISO 216: 210 × 297 mm. */
    A4(595.28f, 841.89f),
    /** 8½ × 11 in. */
    LETTER(612, 792);

    private static final Set<String> LETTER_COUNTRIES = Set.of("US", "CA", "MX", "PH", "CL", "CO", "VE");

    private final float widthPt;
    private final float heightPt;

    Paper(float widthPt, float heightPt) {
        this.widthPt = widthPt;
        this.heightPt = heightPt;
    }

    public float widthPt() {
        return widthPt;
    }

    public float heightPt() {
        return heightPt;
    }

    /** What printers of a country hold (common practice). */
    public static Paper usual(Locale locale) {
        return LETTER_COUNTRIES.contains(locale.getCountry()) ? LETTER : A4;
    }
}

package org.toeline.scene;

/** The colour of a surface, at a place of the player as he stands at address. */
interface Paint {

    /** Sets the swatch for a place; {@code finenessM} is the size of a pixel there, for soft edges. */
    void at(double x, double y, double z, double finenessM, Swatch swatch);

    static Paint plain(int rgb) {
        return (x, y, z, fine, swatch) -> swatch.colour(rgb);
    }

    static Paint shiny(int rgb, double gloss) {
        return (x, y, z, fine, swatch) -> {
            swatch.colour(rgb);
            swatch.gloss = gloss;
        };
    }
}

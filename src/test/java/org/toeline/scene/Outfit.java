package org.toeline.scene;

/** What the player wears, as colours (0xRRGGBB), and one choice of clothing. */
public record Outfit(
        int skin, int hair, int shirt, int collar, int trousers, int belt, int shoe, int sole, int cap, Legs legs) {

    /** Long trousers or shorts. */
    public enum Legs {
        LONG,
        SHORT
    }

    static final int GLOVE = 0xE9E9E4;
    static final int SOCK = 0xE4E3DE;
}

package org.toeline.desk;

/** How the toolkit draws; to be said before it starts. */
public final class Drawing {

    /** Whether backgrounds are drawn anew, not stretched from pictures of them that the toolkit keeps. */
    private static final String ANEW = "prism.disableRegionCaching";

    private Drawing() {}

    /**
     * Without a graphics processor, stretching the kept picture of a large background over it takes several times as long as
     * filling it: most of what was drawn, docs/performance.md. What is said on the command line counts.
     */
    public static void choose() {
        if (System.getProperty(ANEW) == null) {
            System.setProperty(ANEW, "true");
        }
    }
}

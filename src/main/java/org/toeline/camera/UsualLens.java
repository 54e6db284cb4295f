package org.toeline.camera;

/**
 * The lenses of phones as they are sold, for who has calibrated none: focal length over the longer side of the picture,
 * landscape or portrait. A main camera is some 24 to 28 mm on a frame 36 mm wide, a wide one 13 to 14 mm, a far one twice
 * the main; video is cropped a little, strongly steadied video more. From memory of what makers state.
 */
public enum UsualLens {
    MAIN("main", 0.76, 0.10),
    /** The main camera with its strong steadying on. */
    STEADIED("steadied", 0.90, 0.10),
    WIDE("wide", 0.41, 0.10),
    FAR("far", 1.50, 0.10);

    private final String id;
    private final double share;
    private final double logSigma;

    UsualLens(String id, double share, double logSigma) {
        this.id = id;
        this.share = share;
        this.logSigma = logSigma;
    }

    public String id() {
        return id;
    }

    /** Focal length for a picture of that size, pixels. */
    public double focalPx(int widthPx, int heightPx) {
        return share * Math.max(widthPx, heightPx);
    }

    /** Its standard deviation over it. */
    public double logSigma() {
        return logSigma;
    }
}

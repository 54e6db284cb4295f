package org.toeline.scene;

/** The bay's light, and the step from linear light to the picture's values. */
final class Light {

    /** To the main light: above, from behind the cameras. */
    static final Vec KEY = new Vec(-0.42, -0.52, 0.80).unit();

    static final double KEY_STRENGTH = 0.78;
    static final double SKY_STRENGTH = 0.50;

    private static final float[] LINEAR = new float[256];
    private static final float[] SHOWN = new float[4098];

    static {
        for (int i = 0; i < 256; i++) {
            double v = i / 255.0;
            LINEAR[i] = (float) (v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4));
        }
        for (int i = 0; i <= 4097; i++) {
            double v = i / 4096.0;
            double s = v <= 0.0031308 ? 12.92 * v : 1.055 * Math.pow(v, 1 / 2.4) - 0.055;
            SHOWN[i] = (float) (255 * Math.min(1, s));
        }
    }

    private Light() {}

    static double linear(int shown) {
        return LINEAR[shown];
    }

    /** The picture's value, 0 to 255, of a linear light of 0 to 1 and above; bright values roll off. */
    static double shown(double linear) {
        double v = linear < 0.7 ? linear : 0.7 + 0.3 * (1 - Math.exp(-(linear - 0.7) / 0.3));
        double at = Math.max(0, Math.min(1, v)) * 4096;
        int i = (int) at;
        return SHOWN[i] + (SHOWN[i + 1] - SHOWN[i]) * (at - i);
    }
}

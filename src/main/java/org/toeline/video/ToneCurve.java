package org.toeline.video;

/**
 * Shows high dynamic range on an ordinary screen. A code value becomes light (SMPTE ST 2084 or ARIB STD-B67, that is
 * ITU-R BT.2100-2, tables 4 and 5); what is brighter than an ordinary screen's white is bent down by the curve of ITU-R
 * BT.2390-11, 5.4.1, from a peak of 1000 cd/m² to the 203 cd/m² of reference white (BT.2408-7, 2.1), channel by channel;
 * then the primaries of BT.2020 become those of BT.709 (BT.2087-0) and the light becomes an sRGB value (IEC 61966-2-1).
 * Light below about 90 cd/m² is left as it is, reference white comes out at about nine tenths.
 *
 * <p>The system gamma of hybrid log-gamma is applied to each channel and not to luminance: exact for greys, colours a
 * little stronger. Immutable.
 */
final class ToneCurve {

    /** How the code values of a high-dynamic-range stream are meant. */
    enum Coding {
        PERCEPTUAL_QUANTIZER,
        HYBRID_LOG_GAMMA
    }

    private static final double PEAK_NITS = 1000;
    private static final double WHITE_NITS = 203;
    private static final double HLG_SYSTEM_GAMMA = 1.2;
    private static final int CODES = 1024;
    /** Light in 14 bits: below that the darkest sRGB values would be skipped. */
    private static final int FULL = (1 << 14) - 1;
    /** BT.2087-0, annex 2: from BT.2020 to BT.709, a row for each of red, green and blue. */
    private static final double[][] TO_709 = {
        {1.660491, -0.587641, -0.072850}, {-0.124550, 1.132900, -0.008349}, {-0.018151, -0.100579, 1.118730}
    };
    /** Three sums side by side in one long; each is kept above zero by what is added to it beforehand. */
    private static final int FIELD_BITS = 21;

    private static final int FIELD = (1 << FIELD_BITS) - 1;
    private static final int RAISED = FULL + 1;
    private static final byte[] SHOWN = shown();

    /** By channel and code: what it gives to the light of red, green and blue, in three fields. */
    private final long[][] light = new long[3][CODES];

    ToneCurve(Coding coding) {
        for (int code = 0; code < CODES; code++) {
            double value = code / (double) (CODES - 1);
            double nits = coding == Coding.PERCEPTUAL_QUANTIZER ? pqToNits(value) : hlgToNits(value);
            double share = FULL * Math.min(1, bent(nits) / WHITE_NITS);
            for (int from = 0; from < 3; from++) {
                for (int to = 0; to < 3; to++) {
                    long raised = Math.round(TO_709[to][from] * share) + (from == 0 ? RAISED : 0);
                    light[from][code] += raised << to * FIELD_BITS;
                }
            }
        }
    }

    /** A row of ten bits a channel (red highest) to opaque pixels, in place. */
    void apply(int[] pixels, int from, int count) {
        long[] red = light[0];
        long[] green = light[1];
        long[] blue = light[2];
        byte[] shown = SHOWN;
        for (int i = from; i < from + count; i++) {
            int p = pixels[i];
            long sum = red[p >>> 20 & 1023] + green[p >>> 10 & 1023] + blue[p & 1023];
            pixels[i] = 0xFF000000
                    | (shown[(int) sum & FIELD] & 255) << 16
                    | (shown[(int) (sum >>> FIELD_BITS) & FIELD] & 255) << 8
                    | shown[(int) (sum >>> 2 * FIELD_BITS)] & 255;
        }
    }

    /** By raised light: the sRGB value, its ends held from below black to the most that a matrix can make. */
    private static byte[] shown() {
        byte[] all = new byte[4 * RAISED];
        for (int i = 0; i < all.length; i++) {
            double v = Math.max(0, Math.min(1, (i - RAISED) / (double) FULL));
            all[i] = (byte) Math.round(255 * (v <= 0.0031308 ? 12.92 * v : 1.055 * Math.pow(v, 1 / 2.4) - 0.055));
        }
        return all;
    }

    /** BT.2100-2, table 4. */
    private static double pqToNits(double value) {
        double p = Math.pow(value, 32 / 2523.0);
        return 10_000 * Math.pow(Math.max(0, p - 3424 / 4096.0) / (2413 / 128.0 - 2392 / 128.0 * p), 16384 / 2610.0);
    }

    private static double nitsToPq(double nits) {
        double y = Math.pow(nits / 10_000, 2610 / 16384.0);
        return Math.pow((3424 / 4096.0 + 2413 / 128.0 * y) / (1 + 2392 / 128.0 * y), 2523 / 32.0);
    }

    /** BT.2100-2, table 5, on a screen of 1000 cd/m² without a raised black. */
    private static double hlgToNits(double value) {
        double a = 0.17883277;
        double b = 1 - 4 * a;
        double c = 0.5 - a * Math.log(4 * a);
        double scene = value <= 0.5 ? value * value / 3 : (Math.exp((value - c) / a) + b) / 12;
        return PEAK_NITS * Math.pow(scene, HLG_SYSTEM_GAMMA);
    }

    /** BT.2390-11, 5.4.1, with black at nothing: straight up to a knee, then a Hermite spline to the top. */
    private static double bent(double nits) {
        double source = nitsToPq(PEAK_NITS);
        double top = nitsToPq(WHITE_NITS) / source;
        double value = Math.min(1, nitsToPq(nits) / source);
        double knee = 1.5 * top - 0.5;
        if (value <= knee) {
            return nits;
        }
        double t = (value - knee) / (1 - knee);
        double t2 = t * t;
        double t3 = t2 * t;
        double to = (2 * t3 - 3 * t2 + 1) * knee + (t3 - 2 * t2 + t) * (1 - knee) + (3 * t2 - 2 * t3) * top;
        return pqToNits(to * source);
    }
}

package org.toeline.assist;

import java.util.Arrays;
import org.toeline.video.Frame;

/**
 * How much brighter a dark picture is made before anything is looked for in it: all that is looked for is asked to stand off by grey
 * levels that a lit bay gives. Nothing moves by it, and light encoded by a power stays encoded so.
 */
final class Exposure {

    /** All but so few pixels are darker than what counts as the picture's brightest: lamps and windows are small. */
    private static final double BRIGHTEST = 0.01;
    /** A picture whose brightest is as bright is left alone, grey levels. */
    private static final double LIT = 150;
    /** What the brightest of a darker one comes to, grey levels. */
    private static final double AIM = 220;
    /** More makes noise and steps of darkness of anything. */
    private static final double MOST = 4;

    private Exposure() {}

    /** The same picture, and its other frames as much brighter. */
    static Asked lit(Asked asked) {
        double gain = gain(asked.frame());
        return gain == 1
                ? asked
                : new Asked(
                        brighter(asked.frame(), gain),
                        asked.view(),
                        asked.handedness(),
                        asked.hints(),
                        asked.focalPx(),
                        asked.ball(),
                        asked.still().stream().map(f -> brighter(f, gain)).toList());
    }

    static double gain(Frame frame) {
        int[] levels = new int[256];
        for (int p : frame.argb()) {
            levels[grey(p)]++;
        }
        double left = BRIGHTEST * frame.argb().length;
        int brightest = 255;
        while (brightest > 1 && (left -= levels[brightest]) > 0) {
            brightest--;
        }
        return brightest >= LIT ? 1 : Math.min(MOST, AIM / brightest);
    }

    private static int grey(int p) {
        return (54 * (p >> 16 & 255) + 183 * (p >> 8 & 255) + 19 * (p & 255)) >> 8;
    }

    private static Frame brighter(Frame frame, double gain) {
        int[] shown = new int[256];
        Arrays.setAll(shown, v -> (int) Math.min(255, Math.round(gain * v)));
        int[] argb = frame.argb().clone();
        for (int i = 0; i < argb.length; i++) {
            int p = argb[i];
            argb[i] = p & 0xff000000 | shown[p >> 16 & 255] << 16 | shown[p >> 8 & 255] << 8 | shown[p & 255];
        }
        return new Frame(frame.index(), frame.seconds(), frame.width(), frame.height(), argb);
    }
}

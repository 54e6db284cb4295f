package org.toeline.video;

import java.util.ArrayList;
import java.util.List;
import org.toeline.language.Sentences;

/**
 * What a clip is.
 *
 * @param width           width of the picture as shown (rotation applied), pixels
 * @param height          height of the picture as shown, pixels
 * @param rotation        by how much the stored picture is turned clockwise to be shown: 0, 90, 180 or 270 degrees
 * @param mirrored        whether the file asks for the stored picture to be mirrored, left to right, before it is turned
 * @param frames          how many frames are shown
 * @param startSeconds    time of the first frame shown
 * @param durationSeconds from the start of the first to the end of the last frame shown
 * @param missingSeconds  how much the file's header lists beyond the last frame that is there; 0 where nothing is missing
 * @param codec           FFmpeg's short name of the coding
 */
public record ClipInfo(
        int width,
        int height,
        int rotation,
        boolean mirrored,
        int frames,
        double startSeconds,
        double durationSeconds,
        double missingSeconds,
        String codec) {

    /** Frames a second on average. */
    public double rate() {
        return durationSeconds > 0 ? frames / durationSeconds : 0;
    }

    /** What a person should know before trusting the picture, a sentence each; usually none. */
    public List<String> remarks() {
        List<String> remarks = new ArrayList<>();
        if (mirrored) {
            remarks.add(Sentences.of(ClipInfo.class).of("clip.mirrored"));
        }
        if (missingSeconds > 0) {
            remarks.add(Sentences.of(ClipInfo.class).of("clip.cut-short", Math.rint(missingSeconds * 10) / 10));
        }
        return List.copyOf(remarks);
    }
}

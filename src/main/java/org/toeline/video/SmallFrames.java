package org.toeline.video;

import org.bytedeco.ffmpeg.avutil.AVFrame;

/**
 * A clip's frames one after the other as small upright pictures, as they come from a reader of its own. For looking, not for
 * marking. One thread.
 */
final class SmallFrames implements AutoCloseable {

    private final Clip clip;
    private final ClipReader reader;
    private final PictureConverter converter;
    private final int widthPx;
    private final int heightPx;
    private long from = Long.MIN_VALUE;

    /** @param longerPx the longer side of the pictures at most, even */
    SmallFrames(Clip clip, int longerPx) throws ClipException {
        this.clip = clip;
        int width = clip.info().width();
        int height = clip.info().height();
        double scale = Math.min(1, (double) longerPx / Math.max(width, height));
        // colours are kept for two by two pixels
        this.widthPx = Math.max(2, 2 * (int) Math.round(width * scale / 2));
        this.heightPx = Math.max(2, 2 * (int) Math.round(height * scale / 2));
        boolean turned = clip.orientation().onItsSide();
        this.converter = new PictureConverter(
                clip.file().toString(), turned ? heightPx : widthPx, turned ? widthPx : heightPx, clip.orientation());
        this.reader = clip.another();
    }

    int widthPx() {
        return widthPx;
    }

    int heightPx() {
        return heightPx;
    }

    /** To the key frame at or before a frame, which comes next. */
    void seek(int frame) {
        from = clip.keyTime(frame);
        reader.seek(from);
    }

    /**
     * The next frame's place in the clip, or −1 at the end.
     *
     * @param pixels as many as the picture has
     */
    int next(int[] pixels) throws ClipException {
        for (AVFrame frame = reader.next(Long.MIN_VALUE); frame != null; frame = reader.next(Long.MIN_VALUE)) {
            int place = ClipReader.time(frame) < from ? -1 : clip.place(ClipReader.time(frame));
            if (place >= 0) {
                converter.convert(frame, pixels);
                return place;
            }
        }
        return -1;
    }

    @Override
    public void close() {
        converter.close();
        reader.close();
    }
}

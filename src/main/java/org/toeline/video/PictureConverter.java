package org.toeline.video;

import static org.bytedeco.ffmpeg.global.avutil.AVCOL_RANGE_JPEG;
import static org.bytedeco.ffmpeg.global.avutil.AVCOL_SPC_BT2020_NCL;
import static org.bytedeco.ffmpeg.global.avutil.AVCOL_SPC_BT470BG;
import static org.bytedeco.ffmpeg.global.avutil.AVCOL_SPC_BT709;
import static org.bytedeco.ffmpeg.global.avutil.AVCOL_SPC_SMPTE170M;
import static org.bytedeco.ffmpeg.global.avutil.AV_PIX_FMT_BGRA;
import static org.bytedeco.ffmpeg.global.avutil.AV_PIX_FMT_YUVJ420P;
import static org.bytedeco.ffmpeg.global.avutil.AV_PIX_FMT_YUVJ422P;
import static org.bytedeco.ffmpeg.global.avutil.AV_PIX_FMT_YUVJ444P;
import static org.bytedeco.ffmpeg.global.swscale.SWS_BILINEAR;
import static org.bytedeco.ffmpeg.global.swscale.SWS_CS_BT2020;
import static org.bytedeco.ffmpeg.global.swscale.SWS_CS_ITU601;
import static org.bytedeco.ffmpeg.global.swscale.SWS_CS_ITU709;
import static org.bytedeco.ffmpeg.global.swscale.sws_freeContext;
import static org.bytedeco.ffmpeg.global.swscale.sws_getCachedContext;
import static org.bytedeco.ffmpeg.global.swscale.sws_getCoefficients;
import static org.bytedeco.ffmpeg.global.swscale.sws_scale;
import static org.bytedeco.ffmpeg.global.swscale.sws_setColorspaceDetails;

import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.ffmpeg.swscale.SwsContext;
import org.bytedeco.javacpp.DoublePointer;
import org.bytedeco.javacpp.IntPointer;
import org.bytedeco.javacpp.Pointer;
import org.bytedeco.javacpp.PointerPointer;
import org.jspecify.annotations.Nullable;

/**
 * Turns decoded frames into upright pictures of square pixels. The colour matrix and range are those the stream states;
 * where it states none, BT.709 from 720 lines on and BT.601 below.
 */
final class PictureConverter implements AutoCloseable {

    private final int shownWidth;
    private final int shownHeight;
    private final Orientation orientation;
    private final int stride;
    private final IntPointer pixels;
    private final PointerPointer<Pointer> planes = new PointerPointer<>(1);
    private final IntPointer strides = new IntPointer(1);
    private @Nullable SwsContext context;

    /** @param width width of the picture before it is turned, pixels made square */
    PictureConverter(int width, int height, Orientation orientation) {
        this.orientation = orientation;
        this.shownWidth = width;
        this.shownHeight = height;
        // the converter writes whole vectors: rows are padded to 64 bytes, and so is the end
        this.stride = (width + 15) / 16 * 16;
        this.pixels = new IntPointer((long) stride * height + 16);
        strides.put(0, 4 * stride);
        planes.put(0, pixels);
    }

    int[] convert(AVFrame frame) throws ClipException {
        context = sws_getCachedContext(context, frame.width(), frame.height(), frame.format(), shownWidth, shownHeight,
                AV_PIX_FMT_BGRA, SWS_BILINEAR, null, null, (DoublePointer) null);
        if (context == null) {
            throw new ClipException("the colours of this clip cannot be converted");
        }
        IntPointer matrix = sws_getCoefficients(matrix(frame));
        sws_setColorspaceDetails(context, matrix, full(frame) ? 1 : 0, matrix, 1, 0, 1 << 16, 1 << 16);
        pixels.position(0);
        sws_scale(context, frame.data(), frame.linesize(), 0, frame.height(), planes, strides);
        int[] out = new int[shownWidth * shownHeight];
        for (int y = 0; y < shownHeight; y++) {
            pixels.position((long) y * stride).get(out, y * shownWidth, shownWidth);
        }
        return orientation.applied(out, shownWidth, shownHeight);
    }

    private static boolean full(AVFrame frame) {
        int format = frame.format();
        return frame.color_range() == AVCOL_RANGE_JPEG || format == AV_PIX_FMT_YUVJ420P
                || format == AV_PIX_FMT_YUVJ422P || format == AV_PIX_FMT_YUVJ444P;
    }

    private static int matrix(AVFrame frame) {
        int stated = frame.colorspace();
        if (stated == AVCOL_SPC_BT709) {
            return SWS_CS_ITU709;
        }
        if (stated == AVCOL_SPC_BT470BG || stated == AVCOL_SPC_SMPTE170M) {
            return SWS_CS_ITU601;
        }
        if (stated == AVCOL_SPC_BT2020_NCL) {
            return SWS_CS_BT2020;
        }
        return frame.height() >= 720 ? SWS_CS_ITU709 : SWS_CS_ITU601;
    }

    @Override
    public void close() {
        if (context != null) {
            sws_freeContext(context);
            context = null;
        }
        pixels.position(0);
        pixels.close();
        planes.close();
        strides.close();
    }
}

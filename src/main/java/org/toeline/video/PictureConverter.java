package org.toeline.video;

import static org.bytedeco.ffmpeg.global.avutil.*;
import static org.bytedeco.ffmpeg.global.swscale.*;

import java.nio.ByteOrder;
import java.nio.IntBuffer;
import java.util.Optional;
import java.util.stream.IntStream;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.ffmpeg.swscale.SwsContext;
import org.bytedeco.javacpp.BytePointer;
import org.bytedeco.javacpp.IntPointer;
import org.jspecify.annotations.Nullable;
import org.toeline.language.Sentences;

/**
 * Turns decoded frames into upright pictures of square pixels. The colour matrix and range are those the stream states;
 * where it states none, BT.709 from 720 lines on and BT.601 below. High dynamic range goes through a {@link ToneCurve}.
 * One thread at a time.
 */
final class PictureConverter implements AutoCloseable {

    private static final int THREADS = Math.min(4, Runtime.getRuntime().availableProcessors());
    /** Below that, handing the work to other threads costs more than it saves. */
    private static final long LARGE_PIXELS = 4_000_000;

    private static final int ONE = 1 << 16;

    /** What a conversion is made for; another of these needs another conversion. */
    private record Source(
            int width, int height, int format, int matrix, boolean full, Optional<ToneCurve.Coding> tone) {

        static Source of(AVFrame frame) {
            return new Source(
                    frame.width(), frame.height(), frame.format(), matrixOf(frame), fullOf(frame), toneOf(frame));
        }
    }

    private final String name;
    private final int width;
    private final int height;
    private final Orientation orientation;
    private @Nullable Source source;
    private @Nullable SwsContext context;
    private @Nullable AVFrame out;
    private @Nullable ToneCurve curve;
    /** The picture before it is turned, where it is. */
    private int @Nullable [] stored;

    /**
     * @param name  of the file, for messages
     * @param width width of the picture before it is turned, pixels made square
     */
    PictureConverter(String name, int width, int height, Orientation orientation) {
        this.name = name;
        this.width = width;
        this.height = height;
        this.orientation = orientation;
    }

    int[] convert(AVFrame frame) throws ClipException {
        int[] pixels = new int[width * height];
        convert(frame, pixels);
        return pixels;
    }

    /** Into an array of as many pixels as the picture has. */
    void convert(AVFrame frame, int[] pixels) throws ClipException {
        Source now = Source.of(frame);
        if (!now.equals(source)) {
            prepare(now);
        }
        if (sws_scale_frame(context, out, frame) < 0) {
            throw new ClipException(Sentences.of(PictureConverter.class).of("clip.colours", name));
        }
        boolean asStored = orientation.equals(Orientation.AS_STORED);
        if (!asStored && stored == null) {
            stored = new int[width * height];
        }
        int[] upright = asStored || stored == null ? pixels : stored;
        copy(upright);
        orientation.apply(upright, width, height, pixels);
    }

    private void prepare(Source wanted) throws ClipException {
        close();
        int format = wanted.tone.isPresent() ? AV_PIX_FMT_X2RGB10LE : AV_PIX_FMT_BGRA;
        SwsContext making = sws_alloc_context();
        context = making;
        boolean large = (long) width * height > LARGE_PIXELS;
        making.flags(SWS_BILINEAR)
                .threads(large ? THREADS : 1)
                .src_w(wanted.width)
                .src_h(wanted.height)
                .src_format(wanted.format)
                .dst_w(width)
                .dst_h(height)
                .dst_format(format);
        IntPointer matrix = sws_getCoefficients(wanted.matrix);
        int full = wanted.full ? 1 : 0;
        // stated before, so that the right converters are chosen, and after, since choosing them sets the defaults
        sws_setColorspaceDetails(making, matrix, full, matrix, 1, 0, ONE, ONE);
        if (sws_init_context(making, null, null) < 0) {
            close();
            throw new ClipException(Sentences.of(PictureConverter.class).of("clip.colours", name));
        }
        sws_setColorspaceDetails(making, matrix, full, matrix, 1, 0, ONE, ONE);
        AVFrame room = av_frame_alloc();
        out = room;
        room.width(width).height(height).format(format);
        if (av_frame_get_buffer(room, 64) < 0) {
            close();
            throw new ClipException(Sentences.of(PictureConverter.class).of("clip.memory", name, width, height));
        }
        curve = wanted.tone.map(ToneCurve::new).orElse(null);
        source = wanted;
    }

    /** Out of the native picture, and through the tone curve while a row is at hand. */
    private void copy(int[] pixels) {
        AVFrame from = java.util.Objects.requireNonNull(out);
        int stride = from.linesize(0) / Integer.BYTES;
        BytePointer data = new BytePointer(from.data(0)).capacity((long) from.linesize(0) * height);
        IntBuffer all = data.asByteBuffer().order(ByteOrder.LITTLE_ENDIAN).asIntBuffer();
        ToneCurve tone = curve;
        if (tone != null) {
            IntStream.range(0, height).parallel().forEach(y -> {
                all.get(y * stride, pixels, y * width, width);
                tone.apply(pixels, y * width, width);
            });
        } else if (stride == width) {
            all.get(pixels);
        } else {
            for (int y = 0; y < height; y++) {
                all.get(y * stride, pixels, y * width, width);
            }
        }
    }

    private static boolean fullOf(AVFrame frame) {
        int format = frame.format();
        return frame.color_range() == AVCOL_RANGE_JPEG
                || format == AV_PIX_FMT_YUVJ420P
                || format == AV_PIX_FMT_YUVJ422P
                || format == AV_PIX_FMT_YUVJ444P;
    }

    private static int matrixOf(AVFrame frame) {
        int stated = frame.colorspace();
        if (stated == AVCOL_SPC_BT2020_CL) {
            return SWS_CS_BT2020;
        }
        boolean known = stated == AVCOL_SPC_BT709
                || stated == AVCOL_SPC_FCC
                || stated == AVCOL_SPC_BT470BG
                || stated == AVCOL_SPC_SMPTE170M
                || stated == AVCOL_SPC_SMPTE240M
                || stated == AVCOL_SPC_BT2020_NCL;
        if (known) {
            return stated;
        }
        return frame.height() >= 720 ? SWS_CS_ITU709 : SWS_CS_ITU601;
    }

    private static Optional<ToneCurve.Coding> toneOf(AVFrame frame) {
        int transfer = frame.color_trc();
        if (transfer == AVCOL_TRC_SMPTE2084) {
            return Optional.of(ToneCurve.Coding.PERCEPTUAL_QUANTIZER);
        }
        return transfer == AVCOL_TRC_ARIB_STD_B67 ? Optional.of(ToneCurve.Coding.HYBRID_LOG_GAMMA) : Optional.empty();
    }

    @Override
    public void close() {
        source = null;
        if (context != null) {
            sws_freeContext(context);
            context = null;
        }
        if (out != null) {
            av_frame_free(out);
            out = null;
        }
    }
}

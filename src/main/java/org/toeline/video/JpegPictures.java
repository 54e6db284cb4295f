package org.toeline.video;

import static org.bytedeco.ffmpeg.global.avcodec.*;
import static org.bytedeco.ffmpeg.global.avutil.*;
import static org.bytedeco.ffmpeg.global.swscale.*;

import java.nio.ByteOrder;
import java.nio.IntBuffer;
import org.bytedeco.ffmpeg.avcodec.AVCodecContext;
import org.bytedeco.ffmpeg.avcodec.AVPacket;
import org.bytedeco.ffmpeg.avutil.AVDictionary;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.ffmpeg.avutil.AVRational;
import org.bytedeco.ffmpeg.swscale.SwsContext;
import org.bytedeco.javacpp.BytePointer;

/** Small pictures of one size to JPEG and back, in a millisecond each. One thread. */
final class JpegPictures implements AutoCloseable {

    /** As good as the eye asks for while it moves; a fiftieth of the picture's bytes. */
    private static final int QUALITY = 4 * FF_QP2LAMBDA;

    /** Which way it goes. */
    enum Way {
        TO_JPEG,
        FROM_JPEG
    }

    private final int width;
    private final int height;
    private final AVCodecContext codec;
    private final AVFrame bgra;
    private final AVFrame yuv;
    private final AVPacket packet = av_packet_alloc();
    private final SwsContext scale;
    private long count;
    private boolean closed;

    JpegPictures(Way way, int width, int height) {
        this.width = width;
        this.height = height;
        boolean to = way == Way.TO_JPEG;
        codec = avcodec_alloc_context3(
                to ? avcodec_find_encoder(AV_CODEC_ID_MJPEG) : avcodec_find_decoder(AV_CODEC_ID_MJPEG));
        codec.width(width).height(height).pix_fmt(AV_PIX_FMT_YUVJ420P).thread_count(1);
        codec.time_base(new AVRational().num(1).den(1000));
        codec.color_range(AVCOL_RANGE_JPEG);
        if (to) {
            codec.flags(codec.flags() | AV_CODEC_FLAG_QSCALE).global_quality(QUALITY);
        }
        bgra = picture(AV_PIX_FMT_BGRA);
        yuv = to ? picture(AV_PIX_FMT_YUVJ420P) : av_frame_alloc();
        scale = to ? scaling(AV_PIX_FMT_BGRA, AV_PIX_FMT_YUVJ420P) : scaling(AV_PIX_FMT_YUVJ420P, AV_PIX_FMT_BGRA);
        if (avcodec_open2(codec, codec.codec(), (AVDictionary) null) < 0) {
            close();
            throw new IllegalStateException("no JPEG coder");
        }
    }

    private AVFrame picture(int format) {
        AVFrame frame = av_frame_alloc();
        frame.width(width).height(height).format(format);
        if (av_frame_get_buffer(frame, 64) < 0) {
            throw new IllegalStateException("no memory for a picture of " + width + " × " + height);
        }
        return frame;
    }

    private SwsContext scaling(int from, int to) {
        return sws_getContext(
                width, height, from, width, height, to, SWS_BILINEAR, null, null, (org.bytedeco.javacpp.DoublePointer)
                        null);
    }

    byte[] encode(int[] argb) {
        av_frame_make_writable(bgra);
        av_frame_make_writable(yuv);
        IntBuffer all = pixels();
        int stride = bgra.linesize(0) / Integer.BYTES;
        for (int y = 0; y < height; y++) {
            all.position(y * stride).put(argb, y * width, width);
        }
        sws_scale_frame(scale, yuv, bgra);
        yuv.pts(count++).quality(QUALITY);
        if (avcodec_send_frame(codec, yuv) < 0 || avcodec_receive_packet(codec, packet) < 0) {
            throw new IllegalStateException("a picture could not be made a JPEG");
        }
        byte[] jpeg = new byte[packet.size()];
        packet.data().position(0).get(jpeg);
        av_packet_unref(packet);
        return jpeg;
    }

    /** @return whether it could be read */
    boolean decode(byte[] jpeg, int[] argb) {
        if (av_new_packet(packet, jpeg.length) < 0) {
            return false;
        }
        packet.data().position(0).put(jpeg);
        boolean read = avcodec_send_packet(codec, packet) >= 0 && avcodec_receive_frame(codec, yuv) >= 0;
        av_packet_unref(packet);
        if (!read || sws_scale_frame(scale, bgra, yuv) < 0) {
            return false;
        }
        IntBuffer all = pixels();
        int stride = bgra.linesize(0) / Integer.BYTES;
        for (int y = 0; y < height; y++) {
            all.position(y * stride).get(argb, y * width, width);
        }
        return true;
    }

    private IntBuffer pixels() {
        return new BytePointer(bgra.data(0))
                .capacity((long) bgra.linesize(0) * height)
                .asByteBuffer()
                .order(ByteOrder.LITTLE_ENDIAN)
                .asIntBuffer();
    }

    @Override
    public void close() {
        if (!closed) {
            closed = true;
            avcodec_free_context(codec);
            av_frame_free(bgra);
            av_frame_free(yuv);
            av_packet_free(packet);
            sws_freeContext(scale);
        }
    }
}

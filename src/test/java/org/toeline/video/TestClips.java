package org.toeline.video;

import static org.bytedeco.ffmpeg.global.avcodec.*;
import static org.bytedeco.ffmpeg.global.avformat.*;
import static org.bytedeco.ffmpeg.global.avutil.*;

import java.nio.file.Path;
import org.bytedeco.ffmpeg.avcodec.AVCodec;
import org.bytedeco.ffmpeg.avcodec.AVCodecContext;
import org.bytedeco.ffmpeg.avcodec.AVPacket;
import org.bytedeco.ffmpeg.avcodec.AVPacketSideData;
import org.bytedeco.ffmpeg.avformat.AVFormatContext;
import org.bytedeco.ffmpeg.avformat.AVIOContext;
import org.bytedeco.ffmpeg.avformat.AVStream;
import org.bytedeco.ffmpeg.avutil.AVDictionary;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.ffmpeg.avutil.AVRational;
import org.bytedeco.javacpp.BytePointer;
import org.bytedeco.javacpp.IntPointer;
import org.bytedeco.javacpp.PointerScope;

/** Writes clips whose every frame carries its number as ten black and white blocks, in codings that phones make. */
final class TestClips {

    static final int WIDTH = 320;
    static final int HEIGHT = 192;
    private static final int BLOCK = 32;
    private static final int BITS = 10;
    private static final int TICKS = 1000;

    /**
     * How a clip is coded.
     *
     * @param encoder  FFmpeg's name of it
     * @param bFrames  frames that refer to later ones
     * @param rotation degrees clockwise by which it is turned to be shown
     * @param shown    mirrored left to right before it is turned, or not
     */
    record Coding(String encoder, String suffix, int group, int bFrames, int rotation, Shown shown) {

        Coding(String encoder, String suffix, int group, int bFrames, int rotation) {
            this(encoder, suffix, group, bFrames, rotation, Shown.AS_STORED);
        }
    }

    /** Whether a clip asks to be mirrored. */
    enum Shown {
        AS_STORED,
        MIRRORED
    }

    private TestClips() {}

    /** @param millis presentation time of each frame, milliseconds, rising */
    static Path write(Path file, Coding coding, long[] millis) {
        av_log_set_level(AV_LOG_QUIET);
        try (PointerScope scope = new PointerScope()) {
            AVFormatContext format = new AVFormatContext(null);
            check(avformat_alloc_output_context2(format, null, null, file.toString()));
            AVCodec encoder = avcodec_find_encoder_by_name(coding.encoder);
            AVCodecContext codec = avcodec_alloc_context3(encoder);
            codec.width(WIDTH).height(HEIGHT).pix_fmt(AV_PIX_FMT_YUV420P);
            codec.time_base(new AVRational().num(1).den(TICKS));
            codec.framerate(new AVRational().num(30).den(1));
            codec.bit_rate(3_000_000)
                    .gop_size(coding.group)
                    .max_b_frames(coding.bFrames)
                    .thread_count(1);
            codec.color_range(AVCOL_RANGE_MPEG).colorspace(AVCOL_SPC_BT709);
            codec.flags(codec.flags() | AV_CODEC_FLAG_GLOBAL_HEADER);
            check(avcodec_open2(codec, encoder, (AVDictionary) null));
            AVStream stream = avformat_new_stream(format, encoder);
            stream.time_base(codec.time_base());
            check(avcodec_parameters_from_context(stream.codecpar(), codec));
            if (coding.rotation != 0 || coding.shown == Shown.MIRRORED) {
                AVPacketSideData all = new AVPacketSideData(null);
                AVPacketSideData side =
                        av_packet_side_data_new(all, new IntPointer(new int[] {0}), AV_PKT_DATA_DISPLAYMATRIX, 36, 0);
                av_display_rotation_set(new IntPointer(side.data()), coding.rotation);
                if (coding.shown == Shown.MIRRORED) {
                    // the first row: where a stored step to the right goes
                    IntPointer matrix = new IntPointer(side.data());
                    matrix.put(0, -matrix.get(0)).put(1, -matrix.get(1));
                }
                stream.codecpar().coded_side_data(all).nb_coded_side_data(1);
            }
            AVIOContext io = new AVIOContext(null);
            check(avio_open(io, file.toString(), AVIO_FLAG_WRITE));
            format.pb(io);
            check(avformat_write_header(format, (AVDictionary) null));
            AVFrame frame = av_frame_alloc();
            frame.width(WIDTH).height(HEIGHT).format(AV_PIX_FMT_YUV420P);
            check(av_frame_get_buffer(frame, 32));
            for (int i = 0; i < millis.length; i++) {
                check(av_frame_make_writable(frame));
                draw(frame, i);
                frame.pts(millis[i]);
                check(avcodec_send_frame(codec, frame));
                drain(format, codec, stream);
            }
            check(avcodec_send_frame(codec, null));
            drain(format, codec, stream);
            check(av_write_trailer(format));
            avio_closep(format.pb());
            av_frame_free(frame);
            avcodec_free_context(codec);
            avformat_free_context(format);
        }
        return file;
    }

    private static void drain(AVFormatContext format, AVCodecContext codec, AVStream stream) {
        AVPacket packet = av_packet_alloc();
        while (avcodec_receive_packet(codec, packet) >= 0) {
            packet.duration(20);
            av_packet_rescale_ts(packet, codec.time_base(), stream.time_base());
            packet.stream_index(stream.index());
            check(av_interleaved_write_frame(format, packet));
        }
        av_packet_free(packet);
    }

    /** Number below, and one corner block always white, so that turning can be seen. */
    private static void draw(AVFrame frame, int number) {
        int stride = frame.linesize(0);
        byte[] luma = new byte[stride * HEIGHT];
        for (int y = 0; y < HEIGHT; y++) {
            for (int x = 0; x < WIDTH; x++) {
                int block = x / BLOCK;
                boolean white = y < BLOCK ? block == 0 : y >= HEIGHT - BLOCK && (number >> block & 1) == 1;
                luma[y * stride + x] = (byte) (white ? 220 : 40);
            }
        }
        new BytePointer(frame.data(0)).capacity(luma.length).put(luma, 0, luma.length);
        for (int plane = 1; plane < 3; plane++) {
            byte[] grey = new byte[frame.linesize(plane) * HEIGHT / 2];
            java.util.Arrays.fill(grey, (byte) 128);
            new BytePointer(frame.data(plane)).capacity(grey.length).put(grey, 0, grey.length);
        }
    }

    /** The number that an unturned frame carries. */
    static int number(Frame frame) {
        int number = 0;
        for (int bit = 0; bit < BITS; bit++) {
            if (frame.grey(bit * BLOCK + BLOCK / 2, HEIGHT - BLOCK / 2) > 128) {
                number |= 1 << bit;
            }
        }
        return number;
    }

    private static void check(int result) {
        if (result < 0) {
            throw new IllegalStateException("FFmpeg says " + result);
        }
    }
}

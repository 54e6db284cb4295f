package org.toeline.scene;

import static org.bytedeco.ffmpeg.global.avcodec.*;
import static org.bytedeco.ffmpeg.global.avformat.*;
import static org.bytedeco.ffmpeg.global.avutil.*;

import java.io.IOException;
import java.nio.file.Path;
import org.bytedeco.ffmpeg.avcodec.AVCodec;
import org.bytedeco.ffmpeg.avcodec.AVCodecContext;
import org.bytedeco.ffmpeg.avcodec.AVPacket;
import org.bytedeco.ffmpeg.avformat.AVFormatContext;
import org.bytedeco.ffmpeg.avformat.AVIOContext;
import org.bytedeco.ffmpeg.avformat.AVStream;
import org.bytedeco.ffmpeg.avutil.AVDictionary;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.ffmpeg.avutil.AVRational;
import org.bytedeco.javacpp.BytePointer;

/** Writes pictures to an H.264 clip in an MP4 file, colours marked as BT.709, limited range. Not thread-safe. */
final class ClipWriter implements AutoCloseable {

    private final Path file;
    private final int width;
    private final int height;
    private final AVFormatContext format = new AVFormatContext(null);
    private final AVCodecContext codec;
    private final AVStream stream;
    private final AVFrame frame = av_frame_alloc();
    private final AVPacket packet = av_packet_alloc();
    private long shown;

    ClipWriter(Path file, int width, int height, int framesPerSecond, long bitsPerSecond) throws IOException {
        this.file = file;
        this.width = width;
        this.height = height;
        check(avformat_alloc_output_context2(format, null, "mp4", file.toString()), "prepare");
        AVCodec encoder = avcodec_find_encoder_by_name("libopenh264");
        if (encoder == null || encoder.isNull()) {
            throw new IOException("this FFmpeg has no H.264 encoder to write “" + file + "” with");
        }
        codec = avcodec_alloc_context3(encoder);
        codec.width(width).height(height).pix_fmt(AV_PIX_FMT_YUV420P);
        codec.time_base(new AVRational().num(1).den(framesPerSecond));
        codec.framerate(new AVRational().num(framesPerSecond).den(1));
        codec.bit_rate(bitsPerSecond)
                .gop_size(2 * framesPerSecond)
                .max_b_frames(0)
                .thread_count(1);
        codec.qmin(12).qmax(34);
        codec.color_range(AVCOL_RANGE_MPEG)
                .colorspace(AVCOL_SPC_BT709)
                .color_primaries(AVCOL_PRI_BT709)
                .color_trc(AVCOL_TRC_BT709);
        codec.flags(codec.flags() | AV_CODEC_FLAG_GLOBAL_HEADER);
        AVDictionary options = new AVDictionary(null);
        av_dict_set(options, "rc_mode", "quality", 0);
        av_dict_set(options, "allow_skip_frames", "0", 0);
        check(avcodec_open2(codec, encoder, options), "open the encoder for");
        av_dict_free(options);
        stream = avformat_new_stream(format, encoder);
        stream.time_base(codec.time_base());
        stream.avg_frame_rate(codec.framerate());
        check(avcodec_parameters_from_context(stream.codecpar(), codec), "describe");
        AVIOContext io = new AVIOContext(null);
        check(avio_open(io, file.toString(), AVIO_FLAG_WRITE), "open");
        format.pb(io);
        AVDictionary plain = new AVDictionary(null);
        av_dict_set(plain, "movflags", "+faststart", 0);
        check(avformat_write_header(format, plain), "begin");
        av_dict_free(plain);
        frame.width(width).height(height).format(AV_PIX_FMT_YUV420P);
        frame.color_range(AVCOL_RANGE_MPEG).colorspace(AVCOL_SPC_BT709);
        check(av_frame_get_buffer(frame, 32), "make room for");
    }

    void add(Picture picture) throws IOException {
        check(av_frame_make_writable(frame), "make room for");
        fill(picture.rgb());
        frame.pts(shown++);
        check(avcodec_send_frame(codec, frame), "encode");
        drain();
    }

    private void drain() throws IOException {
        while (true) {
            int got = avcodec_receive_packet(codec, packet);
            if (got == AVERROR_EAGAIN() || got == AVERROR_EOF()) {
                return;
            }
            check(got, "encode");
            packet.duration(1);
            av_packet_rescale_ts(packet, codec.time_base(), stream.time_base());
            packet.stream_index(stream.index());
            check(av_interleaved_write_frame(format, packet), "write");
        }
    }

    /** ITU-R BT.709, 8 bit, limited range; the colour of two by two pixels is their mean. */
    private void fill(byte[] rgb) {
        byte[] luma = new byte[width];
        int stride = frame.linesize(0);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                int i = 3 * (y * width + x);
                luma[x] = (byte) Math.round(16
                        + (219 * (0.2126 * (rgb[i] & 255) + 0.7152 * (rgb[i + 1] & 255) + 0.0722 * (rgb[i + 2] & 255)))
                                / 255);
            }
            row(0, y, stride, luma);
        }
        byte[] blue = new byte[width / 2];
        byte[] red = new byte[width / 2];
        for (int y = 0; y < height / 2; y++) {
            for (int x = 0; x < width / 2; x++) {
                int i = 3 * (2 * y * width + 2 * x);
                double r = mean(rgb, i);
                double g = mean(rgb, i + 1);
                double b = mean(rgb, i + 2);
                double l = 0.2126 * r + 0.7152 * g + 0.0722 * b;
                blue[x] = (byte) Math.round(128 + 224 * (b - l) / 1.8556 / 255);
                red[x] = (byte) Math.round(128 + 224 * (r - l) / 1.5748 / 255);
            }
            row(1, y, frame.linesize(1), blue);
            row(2, y, frame.linesize(2), red);
        }
    }

    private double mean(byte[] rgb, int i) {
        return ((rgb[i] & 255) + (rgb[i + 3] & 255) + (rgb[i + 3 * width] & 255) + (rgb[i + 3 * width + 3] & 255))
                / 4.0;
    }

    private void row(int plane, int y, int stride, byte[] values) {
        BytePointer data = new BytePointer(frame.data(plane));
        data.capacity((long) stride * height).position((long) y * stride).put(values, 0, values.length);
    }

    private void check(int result, String doing) throws IOException {
        if (result < 0) {
            byte[] message = new byte[AV_ERROR_MAX_STRING_SIZE];
            av_strerror(result, message, message.length);
            throw new IOException("could not " + doing + " “" + file + "”: " + new String(message).trim());
        }
    }

    @Override
    public void close() throws IOException {
        try {
            check(avcodec_send_frame(codec, null), "finish");
            drain();
            check(av_write_trailer(format), "finish");
        } finally {
            avio_closep(format.pb());
            av_frame_free(frame);
            av_packet_free(packet);
            avcodec_free_context(codec);
            avformat_free_context(format);
        }
    }
}

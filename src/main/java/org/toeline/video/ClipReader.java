package org.toeline.video;

import static org.bytedeco.ffmpeg.global.avcodec.*;
import static org.bytedeco.ffmpeg.global.avformat.*;
import static org.bytedeco.ffmpeg.global.avutil.*;

import java.nio.file.Path;
import org.bytedeco.ffmpeg.avcodec.AVCodec;
import org.bytedeco.ffmpeg.avcodec.AVCodecContext;
import org.bytedeco.ffmpeg.avcodec.AVCodecParameters;
import org.bytedeco.ffmpeg.avcodec.AVPacket;
import org.bytedeco.ffmpeg.avcodec.AVPacketSideData;
import org.bytedeco.ffmpeg.avformat.AVFormatContext;
import org.bytedeco.ffmpeg.avformat.AVIOInterruptCB;
import org.bytedeco.ffmpeg.avformat.AVStream;
import org.bytedeco.ffmpeg.avutil.AVDictionary;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.ffmpeg.avutil.AVRational;
import org.bytedeco.javacpp.IntPointer;
import org.bytedeco.javacpp.Pointer;
import org.bytedeco.javacpp.PointerPointer;
import org.jspecify.annotations.Nullable;

/** The native side of a clip: opens it, lists its packets, and decodes forward from a key frame. One thread at a time. */
final class ClipReader implements AutoCloseable {

    private static final long OPEN_NANOS = 20_000_000_000L;
    private static final long MOST_PIXELS = 40_000_000L;

    static {
        av_log_set_level(AV_LOG_QUIET);
    }

    private final String name;
    private final AVFormatContext format;
    private final AVStream stream;
    private final AVCodecContext codec;
    private final AVPacket packet = av_packet_alloc();
    private final AVFrame frame = av_frame_alloc();
    private final AVIOInterruptCB.Callback_Pointer interrupt;
    private final int width;
    private final int height;
    private final int rotation;
    private long deadline;
    private boolean drained;
    private boolean closed;

    ClipReader(Path file) throws ClipException {
        this.name = file.toString();
        this.deadline = System.nanoTime() + OPEN_NANOS;
        this.interrupt = new AVIOInterruptCB.Callback_Pointer() {
            @Override
            public int call(Pointer opaque) {
                return System.nanoTime() - deadline > 0 ? 1 : 0;
            }
        };
        AVFormatContext opening = avformat_alloc_context();
        opening.interrupt_callback().callback(interrupt);
        if (avformat_open_input(opening, name, null, (AVDictionary) null) < 0) {
            release();
            throw new ClipException(name + ": not a clip that can be read; film it again or export it as MP4 (H.264)");
        }
        this.format = opening;
        AVCodecContext context = null;
        try {
            if (avformat_find_stream_info(format, (PointerPointer<?>) null) < 0) {
                throw new ClipException(name + ": the clip's streams cannot be read; it may be cut short");
            }
            int best = av_find_best_stream(format, AVMEDIA_TYPE_VIDEO, -1, -1, (AVCodec) null, 0);
            if (best < 0) {
                throw new ClipException(name + ": there is no moving picture in this file");
            }
            this.stream = format.streams(best);
            AVCodecParameters parameters = stream.codecpar();
            context = open(parameters);
            this.codec = context;
            AVRational aspect = av_guess_sample_aspect_ratio(format, stream, null);
            double wide = aspect.num() > 0 && aspect.den() > 0 ? (double) aspect.num() / aspect.den() : 1;
            this.width = (int) Math.round(parameters.width() * (wide > 0.2 && wide < 5 ? wide : 1));
            this.height = parameters.height();
            this.rotation = rotation(parameters);
            if (width < 1 || height < 1 || (long) width * height > MOST_PIXELS) {
                throw new ClipException(name + ": a picture of " + width + " × " + height
                        + " px; 1 to 40 million pixels can be shown");
            }
        } catch (ClipException e) {
            if (context != null) {
                avcodec_free_context(context);
            }
            avformat_close_input(format);
            release();
            throw e;
        }
    }

    private AVCodecContext open(AVCodecParameters parameters) throws ClipException {
        AVCodec decoder = avcodec_find_decoder(parameters.codec_id());
        if (decoder == null) {
            throw new ClipException(name + ": no decoder for its coding (" + codecName(parameters) + ")");
        }
        AVCodecContext context = avcodec_alloc_context3(decoder);
        avcodec_parameters_to_context(context, parameters);
        context.pkt_timebase(stream.time_base());
        context.thread_count(Math.min(8, Runtime.getRuntime().availableProcessors()));
        if (avcodec_open2(context, decoder, (AVDictionary) null) < 0) {
            avcodec_free_context(context);
            throw new ClipException(name + ": its " + codecName(parameters) + " stream cannot be decoded");
        }
        return context;
    }

    private static String codecName(AVCodecParameters parameters) {
        return avcodec_get_name(parameters.codec_id()).getString();
    }

    private static int rotation(AVCodecParameters parameters) {
        AVPacketSideData turn = av_packet_side_data_get(parameters.coded_side_data(), parameters.nb_coded_side_data(),
                AV_PKT_DATA_DISPLAYMATRIX);
        if (turn == null || turn.isNull() || turn.size() < 36) {
            return 0;
        }
        double counterClockwise = av_display_rotation_get(new IntPointer(turn.data()));
        return Double.isFinite(counterClockwise)
                ? (int) Math.floorMod(Math.round(-counterClockwise / 90) * 90, 360L) : 0;
    }

    /** Reads every packet once, without decoding. */
    PacketIndex index() throws ClipException {
        deadline = System.nanoTime() + 3 * OPEN_NANOS;
        PacketIndex index = new PacketIndex();
        while (av_read_frame(format, packet) >= 0) {
            long at = packet.pts() != AV_NOPTS_VALUE ? packet.pts() : packet.dts();
            boolean ours = packet.stream_index() == stream.index() && at != AV_NOPTS_VALUE;
            boolean shown = ours && (packet.flags() & (AV_PKT_FLAG_DISCARD | AV_PKT_FLAG_CORRUPT)) == 0;
            if (ours && (packet.flags() & AV_PKT_FLAG_KEY) != 0) {
                index.key(at);
            }
            boolean fits = !shown || index.add(at, packet.duration());
            av_packet_unref(packet);
            if (!fits) {
                throw new ClipException(name + ": more frames than a clip of a lesson can have");
            }
        }
        index.finish();
        if (index.frames() == 0) {
            throw new ClipException(name + ": no frame in it can be shown");
        }
        return index;
    }

    /** Goes to the key frame of that time; what is decoded next starts there. */
    void seek(long keyPts) {
        deadline = System.nanoTime() + OPEN_NANOS;
        if (av_seek_frame(format, stream.index(), keyPts, AVSEEK_FLAG_BACKWARD) < 0) {
            av_seek_frame(format, stream.index(), keyPts, AVSEEK_FLAG_ANY | AVSEEK_FLAG_BACKWARD);
        }
        avcodec_flush_buffers(codec);
        drained = false;
    }

    /**
     * The next decoded frame in order of time, owned by this reader until the next call; null at the end.
     *
     * @param neededFrom frames before this time that nothing refers to need not be decoded
     */
    @Nullable AVFrame next(long neededFrom) {
        deadline = System.nanoTime() + OPEN_NANOS;
        while (true) {
            int got = avcodec_receive_frame(codec, frame);
            if (got >= 0) {
                return frame;
            }
            if (got != AVERROR_EAGAIN() || drained) {
                return null;
            }
            feed(neededFrom);
        }
    }

    private void feed(long neededFrom) {
        while (true) {
            if (av_read_frame(format, packet) < 0) {
                drained = true;
                avcodec_send_packet(codec, (AVPacket) null);
                return;
            }
            boolean ours = packet.stream_index() == stream.index();
            if (ours) {
                long at = packet.pts() != AV_NOPTS_VALUE ? packet.pts() : packet.dts();
                codec.skip_frame(at < neededFrom ? AVDISCARD_NONREF : AVDISCARD_DEFAULT);
                avcodec_send_packet(codec, packet);
            }
            av_packet_unref(packet);
            if (ours) {
                return;
            }
        }
    }

    double seconds(long pts) {
        return (double) pts * stream.time_base().num() / stream.time_base().den();
    }

    long pts(double seconds) {
        return (long) Math.floor(seconds * stream.time_base().den() / stream.time_base().num());
    }

    int width() {
        return width;
    }

    int height() {
        return height;
    }

    int rotation() {
        return rotation;
    }

    String codecName() {
        return codecName(stream.codecpar());
    }

    private void release() {
        av_frame_free(frame);
        av_packet_free(packet);
    }

    @Override
    public void close() {
        if (!closed) {
            closed = true;
            avcodec_free_context(codec);
            avformat_close_input(format);
            release();
            interrupt.close();
        }
    }
}

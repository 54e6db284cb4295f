package org.toeline.video;

import static org.bytedeco.ffmpeg.global.avcodec.*;
import static org.bytedeco.ffmpeg.global.avformat.*;
import static org.bytedeco.ffmpeg.global.avutil.*;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import org.bytedeco.ffmpeg.avcodec.AVCodec;
import org.bytedeco.ffmpeg.avcodec.AVCodecContext;
import org.bytedeco.ffmpeg.avcodec.AVPacket;
import org.bytedeco.ffmpeg.avformat.AVStream;
import org.bytedeco.ffmpeg.avutil.AVDictionary;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.javacpp.BytePointer;

/** Listens to a clip from the beginning to the end, in a reader of its own. */
public final class SoundTrack {

    private static final long LIMIT_NANOS = 20_000_000_000L;
    /** An hour. */
    private static final int MOST_STEPS = 3_600_000;

    private final OpenedStream opened;
    private final AVStream stream;
    private final AVCodecContext codec;
    private float[] energy = new float[1 << 12];
    private int[] counts = new int[1 << 12];
    private int steps;
    private double start = Double.NaN;
    private double before;

    private SoundTrack(OpenedStream opened, AVStream stream, AVCodecContext codec) {
        this.opened = opened;
        this.stream = stream;
        this.codec = codec;
    }

    /** Empty where a clip has no sound, or none that can be decoded. */
    public static Optional<Sound> of(Path file) throws ClipException {
        try (OpenedStream opened = new OpenedStream(file, LIMIT_NANOS)) {
            int best = av_find_best_stream(opened.format(), AVMEDIA_TYPE_AUDIO, -1, -1, (AVCodec) null, 0);
            AVCodec decoder = best < 0
                    ? null
                    : avcodec_find_decoder(
                            opened.format().streams(best).codecpar().codec_id());
            if (decoder == null) {
                return Optional.empty();
            }
            AVStream stream = opened.format().streams(best);
            AVCodecContext codec = avcodec_alloc_context3(decoder);
            try {
                avcodec_parameters_to_context(codec, stream.codecpar());
                codec.pkt_timebase(stream.time_base());
                boolean open = avcodec_open2(codec, decoder, (AVDictionary) null) >= 0;
                return open ? new SoundTrack(opened, stream, codec).heard() : Optional.empty();
            } finally {
                avcodec_free_context(codec);
            }
        }
    }

    private Optional<Sound> heard() {
        AVPacket packet = av_packet_alloc();
        AVFrame frame = av_frame_alloc();
        try {
            opened.within(LIMIT_NANOS);
            while (av_read_frame(opened.format(), packet) >= 0) {
                if (packet.stream_index() == stream.index() && avcodec_send_packet(codec, packet) >= 0) {
                    drain(frame);
                }
                av_packet_unref(packet);
            }
            avcodec_send_packet(codec, (AVPacket) null);
            drain(frame);
        } finally {
            av_frame_free(frame);
            av_packet_free(packet);
        }
        float[] loudness = new float[steps];
        for (int i = 0; i < steps; i++) {
            loudness[i] = counts[i] == 0 ? 0 : energy[i] / counts[i];
        }
        return steps == 0 ? Optional.empty() : Optional.of(new Sound(start, loudness));
    }

    private void drain(AVFrame frame) {
        while (avcodec_receive_frame(codec, frame) >= 0) {
            long at = frame.best_effort_timestamp();
            double seconds = at == AV_NOPTS_VALUE
                    ? start + steps * Sound.STEP_S
                    : (double) at
                            * stream.time_base().num()
                            / stream.time_base().den();
            if (Double.isNaN(start)) {
                start = Double.isNaN(seconds) ? 0 : seconds;
            }
            add(frame, seconds);
        }
    }

    private void add(AVFrame frame, double seconds) {
        int format = frame.format();
        boolean planar = av_sample_fmt_is_planar(format) != 0;
        int channels = Math.max(1, frame.ch_layout().nb_channels());
        int stride = planar ? 1 : channels;
        int bytes = av_get_bytes_per_sample(format);
        int samples = frame.nb_samples();
        ByteBuffer data = new BytePointer(frame.extended_data(0))
                .capacity((long) bytes * samples * stride)
                .asByteBuffer()
                .order(ByteOrder.nativeOrder());
        for (int i = 0; i < samples; i++) {
            double value = sample(data, i * stride * bytes, format);
            int step = (int) ((seconds - start + (double) i / frame.sample_rate()) / Sound.STEP_S);
            if (step >= 0 && step < MOST_STEPS) {
                room(step);
                energy[step] += (float) ((value - before) * (value - before));
                counts[step]++;
            }
            before = value;
        }
    }

    private void room(int step) {
        if (step >= energy.length) {
            energy = Arrays.copyOf(energy, 2 * step);
            counts = Arrays.copyOf(counts, 2 * step);
        }
        steps = Math.max(steps, step + 1);
    }

    /** Of the first channel, full scale 1. */
    private static double sample(ByteBuffer data, int at, int format) {
        if (format == AV_SAMPLE_FMT_FLT || format == AV_SAMPLE_FMT_FLTP) {
            float value = data.getFloat(at);
            return Float.isFinite(value) ? value : 0;
        }
        if (format == AV_SAMPLE_FMT_S16 || format == AV_SAMPLE_FMT_S16P) {
            return data.getShort(at) / 32768.0;
        }
        if (format == AV_SAMPLE_FMT_S32 || format == AV_SAMPLE_FMT_S32P) {
            return data.getInt(at) / 2147483648.0;
        }
        if (format == AV_SAMPLE_FMT_U8 || format == AV_SAMPLE_FMT_U8P) {
            return ((data.get(at) & 255) - 128) / 128.0;
        }
        return 0;
    }
}

package org.toeline.video;

import static org.bytedeco.ffmpeg.global.avcodec.*;
import static org.bytedeco.ffmpeg.global.avformat.*;
import static org.bytedeco.ffmpeg.global.avutil.*;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.bytedeco.ffmpeg.avcodec.AVCodec;
import org.bytedeco.ffmpeg.avcodec.AVCodecContext;
import org.bytedeco.ffmpeg.avcodec.AVPacket;
import org.bytedeco.ffmpeg.avformat.AVFormatContext;
import org.bytedeco.ffmpeg.avformat.AVStream;
import org.bytedeco.ffmpeg.avutil.AVDictionary;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.javacpp.PointerPointer;

/**
 * A clip decoded once from its first packet to its last, on one thread, without index, seeking, skipping or cache: what
 * addressing is held against.
 */
final class PlainDecode {

    /** A frame in order of showing. */
    record Shown(double seconds, int pixels) {}

    private PlainDecode() {}

    static List<Shown> of(Path file) throws ClipException {
        List<Shown> all = new ArrayList<>();
        AVFormatContext format = new AVFormatContext(null);
        check(avformat_open_input(format, file.toString(), null, (AVDictionary) null));
        check(avformat_find_stream_info(format, (PointerPointer<?>) null));
        int best = check(av_find_best_stream(format, AVMEDIA_TYPE_VIDEO, -1, -1, (AVCodec) null, 0));
        AVStream stream = format.streams(best);
        AVCodecContext codec =
                avcodec_alloc_context3(avcodec_find_decoder(stream.codecpar().codec_id()));
        avcodec_parameters_to_context(codec, stream.codecpar());
        codec.pkt_timebase(stream.time_base());
        codec.thread_count(1);
        check(avcodec_open2(codec, (AVCodec) null, (AVDictionary) null));
        AVPacket packet = av_packet_alloc();
        AVFrame frame = av_frame_alloc();
        try (Clip clip = Clip.open(file);
                PictureConverter converter = clip.converter()) {
            while (av_read_frame(format, packet) >= 0) {
                if (packet.stream_index() == best) {
                    avcodec_send_packet(codec, packet);
                    receive(codec, stream, frame, converter, all);
                }
                av_packet_unref(packet);
            }
            avcodec_send_packet(codec, (AVPacket) null);
            receive(codec, stream, frame, converter, all);
        } finally {
            av_frame_free(frame);
            av_packet_free(packet);
            avcodec_free_context(codec);
            avformat_close_input(format);
        }
        return all;
    }

    private static void receive(
            AVCodecContext codec, AVStream stream, AVFrame frame, PictureConverter converter, List<Shown> all)
            throws ClipException {
        while (avcodec_receive_frame(codec, frame) >= 0) {
            double seconds = (double) frame.best_effort_timestamp()
                    * stream.time_base().num()
                    / stream.time_base().den();
            all.add(new Shown(seconds, Arrays.hashCode(converter.convert(frame))));
        }
    }

    private static int check(int result) {
        if (result < 0) {
            throw new IllegalStateException("FFmpeg says " + result);
        }
        return result;
    }
}

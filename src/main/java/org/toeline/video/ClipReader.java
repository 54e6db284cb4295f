package org.toeline.video;

import static org.bytedeco.ffmpeg.global.avcodec.*;
import static org.bytedeco.ffmpeg.global.avformat.*;
import static org.bytedeco.ffmpeg.global.avutil.*;

import java.util.Optional;
import org.bytedeco.ffmpeg.avcodec.AVCodecContext;
import org.bytedeco.ffmpeg.avcodec.AVPacket;
import org.bytedeco.ffmpeg.avformat.AVFormatContext;
import org.bytedeco.ffmpeg.avformat.AVIndexEntry;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.ffmpeg.avutil.AVRational;
import org.jspecify.annotations.Nullable;
import org.toeline.language.Sentences;

/** Lists a stream's packets, and decodes forward from a key frame. One thread at a time. Owns what it reads from. */
final class ClipReader implements AutoCloseable {

    private static final long STEP_NANOS = 20_000_000_000L;
    private static final long LIST_NANOS = 60_000_000_000L;
    /** Share of a file after which its reading is told of. */
    private static final double TOLD = 0.01;

    private final OpenedStream opened;
    /** Frames may lie in another order than they are shown in; what is missing of a copy is more. */
    private static final double LEAST_MISSING_S = 0.25;

    private final AVFormatContext format;
    private final AVCodecContext codec;
    private final int ours;
    private final int unitNum;
    private final int unitDen;
    private final AVPacket packet = av_packet_alloc();
    private final AVFrame frame = av_frame_alloc();
    /** A photograph's packet: its reader does not go back. */
    private @Nullable AVPacket photograph;
    /** A photograph that was put together from tiles. */
    private @Nullable AVFrame composed;

    private int notNeeded = AVDISCARD_NONREF;
    private boolean drained;
    private boolean closed;

    ClipReader(OpenedStream opened) {
        this.opened = opened;
        this.format = opened.format();
        this.codec = opened.codec();
        this.ours = opened.stream().index();
        AVRational unit = opened.stream().time_base();
        this.unitNum = unit.num();
        this.unitDen = unit.den();
    }

    OpenedStream opened() {
        return opened;
    }

    /**
     * Reads every packet once, without decoding. A photograph, which has no time, is one frame at 0. Takes as long as it
     * takes while it gets on; every step forward is given time of its own.
     *
     * @return empty when {@code progress} said to stop
     */
    Optional<PacketIndex> index(Progress progress) throws ClipException {
        opened.within(LIST_NANOS);
        double told = 0;
        PacketIndex index = new PacketIndex();
        if (opened.tiles().isPresent()) {
            composed = opened.tiles().get().picture(format);
            index.key(0);
            index.add(0, 0);
        }
        int timeless = 0;
        while (av_read_frame(format, packet) >= 0) {
            if (photograph == null && isPhotograph()) {
                photograph = av_packet_clone(packet);
            }
            boolean fits = packet.stream_index() != ours || listed(index);
            timeless += packet.stream_index() == ours && time(packet) == AV_NOPTS_VALUE ? 1 : 0;
            double share = opened.share(packet.pos());
            av_packet_unref(packet);
            if (share - told >= TOLD) {
                told = share;
                opened.within(LIST_NANOS);
                if (progress.at(share) == Progress.Step.STOP) {
                    return Optional.empty();
                }
            }
            if (!fits) {
                throw new ClipException(Sentences.of(ClipReader.class).of("clip.many", opened.name()));
            }
        }
        if (opened.overdue()) {
            throw new ClipException(
                    Sentences.of(ClipReader.class).of("clip.slow-reading", opened.name(), LIST_NANOS / 1_000_000_000));
        }
        if (index.frames() == 0 && timeless == 1) {
            index.key(0);
            index.add(0, 0);
        }
        index.finish();
        if (index.frames() == 0) {
            throw new ClipException(Sentences.of(ClipReader.class).of("clip.no-frame", opened.name()));
        }
        return Optional.of(index);
    }

    /** Of how many packets the reader knows the place before reading any. */
    int knownAtOnce() {
        return avformat_index_get_entries_count(opened.stream());
    }

    /** How much of what the file's header lists lies beyond what could be read: a copy that was broken off. 0 when it is all there. */
    double missingSeconds(PacketIndex index) {
        AVIndexEntry last = avformat_index_get_entry(opened.stream(), knownAtOnce() - 1);
        double missing = last == null || last.isNull() ? 0 : seconds(last.timestamp()) - seconds(index.end());
        return missing > LEAST_MISSING_S ? missing : 0;
    }

    /** Whether the file is a single picture and no clip. */
    boolean isPhotograph() {
        String kind = format.iformat().name().getString();
        return kind.endsWith("_pipe") || kind.equals("image2");
    }

    private boolean listed(PacketIndex index) {
        long at = time(packet);
        if (at == AV_NOPTS_VALUE) {
            return true;
        }
        if ((packet.flags() & AV_PKT_FLAG_KEY) != 0) {
            index.key(at);
        }
        boolean shown = (packet.flags() & (AV_PKT_FLAG_DISCARD | AV_PKT_FLAG_CORRUPT)) == 0;
        return !shown || index.add(at, packet.duration());
    }

    private static long time(AVPacket packet) {
        return packet.pts() != AV_NOPTS_VALUE ? packet.pts() : packet.dts();
    }

    /** Goes to the key frame of that time; what is decoded next starts there, or somewhat off in some containers. */
    void seek(long keyPts) {
        opened.within(STEP_NANOS);
        if (photograph == null && av_seek_frame(format, ours, keyPts, AVSEEK_FLAG_BACKWARD) < 0) {
            av_seek_frame(format, ours, keyPts, AVSEEK_FLAG_ANY | AVSEEK_FLAG_BACKWARD);
        }
        flush();
    }

    /** Goes to where the file's data begins. */
    void rewind() {
        opened.within(STEP_NANOS);
        boolean stream = (format.iformat().flags() & AVFMT_TS_DISCONT) != 0;
        if (!stream || av_seek_frame(format, -1, 0, AVSEEK_FLAG_BYTE) < 0) {
            // a quarter of the range: the reader adds and multiplies
            av_seek_frame(format, ours, Long.MIN_VALUE / 4, AVSEEK_FLAG_BACKWARD);
        }
        flush();
    }

    private void flush() {
        avcodec_flush_buffers(codec);
        drained = false;
    }

    /**
     * The next decoded frame in order of time, owned by this reader until the next call; null at the end.
     *
     * @param neededFrom frames before this time that nothing refers to need not be decoded
     */
    @Nullable
    AVFrame next(long neededFrom) {
        opened.within(STEP_NANOS);
        if (composed != null) {
            AVFrame once = drained ? null : composed;
            drained = true;
            return once;
        }
        while (true) {
            int got = avcodec_receive_frame(codec, frame);
            if (got >= 0) {
                return frame;
            }
            if (got == AVERROR_EOF() || drained) {
                return null;
            }
            feed(neededFrom);
        }
    }

    /**
     * Which frames are left out where they are not needed: at first those that no other refers to, which changes nothing
     * of the others; {@code AVDISCARD_BIDIR} also those that others between the same two may refer to.
     */
    void leaveOut(int discard) {
        notNeeded = discard;
    }

    /** Time of a decoded frame; a photograph's is 0. */
    static long time(AVFrame frame) {
        long time = frame.best_effort_timestamp();
        return time == AV_NOPTS_VALUE ? 0 : time;
    }

    private void feed(long neededFrom) {
        if (photograph != null) {
            avcodec_send_packet(codec, photograph);
            drain();
            return;
        }
        while (true) {
            if (av_read_frame(format, packet) < 0) {
                drain();
                return;
            }
            boolean fed = packet.stream_index() == ours;
            if (fed) {
                codec.skip_frame(time(packet) < neededFrom ? notNeeded : AVDISCARD_DEFAULT);
                avcodec_send_packet(codec, packet);
            }
            av_packet_unref(packet);
            if (fed) {
                return;
            }
        }
    }

    private void drain() {
        drained = true;
        avcodec_send_packet(codec, (AVPacket) null);
    }

    double seconds(long pts) {
        return (double) pts * unitNum / unitDen;
    }

    long pts(double seconds) {
        return (long) Math.floor(seconds * unitDen / unitNum);
    }

    @Override
    public void close() {
        if (!closed) {
            closed = true;
            av_frame_free(frame);
            av_packet_free(packet);
            if (photograph != null) {
                av_packet_free(photograph);
            }
            if (composed != null) {
                av_frame_free(composed);
            }
            opened.close();
        }
    }
}

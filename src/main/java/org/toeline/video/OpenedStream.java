package org.toeline.video;

import static org.bytedeco.ffmpeg.global.avcodec.*;
import static org.bytedeco.ffmpeg.global.avformat.*;
import static org.bytedeco.ffmpeg.global.avutil.*;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.bytedeco.ffmpeg.avcodec.AVCodec;
import org.bytedeco.ffmpeg.avcodec.AVCodecContext;
import org.bytedeco.ffmpeg.avcodec.AVCodecParameters;
import org.bytedeco.ffmpeg.avformat.AVFormatContext;
import org.bytedeco.ffmpeg.avformat.AVIOInterruptCB;
import org.bytedeco.ffmpeg.avformat.AVInputFormat;
import org.bytedeco.ffmpeg.avformat.AVProbeData;
import org.bytedeco.ffmpeg.avformat.AVStream;
import org.bytedeco.ffmpeg.avutil.AVDictionary;
import org.bytedeco.ffmpeg.avutil.AVDictionaryEntry;
import org.bytedeco.ffmpeg.avutil.AVRational;
import org.bytedeco.javacpp.BytePointer;
import org.bytedeco.javacpp.IntPointer;
import org.bytedeco.javacpp.LongPointer;
import org.bytedeco.javacpp.Pointer;
import org.bytedeco.javacpp.PointerPointer;
import org.jspecify.annotations.Nullable;
import org.toeline.language.Sentences;

/**
 * A file's moving picture, opened with its decoder: within a time limit, and within a picture size that is checked before
 * a decoder takes memory for it. One thread at a time.
 */
final class OpenedStream implements AutoCloseable {

    /** What a picture may have, pixels: a large photograph; a header that claims more is taken for a lie. */
    static final long MOST_PIXELS = 64_000_000L;
    /** What a decoder or reader may take in one piece, bytes. */
    private static final long MOST_AT_ONCE = 1L << 29;

    /**
     * Containers of clips and files of pictures, by the library's names; one of these alone reads a file, whatever it is
     * called. None of them sends its reader to another file, as lists of clips, playlists and manifests do, and none takes
     * text for a picture.
     */
    private static final String READ_ALONE = String.join(
            ",",
            "mov",
            "matroska",
            "avi",
            "mpegts",
            "mpeg",
            "mpegvideo",
            "asf",
            "flv",
            "ogg",
            "mxf",
            "h264",
            "hevc",
            "gif",
            "image2",
            "jpeg_pipe",
            "png_pipe",
            "webp_pipe",
            "bmp_pipe",
            "tiff_pipe",
            "wav",
            "mp3",
            "aac");

    /** One for the whole program: the binding has only a few of these to give. */
    private static final AVIOInterruptCB.Callback_Pointer OVERDUE = new AVIOInterruptCB.Callback_Pointer() {
        @Override
        public int call(Pointer deadline) {
            return System.nanoTime() - new LongPointer(deadline).get() > 0 ? 1 : 0;
        }
    };

    static {
        av_log_set_level(AV_LOG_QUIET);
        av_max_alloc(MOST_AT_ONCE);
    }

    private static final int PROBED = 1 << 18;
    private static final Pattern MISLEADING =
            Pattern.compile("%|\\.(jpe?g|png|gif|bmp|tiff?|webp|hei[cf])$", Pattern.CASE_INSENSITIVE);

    private final String name;
    private final long sizeBytes;
    private final LongPointer deadline = new LongPointer(1);
    private final AVFormatContext format;
    private Optional<TileGrid> tiles = Optional.empty();
    private AVStream stream = new AVStream((Pointer) null);
    private AVCodecContext codec = new AVCodecContext((Pointer) null);
    private boolean closed;

    OpenedStream(Path file, long limitNanos) throws ClipException {
        this.name = file.toString();
        this.sizeBytes = file.toFile().length();
        within(limitNanos);
        AVFormatContext opening = avformat_alloc_context();
        opening.interrupt_callback().callback(OVERDUE);
        opening.interrupt_callback().opaque(deadline);
        AVDictionary options = new AVDictionary(null);
        // a name is a name and no pattern, and what a file contains may send nobody to the network
        av_dict_set(options, "pattern_type", "none", 0);
        av_dict_set(options, "protocol_whitelist", "file", 0);
        av_dict_set(options, "format_whitelist", READ_ALONE, 0);
        int result = avformat_open_input(opening, file.toAbsolutePath().toString(), kind(file), options);
        av_dict_free(options);
        if (result < 0) {
            boolean late = overdue();
            deadline.close();
            throw late
                    ? tooSlow(limitNanos)
                    : new ClipException(Sentences.of(OpenedStream.class).of("clip.unreadable", name));
        }
        this.format = opening;
        try {
            stream = picture(limitNanos);
            codec = decoder();
        } catch (ClipException e) {
            close();
            throw e;
        }
    }

    /**
     * What a file is by its beginning, where its name would be taken for that of a picture or of a numbered series of them, and
     * decide; otherwise left to the library, which looks as far into a file as it needs to.
     */
    private static @Nullable AVInputFormat kind(Path file) {
        if (!MISLEADING.matcher(file.toString()).find()) {
            return null;
        }
        try (InputStream in = Files.newInputStream(file);
                BytePointer start = new BytePointer(PROBED + (long) AVPROBE_PADDING_SIZE);
                BytePointer unnamed = new BytePointer("");
                AVProbeData probe = new AVProbeData();
                IntPointer score = new IntPointer(1)) {
            byte[] bytes = in.readNBytes(PROBED);
            start.zero();
            start.put(bytes, 0, bytes.length);
            probe.filename(unnamed).buf(start).buf_size(bytes.length);
            return av_probe_input_format3(probe, 1, score);
        } catch (IOException e) {
            // opening it says what is wrong
            return null;
        }
    }

    private AVStream picture(long limitNanos) throws ClipException {
        checkSizes();
        if (streamInfo() < 0) {
            throw overdue()
                    ? tooSlow(limitNanos)
                    : new ClipException(Sentences.of(OpenedStream.class).of("clip.no-streams", name));
        }
        if (overdue()) {
            throw tooSlow(limitNanos);
        }
        checkSizes();
        int best = av_find_best_stream(format, AVMEDIA_TYPE_VIDEO, -1, -1, (AVCodec) null, 0);
        if (best < 0) {
            throw new ClipException(Sentences.of(OpenedStream.class).of("clip.no-picture", name));
        }
        tiles = TileGrid.of(name, format);
        if (tiles.isPresent()) {
            checkSize(tiles.get().width(), tiles.get().height(), tiles.get().pixels());
            return tiles.get().first();
        }
        AVCodecParameters parameters = format.streams(best).codecpar();
        if (parameters.width() < 1 || parameters.height() < 1) {
            throw new ClipException(Sentences.of(OpenedStream.class).of("clip.no-size", name));
        }
        return format.streams(best);
    }

    private void checkSizes() throws ClipException {
        for (int i = 0; i < format.nb_streams(); i++) {
            AVCodecParameters parameters = format.streams(i).codecpar();
            if ((long) parameters.width() * parameters.height() > MOST_PIXELS) {
                throw new ClipException(Sentences.of(OpenedStream.class)
                        .of(
                                "clip.large-header",
                                name,
                                parameters.width(),
                                parameters.height(),
                                MOST_PIXELS / 1_000_000));
            }
        }
    }

    /** Reads as much as is needed to know the streams; what it decodes for that obeys the limit of size. */
    private int streamInfo() {
        int streams = format.nb_streams();
        try (PointerPointer<AVDictionary> options = new PointerPointer<>(Math.max(1, streams))) {
            for (int i = 0; i < streams; i++) {
                AVDictionary limit = new AVDictionary(null);
                av_dict_set(limit, "max_pixels", Long.toString(MOST_PIXELS), 0);
                options.put(i, limit);
            }
            int result = avformat_find_stream_info(format, options);
            for (int i = 0; i < streams; i++) {
                av_dict_free(new AVDictionary(options.get(i)));
            }
            return result;
        }
    }

    private AVCodecContext decoder() throws ClipException {
        AVCodecParameters parameters = stream.codecpar();
        AVCodec decoder = avcodec_find_decoder(parameters.codec_id());
        if (decoder == null) {
            throw new ClipException(Sentences.of(OpenedStream.class).of("clip.no-decoder", name, codecName()));
        }
        AVCodecContext context = avcodec_alloc_context3(decoder);
        avcodec_parameters_to_context(context, parameters);
        context.pkt_timebase(stream.time_base());
        context.max_pixels(MOST_PIXELS);
        context.thread_count(Math.min(8, Runtime.getRuntime().availableProcessors()));
        if (avcodec_open2(context, decoder, (AVDictionary) null) < 0) {
            avcodec_free_context(context);
            throw new ClipException(Sentences.of(OpenedStream.class).of("clip.stream", name, codecName()));
        }
        return context;
    }

    private ClipException tooSlow(long limitNanos) {
        return new ClipException(
                Sentences.of(OpenedStream.class).of("clip.slow-opening", name, limitNanos / 1_000_000_000));
    }

    /** From now on reading gives up after that long. */
    void within(long nanos) {
        deadline.put(System.nanoTime() + nanos);
    }

    boolean overdue() {
        return System.nanoTime() - deadline.get() > 0;
    }

    /** Which share of the file lies before a place in it, 0 to 1; 0 where that is not known. */
    double share(long atByte) {
        return atByte > 0 && sizeBytes > 0 ? Math.min(1, (double) atByte / sizeBytes) : 0;
    }

    AVFormatContext format() {
        return format;
    }

    AVStream stream() {
        return stream;
    }

    AVCodecContext codec() {
        return codec;
    }

    String name() {
        return name;
    }

    String codecName() {
        return avcodec_get_name(stream.codecpar().codec_id()).getString();
    }

    /** A photograph stored in tiles. */
    Optional<TileGrid> tiles() {
        return tiles;
    }

    private void checkSize(long width, long height, long pixels) throws ClipException {
        if (width < 1 || height < 1 || pixels > MOST_PIXELS || width * height > pixels) {
            throw new ClipException(
                    Sentences.of(OpenedStream.class).of("clip.large", name, width, height, MOST_PIXELS / 1_000_000));
        }
    }

    /** Width with pixels made square, and height, before turning. */
    int[] size() throws ClipException {
        if (tiles.isPresent()) {
            return new int[] {tiles.get().width(), tiles.get().height()};
        }
        AVRational aspect = av_guess_sample_aspect_ratio(format, stream, null);
        double wide = aspect.num() > 0 && aspect.den() > 0 ? (double) aspect.num() / aspect.den() : 1;
        long width = Math.round(stream.codecpar().width() * (wide > 0.2 && wide < 5 ? wide : 1));
        int height = stream.codecpar().height();
        checkSize(width, height, width * height);
        return new int[] {(int) width, height};
    }

    /** What the file says about itself and its picture, by name. */
    Map<String, String> notes() {
        Map<String, String> all = new TreeMap<>();
        for (AVDictionary notes : new AVDictionary[] {format.metadata(), stream.metadata()}) {
            AVDictionaryEntry entry = null;
            while (notes != null && (entry = av_dict_iterate(notes, entry)) != null) {
                all.put(entry.key().getString(), entry.value().getString());
            }
        }
        return all;
    }

    @Override
    public void close() {
        if (!closed) {
            closed = true;
            if (!codec.isNull()) {
                avcodec_free_context(codec);
            }
            avformat_close_input(format);
            deadline.close();
        }
    }
}

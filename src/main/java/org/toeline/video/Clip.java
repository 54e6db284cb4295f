package org.toeline.video;

import static org.bytedeco.ffmpeg.global.avutil.av_frame_free;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.javacpp.Pointer;
import org.toeline.language.Sentences;

/**
 * A clip as a list of frames. Frames are addressed by their place or by presentation time, and the frame asked for is
 * the frame returned: the list comes from reading every packet once, and a frame is found by decoding from the key
 * frame before it until its own time comes up. Frames near the last one asked for are kept, those in the direction of
 * travel are decoded ahead, and of the nearest the pictures are made ahead: a step either way finds its picture there.
 *
 * <p>Any thread may call it; calls wait for one another. Native memory is released by {@link #close}, once.
 */
public final class Clip implements AutoCloseable {

    /** What decoded frames may take, bytes. */
    private static final long CACHE_BYTES = 512L << 20;
    /** What opening may take. */
    private static final long OPEN_NANOS = 20_000_000_000L;
    /** A time is written with three digits: it means the frame that begins up to this much later. */
    private static final double ROUNDING_S = 0.0005;

    private final Path file;
    private final ClipReader reader;
    private final PacketIndex index;
    private final DecodingThread decoding;
    private final PreparedPictures pictures;
    private final PictureConverter converter;
    private final ClipInfo info;
    private final OptionalDouble captureRate;
    private final int[] size;
    private final Orientation orientation;
    private final Object asking = new Object();
    private volatile boolean closed;

    private Clip(Path file, ClipReader reader, PacketIndex index, long cacheBytes) throws ClipException {
        this.file = file;
        this.reader = reader;
        this.index = index;
        OpenedStream opened = reader.opened();
        this.size = opened.size();
        FrameDecoder decoder = new FrameDecoder(reader, index);
        this.orientation = opened.tiles()
                .map(TileGrid::orientation)
                .orElseGet(() -> reader.isPhotograph()
                        ? Orientation.ofPhotograph(file)
                        : Orientation.of(opened.stream().codecpar()));
        double start = reader.seconds(index.pts(0));
        boolean turned = orientation.onItsSide();
        this.info = new ClipInfo(
                turned ? size[1] : size[0],
                turned ? size[0] : size[1],
                orientation.clockwise(),
                orientation.mirrored(),
                index.frames(),
                start,
                reader.seconds(index.end()) - start,
                reader.missingSeconds(index),
                opened.codecName());
        this.captureRate = SlowMotion.captureRate(opened.notes());
        this.converter = converter();
        this.decoding = new DecodingThread(
                "decoding " + file.getFileName(),
                decoder,
                new FrameCache(cacheBytes, (long) size[0] * size[1] * 3 / 2),
                index.frames());
        this.pictures =
                new PreparedPictures("pictures of " + file.getFileName(), decoding, converter(), size[0] * size[1]);
        decoding.tell(pictures::news);
    }

    /** Opens a clip, or a photograph as a clip of one frame, and lists its frames: about as long as reading the file. */
    public static Clip open(Path file) throws ClipException {
        return open(file, CACHE_BYTES);
    }

    /**
     * The same with another bound on memory.
     *
     * @param cacheBytes what decoded frames may take beyond the four that are always kept; 512 MB if not said
     */
    public static Clip open(Path file, long cacheBytes) throws ClipException {
        return open(file, cacheBytes, OPEN_NANOS);
    }

    /** The same for a file that may be long: told how much of it is read. Empty when {@code progress} said to stop. */
    public static Optional<Clip> open(Path file, Progress progress) throws ClipException {
        return open(file, progress, KeptIndexes.none());
    }

    /** The same; a long file's list of frames is kept, and found again when the file is the same. */
    public static Optional<Clip> open(Path file, Progress progress, KeptIndexes kept) throws ClipException {
        return open(file, CACHE_BYTES, OPEN_NANOS, progress, kept);
    }

    static Clip open(Path file, long cacheBytes, long limitNanos) throws ClipException {
        return open(file, cacheBytes, limitNanos, Progress.NONE, KeptIndexes.none())
                .orElseThrow();
    }

    private static Optional<Clip> open(Path file, long cacheBytes, long limitNanos, Progress progress, KeptIndexes kept)
            throws ClipException {
        checkFile(file);
        if (progress.at(0) == Progress.Step.STOP) {
            return Optional.empty();
        }
        ClipReader reader = new ClipReader(new OpenedStream(file, limitNanos));
        boolean used = false;
        try {
            Optional<PacketIndex> index = listed(file, reader, progress, kept);
            if (index.isEmpty()) {
                return Optional.empty();
            }
            Clip clip = new Clip(file, reader, index.get(), cacheBytes);
            used = true;
            return Optional.of(clip);
        } finally {
            if (!used) {
                reader.close();
            }
        }
    }

    private static Optional<PacketIndex> listed(Path file, ClipReader reader, Progress progress, KeptIndexes kept)
            throws ClipException {
        Optional<PacketIndex> before = kept.find(file);
        if (before.isPresent()) {
            return before;
        }
        int known = reader.knownAtOnce();
        Optional<PacketIndex> index = reader.index(progress);
        // a file whose reader learns where its frames are by reading it has to be read
        index.filter(i -> known >= i.frames()).ifPresent(i -> kept.keep(file, i));
        return index;
    }

    private static void checkFile(Path file) throws ClipException {
        if (!Files.exists(file)) {
            throw new ClipException(Sentences.of(Clip.class).of("clip.no-file", file));
        }
        if (Files.isDirectory(file)) {
            throw new ClipException(Sentences.of(Clip.class).of("clip.folder", file));
        }
        if (!Files.isRegularFile(file)) {
            throw new ClipException(Sentences.of(Clip.class).of("clip.device", file));
        }
        if (!Files.isReadable(file)) {
            throw new ClipException(Sentences.of(Clip.class).of("clip.not-allowed", file));
        }
    }

    /** What turns this clip's decoded frames into pictures; the caller closes it. */
    PictureConverter converter() {
        return new PictureConverter(file.toString(), size[0], size[1], orientation);
    }

    /** Another reader of the same file, which the caller closes. */
    ClipReader another() throws ClipException {
        return new ClipReader(new OpenedStream(file, OPEN_NANOS));
    }

    /** Frames at most between two that are decoded without them. */
    int mostBetween() {
        return index.mostBetween();
    }

    Orientation orientation() {
        return orientation;
    }

    public Path file() {
        return file;
    }

    public ClipInfo info() {
        return info;
    }

    /** Frames a second at which the pictures were taken, if the file says; the rate at which they are shown is another. */
    public OptionalDouble captureRate() {
        return captureRate;
    }

    /** How its time relates to real time, as far as the file says; real time where it says nothing. */
    public SlowMotion slowMotion() {
        return captureRate.isPresent() ? capturedAt(captureRate.getAsDouble()) : SlowMotion.NONE;
    }

    /** The same for a rate that a person knows, 1 to 100 000 frames a second. */
    public SlowMotion capturedAt(double framesPerSecond) {
        return SlowMotion.of(framesPerSecond, usualRate());
    }

    /** Frames a second by the middle one of all steps: a pause in an uneven clip does not count. */
    private double usualRate() {
        double[] steps = new double[index.frames() - 1];
        for (int i = 0; i < steps.length; i++) {
            steps[i] = gap(i);
        }
        Arrays.sort(steps);
        return steps.length == 0 ? 0 : 1 / steps[steps.length / 2];
    }

    public int frameCount() {
        return index.frames();
    }

    /** Presentation time of a frame, seconds. */
    public double seconds(int frame) {
        return reader.seconds(index.pts(frame));
    }

    /** The frame shown at a time: the last that begins not later, to half a millisecond; the first before all. */
    public int indexAt(double seconds) {
        int i = index.lastUpTo(reader.pts(seconds));
        while (i + 1 < index.frames() && seconds(i + 1) <= seconds + Math.min(ROUNDING_S, gap(i) / 4)) {
            i++;
        }
        return i;
    }

    private double gap(int i) {
        return seconds(i + 1) - seconds(i);
    }

    /** Whether a frame is decoded already, so that it is there at once. */
    public boolean kept(int at) {
        return decoding.keeps(at);
    }

    /** The key frame at or before a frame: the nearest that can be had without decoding others. */
    public int keyFrame(int at) {
        return Math.max(0, Math.min(at, index.lastUpTo(index.keyUpTo(index.pts(at), 0))));
    }

    /** Time of that key frame, in the file's own units. */
    long keyTime(int at) {
        return index.keyUpTo(index.pts(at), 0);
    }

    /** Place of the frame of a time in the file's own units, or −1 when none has it. */
    int place(long pts) {
        return index.indexOf(pts);
    }

    /** Exactly that frame. */
    public Frame frame(int at) throws ClipException {
        check(at);
        synchronized (asking) {
            checkOpen();
            int travel = decoding.look(at);
            pictures.around(at, travel);
            Optional<int[]> ready = pictures.take(at);
            int[] pixels = ready.isPresent() ? ready.get() : new int[info.width() * info.height()];
            if (ready.isEmpty()) {
                convert(at, pixels);
                pictures.keep(at, pixels);
            }
            return new Frame(at, seconds(at), info.width(), info.height(), pixels);
        }
    }

    /**
     * Exactly that frame, into an array that is used again: for looking through many, one after the other.
     *
     * @param pixels as many as the picture has, which become as those of {@link Frame#argb()}
     */
    public void show(int at, int[] pixels) throws ClipException {
        check(at);
        if (pixels.length != info.width() * info.height()) {
            throw new IllegalArgumentException(
                    pixels.length + " pixels for a picture of " + info.width() + " × " + info.height());
        }
        synchronized (asking) {
            checkOpen();
            decoding.look(at);
            convert(at, pixels);
        }
    }

    private void check(int at) {
        if (at < 0 || at >= index.frames()) {
            throw new IllegalArgumentException("frame " + at + " of " + index.frames());
        }
    }

    private void checkOpen() {
        if (closed) {
            throw new IllegalStateException(file + " is closed");
        }
    }

    private void convert(int at, int[] pixels) throws ClipException {
        AVFrame decoded = decoding.frame(at)
                .orElseThrow(() -> new ClipException(Sentences.of(Clip.class)
                        .of("clip.frame", file, String.format(Locale.ROOT, "%.3f", seconds(at)))));
        try {
            converter.convert(decoded, pixels);
        } finally {
            av_frame_free(decoded);
        }
    }

    /** The frame shown at a time. */
    public Frame frameAt(double seconds) throws ClipException {
        return frame(indexAt(seconds));
    }

    /** Ends the decoding; a frame that is being waited for comes to nothing. */
    @Override
    public void close() {
        closed = true;
        decoding.close();
        pictures.close();
        synchronized (asking) {
            converter.close();
        }
        // the decoder's threads have ended: without this what they freed stays with the process
        Pointer.trimMemory();
    }
}

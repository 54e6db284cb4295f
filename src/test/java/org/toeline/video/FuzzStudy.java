package org.toeline.video;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import javax.imageio.ImageIO;
import org.toeline.video.TestClips.Coding;

/**
 * A command: damages copies of clips and opens each, reads frames of it forwards, backwards and at random. A copy is read,
 * or refused with a sentence; anything else ends the command with a stack trace or takes the process down. Arguments: an
 * empty folder, how many copies, then clips to damage besides those it makes. The last line counts.
 */
public final class FuzzStudy {

    private static final int FRAMES = 40;

    private FuzzStudy() {}

    public static void main(String[] args) throws IOException {
        Path folder = Path.of(args[0]);
        int copies = Integer.parseInt(args[1]);
        List<Path> whole = new java.util.ArrayList<>(made(folder));
        Arrays.stream(args, 2, args.length).map(Path::of).forEach(whole::add);
        int read = 0;
        int refused = 0;
        for (int i = 0; i < copies; i++) {
            Path from = whole.get(i % whole.size());
            String name = from.getFileName().toString();
            Path copy = folder.resolve("copy" + name.substring(name.lastIndexOf('.')));
            Files.write(copy, damaged(Files.readAllBytes(from), new SplittableRandom(i)));
            if (walk(copy, new SplittableRandom(i))) {
                read++;
            } else {
                refused++;
            }
            Files.delete(copy);
        }
        System.out.println(copies + " copies: " + read + " read, " + refused + " refused with a sentence");
    }

    private static List<Path> made(Path folder) throws IOException {
        long[] millis = LongStream.range(0, FRAMES).map(i -> i * 33).toArray();
        Path photo = folder.resolve("a.jpg");
        ImageIO.write(new BufferedImage(64, 48, BufferedImage.TYPE_INT_RGB), "jpg", photo.toFile());
        return List.of(
                TestClips.write(folder.resolve("a.mp4"), new Coding("libopenh264", "mp4", 12, 0, 90), millis),
                TestClips.write(folder.resolve("a.mkv"), new Coding("mpeg4", "mkv", 12, 2, 0), millis),
                TestClips.write(folder.resolve("a.webm"), new Coding("libvpx-vp9", "webm", 12, 0, 0), millis),
                photo);
    }

    /** Bytes changed anywhere, bytes changed in the headers at either end, a stretch of zeros, or cut short. */
    private static byte[] damaged(byte[] bytes, SplittableRandom random) {
        int n = bytes.length;
        int kind = random.nextInt(4);
        if (kind == 3) {
            return Arrays.copyOf(bytes, 1 + random.nextInt(n));
        }
        if (kind == 2) {
            int from = random.nextInt(n);
            Arrays.fill(bytes, from, Math.min(n, from + 1 + random.nextInt(2000)), (byte) 0);
            return bytes;
        }
        int many = 1 + random.nextInt(60);
        for (int i = 0; i < many; i++) {
            int at = random.nextInt(kind == 0 ? n : Math.min(n, 1500));
            bytes[kind == 1 && random.nextBoolean() ? n - 1 - at : at] = (byte) random.nextInt(256);
        }
        return bytes;
    }

    /** Whether the clip opened. */
    private static boolean walk(Path copy, SplittableRandom random) {
        try (Clip clip = Clip.open(copy)) {
            int n = clip.frameCount();
            int seen = 0;
            for (int i = 0; i < Math.min(n, 12); i++) {
                seen += shows(clip, i) + shows(clip, n - 1 - i) + shows(clip, random.nextInt(n));
            }
            if (seen > 36) {
                throw new IllegalStateException("more frames than asked for");
            }
            return true;
        } catch (ClipException e) {
            sentence(copy, e);
            return false;
        }
    }

    private static int shows(Clip clip, int frame) {
        try {
            Frame shown = clip.frame(frame);
            if (shown.index() != frame || shown.width() != clip.info().width()) {
                throw new IllegalStateException("another frame or size than said: " + shown.index());
            }
            return 1;
        } catch (ClipException e) {
            sentence(clip.file(), e);
            return 0;
        }
    }

    private static void sentence(Path file, ClipException e) {
        if (!e.getMessage().contains(file.getFileName().toString())
                || e.getMessage().contains("\n")) {
            throw new IllegalStateException("not a sentence that names the file: " + e.getMessage());
        }
    }
}

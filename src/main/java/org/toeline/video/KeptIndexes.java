package org.toeline.video;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import java.util.zip.InflaterInputStream;
import org.toeline.document.WholeFile;

/**
 * The lists of frames of long clips, kept in a folder so that a clip opened again is not read again. A list belongs to a
 * file's size, time of change, beginning and end; where one of these differs, or the list is damaged, the clip is read as
 * if there were none. Nothing in the folder is needed: it may be deleted at any time. Any thread may call it.
 */
public final class KeptIndexes {

    /** Smaller files are read in a moment. */
    private static final long LEAST_BYTES = 100L << 20;
    /** How much of a file's beginning and end counts. */
    private static final int LOOKED_AT = 1 << 16;

    private static final int MOST_KEPT = 200;
    private static final String ENDING = ".frames";
    private static final int FORMAT = 0x544C4601;

    private final Optional<Path> folder;
    private final long leastBytes;

    private KeptIndexes(Optional<Path> folder, long leastBytes) {
        this.folder = folder;
        this.leastBytes = leastBytes;
    }

    /** Nothing is kept. */
    public static KeptIndexes none() {
        return new KeptIndexes(Optional.empty(), Long.MAX_VALUE);
    }

    /** Kept in a folder, which is made when it is needed. */
    public static KeptIndexes in(Path folder) {
        return in(folder, LEAST_BYTES);
    }

    static KeptIndexes in(Path folder, long leastBytes) {
        return new KeptIndexes(Optional.of(folder), leastBytes);
    }

    /** The list of a file as it is now; empty when none is kept, or none that is whole. */
    Optional<PacketIndex> find(Path file) {
        try {
            Optional<Path> kept = place(file);
            if (kept.isEmpty() || !Files.isRegularFile(kept.get())) {
                return Optional.empty();
            }
            PacketIndex index = read(Files.readAllBytes(kept.get()));
            Files.setLastModifiedTime(kept.get(), FileTime.fromMillis(System.currentTimeMillis()));
            return Optional.of(index);
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /** Keeps a file's list; what cannot be kept is read anew the next time. */
    void keep(Path file, PacketIndex index) {
        try {
            Optional<Path> place = place(file);
            if (place.isPresent()) {
                WholeFile.write(place.get(), bytes(index));
                dropOldest(Objects.requireNonNull(place.get().toAbsolutePath().getParent()));
            }
        } catch (IOException e) {
            // nothing is lost but a moment at the next opening
            return;
        }
    }

    private static void dropOldest(Path folder) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            List<Path> newestFirst = all.filter(f -> f.toString().endsWith(ENDING))
                    .sorted(Comparator.comparingLong((Path f) -> f.toFile().lastModified())
                            .reversed())
                    .toList();
            for (Path old : newestFirst.subList(Math.min(MOST_KEPT, newestFirst.size()), newestFirst.size())) {
                Files.deleteIfExists(old);
            }
        }
    }

    /** Where the list of a file lies or would lie; empty when it is not worth keeping. */
    private Optional<Path> place(Path file) throws IOException {
        long size = Files.size(file);
        if (folder.isEmpty() || size < leastBytes) {
            return Optional.empty();
        }
        try (FileChannel channel = FileChannel.open(file)) {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            digest.update(ByteBuffer.allocate(2 * Long.BYTES)
                    .putLong(size)
                    .putLong(Files.getLastModifiedTime(file).toMillis())
                    .flip());
            digest.update(part(channel, 0));
            digest.update(part(channel, Math.max(0, size - LOOKED_AT)));
            return Optional.of(folder.get().resolve(HexFormat.of().formatHex(digest.digest()) + ENDING));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    private static ByteBuffer part(FileChannel channel, long from) throws IOException {
        ByteBuffer part = ByteBuffer.allocate(LOOKED_AT);
        while (part.hasRemaining() && channel.read(part, from + part.position()) >= 0) {
            continue;
        }
        return part.flip();
    }

    private static byte[] bytes(PacketIndex index) throws IOException {
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(new DeflaterOutputStream(packed, new Deflater()))) {
            index.write(out);
        }
        byte[] content = packed.toByteArray();
        ByteBuffer whole = ByteBuffer.allocate(Integer.BYTES + Long.BYTES + content.length);
        return whole.putInt(FORMAT).putLong(checksum(content)).put(content).array();
    }

    private static PacketIndex read(byte[] bytes) throws IOException {
        ByteBuffer whole = ByteBuffer.wrap(bytes);
        if (bytes.length < Integer.BYTES + Long.BYTES || whole.getInt() != FORMAT) {
            throw new IOException("not a list of frames");
        }
        long sum = whole.getLong();
        byte[] content = Arrays.copyOfRange(bytes, whole.position(), bytes.length);
        if (checksum(content) != sum) {
            throw new IOException("a damaged list of frames");
        }
        try (DataInputStream in = new DataInputStream(new InflaterInputStream(new ByteArrayInputStream(content)))) {
            return PacketIndex.read(in);
        }
    }

    private static long checksum(byte[] content) {
        CRC32 sum = new CRC32();
        sum.update(content);
        return sum.getValue();
    }
}

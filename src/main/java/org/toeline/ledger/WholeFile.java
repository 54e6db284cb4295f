package org.toeline.ledger;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;

/** Writes a file whole or not at all: beside its place first, forced to disk, then moved over it in one step. */
public final class WholeFile {

    private WholeFile() {}

    public static void write(Path file, byte[] bytes) throws IOException {
        Path absolute = file.toAbsolutePath();
        Path folder = absolute.getParent();
        if (folder != null) {
            Files.createDirectories(folder);
        }
        Path beside = absolute.resolveSibling("." + absolute.getFileName() + "-" + UUID.randomUUID() + ".part");
        try {
            try (FileChannel channel =
                    FileChannel.open(beside, StandardOpenOption.WRITE, StandardOpenOption.CREATE_NEW)) {
                ByteBuffer buffer = ByteBuffer.wrap(bytes);
                while (buffer.hasRemaining()) {
                    channel.write(buffer);
                }
                channel.force(true);
            }
            move(beside, absolute);
        } finally {
            Files.deleteIfExists(beside);
        }
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}

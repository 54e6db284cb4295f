package org.toeline.document;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystemException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Set;
import java.util.UUID;
import org.toeline.language.Sentences;

/**
 * Writes a file whole or not at all: beside its place first, forced to disk, moved over what was there in one step, and the
 * move forced too, so that neither a crash nor a power cut leaves half of it.
 */
public final class WholeFile {

    private static final boolean FOLDERS_OPEN = java.io.File.separatorChar == '/';

    private static final FileAttribute<?> OWNERS =
            PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"));

    private WholeFile() {}

    /** What is written into the file. */
    @FunctionalInterface
    public interface Content {
        void into(OutputStream out) throws IOException;
    }

    /** A file that holds a secret: nobody but its owner can read it, at any moment. */
    public static void writeForOwner(Path file, byte[] bytes) throws IOException {
        boolean posix = FileSystems.getDefault().supportedFileAttributeViews().contains("posix");
        write(file, out -> out.write(bytes), posix ? new FileAttribute<?>[] {OWNERS} : new FileAttribute<?>[0]);
    }

    public static void write(Path file, byte[] bytes) throws IOException {
        write(file, out -> out.write(bytes));
    }

    public static void write(Path file, Content content) throws IOException {
        write(file, content, new FileAttribute<?>[0]);
    }

    private static void write(Path file, Content content, FileAttribute<?>[] attributes) throws IOException {
        Path absolute = file.toAbsolutePath();
        if (absolute.getFileName() == null) {
            throw new FileSystemException(
                    file.toString(), null, Sentences.of(WholeFile.class).of("file.no-name"));
        }
        Path folder = absolute.getParent();
        if (folder != null) {
            Files.createDirectories(folder);
        }
        Path beside = absolute.resolveSibling("." + absolute.getFileName() + "-" + UUID.randomUUID() + ".part");
        try {
            try (FileChannel channel = FileChannel.open(
                            beside, Set.of(StandardOpenOption.WRITE, StandardOpenOption.CREATE_NEW), attributes);
                    OutputStream out = new BufferedOutputStream(Channels.newOutputStream(channel))) {
                content.into(out);
            }
            putInPlace(beside, absolute);
        } finally {
            Files.deleteIfExists(beside);
        }
    }

    /**
     * Moves a file that was written whole by other means into its place, over what is there, forced to disk before and after.
     *
     * @param beside in the same folder
     */
    public static Path putInPlace(Path beside, Path file) throws IOException {
        force(beside, StandardOpenOption.WRITE);
        try {
            Files.move(beside, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(beside, file, StandardCopyOption.REPLACE_EXISTING);
        }
        Path folder = file.toAbsolutePath().getParent();
        if (FOLDERS_OPEN && folder != null) {
            force(folder, StandardOpenOption.READ);
        }
        return file;
    }

    private static void force(Path path, StandardOpenOption how) throws IOException {
        try (FileChannel channel = FileChannel.open(path, how)) {
            channel.force(true);
        }
    }
}

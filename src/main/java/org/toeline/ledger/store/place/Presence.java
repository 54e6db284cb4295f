package org.toeline.ledger.store.place;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * That a program has a folder's ledger open: a locked file whose name says which. The operating system gives the lock up when the
 * program ends, however it ends. Announced and asked for while the {@link FolderLock} is held, so that nobody opens the ledger
 * while somebody needs it alone.
 */
public final class Presence implements AutoCloseable {

    private static final String PREFIX = ".open-by-";
    private static final Pattern NAME = Pattern.compile(Pattern.quote(PREFIX) + "(\\d+)-.*");

    private static final Set<Path> OWN = ConcurrentHashMap.newKeySet();

    private final Path file;
    private final FileChannel channel;

    private Presence(Path file, FileChannel channel) {
        this.file = file;
        this.channel = channel;
    }

    public static Presence announce(Path folder) throws IOException {
        Path file = folder.resolve(PREFIX + ProcessHandle.current().pid() + "-" + UUID.randomUUID());
        // known as this program's own before it is there: whoever lists the folder meanwhile leaves it alone
        OWN.add(file.toAbsolutePath());
        try {
            return new Presence(file, locked(file));
        } catch (IOException e) {
            OWN.remove(file.toAbsolutePath());
            throw e;
        }
    }

    private static FileChannel locked(Path file) throws IOException {
        FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        try {
            channel.lock();
            return channel;
        } catch (IOException e) {
            channel.close();
            throw e;
        }
    }

    /** The numbers of the programs that have the ledger open; what a program left that died is taken away. */
    public static List<Long> programs(Path folder) throws IOException {
        List<Long> programs = new ArrayList<>();
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, PREFIX + "*")) {
            for (Path file : files) {
                Matcher name = NAME.matcher(file.getFileName().toString());
                if (name.matches() && isHeld(file)) {
                    programs.add(Long.parseLong(name.group(1)));
                }
            }
        }
        return programs;
    }

    private static boolean isHeld(Path file) throws IOException {
        // opening and closing another channel of a file of this program's own would give its lock up
        if (OWN.contains(file.toAbsolutePath())) {
            return true;
        }
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            if (lock(channel) == null) {
                return true;
            }
        } catch (NoSuchFileException e) {
            // closed since the folder was listed: closing does not wait for the folder's lock
            return false;
        }
        Files.deleteIfExists(file);
        return false;
    }

    private static @Nullable FileLock lock(FileChannel channel) throws IOException {
        try {
            return channel.tryLock();
        } catch (OverlappingFileLockException e) {
            return null;
        }
    }

    @Override
    public void close() {
        try {
            channel.close();
            Files.deleteIfExists(file);
        } catch (IOException e) {
            // the lock ends with the program at the latest, and then the file counts for nothing
            System.getLogger(Presence.class.getName()).log(System.Logger.Level.DEBUG, "a ledger was closed", e);
        } finally {
            OWN.remove(file.toAbsolutePath());
        }
    }
}

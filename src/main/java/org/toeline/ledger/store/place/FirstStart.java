package org.toeline.ledger.store.place;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;

/**
 * The first desk that is started on a folder; a second one asks it to show itself, and ends. The operating system frees the
 * claim of a program that died. (Commands need none of this: any number of programs may have a ledger open.)
 */
public final class FirstStart implements AutoCloseable {

    private static final String CLAIM = ".desk.lock";
    private static final String DOOR = ".desk.port";
    private static final int ANSWER_MS = 2000;

    private final FileChannel channel;
    private final ServerSocket door;
    private final Path port;

    private FirstStart(FileChannel channel, ServerSocket door, Path port) {
        this.channel = channel;
        this.door = door;
        this.port = port;
    }

    /**
     * Claims a folder. Empty when another program has it; that one was asked to show itself then.
     *
     * @param show what to do when a later start asks; called on a thread of its own
     */
    public static Optional<FirstStart> claim(Path folder, Runnable show) throws IOException {
        Files.createDirectories(folder);
        Path port = folder.resolve(DOOR);
        FileChannel channel =
                FileChannel.open(folder.resolve(CLAIM), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        try {
            FileLock lock = tryLock(channel);
            if (lock == null) {
                channel.close();
                ask(port);
                return Optional.empty();
            }
            ServerSocket door = new ServerSocket(0, 5, InetAddress.getLoopbackAddress());
            write(port, Integer.toString(door.getLocalPort()));
            FirstStart first = new FirstStart(channel, door, port);
            Thread listener = new Thread(() -> first.listen(show), "second starts");
            listener.setDaemon(true);
            listener.start();
            return Optional.of(first);
        } catch (IOException e) {
            channel.close();
            throw e;
        }
    }

    private static @org.jspecify.annotations.Nullable FileLock tryLock(FileChannel channel) throws IOException {
        try {
            return channel.tryLock();
        } catch (OverlappingFileLockException e) {
            return null;
        }
    }

    private static void write(Path file, String text) throws IOException {
        try (FileChannel out = FileChannel.open(
                file, StandardOpenOption.CREATE, StandardOpenOption.WRITE, StandardOpenOption.TRUNCATE_EXISTING)) {
            out.write(ByteBuffer.wrap(text.getBytes(StandardCharsets.US_ASCII)));
        }
    }

    /** Whoever does not answer cannot be raised; then the person finds its window. */
    private static void ask(Path port) {
        try (Socket socket = new Socket()) {
            int number = Integer.parseInt(Files.readString(port).strip());
            socket.connect(new InetSocketAddress(InetAddress.getLoopbackAddress(), number), ANSWER_MS);
        } catch (IOException | IllegalArgumentException e) {
            System.getLogger(FirstStart.class.getName())
                    .log(System.Logger.Level.INFO, "the desk that is open does not answer: " + e.getMessage());
        }
    }

    private void listen(Runnable show) {
        while (!door.isClosed()) {
            try (Socket asked = door.accept()) {
                show.run();
            } catch (IOException e) {
                // closing the door ends the wait for the next one; anything else is the next one's
                continue;
            }
        }
    }

    @Override
    public void close() throws IOException {
        door.close();
        Files.deleteIfExists(port);
        channel.close();
    }
}

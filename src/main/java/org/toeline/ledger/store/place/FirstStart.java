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
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Consumer;

/**
 * The first desk that is started on a folder; a second one asks it to show itself, hands it the file it was started for, and ends.
 * Who asks has to say the word that lies in the folder: whoever cannot read the folder cannot have files opened. The operating system frees the
 * claim of a program that died. (Commands need none of this: any number of programs may have a ledger open.)
 */
public final class FirstStart implements AutoCloseable {

    private static final String CLAIM = ".desk.lock";
    private static final String DOOR = ".desk.port";
    private static final int ANSWER_MS = 2000;
    private static final int LONGEST_BYTES = 8192;

    private final FileChannel channel;
    private final ServerSocket door;
    private final Path port;
    private final String word;

    private FirstStart(FileChannel channel, ServerSocket door, Path port, String word) {
        this.channel = channel;
        this.door = door;
        this.port = port;
        this.word = word;
    }

    /**
     * Claims a folder. Empty when another program has it; that one was asked to show itself then.
     *
     * @param file what this start was asked to open; the other program opens it then
     * @param show what to do when a later start asks, with the file it was asked to open; called on a thread of its own
     */
    public static Optional<FirstStart> claim(Path folder, Optional<Path> file, Consumer<Optional<Path>> show)
            throws IOException {
        Files.createDirectories(folder);
        Path port = folder.resolve(DOOR);
        FileChannel channel =
                FileChannel.open(folder.resolve(CLAIM), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        try {
            FileLock lock = tryLock(channel);
            if (lock == null) {
                channel.close();
                ask(port, file);
                return Optional.empty();
            }
            ServerSocket door = new ServerSocket(0, 5, InetAddress.getLoopbackAddress());
            String word = UUID.randomUUID().toString();
            write(port, door.getLocalPort() + "\n" + word + "\n");
            FirstStart first = new FirstStart(channel, door, port, word);
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
    private static void ask(Path port, Optional<Path> file) {
        try (Socket socket = new Socket()) {
            List<String> lines = Files.readAllLines(port, StandardCharsets.US_ASCII);
            socket.connect(
                    new InetSocketAddress(InetAddress.getLoopbackAddress(), Integer.parseInt(lines.get(0))), ANSWER_MS);
            String path = file.map(f -> f.toAbsolutePath().toString()).orElse("");
            socket.getOutputStream().write((lines.get(1) + "\n" + path + "\n").getBytes(StandardCharsets.UTF_8));
        } catch (IOException | IllegalArgumentException | IndexOutOfBoundsException e) {
            System.getLogger(FirstStart.class.getName())
                    .log(System.Logger.Level.INFO, "the desk that is open does not answer: " + e.getMessage());
        }
    }

    private void listen(Consumer<Optional<Path>> show) {
        while (!door.isClosed()) {
            try (Socket asked = door.accept()) {
                asked.setSoTimeout(ANSWER_MS);
                byte[] said = asked.getInputStream().readNBytes(LONGEST_BYTES);
                List<String> lines =
                        new String(said, StandardCharsets.UTF_8).lines().toList();
                if (lines.size() == 2 && lines.get(0).equals(word)) {
                    show.accept(
                            Optional.of(lines.get(1)).filter(p -> !p.isEmpty()).map(Path::of));
                }
            } catch (IOException | InvalidPathException e) {
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

package org.toeline.video;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.jspecify.annotations.Nullable;

/**
 * The coded small pictures of a clip, in memory up to a bound and beyond it in a temporary file that is gone with the program.
 * Any thread.
 */
final class QuickPictures implements AutoCloseable {

    private final byte[][] kept;
    private final long[] at;
    private final int[] lengths;
    private final long mostBytes;
    private long bytes;
    private @Nullable FileChannel spill;
    private boolean closed;

    /** @param mostBytes of memory */
    QuickPictures(int frames, long mostBytes) {
        this.kept = new byte[frames][];
        this.at = new long[frames];
        this.lengths = new int[frames];
        this.mostBytes = mostBytes;
    }

    synchronized void put(int frame, byte[] picture) throws IOException {
        if (closed) {
            return;
        }
        lengths[frame] = picture.length;
        if (bytes + picture.length <= mostBytes) {
            kept[frame] = picture;
            bytes += picture.length;
            return;
        }
        FileChannel file = spill == null ? file() : spill;
        spill = file;
        at[frame] = file.size();
        ByteBuffer out = ByteBuffer.wrap(picture);
        while (out.hasRemaining()) {
            file.write(out, at[frame] + out.position());
        }
    }

    /** A frame that cannot be decoded looks like the one before it. */
    synchronized void repeat(int frame, int before) {
        kept[frame] = kept[before];
        at[frame] = at[before];
        lengths[frame] = lengths[before];
    }

    private static FileChannel file() throws IOException {
        Path path = Files.createTempFile("toeline-", ".film");
        return FileChannel.open(
                path, StandardOpenOption.READ, StandardOpenOption.WRITE, StandardOpenOption.DELETE_ON_CLOSE);
    }

    /** Empty when there is none. */
    synchronized byte[] get(int frame) throws IOException {
        byte[] here = kept[frame];
        FileChannel file = spill;
        if (here != null || closed || lengths[frame] == 0 || file == null) {
            return here == null ? new byte[0] : here;
        }
        ByteBuffer in = ByteBuffer.allocate(lengths[frame]);
        while (in.hasRemaining() && file.read(in, at[frame] + in.position()) >= 0) {
            continue;
        }
        return in.array();
    }

    synchronized long inMemoryBytes() {
        return bytes;
    }

    @Override
    public synchronized void close() {
        closed = true;
        java.util.Arrays.fill(kept, null);
        try {
            if (spill != null) {
                spill.close();
            }
        } catch (IOException e) {
            // a temporary file that cannot be closed goes with the program
            return;
        }
    }
}

package org.toeline.ledger.store.place;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.concurrent.locks.ReentrantLock;

/**
 * Lets one program at a time make, migrate or restore the ledger of a folder. The operating system gives the lock up when the
 * program ends, however it ends; the empty file stays.
 */
public final class FolderLock implements AutoCloseable {

    private static final String FILE = ".ledger.lock";
    /** A file lock is the whole program's: threads wait here. */
    private static final ReentrantLock THREADS = new ReentrantLock();

    private final FileChannel channel;

    private FolderLock(FileChannel channel) {
        this.channel = channel;
    }

    /** Waits until the folder is free. */
    public static FolderLock take(Path folder) throws IOException {
        THREADS.lock();
        boolean taken = false;
        try {
            FileChannel channel =
                    FileChannel.open(folder.resolve(FILE), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            try {
                channel.lock();
                taken = true;
                return new FolderLock(channel);
            } finally {
                if (!taken) {
                    channel.close();
                }
            }
        } finally {
            // by whatever it was that it could not be taken
            if (!taken) {
                THREADS.unlock();
            }
        }
    }

    @Override
    public void close() throws IOException {
        try {
            channel.close();
        } finally {
            THREADS.unlock();
        }
    }
}

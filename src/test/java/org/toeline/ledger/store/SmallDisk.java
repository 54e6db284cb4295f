package org.toeline.ledger.store;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;

/** A small disk of its own in memory, where the machine lets a test mount one. */
final class SmallDisk implements AutoCloseable {

    private final Path at;
    private boolean mounted;

    private SmallDisk(Path at) {
        this.at = at;
    }

    /** Tries to; {@link #isMounted} tells. */
    static SmallDisk mount(Path at, int kilobytes) throws IOException, InterruptedException {
        SmallDisk disk = new SmallDisk(at);
        disk.mounted = run("mount", "-t", "tmpfs", "-o", "size=" + kilobytes + "k", "tmpfs", at.toString());
        return disk;
    }

    boolean isMounted() {
        return mounted;
    }

    void makeReadOnly() throws IOException, InterruptedException {
        require(run("mount", "-o", "remount,ro", at.toString()));
    }

    void makeWritable() throws IOException, InterruptedException {
        require(run("mount", "-o", "remount,rw", at.toString()));
    }

    private static void require(boolean done) throws IOException {
        if (!done) {
            throw new IOException("the disk could not be mounted anew");
        }
    }

    private static boolean run(String... command) throws IOException, InterruptedException {
        try {
            Process process = new ProcessBuilder(command)
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
            return process.waitFor(20, TimeUnit.SECONDS) && process.exitValue() == 0;
        } catch (IOException e) {
            return false;
        }
    }

    @Override
    public void close() throws IOException, InterruptedException {
        if (mounted) {
            run("umount", "-l", at.toString());
        }
    }
}

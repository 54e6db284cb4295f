package org.toeline.ledger.store.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever goes wrong while it is taken, the next one gets it. */
class FolderLockTest {

    @Test
    void whatGoesWrongLeavesNobodyWaiting(@TempDir Path folder) throws Exception {
        try (FileChannel other =
                FileChannel.open(folder.resolve(".ledger.lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
            other.lock();
            assertThatThrownBy(() -> FolderLock.take(folder)).isInstanceOf(OverlappingFileLockException.class);
        }
        CompletableFuture<Boolean> next = CompletableFuture.supplyAsync(() -> {
            try (FolderLock lock = FolderLock.take(folder)) {
                return true;
            } catch (Exception e) {
                return false;
            }
        });
        assertThat(next.get(20, TimeUnit.SECONDS)).isTrue();
    }
}

package org.toeline.ledger.store.place;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PresenceTest {

    @TempDir
    Path folder;

    /** Who closes a ledger waits for nobody, so that a file may be gone between the listing of the folder and the look at it. */
    @Test
    void whoClosesMeanwhileIsNoFault() throws Exception {
        ExecutorService other = Executors.newSingleThreadExecutor();
        Future<?> comesAndGoes = other.submit(() -> {
            for (int i = 0; i < 3000; i++) {
                Presence.announce(folder).close();
            }
            return null;
        });
        while (!comesAndGoes.isDone()) {
            Presence.programs(folder);
        }
        comesAndGoes.get();
        other.shutdown();
        assertThat(Presence.programs(folder)).isEmpty();
    }

    @Test
    void whoHasItOpenIsNamed() throws Exception {
        try (Presence here = Presence.announce(folder)) {
            assertThat(Presence.programs(folder))
                    .containsExactly(ProcessHandle.current().pid());
        }
        assertThat(Presence.programs(folder)).isEmpty();
    }
}

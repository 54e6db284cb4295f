package org.toeline.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.net.URL;
import java.net.URLClassLoader;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CyclicBarrier;
import org.junit.jupiter.api.Test;

/** Two threads that come to covers at the same time, by different doors, both get in. */
class FaceCoverStartTest {

    private static final int ROUNDS = 40;

    @Test
    void noThreadWaitsForTheOther() throws Exception {
        URL[] places = Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator))
                .map(File::new)
                .map(file -> {
                    try {
                        return file.toURI().toURL();
                    } catch (java.net.MalformedURLException e) {
                        throw new IllegalStateException(e);
                    }
                })
                .toArray(URL[]::new);
        for (int round = 0; round < ROUNDS; round++) {
            try (URLClassLoader fresh = new URLClassLoader(places, ClassLoader.getPlatformClassLoader())) {
                CyclicBarrier both = new CyclicBarrier(2);
                List<Thread> threads = new ArrayList<>();
                for (String name : List.of("", "$Shown")) {
                    Class.forName(FaceCover.class.getName() + name, false, fresh);
                    Thread thread = new Thread(() -> {
                        try {
                            both.await();
                            Class.forName(FaceCover.class.getName() + name, true, fresh);
                        } catch (Exception e) {
                            throw new IllegalStateException(e);
                        }
                    });
                    thread.setDaemon(true);
                    threads.add(thread);
                    thread.start();
                }
                for (Thread thread : threads) {
                    thread.join(5_000);
                    assertThat(thread.isAlive()).as("round %d", round).isFalse();
                }
            }
        }
    }
}

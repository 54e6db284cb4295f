package org.toeline.desk.shots;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import javafx.application.Platform;

/**
 * How long the interface thread is at work at a stretch, and at what. A task that would run at once is asked for again and
 * again: the work between two such tasks is a turn, measured in the thread's own processor time, so that what others do on
 * the machine does not count. Another thread takes the interface thread's stack every few milliseconds.
 */
final class LongTurns {

    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
    private static final long SAMPLE_MILLIS = 3;
    private static final long REST_MILLIS = 2;
    private static final int PLACES = 10;
    /** Parts of the toolkit's own work. */
    private static final Set<String> PHASES = Set.of(
            "Scene.doCSSPass",
            "Scene.doLayoutPass",
            "Scene$ScenePulseListener.synchronizeSceneNodes",
            "VirtualFlow.layoutChildren",
            "Node.applyCss",
            "TableRowSkinBase.updateCells",
            "Unsafe.park");

    /**
     * A turn.
     *
     * @param begunMillis when, from the first on
     * @param stacks      where the thread stood meanwhile
     */
    record Turn(double begunMillis, double workMillis, double clockMillis, List<StackTraceElement[]> stacks) {}

    private final List<Turn> turns = new ArrayList<>();
    private final List<StackTraceElement[]> standing = new ArrayList<>();
    private final Thread interfaceThread;
    private final long begun = System.nanoTime();
    private final double leastMillis;
    private long worked;
    private long ended = begun;
    private int counted;
    private volatile boolean over;

    /**
     * On the interface thread.
     *
     * @param leastMillis shorter turns are counted only
     */
    LongTurns(double leastMillis) {
        this.leastMillis = leastMillis;
        interfaceThread = Thread.currentThread();
        worked = THREADS.getCurrentThreadCpuTime();
        start("asks for turns", this::ask);
        start("looks at stacks", this::look);
    }

    private void start(String name, Runnable work) {
        Thread thread = new Thread(work, name);
        thread.setDaemon(true);
        thread.start();
    }

    private void ask() {
        while (!over) {
            CountDownLatch turn = new CountDownLatch(1);
            Platform.runLater(() -> {
                turned();
                turn.countDown();
            });
            try {
                turn.await();
                TimeUnit.MILLISECONDS.sleep(REST_MILLIS);
            } catch (InterruptedException e) {
                return;
            }
        }
    }

    private void look() {
        while (!over) {
            StackTraceElement[] stack = interfaceThread.getStackTrace();
            synchronized (standing) {
                standing.add(stack);
            }
            try {
                TimeUnit.MILLISECONDS.sleep(SAMPLE_MILLIS);
            } catch (InterruptedException e) {
                return;
            }
        }
    }

    /** On the interface thread, where it begins with something new: when a pulse begins, too. */
    void turned() {
        long now = System.nanoTime();
        long work = THREADS.getCurrentThreadCpuTime();
        double millis = (work - worked) / 1e6;
        synchronized (standing) {
            counted++;
            if (millis >= leastMillis) {
                turns.add(new Turn((ended - begun) / 1e6, millis, (now - ended) / 1e6, List.copyOf(standing)));
            }
            standing.clear();
        }
        worked = work;
        ended = now;
    }

    /** On the interface thread: what is at work now ends a turn too. */
    void end() {
        turned();
        over = true;
    }

    double longestMillis() {
        return turns.stream().mapToDouble(Turn::workMillis).max().orElse(0);
    }

    /** @param most so many turns, the longest first, each with where its stacks stood most often */
    void print(int most, int frames) {
        System.out.printf(Locale.ROOT, "%d turns, %d of %.0f ms and more%n", counted, turns.size(), leastMillis);
        turns.stream()
                .sorted(Comparator.comparingDouble(Turn::workMillis).reversed())
                .limit(most)
                .forEach(t -> print(t, frames));
    }

    private static void print(Turn turn, int frames) {
        System.out.printf(
                Locale.ROOT,
                "at %.0f ms: %.0f ms of work, %.0f ms on the clock, %d stacks%n",
                turn.begunMillis,
                turn.workMillis,
                turn.clockMillis,
                turn.stacks.size());
        Map<String, Integer> places = new LinkedHashMap<>();
        for (StackTraceElement[] stack : turn.stacks) {
            places.merge(place(stack, frames), 1, Integer::sum);
        }
        places.entrySet().stream()
                .sorted(Map.Entry.<String, Integer>comparingByValue().reversed())
                .limit(PLACES)
                .forEach(e -> System.out.printf("    %3d × %s%n", e.getValue(), e.getKey()));
    }

    /** From the outside in: what part of the toolkit's turn it is, then the program's own places. */
    private static String place(StackTraceElement[] stack, int frames) {
        List<String> told = new ArrayList<>();
        for (int i = stack.length - 1; i >= 0 && told.size() < frames; i--) {
            String owner = stack[i].getClassName();
            String name = owner.substring(owner.lastIndexOf('.') + 1) + "." + stack[i].getMethodName();
            if (PHASES.contains(name) || owner.startsWith("org.toeline") && !name.contains("$$Lambda")) {
                if (told.isEmpty() || !told.get(told.size() - 1).equals(name)) {
                    told.add(name);
                }
            }
        }
        return told.isEmpty() ? "elsewhere" : String.join(" > ", told);
    }
}

package org.toeline.flight.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** A season's table is read in the time that its rows take, not in the time that all pairs of them would. */
class LongTableTest {

    private static final int ROWS = 100_000;
    /** A few seconds; all pairs of rows took more than a minute. */
    private static final double MOST_SECONDS = 20;

    /** Processor time of this thread: what others do on the machine does not count. */
    @Test
    void aHundredThousandRowsAreReadInSeconds() {
        byte[] table = table(ROWS);
        long before = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        Proposal proposal = Proposal.of(table, "proposed");
        Imported read = ShotImport.read(table, proposal.template());
        double seconds = (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - before) / 1e9;

        assertThat(read.shots()).hasSize(ROWS);
        assertThat(read.leftOut()).isEmpty();
        assertThat(seconds).as("processor time in seconds").isLessThan(MOST_SECONDS);
    }

    private static byte[] table(int rows) {
        SplittableRandom random = new SplittableRandom(8);
        StringBuilder text = new StringBuilder(
                "Shot,Ball Speed (mph),Launch Angle (deg),Launch Direction (deg)," + "Spin Rate (rpm),Carry (yd)\n");
        for (int i = 0; i < rows; i++) {
            text.append(String.format(
                    Locale.ROOT,
                    "%d,%.1f,%.1f,%.1f%s,%d,%.1f%n",
                    i + 1,
                    random.nextDouble(140, 154),
                    random.nextDouble(8, 17),
                    random.nextDouble(0.1, 5),
                    random.nextBoolean() ? "L" : "R",
                    random.nextInt(2000, 3400),
                    random.nextDouble(215, 255)));
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }
}

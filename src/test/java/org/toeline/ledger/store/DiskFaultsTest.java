package org.toeline.ledger.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.place.LedgerException.Fault;
import org.toeline.ledger.store.place.LedgerFile;
import org.toeline.ledger.store.place.LedgerPlace;
import org.toeline.ledger.store.rows.Player;
import org.toeline.ledger.store.rows.PlayerDetails;
import org.toeline.ledger.store.rows.Saved;
import org.toeline.ledger.store.rows.Search;
import org.toeline.mark.Handedness;

/** A full disk and one that cannot be written, real ones; skipped where a test may not mount a disk. */
class DiskFaultsTest {

    private static final int DISK_KB = 1024;

    @TempDir
    private Path folder;

    private Path disk;
    private SmallDisk small;
    private LedgerPlace.Folder place;

    @BeforeEach
    void mount() throws Exception {
        disk = Files.createDirectories(folder.resolve("disk"));
        small = SmallDisk.mount(disk, DISK_KB);
        assumeTrue(small.isMounted(), "a disk can be mounted only by the superuser of a Linux machine");
        place = new LedgerPlace.Folder(disk.resolve("ledger"));
    }

    @AfterEach
    void unmount() throws Exception {
        small.close();
    }

    private void start() throws LedgerException {
        try (Ledger ledger = Ledger.open(place, "bay 1")) {
            Player player = ledger.addPlayer(PlayerDetails.of(Optional.of("B. Trial"), Handedness.RIGHT));
            ledger.keep(player.id(), TestLessons.lesson("B. Trial"), TestLessons.findings(5));
        }
    }

    /** The disk is filled to so many free bytes, from none upwards: whichever write fails, all is as before. */
    @Test
    void aFullDiskLosesNothing() throws Exception {
        start();
        Lesson larger = TestLessons.lesson("B. Trial", "word ".repeat(4000), 640);
        int refused = 0;
        int version = 1;
        for (int free = 0; free <= 192; free += 32) {
            try (Ledger ledger = Ledger.open(place, "bay 1")) {
                ledger.find(Search.RECENT);
                fill(free);
                try {
                    version = ((Saved.Done) ledger.save(1, version, larger, TestLessons.findings(8))).version();
                } catch (LedgerException e) {
                    refused++;
                    assertThat(e.fault()).as(e.getMessage()).isEqualTo(Fault.FULL);
                    assertThat(e.getMessage()).contains(place.file().toString()).contains("make room and try again");
                    assertThat(ledger.lesson(1).orElseThrow().version()).isEqualTo(version);
                    Files.delete(disk.resolve("ballast"));
                    version = ((Saved.Done)
                                    ledger.save(1, version, larger.withNotes("again " + free), TestLessons.findings(9)))
                            .version();
                }
                assertThat(ledger.check()).isEmpty();
            }
            Files.deleteIfExists(disk.resolve("ballast"));
        }
        assertThat(refused).isBetween(2, 6);
    }

    private void fill(int freeKb) throws Exception {
        long usable = Files.getFileStore(disk).getUsableSpace() - freeKb * 1024L;
        Files.write(disk.resolve("ballast"), new byte[(int) Math.max(0, usable)]);
    }

    @Test
    void noRoomForALedgerOrABackup() throws Exception {
        fill(20);
        assertThatExceptionOfType(LedgerException.class)
                .isThrownBy(() -> Ledger.open(place, "bay 1").close())
                .satisfies(e -> assertThat(e.fault()).as(e.getMessage()).isEqualTo(Fault.FULL));
        assertThat(place.file()).doesNotExist();
        Files.delete(disk.resolve("ballast"));
        start();
        try (Ledger ledger = Ledger.open(place, "bay 1");
                var files = Files.list(disk)) {
            assertThat(files).hasSize(1);
            Path first = ledger.backUp();
            fill(40);
            assertThatExceptionOfType(LedgerException.class)
                    .isThrownBy(ledger::backUp)
                    .satisfies(e -> assertThat(e.fault()).as(e.getMessage()).isEqualTo(Fault.FULL))
                    .withMessageContaining("older ones are kept");
            assertThat(Files.list(place.backups()).toList()).containsExactly(first);
        }
    }

    /** Shown, and said to be for reading only; what waits in the log is shown too. */
    @Test
    void aDiskThatCannotBeWrittenIsRead() throws Exception {
        start();
        small.makeReadOnly();
        assertReadable(1);
        small.makeWritable();
        try (Ledger ledger = Ledger.open(place, "bay 1")) {
            ledger.save(1, 1, TestLessons.lesson("B. Trial", "in the log", 640), List.of());
            assertThat(LedgerFile.hasLog(place.file())).isTrue();
            for (Path file : Files.list(place.folder()).toList()) {
                Files.copy(file, Files.createDirectories(disk.resolve("killed")).resolve(file.getFileName()));
            }
        }
        place = new LedgerPlace.Folder(disk.resolve("killed"));
        small.makeReadOnly();
        assertReadable(2);
        small.makeWritable();
    }

    private void assertReadable(int version) throws LedgerException {
        try (Ledger ledger = Ledger.open(place, "bay 1")) {
            assertThat(ledger.isReadOnly()).isTrue();
            assertThat(ledger.find(Search.text("tri"))).hasSize(1);
            assertThat(ledger.lesson(1).orElseThrow().version()).isEqualTo(version);
            assertThatExceptionOfType(LedgerException.class)
                    .isThrownBy(() -> ledger.save(1, version, TestLessons.lesson("B. Trial"), List.of()))
                    .satisfies(e -> assertThat(e.fault()).isEqualTo(Fault.READ_ONLY))
                    .withMessageContaining("save it elsewhere");
        }
    }

    @Test
    void aLedgerCannotBeMadeWhereNothingCanBeWritten() throws Exception {
        small.makeReadOnly();
        assertThatExceptionOfType(LedgerException.class)
                .isThrownBy(() -> Ledger.open(place, "bay 1").close())
                .satisfies(e -> assertThat(e.fault()).isEqualTo(Fault.READ_ONLY))
                .withMessageContaining("choose another folder");
    }
}

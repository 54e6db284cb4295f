package org.toeline.ledger.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.function.UnaryOperator;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.toeline.ledger.store.backup.ServerArchive;
import org.toeline.ledger.store.backup.ServerTables;
import org.toeline.ledger.store.place.Fingerprint;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.place.LedgerException.Fault;
import org.toeline.ledger.store.place.LedgerPlace;
import org.toeline.ledger.store.place.Schema;
import org.toeline.ledger.store.rows.KeptLesson;
import org.toeline.ledger.store.rows.Player;
import org.toeline.ledger.store.rows.PlayerDetails;
import org.toeline.mark.Handedness;
import org.toeline.mark.View;

/** The ledger on a real PostgreSQL server, a database a test. */
class PostgresLedgerTest extends LedgerContract {

    private static EmbeddedPostgres server;
    private String database = "postgres";

    @BeforeAll
    static void start() throws Exception {
        server = EmbeddedPostgres.builder()
                .setPGStartupWait(java.time.Duration.ofSeconds(90))
                // nothing here takes the machine's power away
                .setServerConfig("fsync", "off")
                .setServerConfig("full_page_writes", "off")
                .start();
        create("model", "template1");
        Ledger.open(place("model"), "first").close();
    }

    private static LedgerPlace.Server place(String database) {
        return new LedgerPlace.Server(server.getJdbcUrl("postgres", database), "postgres", "");
    }

    private static void create(String database, String model) throws SQLException {
        try (Connection connection = server.getPostgresDatabase().getConnection();
                Statement statement = connection.createStatement()) {
            statement.execute("create database " + database + " template " + model);
        }
    }

    @AfterAll
    static void stop() throws IOException {
        server.close();
    }

    @BeforeEach
    @Override
    void openOne() throws Exception {
        database = "t" + Long.toString(System.nanoTime(), 36);
        create(database, "model");
        super.openOne();
    }

    @Override
    Ledger open(String bay, Clock clock) throws LedgerException {
        return Ledger.open(place(database), bay, clock, UnaryOperator.identity());
    }

    @Test
    void tenBaysLoseNothing() throws Exception {
        Writers.Outcome outcome = Writers.run(place(database), 10, 15);
        assertThat(outcome.kept()).isEqualTo(150);
        assertThat(outcome.conflicts()).as("they did meet").isPositive();
    }

    /** The library that starts this server has it answer before it has written; what is said to be kept would not be. */
    @Test
    void theServerWritesBeforeItAnswers() throws Exception {
        try (Ledger ledger = Ledger.open(place(database), "bay 1")) {
            String answers = ledger.database()
                    .read(
                            "not read",
                            h -> h.createQuery("show synchronous_commit")
                                    .mapTo(String.class)
                                    .one());
            assertThat(answers).isEqualTo("on");
        }
    }

    private static void as(String database, String... statements) throws SQLException {
        try (Connection connection = server.getDatabase("postgres", database).getConnection();
                Statement statement = connection.createStatement()) {
            for (String sql : statements) {
                statement.execute(sql);
            }
        }
    }

    private LedgerPlace.Server role(String name, String... grants) throws SQLException {
        as(database, "drop role if exists " + name, "create role " + name + " login");
        as(database, grants);
        return new LedgerPlace.Server(server.getJdbcUrl(name, database), name, "");
    }

    /** Once a database is gone, what its roles may do is gone with it; until then a role cannot be dropped. */
    private void drop(String role) throws SQLException {
        as(database, "drop owned by " + role, "drop role " + role);
    }

    @Test
    void aRoleThatMayOnlyLookIsToldSo() throws Exception {
        KeptLesson kept;
        try (Ledger ledger = Ledger.open(place(database), "bay 1")) {
            Player player = ledger.addPlayer(PlayerDetails.of(Optional.of("Ana"), Handedness.RIGHT));
            kept = ledger.keep(player.id(), TestLessons.lesson("Ana"), TestLessons.findings(7.25));
        }
        LedgerPlace.Server looker = role("looker", "grant select on all tables in schema public to looker");
        try (Ledger ledger = Ledger.open(looker, "bay 2")) {
            assertThat(ledger.isReadOnly()).isTrue();
            assertThat(ledger.limits().orElseThrow()).contains("“looker” may look at", "may not keep");
            assertThat(ledger.lesson(kept.id())).contains(kept);
            assertThat(ledger.find(org.toeline.ledger.store.rows.Search.RECENT)).hasSize(1);
            assertThatExceptionOfType(LedgerException.class)
                    .isThrownBy(() -> ledger.save(kept.id(), 1, kept.lesson().withNotes("x"), List.of()))
                    .withMessageContaining("the lesson could not be saved; the role “looker” may look at")
                    .withMessageNotContaining("permission denied")
                    .extracting(LedgerException::fault)
                    .isEqualTo(Fault.NOT_ALLOWED);
            assertThatExceptionOfType(LedgerException.class)
                    .isThrownBy(() -> ledger.deletePlayer(
                            kept.playerId(),
                            org.toeline.ledger.store.backup.OldBackups.KEEP,
                            new LedgerPlace.Folder(Path.of("unused"))))
                    .withMessageContaining("may not keep, change or delete");
        } finally {
            drop("looker");
        }
    }

    @Test
    void aRoleThatMayNotDeleteKeepsLessons(@TempDir Path folder) throws Exception {
        LedgerPlace.Server keeper = role(
                "keeper",
                "grant select, insert, update, delete on all tables in schema public to keeper",
                "revoke delete on player, lesson, leftover from keeper");
        try (Ledger ledger = Ledger.open(keeper, "bay 2")) {
            assertThat(ledger.isReadOnly()).isFalse();
            assertThat(ledger.limits().orElseThrow()).contains("“keeper” may look at, keep and change", "not delete");
            Player player = ledger.addPlayer(PlayerDetails.of(Optional.of("Ana"), Handedness.RIGHT));
            KeptLesson kept = ledger.keep(player.id(), TestLessons.lesson("Ana"), TestLessons.findings(7.25));
            ledger.save(kept.id(), 1, kept.lesson().withNotes("more"), TestLessons.findings(8));
            ledger.keepShots(kept.id(), List.of());
            assertThatExceptionOfType(LedgerException.class)
                    .isThrownBy(() -> ledger.deleteLesson(
                            kept.id(), org.toeline.ledger.store.backup.OldBackups.KEEP, new LedgerPlace.Folder(folder)))
                    .withMessageContaining("the lesson could not be deleted; the role “keeper” may look at")
                    .withMessageNotContaining("permission denied")
                    .extracting(LedgerException::fault)
                    .isEqualTo(Fault.NOT_ALLOWED);
            assertThat(ledger.lesson(kept.id())).isPresent();
        } finally {
            drop("keeper");
        }
    }

    @Test
    void aRoleThatMayNothingIsToldSo() throws Exception {
        LedgerPlace.Server stranger = role("stranger");
        try {
            assertThatExceptionOfType(LedgerException.class)
                    .isThrownBy(() -> Ledger.open(stranger, "bay 2").close())
                    .withMessageContaining("the ledger could not be opened; the role “stranger” may not even look")
                    .extracting(LedgerException::fault)
                    .isEqualTo(Fault.NOT_ALLOWED);
        } finally {
            drop("stranger");
        }
    }

    @Test
    void aServerThatDoesNotAnswerIsSaid() {
        LedgerPlace.Server nowhere =
                new LedgerPlace.Server("jdbc:postgresql://localhost:1/none?password=secret", "x", "secret");
        assertThatExceptionOfType(LedgerException.class)
                .isThrownBy(() -> Ledger.open(nowhere, "bay 1").close())
                .satisfies(e -> assertThat(e.fault()).isEqualTo(LedgerException.Fault.UNREACHABLE))
                .withMessageStartingWith("jdbc:postgresql://localhost:1/none:")
                .withMessageNotContaining("secret");
    }

    @Test
    void aNewerServersLedgerIsRefused() throws Exception {
        try (Connection connection = server.getDatabase("postgres", database).getConnection();
                Statement statement = connection.createStatement()) {
            statement.execute("insert into flyway_schema_history select 99, '7', description, type, script, checksum,"
                    + " installed_by, installed_on, execution_time, success from flyway_schema_history where"
                    + " version = '1'");
        }
        assertThatExceptionOfType(LedgerException.class)
                .isThrownBy(() -> Ledger.open(place(database), "bay 1").close())
                .satisfies(e -> assertThat(e.fault()).isEqualTo(LedgerException.Fault.NEWER));
    }

    @Test
    void aBackupIsRestoredWholeIntoAnEmptyDatabase(@TempDir Path folder) throws Exception {
        LedgerPlace.Folder beside = new LedgerPlace.Folder(folder);
        KeptLesson kept;
        Path backup;
        try (Ledger ledger = Ledger.open(place(database), "bay 1")) {
            Player player =
                    ledger.addPlayer(PlayerDetails.of(Optional.of("Ana \\N \t Müller, “sample”"), Handedness.LEFT));
            kept = ledger.keep(player.id(), TestLessons.lesson("Ana"), TestLessons.findings(7.25));
            ledger.noteClip(kept.id(), View.FACE_ON, new Fingerprint(12, "0a".repeat(32)));
            backup = ledger.backUp(beside);
        }
        assertThat(backup.getParent()).isEqualTo(beside.backups());
        String other = emptyDatabase();
        Ledger.restore(place(other), backup);
        try (Ledger restored = Ledger.open(place(other), "bay 1")) {
            assertThat(restored.lesson(kept.id())).contains(kept);
            assertThat(restored.takes(kept.id()).get(0).fingerprint()).contains(new Fingerprint(12, "0a".repeat(32)));
            assertThat(restored.player(kept.playerId()).orElseThrow().details().name())
                    .contains("Ana \\N \t Müller, “sample”");
            assertThat(restored.check()).isEmpty();
            assertThat(restored.keep(kept.playerId(), TestLessons.lesson("Ana", "next", 600), List.of())
                            .id())
                    .as("numbers go on")
                    .isEqualTo(kept.id() + 1);
            assertThatExceptionOfType(LedgerException.class)
                    .isThrownBy(() -> Ledger.restore(place(other), backup))
                    .withMessageContaining("there is a ledger with players already");
        }
    }

    /** While bays write, a copy is of one moment: no lesson in it without its document, and every sum right. */
    @Test
    void aBackupIsOfOneMoment(@TempDir Path folder) throws Exception {
        LedgerPlace.Folder beside = new LedgerPlace.Folder(folder);
        List<Path> backups = new ArrayList<>();
        int before;
        Path amid;
        try (Ledger ledger = Ledger.open(place(database), "bay 0")) {
            Player player = ledger.addPlayer(PlayerDetails.of(Optional.of("Ana"), Handedness.RIGHT));
            before = ledger.keep(player.id(), TestLessons.lesson("Ana"), List.of())
                    .id();
            var writers = CompletableFuture.supplyAsync(() -> {
                try {
                    return Writers.run(place(database), 3, 12);
                } catch (Exception e) {
                    throw new IllegalStateException(e);
                }
            });
            do {
                backups.add(ledger.backUp(beside));
            } while (!writers.isDone() && backups.size() < 3);
            amid = backups.get(backups.size() - 1);
            writers.get();
            while (backups.size() < 6) {
                backups.add(ledger.backUp(beside));
            }
        }
        Path last = backups.get(backups.size() - 1);
        assertThat(last.getFileName().toString()).endsWith(String.format("-%06d.zip", backups.size()));
        try (var left = Files.list(beside.backups())) {
            assertThat(left)
                    .as("the five newest stay, nothing unfinished")
                    .containsExactlyInAnyOrderElementsOf(backups.subList(1, 6));
        }
        for (Path backup : backups.indexOf(amid) == 0 ? List.of(last) : List.of(amid, last)) {
            String other = emptyDatabase();
            Ledger.restore(place(other), backup);
            try (Ledger restored = Ledger.open(place(other), "bay 1")) {
                assertThat(restored.check()).isEmpty();
                assertThat(restored.lessonNumbers(Optional.empty())).contains(before);
            }
        }
    }

    @Test
    void aDamagedBackupIsRefusedAndNothingIsWritten(@TempDir Path folder) throws Exception {
        Path backup;
        try (Ledger ledger = Ledger.open(place(database), "bay 1")) {
            Player player = ledger.addPlayer(PlayerDetails.of(Optional.of("Ana"), Handedness.RIGHT));
            ledger.keep(player.id(), TestLessons.lesson("Ana"), TestLessons.findings(7.25));
            backup = ledger.backUp(new LedgerPlace.Folder(folder));
        }
        byte[] whole = Files.readAllBytes(backup);
        String other = emptyDatabase();
        java.util.SplittableRandom random = new java.util.SplittableRandom(5);
        int refused = 0;
        for (int i = 0; i < 40; i++) {
            byte[] damaged = whole.clone();
            damaged[random.nextInt(damaged.length)] ^= (byte) (1 << random.nextInt(8));
            Path file = Files.write(
                    folder.resolve("damaged.zip"),
                    i % 8 == 7 ? java.util.Arrays.copyOf(whole, whole.length / 2) : damaged);
            try {
                Ledger.restore(place(other), file);
                other = emptyDatabase();
            } catch (LedgerException e) {
                assertThat(e).hasMessageContaining("damaged.zip");
                refused++;
                assertThat(rows(other)).as(e.getMessage()).isZero();
            }
        }
        assertThat(refused).as("damage that was found").isGreaterThan(20);
        try (Ledger still = Ledger.open(place(other), "bay 1")) {
            assertThat(still.players()).isEmpty();
        }
    }

    /** In all tables of a ledger together but what its migrations put there; none where there is no ledger yet. */
    private static long rows(String database) throws SQLException {
        long rows = 0;
        try (Connection connection = server.getDatabase("postgres", database).getConnection();
                Statement statement = connection.createStatement()) {
            for (String table : tables(connection)) {
                try (ResultSet row = statement.executeQuery("select count(*) from " + table)) {
                    row.next();
                    rows += table.startsWith("flyway")
                                    || Set.of("counter", "leftover").contains(table)
                            ? 0
                            : row.getLong(1);
                }
            }
        }
        return rows;
    }

    private static List<String> tables(Connection connection) throws SQLException {
        List<String> tables = new ArrayList<>();
        try (ResultSet row = connection.getMetaData().getTables(null, "public", "%", new String[] {"TABLE"})) {
            while (row.next()) {
                tables.add(row.getString("TABLE_NAME"));
            }
        }
        return tables;
    }

    /** Whole archives whose index names tables no program, or only a newer one, ever had. */
    @Test
    void aBackupOfTablesThatAreNotKnownIsRefused(@TempDir Path folder) throws Exception {
        Path backup;
        try (Ledger ledger = Ledger.open(place(database), "bay 1")) {
            backup = ledger.backUp(new LedgerPlace.Folder(folder));
        }
        String other = emptyDatabase();
        for (int version : new int[] {-1, 0, Schema.LATEST + 1}) {
            Path file = withTables(version, backup, folder.resolve("unknown.zip"));
            assertThatExceptionOfType(LedgerException.class)
                    .isThrownBy(() -> Ledger.restore(place(other), file))
                    .withMessageContaining("unknown.zip")
                    .extracting(LedgerException::fault)
                    .isEqualTo(version > 0 ? Fault.NEWER : Fault.DAMAGED);
        }
        try (Connection connection = server.getDatabase("postgres", other).getConnection()) {
            assertThat(Schema.version(connection)).isEmpty();
        }
    }

    private static Path withTables(int version, Path backup, Path into) throws IOException {
        try (ZipFile from = new ZipFile(backup.toFile());
                ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(into))) {
            for (ZipEntry entry : java.util.Collections.list(from.entries())) {
                zip.putNextEntry(new ZipEntry(entry.getName()));
                byte[] bytes = from.getInputStream(entry).readAllBytes();
                zip.write(
                        entry.getName().equals(ServerArchive.INDEX)
                                ? new String(bytes, StandardCharsets.UTF_8)
                                        .replaceFirst("(\"tablesVersion\" : )\\d+", "$1" + version)
                                        .getBytes(StandardCharsets.UTF_8)
                                : bytes);
                zip.closeEntry();
            }
        }
        return into;
    }

    /** A table that a later version adds is not left out. */
    @Test
    void everyTableIsCopied() throws Exception {
        List<String> tables;
        try (Connection connection = server.getDatabase("postgres", database).getConnection()) {
            tables = tables(connection);
        }
        assertThat(ServerTables.ALL)
                .extracting(ServerTables.Table::name)
                .containsExactlyInAnyOrderElementsOf(
                        tables.stream().filter(t -> !t.startsWith("flyway")).toList());
    }

    private static String emptyDatabase() throws SQLException {
        String name = "e" + Long.toString(System.nanoTime(), 36);
        create(name, "template1");
        return name;
    }
}

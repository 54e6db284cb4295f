package org.toeline.ledger.store.backup;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.UUID;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import javax.sql.DataSource;
import org.toeline.document.WholeFile;
import org.toeline.language.Sentences;
import org.toeline.ledger.store.backup.ServerTables.Table;
import org.toeline.ledger.store.backup.ServerTables.Written;
import org.toeline.ledger.store.place.Faults;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.place.LedgerException.Fault;
import org.toeline.ledger.store.place.LedgerPlace;
import org.toeline.ledger.store.place.Schema;
import org.toeline.ledger.store.place.Sources;

/**
 * Copies of a server's ledger, made by PostgreSQL itself ({@code COPY}) as it stood at one moment, while others write. A copy
 * counts when it was read back into tables like the ledger's and came out the same, byte for byte.
 */
public final class ServerBackups {

    private static final Sentences SENTENCES = Sentences.of(ServerBackups.class);

    private static final String UNFINISHED = ".backup-";

    private final LedgerPlace.Server place;
    private final DataSource source;

    public ServerBackups(LedgerPlace.Server place) {
        this.place = place;
        this.source = Sources.server(place);
    }

    /** Such as server-db.example-5432-lessons-000012.zip. */
    private String prefix() {
        return "server-"
                + place.name()
                        .replaceFirst("^jdbc:postgresql:(//)?", "")
                        .toLowerCase(Locale.ROOT)
                        .replaceAll("[^a-z0-9.]+", "-")
                + "-";
    }

    /** Copies of this server's ledger in a folder, newest first. */
    public List<Path> all(Path folder) throws IOException {
        List<Path> found = new ArrayList<>();
        if (Files.isDirectory(folder)) {
            try (DirectoryStream<Path> files = Files.newDirectoryStream(
                    folder,
                    file -> file.getFileName()
                            .toString()
                            .matches(java.util.regex.Pattern.quote(prefix()) + "\\d{6}\\.zip"))) {
                files.forEach(found::add);
            }
        }
        found.sort(Comparator.comparing(Path::toString).reversed());
        return found;
    }

    public Path make(Path folder) throws LedgerException {
        try {
            Files.createDirectories(folder);
            Path beside = folder.resolve(UNFINISHED + UUID.randomUUID() + ".zip");
            try {
                write(beside);
                verify(beside);
                return named(beside, folder);
            } finally {
                Files.deleteIfExists(beside);
            }
        } catch (SQLException e) {
            throw Faults.of(e, SENTENCES.of("cannot.back-up"), place);
        } catch (IOException e) {
            throw new LedgerException(
                    Fault.OTHER, SENTENCES.of("backup.not-made", folder, String.valueOf(e.getMessage())), e);
        }
    }

    private Path named(Path beside, Path folder) throws IOException {
        List<Path> before = all(folder);
        int next = before.isEmpty() ? 1 : number(before.get(0)) + 1;
        Path made =
                WholeFile.putInPlace(beside, folder.resolve(prefix() + String.format(Locale.ROOT, "%06d.zip", next)));
        for (Path old : before.subList(Math.min(Backups.KEPT - 1, before.size()), before.size())) {
            Files.delete(old);
        }
        return made;
    }

    /** Takes away every copy in a folder but the one given, which has been verified. */
    public void dropAllBut(Path kept, Path folder) throws IOException {
        for (Path backup : all(folder)) {
            if (!backup.equals(kept)) {
                Files.delete(backup);
            }
        }
    }

    private int number(Path backup) {
        String name = backup.getFileName().toString();
        return Integer.parseInt(name.substring(prefix().length(), name.length() - ".zip".length()));
    }

    /** All tables as they stood when the first was read: nothing is locked, and nobody waits. */
    private void write(Path file) throws SQLException, IOException {
        try (Connection connection = source.getConnection();
                Statement statement = connection.createStatement()) {
            connection.setAutoCommit(false);
            statement.execute("set transaction isolation level repeatable read, read only");
            int version =
                    Schema.version(connection).orElseThrow(() -> new SQLException(SENTENCES.of("file.no-tables")));
            ServerTables tables = new ServerTables(connection);
            List<Written> written = new ArrayList<>();
            try (ZipOutputStream zip =
                    new ZipOutputStream(Files.newOutputStream(file, StandardOpenOption.CREATE_NEW))) {
                for (Table table : ServerTables.ALL) {
                    zip.putNextEntry(new ZipEntry(ServerArchive.file(table)));
                    written.add(tables.out(table, tables.columns(table.name()), table.name(), zip));
                    zip.closeEntry();
                }
                zip.putNextEntry(new ZipEntry(ServerArchive.INDEX));
                zip.write(new ServerArchive(version, written).bytes());
                zip.closeEntry();
            }
            connection.rollback();
        }
    }

    /** Into tables that are gone with the transaction, and out again. */
    private void verify(Path file) throws SQLException, IOException {
        try (ZipFile zip = new ZipFile(file.toFile());
                Connection connection = source.getConnection();
                Statement statement = connection.createStatement()) {
            connection.setAutoCommit(false);
            ServerArchive archive = ServerArchive.of(zip);
            ServerTables tables = new ServerTables(connection);
            for (Table table : ServerTables.ALL) {
                String scratch = "checked_" + table.name();
                statement.execute("create temporary table " + scratch + " (like " + table.name()
                        + " including all) on commit drop");
                load(tables, archive.written(table), table, scratch, zip);
            }
            connection.rollback();
        }
    }

    private static void load(ServerTables tables, Written written, Table table, String into, ZipFile zip)
            throws SQLException, IOException {
        if (!written.columns().equals(tables.columns(table.name()))) {
            throw new IOException(SENTENCES.of("server-backup.columns", table.name()));
        }
        tables.in(into, written.columns(), ServerArchive.open(zip, table));
        if (!tables.out(table, written.columns(), into, OutputStream.nullOutputStream())
                .equals(written)) {
            throw new IOException(SENTENCES.of("server-backup.other", table.name()));
        }
    }

    /** Puts a copy into a database that has no ledger yet, or an empty one: all of it or nothing. */
    public void restore(Path file) throws LedgerException {
        try (ZipFile zip = new ZipFile(file.toFile())) {
            ServerArchive archive = ServerArchive.of(zip);
            OptionalInt there = Schema.version(source);
            Schema.requireKnown(OptionalInt.of(archive.version()), file.toString());
            if (there.isEmpty()) {
                Schema.migrateTo(source, place, archive.version());
            } else if (there.getAsInt() != archive.version()) {
                throw new LedgerException(
                        Fault.OTHER,
                        SENTENCES.of("server-backup.version", place.name(), there.getAsInt(), archive.version()));
            }
            fill(zip, archive);
            Schema.migrate(source, place);
        } catch (SQLException e) {
            throw Faults.of(e, SENTENCES.of("cannot.put-there", file), place);
        } catch (IOException e) {
            throw new LedgerException(
                    Fault.DAMAGED,
                    SENTENCES.of("server-backup.not-put", file, place.name(), String.valueOf(e.getMessage())),
                    e);
        }
    }

    private void fill(ZipFile zip, ServerArchive archive) throws SQLException, IOException, LedgerException {
        try (Connection connection = source.getConnection();
                Statement statement = connection.createStatement()) {
            connection.setAutoCommit(false);
            statement.execute("lock table counter, player, lesson in exclusive mode");
            try (ResultSet row =
                    statement.executeQuery("select (select count(*) from player) + (select count(*) from lesson)")) {
                row.next();
                if (row.getLong(1) > 0) {
                    throw new LedgerException(Fault.OTHER, SENTENCES.of("server-backup.players", place.name()));
                }
            }
            // what a migration puts into new tables
            for (Table table : ServerTables.of(archive.version())) {
                statement.execute("delete from " + table.name());
            }
            ServerTables tables = new ServerTables(connection);
            for (Table table : ServerTables.of(archive.version())) {
                load(tables, archive.written(table), table, table.name(), zip);
            }
            connection.commit();
        }
    }
}

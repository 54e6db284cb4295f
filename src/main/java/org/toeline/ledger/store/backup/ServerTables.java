package org.toeline.ledger.store.backup;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import org.postgresql.PGConnection;
import org.postgresql.copy.CopyManager;
import org.toeline.ledger.store.place.Fingerprint;

/** The tables of a server's ledger as PostgreSQL itself writes and reads them ({@code COPY}), each in the order of its key. */
public final class ServerTables {

    /** A table and its key; those that are referred to come first. */
    public record Table(String name, String key, int since) {

        Table(String name, String key) {
            this(name, key, 1);
        }
    }

    public static final List<Table> ALL = List.of(
            new Table("counter", "name collate \"C\""),
            new Table("player", "id"),
            new Table("player_word", "word collate \"C\", player_id"),
            new Table("lesson", "id"),
            new Table("lesson_document", "lesson_id"),
            new Table("lesson_word", "word collate \"C\", lesson_id"),
            new Table("take", "lesson_id, view collate \"C\""),
            new Table("finding", "lesson_id, reading collate \"C\""),
            new Table("aside", "id"),
            new Table("row_sum", "kind collate \"C\", id", 3),
            new Table("leftover", "id", 3),
            new Table("shot", "lesson_id, number"));

    /**
     * What was written of a table.
     *
     * @param sha256 of all of its bytes
     */
    public record Written(String name, List<String> columns, long rows, String sha256) {

        public Written {
            columns = List.copyOf(columns);
        }
    }

    /** The tables of a version; those that went since are not asked for. */
    static List<Table> of(int version) {
        return ALL.stream().filter(t -> t.since <= version).toList();
    }

    private final Connection connection;
    private final CopyManager copy;

    public ServerTables(Connection connection) throws SQLException {
        this.connection = connection;
        this.copy = connection.unwrap(PGConnection.class).getCopyAPI();
    }

    /** The columns of a table in their order. */
    public List<String> columns(String table) throws SQLException {
        try (PreparedStatement statement =
                connection.prepareStatement("select column_name from information_schema.columns "
                        + "where table_schema = current_schema() and table_name = ? order by ordinal_position")) {
            statement.setString(1, table);
            List<String> columns = new ArrayList<>();
            try (ResultSet row = statement.executeQuery()) {
                while (row.next()) {
                    columns.add(row.getString(1));
                }
            }
            return columns;
        }
    }

    /** Writes a table out, from the table of that name or from one that is like it. */
    public Written out(Table table, List<String> columns, String from, OutputStream to)
            throws SQLException, IOException {
        MessageDigest digest = Fingerprint.sha256Digest();
        long rows = copy.copyOut(
                "copy (select " + String.join(", ", columns) + " from " + from + " order by " + table.key()
                        + ") to stdout",
                new DigestOutputStream(to, digest));
        return new Written(table.name(), columns, rows, HexFormat.of().formatHex(digest.digest()));
    }

    /** Reads rows into a table. */
    public void in(String into, List<String> columns, InputStream from) throws SQLException, IOException {
        copy.copyIn("copy " + into + " (" + String.join(", ", columns) + ") from stdin", from);
    }
}

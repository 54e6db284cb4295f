package org.toeline.ledger.store.rows;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.jdbi.v3.core.ConnectionException;
import org.jdbi.v3.core.Handle;
import org.toeline.ledger.store.place.Fingerprint;

/**
 * What the rows of a lesson, or of a player, add up to: everything that is shown of them, with the sum of the document that
 * findings are of. Written with each change, in its transaction; compared when a lesson is read and by the thorough check, so that a
 * row altered under the program is found out.
 */
public final class RowSums {

    /** Columns in the order they are added up; a letter says of what type, so that both databases give the same text. */
    private static final List<Rows> LESSON = List.of(
            new Rows(
                    "lesson",
                    "id",
                    "",
                    "i:id i:version i:player_id s:recorded s:day s:club s:setup s:place s:notes s:changed_at"
                            + " s:changed_by s:identity"),
            new Rows("lesson_document", "lesson_id", "", "s:sha256"),
            new Rows("take", "lesson_id", "view", "s:view s:path d:time_s l:size_bytes s:sha256 s:found"),
            new Rows(
                    "finding",
                    "lesson_id",
                    "line",
                    "s:reading i:line d:value d:u d:low d:high s:unit d:range_low d:range_high d:range_aim"
                            + " s:provenance s:verdict i:is_first"),
            new Rows("shot", "lesson_id", "number", "i:number s:document"),
            new Rows("lesson_word", "lesson_id", "word", "s:word"),
            new Rows("aside", "lesson_id", "id", "i:id i:base_version s:sha256 s:kept_at s:kept_by"));

    private static final List<Rows> PLAYER = List.of(
            new Rows(
                    "player",
                    "id",
                    "",
                    "i:id i:version s:name s:handedness d:height_m i:born_year s:note s:changed_at s:changed_by"),
            new Rows("player_word", "player_id", "word", "s:word"));

    /** Rows of a table that belong to one lesson or player. */
    private record Rows(String table, String key, String order, String columns) {

        List<String> typed() {
            return List.of(columns.split(" "));
        }

        String sql(Collection<Integer> ids) {
            String names =
                    String.join(", ", typed().stream().map(c -> c.substring(2)).toList());
            return "select " + names + ", " + key + " as of_which from " + table + " where " + key + in(ids)
                    + " order by " + key + (order.isEmpty() ? "" : ", " + order);
        }
    }

    private final Connection connection;

    public RowSums(Handle handle) {
        this(handle.getConnection());
    }

    public RowSums(Connection connection) {
        this.connection = connection;
    }

    /** Within a transaction: whoever else would change these rows waits, so that what is read of them now is what there is. */
    public void holdLesson(int id) {
        update("update lesson set version = version where id = ?", id);
    }

    /**
     * After a change of a lesson's rows, within its transaction. What a list shows of it has a sum of its own, so that a list
     * need not read everything.
     */
    public void sealLesson(int id) {
        holdLesson(id);
        seal("lesson", id, LESSON);
        try {
            put("line", id, Finder.lineSum(id, connection));
        } catch (SQLException e) {
            throw new ConnectionException(e);
        }
    }

    public void sealPlayer(int id) {
        seal("player", id, PLAYER);
    }

    private void seal(String kind, int id, List<Rows> rows) {
        put(kind, id, Objects.requireNonNull(sums(List.of(id), rows).get(id)));
    }

    private void put(String kind, int id, String sum) {
        update(
                "insert into row_sum (kind, id, sha256) values (?, ?, ?) "
                        + "on conflict (kind, id) do update set sha256 = excluded.sha256",
                kind,
                id,
                sum);
    }

    /** Those of deleted lessons and players. */
    public void sweep() {
        update("delete from row_sum where kind in ('lesson', 'line') and id not in (select id from lesson)");
        update("delete from row_sum where kind = 'player' and id not in (select id from player)");
    }

    /** Seals what was kept before there were sums. */
    public void sealMissing() {
        numbers("select id from lesson where id not in (select id from row_sum where kind = 'lesson')")
                .forEach(this::sealLesson);
        numbers("select id from player where id not in (select id from row_sum where kind = 'player')")
                .forEach(this::sealPlayer);
    }

    private List<Integer> numbers(String sql) {
        return rows(sql, row -> row.getInt(1));
    }

    /** Whether there is such a lesson, or its sum is left of it. */
    public boolean isLessonKnown(int id) {
        return !kept("lesson", id).isEmpty()
                || !rows("select id from lesson where id = ?", row -> row.getInt(1), id)
                        .isEmpty();
    }

    public boolean isPlayerWhole(int id) {
        return alteredPlayers(List.of(id)).isEmpty();
    }

    /** Those of these lessons whose rows are not what was written, by a question a table. */
    public Set<Integer> alteredLessons(Collection<Integer> ids) {
        return altered("lesson", ids, LESSON);
    }

    public Set<Integer> alteredPlayers(Collection<Integer> ids) {
        return altered("player", ids, PLAYER);
    }

    private Set<Integer> altered(String kind, Collection<Integer> ids, List<Rows> all) {
        Set<Integer> altered = new HashSet<>(ids);
        if (!ids.isEmpty()) {
            Map<Integer, String> sums = sums(ids, all);
            rows(
                            "select id, sha256 from row_sum where kind = ? and id" + in(ids),
                            row -> Map.entry(row.getInt(1), row.getString(2)),
                            kind)
                    .forEach(kept -> altered.removeIf(
                            id -> id.equals(kept.getKey()) && kept.getValue().equals(sums.get(id))));
        }
        return altered;
    }

    private List<String> kept(String kind, int id) {
        return rows("select sha256 from row_sum where kind = ? and id = ?", row -> row.getString(1), kind, id);
    }

    private static String in(Collection<Integer> ids) {
        return ids.stream().map(String::valueOf).collect(Collectors.joining(", ", " in (", ")"));
    }

    private Map<Integer, String> sums(Collection<Integer> ids, List<Rows> all) {
        Map<Integer, MessageDigest> digests = new HashMap<>();
        ids.forEach(id -> digests.put(id, Fingerprint.sha256Digest()));
        for (Rows rows : all) {
            addUp(rows, ids, digests);
        }
        Map<Integer, String> sums = new HashMap<>();
        digests.forEach((id, digest) -> sums.put(id, HexFormat.of().formatHex(digest.digest())));
        return sums;
    }

    private void addUp(Rows rows, Collection<Integer> ids, Map<Integer, MessageDigest> digests) {
        List<String> typed = rows.typed();
        StringBuilder line = new StringBuilder();
        rows(rows.sql(ids), row -> {
            line.setLength(0);
            line.append(rows.table);
            for (int i = 0; i < typed.size(); i++) {
                String cell =
                        switch (typed.get(i).charAt(0)) {
                            case 'd' -> Long.toHexString(Double.doubleToLongBits(row.getDouble(i + 1)));
                            case 's' -> String.valueOf(row.getString(i + 1));
                            default -> Long.toString(row.getLong(i + 1));
                        };
                if (row.wasNull()) {
                    line.append(" -");
                } else {
                    line.append(' ').append(cell.length()).append(':').append(cell);
                }
            }
            line.append('\n');
            Objects.requireNonNull(digests.get(row.getInt(typed.size() + 1)))
                    .update(line.toString().getBytes(StandardCharsets.UTF_8));
            return true;
        });
    }

    private interface Row<T> {
        T of(ResultSet row) throws SQLException;
    }

    private <T> List<T> rows(String sql, Row<T> each, Object... values) {
        try (PreparedStatement statement = prepared(sql, values);
                ResultSet row = statement.executeQuery()) {
            List<T> rows = new ArrayList<>();
            while (row.next()) {
                rows.add(each.of(row));
            }
            return rows;
        } catch (SQLException e) {
            throw new ConnectionException(e);
        }
    }

    private void update(String sql, Object... values) {
        try (PreparedStatement statement = prepared(sql, values)) {
            statement.executeUpdate();
        } catch (SQLException e) {
            throw new ConnectionException(e);
        }
    }

    private PreparedStatement prepared(String sql, Object... values) throws SQLException {
        PreparedStatement statement = connection.prepareStatement(sql);
        for (int i = 0; i < values.length; i++) {
            statement.setObject(i + 1, values[i]);
        }
        return statement;
    }
}

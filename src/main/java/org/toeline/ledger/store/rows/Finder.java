package org.toeline.ledger.store.rows;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Turns a search into one query over indexes, recent lessons first. Asked of a bare connection: the first list comes before
 * anything else is loaded.
 */
public final class Finder {

    private static final String LINES =
            "select l.id, l.player_id, p.name, l.recorded, l.club, l.place, l.notes, (select f.reading from finding"
                    + " f where f.lesson_id = l.id and f.is_first = 1) as first_reading, exists (select 1 from finding f"
                    + " where f.lesson_id = l.id and f.verdict is not null) as judged, (select s.sha256 from row_sum s"
                    + " where s.kind = 'line' and s.id = l.id) as written from lesson l join player p on p.id ="
                    + " l.player_id";

    private final StringBuilder where = new StringBuilder();
    private final List<Object> values = new ArrayList<>();

    private Finder(Search search) {
        for (String word : FoldedWords.of(search.text())) {
            String after = FoldedWords.after(word);
            and(
                    "l.id in (select n.id from player_word w join lesson n on n.player_id = w.player_id where w.word"
                            + " >= ? and w.word < ? union select lesson_id from lesson_word where word >= ? and word < ?)",
                    word,
                    after,
                    word,
                    after);
        }
        search.playerId().ifPresent(id -> and("l.player_id = ?", id));
        search.club().ifPresent(club -> and("l.club = ?", club.id()));
        search.from().ifPresent(day -> and("l.day >= ?", day.toString()));
        search.to().ifPresent(day -> and("l.day <= ?", day.toString()));
        search.reading().ifPresent(reading -> {
            List<Object> all = new ArrayList<>(List.of(reading));
            all.addAll(search.verdicts());
            String verdicts = search.verdicts().isEmpty()
                    ? ""
                    : " and f.verdict in ("
                            + String.join(
                                    ", ", Collections.nCopies(search.verdicts().size(), "?")) + ")";
            and(
                    "exists (select 1 from finding f where f.lesson_id = l.id and f.reading = ?" + verdicts + ")",
                    all.toArray());
        });
        values.add(search.most());
    }

    private void and(String condition, Object... bound) {
        where.append(where.isEmpty() ? " where " : " and ").append(condition);
        values.addAll(List.of(bound));
    }

    private String sql() {
        return LINES + where + " order by l.id desc limit ?";
    }

    private interface Row<T> {
        T of(ResultSet row) throws SQLException;
    }

    private static <T> List<T> all(Connection connection, String sql, List<Object> values, Row<T> each)
            throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(sql)) {
            for (int i = 0; i < values.size(); i++) {
                statement.setObject(i + 1, values.get(i));
            }
            List<T> rows = new ArrayList<>();
            try (ResultSet row = statement.executeQuery()) {
                while (row.next()) {
                    rows.add(each.of(row));
                }
            }
            return rows;
        }
    }

    /** What of it is not what was written is told as that. */
    public static List<LessonLine> find(Search search, Connection connection) throws SQLException {
        Finder finder = new Finder(search);
        return all(connection, finder.sql(), finder.values, Finder::checked);
    }

    private static LessonLine checked(ResultSet row) throws SQLException {
        LessonLine line = line(row);
        return line.sum().equals(row.getString("written")) ? line : LessonLine.damaged(line.id(), line.playerId());
    }

    /** The lesson of the first line that is told as damaged, of all there are. */
    public static OptionalInt firstDamaged(Connection connection) throws SQLException {
        return all(connection, LINES + " order by l.id", List.of(), Finder::checked).stream()
                .filter(line -> line.judged() == LessonLine.Judged.DAMAGED)
                .mapToInt(LessonLine::id)
                .findFirst();
    }

    /** What the line of a lesson adds up to. */
    static String lineSum(int lessonId, Connection connection) throws SQLException {
        return all(
                        connection,
                        LINES + " where l.id = ?",
                        List.of(lessonId),
                        row -> line(row).sum())
                .get(0);
    }

    private static LessonLine line(ResultSet row) throws SQLException {
        return new LessonLine(
                row.getInt("id"),
                row.getInt("player_id"),
                Optional.ofNullable(row.getString("name")),
                Optional.ofNullable(row.getString("recorded")),
                row.getString("club"),
                row.getString("place"),
                row.getString("notes"),
                Optional.ofNullable(row.getString("first_reading")),
                row.getBoolean("judged") ? LessonLine.Judged.YES : LessonLine.Judged.NOT_YET);
    }

    public static List<Integer> numbers(Optional<Integer> playerId, Connection connection) throws SQLException {
        return all(
                connection,
                "select id from lesson" + (playerId.isPresent() ? " where player_id = ?" : "") + " order by id",
                playerId.<List<Object>>map(List::of).orElse(List.of()),
                row -> row.getInt(1));
    }

    /** How SQLite would go about it, a step a line. */
    public static List<String> plan(Search search, Connection connection) throws SQLException {
        Finder finder = new Finder(search);
        return all(connection, "explain query plan " + finder.sql(), finder.values, row -> row.getString("detail"));
    }
}

package org.toeline.ledger.store.rows;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.jspecify.annotations.Nullable;
import org.toeline.ledger.store.rows.StatedFinding.Place;
import org.toeline.ledger.store.rows.StatedFinding.StatedRange;
import org.toeline.mark.Club;

/** The findings' rows. */
public final class FindingRows {

    private static final String COLUMNS = "f.reading, f.value, f.u, f.low, f.high, f.unit, f.range_low, f.range_high, "
            + "f.range_aim, f.provenance, f.verdict, f.is_first";
    /** One pass over a player's lessons with a club, in their order. */
    public static final String ACROSS = "select l.id as lesson, l.recorded, l.setup, " + COLUMNS + " from lesson l"
            + " left join finding"
            + " f on f.lesson_id"
            + " = l.id where"
            + " l.player_id ="
            + " :player and"
            + " l.club = :club"
            + " order by l.id,"
            + " f.line";

    private final Handle handle;

    public FindingRows(Handle handle) {
        this.handle = handle;
    }

    public void put(int lessonId, List<StatedFinding> findings) {
        if (findings.isEmpty()) {
            return;
        }
        try (PreparedBatch batch =
                handle.prepareBatch("insert into finding (lesson_id, reading, line, value, u, low, high, unit,"
                        + " range_low, range_high, range_aim, provenance, verdict, is_first) values (:lesson, :reading,"
                        + " :line, :value, :u, :low, :high, :unit, :rangeLow, :rangeHigh, :rangeAim, :provenance,"
                        + " :verdict, :first)")) {
            int line = 0;
            for (StatedFinding f : findings) {
                batch.bind("lesson", lessonId)
                        .bind("reading", f.reading())
                        .bind("line", line++)
                        .bind("value", f.value())
                        .bind("u", f.u())
                        .bind("low", f.low())
                        .bind("high", f.high())
                        .bind("unit", f.unit())
                        .bind("rangeLow", f.range().map(StatedRange::low).orElse(null))
                        .bind("rangeHigh", f.range().map(StatedRange::high).orElse(null))
                        .bind("rangeAim", f.range().map(StatedRange::aim).orElse(null))
                        .bind(
                                "provenance",
                                f.range().map(StatedRange::provenance).orElse(null))
                        .bind("verdict", f.verdict().orElse(null))
                        .bind("first", f.place() == Place.FIRST ? 1 : 0)
                        .add();
            }
            batch.execute();
        }
    }

    public List<StatedFinding> of(int lessonId) {
        return handle.createQuery("select " + COLUMNS + " from finding f where f.lesson_id = :id order by f.line")
                .bind("id", lessonId)
                .map((row, context) -> finding(row))
                .list();
    }

    public List<LessonFindings> across(int playerId, Club club) {
        record Row(
                int lesson,
                Optional<String> recorded,
                String setup,
                @Nullable StatedFinding finding) {}
        List<Row> rows = handle.createQuery(ACROSS)
                .bind("player", playerId)
                .bind("club", club.id())
                .map((row, context) -> new Row(
                        row.getInt("lesson"),
                        Optional.ofNullable(row.getString("recorded")),
                        row.getString("setup"),
                        row.getString("reading") == null ? null : finding(row)))
                .list();
        Map<Integer, List<Row>> byLesson = new LinkedHashMap<>();
        rows.forEach(row ->
                byLesson.computeIfAbsent(row.lesson, id -> new ArrayList<>()).add(row));
        List<LessonFindings> lessons = new ArrayList<>();
        byLesson.forEach((id, of) -> {
            List<StatedFinding> findings = new ArrayList<>();
            for (Row row : of) {
                if (row.finding != null) {
                    findings.add(row.finding);
                }
            }
            lessons.add(new LessonFindings(id, of.get(0).recorded, of.get(0).setup, findings));
        });
        return lessons;
    }

    public static StatedFinding finding(ResultSet row) throws SQLException {
        double low = row.getDouble("range_low");
        Optional<StatedRange> range = row.wasNull()
                ? Optional.empty()
                : Optional.of(new StatedRange(
                        low, row.getDouble("range_high"), row.getDouble("range_aim"), row.getString("provenance")));
        return new StatedFinding(
                row.getString("reading"),
                row.getDouble("value"),
                row.getDouble("u"),
                row.getDouble("low"),
                row.getDouble("high"),
                row.getString("unit"),
                range,
                Optional.ofNullable(row.getString("verdict")),
                row.getInt("is_first") == 1 ? Place.FIRST : Place.ONE_OF_MANY);
    }
}

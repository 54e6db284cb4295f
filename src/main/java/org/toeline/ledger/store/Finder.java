package org.toeline.ledger.store;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;

/** Turns a search into one query over indexes, recent lessons first. */
final class Finder {

    private final StringBuilder where = new StringBuilder();
    private final Map<String, Object> values = new LinkedHashMap<>();
    private final List<String> verdicts;

    private Finder(Search search) {
        verdicts = new ArrayList<>(search.verdicts());
        int number = 0;
        for (String word : FoldedWords.of(search.text())) {
            String from = "word" + number;
            String to = "after" + number++;
            values.put(from, word);
            values.put(to, FoldedWords.after(word));
            and("l.id in (select n.id from player_word w join lesson n on n.player_id = w.player_id where w.word >= :" + from
                    + " and w.word < :" + to + " union select lesson_id from lesson_word where word >= :" + from
                    + " and word < :" + to + ")");
        }
        search.playerId().ifPresent(id -> equal("l.player_id", "player", id));
        search.club().ifPresent(club -> equal("l.club", "club", club.id()));
        search.from().ifPresent(day -> {
            values.put("from", day.toString());
            and("l.day >= :from");
        });
        search.to().ifPresent(day -> {
            values.put("to", day.toString());
            and("l.day <= :to");
        });
        search.reading().ifPresent(reading -> {
            values.put("reading", reading);
            and("exists (select 1 from finding f where f.lesson_id = l.id and f.reading = :reading"
                    + (verdicts.isEmpty() ? "" : " and f.verdict in (<verdicts>)") + ")");
        });
        values.put("most", search.most());
    }

    private void equal(String column, String name, Object value) {
        values.put(name, value);
        and(column + " = :" + name);
    }

    private void and(String condition) {
        where.append(where.isEmpty() ? " where " : " and ").append(condition);
    }

    private String sql() {
        return "select l.id, l.player_id, p.name, l.recorded, l.club, l.place, l.notes, (select f.reading from finding f "
                + "where f.lesson_id = l.id and f.is_first = 1) as first_reading from lesson l "
                + "join player p on p.id = l.player_id" + where + " order by l.id desc limit :most";
    }

    private Query query(Handle handle, String before) {
        Query query = handle.createQuery(before + sql());
        values.forEach(query::bind);
        if (!verdicts.isEmpty() && values.containsKey("reading")) {
            query.bindList("verdicts", verdicts);
        }
        return query;
    }

    static List<LessonLine> find(Search search, Handle handle) {
        return new Finder(search).query(handle, "").map((row, context) -> new LessonLine(row.getInt("id"),
                row.getInt("player_id"), Optional.ofNullable(row.getString("name")),
                Optional.ofNullable(row.getString("recorded")), row.getString("club"), row.getString("place"),
                row.getString("notes"), Optional.ofNullable(row.getString("first_reading")))).list();
    }

    static List<Integer> numbers(Optional<Integer> playerId, Handle handle) {
        return playerId.isPresent() ? handle.createQuery("select id from lesson where player_id = :player order by id")
                .bind("player", playerId.get()).mapTo(Integer.class).list()
                : handle.createQuery("select id from lesson order by id").mapTo(Integer.class).list();
    }

    /** How SQLite would go about it, a step a line. */
    static List<String> plan(Search search, Handle handle) {
        return new Finder(search).query(handle, "explain query plan ").map((row, context) -> row.getString("detail")).list();
    }
}

package org.toeline.ledger.store;

import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.jdbi.v3.core.ConnectionException;
import org.jdbi.v3.core.Handle;
import org.toeline.language.Sentences;
import org.toeline.ledger.store.place.Database;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.place.LedgerPlace;
import org.toeline.ledger.store.rows.Finder;
import org.toeline.ledger.store.rows.Lessons;
import org.toeline.ledger.store.rows.RowSums;

/** Reads every page and every lesson. */
record ThoroughCheck(Database database) {

    private static final Sentences SENTENCES = Sentences.of(ThoroughCheck.class);

    private static final int AT_ONCE = 200;

    Optional<String> firstFault() throws LedgerException {
        boolean file = database.place() instanceof LedgerPlace.Folder;
        return database.read(SENTENCES.of("cannot.check-ledger"), h -> {
            if (file) {
                String found = h.createQuery("pragma integrity_check(1)")
                        .mapTo(String.class)
                        .first();
                if (!found.equals("ok")) {
                    return Optional.of(found.lines().findFirst().orElse(SENTENCES.of("file.pages")));
                }
                if (!h.createQuery("pragma foreign_key_check").mapToMap().list().isEmpty()) {
                    return Optional.of(SENTENCES.of("file.rows"));
                }
            }
            Optional<String> altered = firstAlteredLesson(h);
            return altered.isPresent() ? altered : firstAlteredLine(h);
        });
    }

    private static Optional<String> firstAlteredLesson(Handle handle) {
        record Row(int id, String sum, String document) {}
        RowSums sums = new RowSums(handle);
        for (int player :
                handle.createQuery("select id from player").mapTo(Integer.class).list()) {
            if (!sums.isPlayerWhole(player)) {
                return Optional.of(SENTENCES.of("check.player", player));
            }
        }
        int after = 0;
        while (true) {
            List<Row> rows = handle.createQuery(
                            "select lesson_id, sha256, document from lesson_document where lesson_id > :after "
                                    + "order by lesson_id limit " + AT_ONCE)
                    .bind("after", after)
                    .map((r, context) -> new Row(r.getInt(1), r.getString(2), r.getString(3)))
                    .list();
            if (rows.isEmpty()) {
                return Optional.empty();
            }
            Set<Integer> altered =
                    sums.alteredLessons(rows.stream().map(Row::id).toList());
            for (Row row : rows) {
                if (!Lessons.sum(row.document).equals(row.sum)) {
                    return Optional.of(SENTENCES.of("check.lesson", row.id));
                }
                if (altered.contains(row.id)) {
                    return Optional.of(SENTENCES.of("check.lesson-rows", row.id));
                }
                after = row.id;
            }
        }
    }

    /** Where only what a list shows does not add up, or only its sum was altered: the list tells it as damaged. */
    private static Optional<String> firstAlteredLine(Handle handle) {
        try {
            OptionalInt lesson = Finder.firstDamaged(handle.getConnection());
            return lesson.isPresent()
                    ? Optional.of(SENTENCES.of("check.lesson-line", lesson.getAsInt()))
                    : Optional.empty();
        } catch (SQLException e) {
            throw new ConnectionException(e);
        }
    }
}

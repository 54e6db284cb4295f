package org.toeline.ledger.store;

import java.sql.SQLException;
import java.util.List;
import org.toeline.ledger.store.place.LedgerPlace;
import org.toeline.ledger.store.place.Sources;

/** Takes a ledger's tables back to what they were in version 1, with all that was in them then. */
final class OldTables {

    private static final List<String> BACK = List.of(
            "drop index lesson_by_identity",
            "alter table lesson drop column identity",
            "alter table take drop column found",
            "drop table row_sum",
            "drop table leftover",
            "delete from counter where name = 'leftover'",
            "drop table shot",
            "delete from flyway_schema_history where version in ('2', '3')");

    private OldTables() {}

    static void backToTheFirst(LedgerPlace.Folder place) throws SQLException {
        try (var connection = Sources.writable(place.file()).getConnection();
                var statement = connection.createStatement()) {
            for (String step : BACK) {
                statement.execute(step);
            }
        }
    }
}

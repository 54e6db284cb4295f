package org.toeline.ledger.store.place;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Optional;
import org.toeline.language.Sentences;

/**
 * What a server's role may do with the ledger: whoever runs the server may give a bay fewer rights than all.
 *
 * @param role   what the server calls it
 * @param looks  may read every table
 * @param keeps  may write all that keeping and saving a lesson writes
 * @param erases may delete players and lessons
 */
public record Rights(String role, boolean looks, boolean keeps, boolean erases) {

    private static final Sentences SENTENCES = Sentences.of(Rights.class);

    /** Saving takes rows away and writes them anew, but for those of a player, a lesson and a deletion. */
    private static final String ASKED = """
            select current_user,
              coalesce(bool_and(has_table_privilege(c.oid, 'select')), false),
              coalesce(bool_and(has_table_privilege(c.oid, 'insert') and has_table_privilege(c.oid, 'update')
                and (c.relname in ('player', 'lesson', 'counter') or has_table_privilege(c.oid, 'delete')))
                filter (where c.relname <> 'leftover' and c.relname <> 'flyway_schema_history'), false),
              coalesce(bool_and(has_table_privilege(c.oid, 'delete'))
                filter (where c.relname in ('player', 'lesson', 'leftover')), false)
            from pg_class c
            where c.relkind = 'r' and c.relnamespace = (
              select relnamespace from pg_class where oid = to_regclass('lesson'))
              and c.relname in ('player', 'player_word', 'lesson', 'lesson_document', 'lesson_word', 'take', 'finding',
                'aside', 'shot', 'row_sum', 'leftover', 'counter', 'flyway_schema_history')""";

    /** Asked of a server. */
    public static Rights of(Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery(ASKED)) {
            row.next();
            boolean keeps = row.getBoolean(2) && row.getBoolean(3);
            return new Rights(row.getString(1), row.getBoolean(2), keeps, keeps && row.getBoolean(4));
        }
    }

    /** What it may and what not, in a sentence; empty where it may do everything. */
    public Optional<String> limits() {
        if (erases) {
            return Optional.empty();
        }
        return Optional.of(SENTENCES.of(keeps ? "rights.keeps" : looks ? "rights.looks" : "rights.nothing", role));
    }
}

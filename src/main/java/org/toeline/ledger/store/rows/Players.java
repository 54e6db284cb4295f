package org.toeline.ledger.store.rows;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;
import org.toeline.mark.Handedness;

/** The players' rows. */
public final class Players {

    private static final String COLUMNS = "id, version, name, handedness, height_m, born_year, note";

    private final Handle handle;
    private final Stamp stamp;

    public Players(Handle handle, Stamp stamp) {
        this.handle = handle;
        this.stamp = stamp;
    }

    public Player add(PlayerDetails details) {
        int id = Counter.next(handle, "player");
        handle.createUpdate("insert into player (id, version, name, handedness, height_m, born_year, note, changed_at, "
                        + "changed_by) values (:id, 1, :name, :handedness, :height, :born, :note, :at, :by)")
                .bind("id", id)
                .bind("name", details.name().orElse(null))
                .bind("handedness", details.handedness().id())
                .bind("height", height(details))
                .bind("born", born(details))
                .bind("note", details.note())
                .bind("at", stamp.now())
                .bind("by", stamp.bay())
                .execute();
        words(id, details);
        return new Player(id, 1, details);
    }

    /** False when the player was changed or deleted meanwhile. */
    public boolean change(Player changed) {
        PlayerDetails details = changed.details();
        int rows = handle.createUpdate(
                        "update player set version = version + 1, name = :name, handedness = :handedness, height_m ="
                                + " :height, born_year = :born, note = :note, changed_at = :at, changed_by = :by where id"
                                + " = :id and version = :version")
                .bind("name", details.name().orElse(null))
                .bind("handedness", details.handedness().id())
                .bind("height", height(details))
                .bind("born", born(details))
                .bind("note", details.note())
                .bind("at", stamp.now())
                .bind("by", stamp.bay())
                .bind("id", changed.id())
                .bind("version", changed.version())
                .execute();
        if (rows == 1) {
            handle.execute("delete from player_word where player_id = ?", changed.id());
            words(changed.id(), details);
        }
        return rows == 1;
    }

    private void words(int id, PlayerDetails details) {
        for (String word : FoldedWords.of(details.name().orElse(""))) {
            handle.execute("insert into player_word (word, player_id) values (?, ?)", word, id);
        }
    }

    public Optional<Player> get(int id) {
        return handle.createQuery("select " + COLUMNS + " from player where id = :id")
                .bind("id", id)
                .map((row, context) -> player(row))
                .findOne();
    }

    /** Those of that very name and handedness. */
    public List<Player> named(String name, Handedness handedness) {
        return handle.createQuery("select " + COLUMNS + " from player where name = :name and handedness = :handedness "
                        + "order by id")
                .bind("name", name)
                .bind("handedness", handedness.id())
                .map((row, context) -> player(row))
                .list();
    }

    public List<Player> all() {
        return handle.createQuery("select " + COLUMNS + " from player order by id desc")
                .map((row, context) -> player(row))
                .list();
    }

    private static @Nullable Double height(PlayerDetails details) {
        return details.heightM().isPresent() ? details.heightM().getAsDouble() : null;
    }

    private static @Nullable Integer born(PlayerDetails details) {
        return details.bornYear().isPresent() ? details.bornYear().getAsInt() : null;
    }

    private static Player player(ResultSet row) throws SQLException {
        double height = row.getDouble("height_m");
        OptionalDouble heightM = row.wasNull() ? OptionalDouble.empty() : OptionalDouble.of(height);
        int born = row.getInt("born_year");
        OptionalInt bornYear = row.wasNull() ? OptionalInt.empty() : OptionalInt.of(born);
        return new Player(
                row.getInt("id"),
                row.getInt("version"),
                new PlayerDetails(
                        Optional.ofNullable(row.getString("name")),
                        row.getString("handedness").equals(Handedness.LEFT.id()) ? Handedness.LEFT : Handedness.RIGHT,
                        heightM,
                        bornYear,
                        row.getString("note")));
    }
}

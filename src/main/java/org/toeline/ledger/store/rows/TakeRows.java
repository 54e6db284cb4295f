package org.toeline.ledger.store.rows;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;
import org.toeline.ledger.ClipMoment;
import org.toeline.ledger.store.place.Fingerprint;
import org.toeline.mark.View;

/** The rows of clips. A fingerprint stays as long as the document names the clip by the same path. */
public final class TakeRows {

    private final Handle handle;

    public TakeRows(Handle handle) {
        this.handle = handle;
    }

    void put(int lessonId, Map<View, ClipMoment> clips) {
        for (View view : View.values()) {
            ClipMoment clip = clips.get(view);
            if (clip == null) {
                handle.execute("delete from take where lesson_id = ? and view = ?", lessonId, view.id());
                continue;
            }
            @Nullable
            Double seconds = clip.seconds().isPresent() ? clip.seconds().getAsDouble() : null;
            handle.createUpdate("insert into take (lesson_id, view, path, time_s) values (:id, :view, :path, :time) on"
                            + " conflict (lesson_id, view) do update set path = excluded.path, time_s = excluded.time_s,"
                            + " size_bytes = case when take.path = excluded.path then take.size_bytes end, sha256 = case when"
                            + " take.path = excluded.path then take.sha256 end")
                    .bind("id", lessonId)
                    .bind("view", view.id())
                    .bind("path", PlayerDetails.storable(clip.clip()))
                    .bind("time", seconds)
                    .execute();
        }
    }

    public int note(int lessonId, View view, Fingerprint fingerprint) {
        return handle.createUpdate(
                        "update take set size_bytes = :size, sha256 = :sum where lesson_id = :id and view = :view")
                .bind("size", fingerprint.sizeBytes())
                .bind("sum", fingerprint.sha256())
                .bind("id", lessonId)
                .bind("view", view.id())
                .execute();
    }

    public List<Take> of(int lessonId) {
        return handle.createQuery(
                        "select view, path, time_s, size_bytes, sha256 from take where lesson_id = :id order by view")
                .bind("id", lessonId)
                .map((row, context) -> {
                    double seconds = row.getDouble("time_s");
                    OptionalDouble time = row.wasNull() ? OptionalDouble.empty() : OptionalDouble.of(seconds);
                    String sum = row.getString("sha256");
                    return new Take(
                            View.of(row.getString("view")).orElseThrow(),
                            row.getString("path"),
                            time,
                            sum == null
                                    ? Optional.empty()
                                    : Optional.of(new Fingerprint(row.getLong("size_bytes"), sum)));
                })
                .list();
    }

    /** Fingerprints that lessons of other players use too. */
    public boolean isUsedElsewhere(String sha256, int playerId) {
        return handle.createQuery("select count(*) from take t join lesson l on l.id = t.lesson_id "
                                + "where t.sha256 = :sum and l.player_id <> :player")
                        .bind("sum", sha256)
                        .bind("player", playerId)
                        .mapTo(Integer.class)
                        .one()
                > 0;
    }
}

package org.toeline.ledger.store.rows;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.EnumMap;
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

    /** The clips that were chosen at the desk: there names are absolute. */
    public static Map<View, Path> chosen(Map<View, ClipMoment> clips) {
        Map<View, Path> chosen = new EnumMap<>(View.class);
        clips.forEach((view, clip) -> {
            try {
                Path path = Path.of(clip.clip());
                if (path.isAbsolute()) {
                    chosen.put(view, path);
                }
            } catch (InvalidPathException e) {
                // a name that no file can have was chosen by nobody
            }
        });
        return chosen;
    }

    /** @param found where the clips are; of one that has the name it had, what is known stays */
    void put(int lessonId, Map<View, ClipMoment> clips, Map<View, Path> found) {
        for (View view : View.values()) {
            ClipMoment clip = clips.get(view);
            if (clip == null) {
                handle.execute("delete from take where lesson_id = ? and view = ?", lessonId, view.id());
                continue;
            }
            @Nullable
            Double seconds = clip.seconds().isPresent() ? clip.seconds().getAsDouble() : null;
            handle.createUpdate(
                            "insert into take (lesson_id, view, path, time_s, found) values (:id, :view, :path, :time,"
                                    + " :found) on conflict (lesson_id, view) do update set path = excluded.path, time_s ="
                                    + " excluded.time_s, size_bytes = case when take.path = excluded.path then"
                                    + " take.size_bytes end, sha256 = case when take.path = excluded.path then take.sha256"
                                    + " end, found = case when take.path = excluded.path then take.found else"
                                    + " excluded.found end")
                    .bind("found", found.containsKey(view) ? String.valueOf(found.get(view)) : null)
                    .bind("id", lessonId)
                    .bind("view", view.id())
                    .bind("path", PlayerDetails.storable(clip.clip()))
                    .bind("time", seconds)
                    .execute();
        }
    }

    public int note(int lessonId, View view, Fingerprint fingerprint) {
        int rows = handle.createUpdate(
                        "update take set size_bytes = :size, sha256 = :sum where lesson_id = :id and view = :view")
                .bind("size", fingerprint.sizeBytes())
                .bind("sum", fingerprint.sha256())
                .bind("id", lessonId)
                .bind("view", view.id())
                .execute();
        new RowSums(handle).sealLesson(lessonId);
        return rows;
    }

    public List<Take> of(int lessonId) {
        return handle.createQuery(
                        "select view, path, time_s, size_bytes, sha256, found from take where lesson_id = :id order by"
                                + " view")
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
                                    : Optional.of(new Fingerprint(row.getLong("size_bytes"), sum)),
                            Optional.ofNullable(row.getString("found")));
                })
                .list();
    }

    /** Whether any lesson has a clip of this content. */
    public boolean isUsed(String sha256) {
        return !handle.createQuery("select 1 from take where sha256 = :sum limit 1")
                .bind("sum", sha256)
                .mapTo(Integer.class)
                .list()
                .isEmpty();
    }
}

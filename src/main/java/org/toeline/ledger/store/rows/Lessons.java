package org.toeline.ledger.store.rows;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.OffsetDateTime;
import java.util.HexFormat;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.SqlStatement;
import org.toeline.language.Sentences;
import org.toeline.ledger.DocumentException;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.LessonDocument;
import org.toeline.ledger.store.backup.Backups;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.place.LedgerException.Fault;
import org.toeline.ledger.store.place.LedgerPlace;
import org.toeline.mark.View;

/** The lessons' rows: the document, and beside it what is searched. */
public final class Lessons {

    private static final Sentences SENTENCES = Sentences.of(Lessons.class);

    private final Handle handle;
    private final Stamp stamp;
    private final LedgerPlace place;

    public Lessons(Handle handle, Stamp stamp, LedgerPlace place) {
        this.handle = handle;
        this.stamp = stamp;
        this.place = place;
    }

    /** @param found where its clips are, as far as they may be opened */
    public int add(Player player, Lesson given, List<StatedFinding> findings, String identity, Map<View, Path> found) {
        Lesson lesson = named(given, player.details().name());
        int id = Counter.next(handle, "lesson");
        bindColumns(
                        handle.createUpdate(
                                "insert into lesson (id, version, player_id, recorded, day, club, setup, place, notes,"
                                        + " identity, changed_at, changed_by) values (:id, 1, :player, :recorded, :day,"
                                        + " :club, :setup, :place, :notes, :identity, :at, :by)"),
                        lesson)
                .bind("id", id)
                .bind("player", player.id())
                .bind("identity", identity)
                .execute();
        put(id, lesson, findings, found);
        return id;
    }

    public Saved save(int id, int baseVersion, Lesson changed, List<StatedFinding> findings) throws LedgerException {
        new RowSums(handle).holdLesson(id);
        requireWhole(List.of(id));
        int rows = bindColumns(
                        handle.createUpdate(
                                "update lesson set version = version + 1, recorded = :recorded, day = :day, club ="
                                        + " :club, setup = :setup, place = :place, notes = :notes, changed_at = :at,"
                                        + " changed_by = :by where id = :id and version = :version"),
                        changed)
                .bind("id", id)
                .bind("version", baseVersion)
                .execute();
        if (rows == 1) {
            Lesson lesson = named(changed, nameOf(id));
            for (String table : List.of("lesson_document", "lesson_word", "finding")) {
                handle.execute("delete from " + table + " where lesson_id = ?", id);
            }
            put(id, lesson, findings, TakeRows.chosen(lesson.clips()));
            return new Saved.Done(baseVersion + 1);
        }
        Optional<KeptLesson> theirs = get(id);
        return theirs.isPresent()
                ? new Saved.Conflict(theirs.get(), putAside(id, baseVersion, changed))
                : new Saved.Gone(id);
    }

    private Optional<String> nameOf(int lessonId) {
        return handle.createQuery("select p.name from lesson l join player p on p.id = l.player_id where l.id = :id")
                .bind("id", lessonId)
                .map((row, context) -> Optional.ofNullable(row.getString(1)))
                .one();
    }

    /** The document under the player's present name; as it was where it says the same. */
    private static Lesson named(Lesson lesson, Optional<String> name) {
        return PlayerDetails.cleaned(lesson.playerName()).equals(name) ? lesson : lesson.withPlayerName(name);
    }

    public int give(int id, Player player) throws LedgerException {
        KeptLesson before = held(id).orElseThrow(
                        () -> new LedgerException(Fault.UNKNOWN, SENTENCES.of("kept.no-lesson", place.name(), id)));
        handle.createUpdate(
                        "update lesson set player_id = :player, version = version + 1, changed_at = :at, changed_by ="
                                + " :by where id = :id")
                .bind("player", player.id())
                .bind("at", stamp.now())
                .bind("by", stamp.bay())
                .bind("id", id)
                .execute();
        writeDocument(id, named(before.lesson(), player.details().name()));
        handle.execute(
                "delete from player where id = ? and name is null and not exists "
                        + "(select 1 from lesson where player_id = ?)",
                before.playerId(),
                before.playerId());
        return before.version() + 1;
    }

    /** After a player's name was changed, in every document of theirs. */
    public void rename(int playerId, Optional<String> name) throws LedgerException {
        List<Integer> ids = handle.createQuery("select id from lesson where player_id = :id")
                .bind("id", playerId)
                .mapTo(Integer.class)
                .list();
        for (int id : ids) {
            writeDocument(id, named(held(id).orElseThrow().lesson(), name));
        }
    }

    private void writeDocument(int id, Lesson lesson) {
        String document = LessonDocument.line(lesson);
        handle.createUpdate("update lesson_document set document = :document, sha256 = :sum where lesson_id = :id")
                .bind("document", document)
                .bind("sum", sum(document))
                .bind("id", id)
                .execute();
        new RowSums(handle).sealLesson(id);
    }

    private <S extends SqlStatement<S>> S bindColumns(S statement, Lesson lesson) {
        return statement
                .bind(
                        "recorded",
                        lesson.recorded().map(OffsetDateTime::toString).orElse(null))
                .bind(
                        "day",
                        lesson.recorded().map(r -> r.toLocalDate().toString()).orElse(null))
                .bind("club", lesson.sheet().club().id())
                .bind("setup", PlayerDetails.storable(lesson.setup()))
                .bind("place", PlayerDetails.storable(lesson.place()))
                .bind("notes", PlayerDetails.storable(lesson.notes()))
                .bind("at", stamp.now())
                .bind("by", stamp.bay());
    }

    private void put(int id, Lesson lesson, List<StatedFinding> findings, Map<View, Path> found) {
        String document = LessonDocument.line(lesson);
        handle.execute(
                "insert into lesson_document (lesson_id, sha256, document) values (?, ?, ?)",
                id,
                sum(document),
                document);
        Set<String> words = new LinkedHashSet<>(FoldedWords.of(lesson.place()));
        words.addAll(FoldedWords.of(lesson.notes()));
        for (String word : words) {
            handle.execute("insert into lesson_word (word, lesson_id) values (?, ?)", word, id);
        }
        new TakeRows(handle).put(id, lesson.clips(), found);
        new FindingRows(handle).put(id, findings);
        new RowSums(handle).sealLesson(id);
    }

    /** As it is, and stays until the transaction ends. */
    private Optional<KeptLesson> held(int id) throws LedgerException {
        new RowSums(handle).holdLesson(id);
        return get(id);
    }

    public Optional<KeptLesson> get(int id) throws LedgerException {
        record Row(int player, int version, String at, String by, String sum, String document, String identity) {}
        Optional<Row> row = handle.createQuery(
                        "select l.player_id, l.version, l.changed_at, l.changed_by, d.sha256, d.document, l.identity "
                                + "from lesson l join lesson_document d on d.lesson_id = l.id where l.id = :id")
                .bind("id", id)
                .map((r, context) -> new Row(
                        r.getInt(1),
                        r.getInt(2),
                        r.getString(3),
                        r.getString(4),
                        r.getString(5),
                        r.getString(6),
                        r.getString(7)))
                .findOne();
        if (row.isEmpty()) {
            return Optional.empty();
        }
        Row r = row.get();
        requireWhole(List.of(id));
        return Optional.of(new KeptLesson(
                id,
                r.identity,
                r.player,
                r.version,
                lesson(id, r.sum, r.document),
                new FindingRows(handle).of(id),
                r.at,
                r.by));
    }

    private Lesson lesson(int id, String sum, String document) throws LedgerException {

        Optional<java.nio.file.Path> backup =
                place instanceof LedgerPlace.Folder f ? Backups.newest(f) : Optional.empty();
        if (!sum(document).equals(sum)) {
            throw new LedgerException(Fault.DAMAGED, SENTENCES.of("kept.lesson-text", place.name(), id), backup);
        }
        try {
            return LessonDocument.parse(document.getBytes(StandardCharsets.UTF_8), SENTENCES.of("kept.lesson", id));
        } catch (DocumentException e) {
            throw new LedgerException(
                    Fault.DAMAGED, SENTENCES.of("kept.lesson-unreadable", place.name(), id, e.getMessage()), backup);
        }
    }

    /** Refuses rows that are not what was written; a lesson that there is not has none. */
    public void requireWhole(List<Integer> ids) throws LedgerException {
        RowSums sums = new RowSums(handle);
        for (int id : sums.alteredLessons(ids)) {
            if (sums.isLessonKnown(id)) {
                throw new LedgerException(
                        Fault.DAMAGED,
                        SENTENCES.of("kept.lesson-rows", place.name(), id),
                        place instanceof LedgerPlace.Folder f ? Backups.newest(f) : Optional.empty());
            }
        }
    }

    /** The lesson of a player that has this very document. */
    public Optional<Integer> same(Lesson lesson) {
        return handle.createQuery("select lesson_id from lesson_document where sha256 = :sum order by lesson_id")
                .bind("sum", sum(LessonDocument.line(lesson)))
                .mapTo(Integer.class)
                .findFirst();
    }

    private int putAside(int lessonId, int baseVersion, Lesson lesson) {
        int id = Counter.next(handle, "aside");
        String document = LessonDocument.line(lesson);
        handle.createUpdate("insert into aside (id, lesson_id, base_version, sha256, document, kept_at, kept_by) "
                        + "values (:id, :lesson, :base, :sum, :document, :at, :by)")
                .bind("id", id)
                .bind("lesson", lessonId)
                .bind("base", baseVersion)
                .bind("sum", sum(document))
                .bind("document", document)
                .bind("at", stamp.now())
                .bind("by", stamp.bay())
                .execute();
        new RowSums(handle).sealLesson(lessonId);
        return id;
    }

    /** Lets go of what was kept beside a lesson. */
    public int dropAside(int asideId) throws LedgerException {
        List<Integer> of = handle.createQuery("select lesson_id from aside where id = :id")
                .bind("id", asideId)
                .mapTo(Integer.class)
                .list();
        for (int id : of) {
            requireWhole(List.of(id));
        }
        handle.execute("delete from aside where id = ?", asideId);
        of.forEach(new RowSums(handle)::sealLesson);
        return of.size();
    }

    public Optional<Integer> withIdentity(String identity) {
        return handle.createQuery("select id from lesson where identity = :identity")
                .bind("identity", identity)
                .mapTo(Integer.class)
                .findFirst();
    }

    public List<Aside> asides(int lessonId) throws LedgerException {
        record Row(int id, int base, String sum, String document, String at, String by) {}
        List<Row> rows = handle.createQuery("select id, base_version, sha256, document, kept_at, kept_by from aside "
                        + "where lesson_id = :id order by id")
                .bind("id", lessonId)
                .map((r, context) -> new Row(
                        r.getInt(1), r.getInt(2), r.getString(3), r.getString(4), r.getString(5), r.getString(6)))
                .list();
        List<Aside> asides = new java.util.ArrayList<>();
        for (Row r : rows) {
            asides.add(new Aside(r.id, lessonId, r.base, lesson(lessonId, r.sum, r.document), r.at, r.by));
        }
        return asides;
    }

    public static String sum(String document) {
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(document.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}

package org.toeline.ledger.store;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.UnaryOperator;
import javax.sql.DataSource;
import org.jdbi.v3.core.Handle;
import org.toeline.flight.Shot;
import org.toeline.language.Sentences;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.store.backup.Backups;
import org.toeline.ledger.store.backup.OldBackups;
import org.toeline.ledger.store.backup.Restore;
import org.toeline.ledger.store.backup.ServerBackups;
import org.toeline.ledger.store.place.Database;
import org.toeline.ledger.store.place.Database.Access;
import org.toeline.ledger.store.place.Faults;
import org.toeline.ledger.store.place.Fingerprint;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.place.LedgerException.Fault;
import org.toeline.ledger.store.place.LedgerPlace;
import org.toeline.ledger.store.place.Rights;
import org.toeline.ledger.store.place.Schema;
import org.toeline.ledger.store.place.Sources;
import org.toeline.ledger.store.rows.Aside;
import org.toeline.ledger.store.rows.Counter;
import org.toeline.ledger.store.rows.Finder;
import org.toeline.ledger.store.rows.FindingRows;
import org.toeline.ledger.store.rows.Intake;
import org.toeline.ledger.store.rows.KeptLesson;
import org.toeline.ledger.store.rows.LessonFindings;
import org.toeline.ledger.store.rows.LessonLine;
import org.toeline.ledger.store.rows.Lessons;
import org.toeline.ledger.store.rows.Merged;
import org.toeline.ledger.store.rows.Merging;
import org.toeline.ledger.store.rows.Player;
import org.toeline.ledger.store.rows.PlayerDetails;
import org.toeline.ledger.store.rows.Players;
import org.toeline.ledger.store.rows.RowSums;
import org.toeline.ledger.store.rows.Saved;
import org.toeline.ledger.store.rows.Search;
import org.toeline.ledger.store.rows.ShotRows;
import org.toeline.ledger.store.rows.Stamp;
import org.toeline.ledger.store.rows.StatedFinding;
import org.toeline.ledger.store.rows.Take;
import org.toeline.ledger.store.rows.TakeRows;
import org.toeline.ledger.store.rows.TakenIn;
import org.toeline.mark.Club;
import org.toeline.mark.Handedness;
import org.toeline.mark.View;

/**
 * The players and lessons of a coach, or of an academy. Every call is one transaction and is on the disk when it returns. Any
 * thread but the interface's; several programs may have one ledger open.
 */
public final class Ledger implements AutoCloseable {

    private static final Sentences SENTENCES = Sentences.of(Ledger.class);

    private static final String REHEARSAL = "rehearsal";

    private final Database database;
    private final Stamp stamp;

    private Ledger(Database database, Stamp stamp) {
        this.database = database;
        this.stamp = stamp;
    }

    /**
     * Opens the ledger of a place, makes it where there is none, and brings older tables up to date after a copy was made.
     *
     * @param bay what other bays are told this one is called
     */
    public static Ledger open(LedgerPlace place, String bay) throws LedgerException {
        return open(place, bay, Clock.systemDefaultZone(), UnaryOperator.identity());
    }

    static Ledger open(LedgerPlace place, String bay, Clock clock, UnaryOperator<DataSource> through)
            throws LedgerException {
        Database database = place instanceof LedgerPlace.Folder folder
                ? new FolderOpening(folder, through).open()
                : server((LedgerPlace.Server) place, through);
        Leftovers.seal(database);
        Ledger ledger = new Ledger(database, new Stamp(bay, clock));
        if (place instanceof LedgerPlace.Folder folder) {
            ledger.finishDeletions(folder);
        }
        return ledger;
    }

    private static Database server(LedgerPlace.Server place, UnaryOperator<DataSource> through) throws LedgerException {
        DataSource source = through.apply(Sources.server(place));
        try {
            var version = Schema.version(source);
            Schema.requireKnown(version, place.name());
            if (version.isEmpty() || version.getAsInt() < Schema.LATEST) {
                Schema.migrate(source, place);
            }
            try (Connection connection = source.getConnection()) {
                Rights rights = Rights.of(connection);
                return new Database(place, source, rights.keeps() ? Access.WRITE : Access.READ_ONLY, rights.limits());
            }
        } catch (SQLException e) {
            throw Faults.of(e, SENTENCES.of("cannot.open-ledger"), place);
        }
    }

    public LedgerPlace place() {
        return database.place();
    }

    /** What the server's role may do here and what not; empty where it may do everything, and of a folder. */
    public Optional<String> limits() {
        return database.limits();
    }

    /** Whether nothing can be written where the ledger lies: then it is shown, and saving needs another place. */
    public boolean isReadOnly() {
        return database.access() == Access.READ_ONLY;
    }

    public Player addPlayer(PlayerDetails details) throws LedgerException {
        return database.write(SENTENCES.of("cannot.keep-player"), h -> new Players(h, stamp).add(details));
    }

    /**
     * Changes what is written of a player; a new name goes into the player's lessons too.
     *
     * @return the player as kept; empty when somebody else changed or deleted them meanwhile
     */
    public Optional<Player> changePlayer(Player changed) throws LedgerException {
        return database.write(SENTENCES.of("cannot.change-player"), h -> {
            Players players = new Players(h, stamp);
            if (!players.change(changed)) {
                return Optional.empty();
            }
            lessons(h).rename(changed.id(), changed.details().name());
            return players.get(changed.id());
        });
    }

    public Optional<Player> player(int id) throws LedgerException {
        return database.read(SENTENCES.of("cannot.read-player"), h -> {
            Optional<Player> player = new Players(h, stamp).get(id);
            if (player.isPresent()) {
                requirePlayer(h, id);
            }
            return player;
        });
    }

    private void requirePlayer(Handle handle, int id) throws LedgerException {
        if (!new RowSums(handle).isPlayerWhole(id)) {
            throw new LedgerException(Fault.DAMAGED, SENTENCES.of("kept.player-damaged", place().name(), id));
        }
    }

    /** All players, those kept last first. */
    public List<Player> players() throws LedgerException {
        return database.read(SENTENCES.of("cannot.read-players"), h -> {
            List<Player> all = new Players(h, stamp).all();
            for (Player player : all) {
                requirePlayer(h, player.id());
            }
            return all;
        });
    }

    /** The players of that very name and handedness. */
    public List<Player> playersNamed(String name, Handedness handedness) throws LedgerException {
        return database.read(SENTENCES.of("cannot.read-players"), h -> new Players(h, stamp).named(name, handedness));
    }

    /** Keeps a new lesson. */
    public KeptLesson keep(int playerId, Lesson lesson, List<StatedFinding> findings) throws LedgerException {
        return database.write(SENTENCES.of("cannot.keep-lesson"), h -> {
            Player player = new Players(h, stamp)
                    .get(playerId)
                    .orElseThrow(() -> new LedgerException(
                            Fault.UNKNOWN, SENTENCES.of("kept.no-player-keep", place().name(), playerId)));
            int id = lessons(h)
                    .add(player, lesson, findings, UUID.randomUUID().toString(), TakeRows.chosen(lesson.clips()));
            return lessons(h).get(id).orElseThrow();
        });
    }

    /**
     * Takes in a lesson that was kept elsewhere: with the player who has its name and handedness, or as the first of a new
     * one. The very same document is taken in once.
     *
     * @param playerId whose lesson it is, where the name does not say
     */
    public TakenIn takeIn(Lesson lesson, List<StatedFinding> findings, Optional<Integer> playerId)
            throws LedgerException {
        return takeIn(lesson, findings, playerId, Optional.empty(), TakeRows.chosen(lesson.clips()));
    }

    /**
     * The same for a lesson whose words are not trusted.
     *
     * @param identity that it had where it was kept, if that is known
     * @param found    where its clips are: only those are opened
     */
    public TakenIn takeIn(
            Lesson lesson,
            List<StatedFinding> findings,
            Optional<Integer> playerId,
            Optional<String> identity,
            Map<View, Path> found)
            throws LedgerException {
        return database.write(SENTENCES.of("cannot.take-in-lesson"), h -> {
            Counter.inTurn(h);
            return new Intake(new Players(h, stamp), lessons(h), place())
                    .take(lesson, findings, playerId, identity, found);
        });
    }

    /** Keeps a lesson that is begun at this desk: a new one, even when it looks like another. */
    public KeptLesson begin(Lesson lesson, Optional<Integer> playerId) throws LedgerException {
        return database.write(SENTENCES.of("cannot.keep-lesson"), h -> {
            Counter.inTurn(h);
            int id = new Intake(new Players(h, stamp), lessons(h), place()).begin(lesson, playerId);
            return lessons(h).get(id).orElseThrow();
        });
    }

    /**
     * Saves a changed lesson over the version it was made from. When another bay changed it meanwhile, theirs stands and this
     * one is kept beside it: nobody's work is overwritten unseen.
     */
    public Saved save(int lessonId, int baseVersion, Lesson lesson, List<StatedFinding> findings)
            throws LedgerException {
        return database.write(
                SENTENCES.of("cannot.save-lesson"), h -> lessons(h).save(lessonId, baseVersion, lesson, findings));
    }

    /**
     * Makes a lesson another player's, under whose name its document goes from then on. A player without a name who has no
     * other lesson is forgotten.
     *
     * @return the lesson's new version
     */
    public int give(int lessonId, int playerId) throws LedgerException {
        return database.write(SENTENCES.of("cannot.give-lesson"), h -> {
            Player player = new Players(h, stamp)
                    .get(playerId)
                    .orElseThrow(() -> new LedgerException(
                            Fault.UNKNOWN, SENTENCES.of("kept.no-player-give", place().name(), playerId)));
            return lessons(h).give(lessonId, player);
        });
    }

    /**
     * Makes one player of two who are one: the lessons of the one who goes are those of the one who stays.
     *
     * @return who stays, and the moved lessons with their new versions
     */
    public Merged merge(int staysId, int goesId) throws LedgerException {
        return database.write(
                SENTENCES.of("cannot.merge"),
                h -> new Merging(h, new Players(h, stamp), lessons(h), place()).into(staysId, goesId));
    }

    /**
     * Saves what was marked at once, as {@link #save} does but without findings: those that were stated are taken back until
     * the lesson is saved with new ones. For a hand that marks quickly.
     */
    public Saved saveMarks(int lessonId, int baseVersion, Lesson lesson) throws LedgerException {
        return save(lessonId, baseVersion, lesson, List.of());
    }

    /**
     * Does all that keeping and saving a lesson takes, and takes it back before anybody sees it: what is done for the first
     * time takes its time, and is better done before somebody waits for it.
     */
    public void rehearse(Lesson lesson) throws LedgerException {
        database.write(SENTENCES.of("cannot.write-ledger"), h -> {
            h.savepoint(REHEARSAL);
            Player player = new Players(h, stamp)
                    .add(PlayerDetails.of(Optional.empty(), lesson.sheet().handedness()));
            int id = lessons(h).add(player, lesson, List.of(), UUID.randomUUID().toString(), Map.of());
            lessons(h).save(id, 1, lesson, List.of());
            lessons(h).get(id);
            h.rollbackToSavepoint(REHEARSAL);
            return id;
        });
    }

    public Optional<KeptLesson> lesson(int id) throws LedgerException {
        return database.read(SENTENCES.of("cannot.read-lesson"), h -> lessons(h).get(id));
    }

    /** The lesson that has this very document, if it was kept before. */
    public Optional<Integer> lessonLike(Lesson lesson) throws LedgerException {
        return database.read(
                SENTENCES.of("cannot.read-lessons"), h -> lessons(h).same(lesson));
    }

    /** What could not be saved over another bay's change of a lesson. */
    public List<Aside> asides(int lessonId) throws LedgerException {
        return database.read(
                SENTENCES.of("cannot.read-lesson"), h -> whole(h, lessonId).asides(lessonId));
    }

    /** Lets go of what was kept beside a lesson, once somebody has looked. */
    public void dropAside(int asideId) throws LedgerException {
        database.write(SENTENCES.of("cannot.drop-aside"), h -> lessons(h).dropAside(asideId));
    }

    /** Lessons that meet a search, the recent first. */
    public List<LessonLine> find(Search search) throws LedgerException {
        return database.readPlain(SENTENCES.of("cannot.search-lessons"), c -> Finder.find(search, c));
    }

    /** The numbers of all lessons, or of a player's, in their order. */
    public List<Integer> lessonNumbers(Optional<Integer> playerId) throws LedgerException {
        return database.readPlain(SENTENCES.of("cannot.read-lessons"), c -> Finder.numbers(playerId, c));
    }

    /** The findings of a player's lessons with a club, in the order of the lessons. */
    public List<LessonFindings> acrossLessons(int playerId, Club club) throws LedgerException {
        return database.read(SENTENCES.of("cannot.read-lessons"), h -> {
            List<LessonFindings> across = new FindingRows(h).across(playerId, club);
            lessons(h)
                    .requireWhole(across.stream().map(LessonFindings::lessonId).toList());
            return across;
        });
    }

    /** The clips of a lesson, as the document names them, with what is known of their content. */
    public List<Take> takes(int lessonId) throws LedgerException {
        return database.read(SENTENCES.of("cannot.read-lesson"), h -> {
            whole(h, lessonId);
            return new TakeRows(h).of(lessonId);
        });
    }

    /** Notes what a lesson's clip holds, so that it can be found again under another name. */
    public void noteClip(int lessonId, View view, Fingerprint fingerprint) throws LedgerException {
        database.write(SENTENCES.of("cannot.note-clip"), h -> {
            whole(h, lessonId);
            return new TakeRows(h).note(lessonId, view, fingerprint);
        });
    }

    /** Keeps the shots hit from a lesson's setup, in their order, in place of those that were kept. */
    public void keepShots(int lessonId, List<Shot> shots) throws LedgerException {
        database.write(SENTENCES.of("cannot.keep-shots"), h -> {
            whole(h, lessonId);
            return new ShotRows(h).replace(lessonId, shots);
        });
    }

    /** The shots hit from a lesson's setup, in their order. */
    public List<Shot> shots(int lessonId) throws LedgerException {
        return database.read(SENTENCES.of("cannot.read-shots"), h -> {
            whole(h, lessonId);
            return new ShotRows(h).of(lessonId);
        });
    }

    /** The lessons, once this one is found to be what was written: altered rows are neither shown nor sealed by later work. */
    private Lessons whole(Handle handle, int lessonId) throws LedgerException {
        Lessons lessons = lessons(handle);
        lessons.requireWhole(List.of(lessonId));
        return lessons;
    }

    private Lessons lessons(Handle handle) {
        return new Lessons(handle, stamp, place());
    }

    public Database database() {
        return database;
    }

    /**
     * Deletes a player with all lessons, copied clips and stills, for good.
     *
     * @param files where this machine has clips, pictures and backups
     */
    public Deleted deletePlayer(int id, OldBackups backups, LedgerPlace.Folder files) throws LedgerException {
        return new Deletion(database, files).player(id, backups);
    }

    /** Deletes a lesson with its copied clips and stills, for good. */
    public Deleted deleteLesson(int id, OldBackups backups, LedgerPlace.Folder files) throws LedgerException {
        return new Deletion(database, files).lesson(id, backups);
    }

    /**
     * Goes on with deletions that were hindered or killed. A folder's ledger does it when it is opened; of a server's, every bay
     * has files of its own to take away.
     *
     * @param files where this machine has clips, pictures and backups
     * @return why something is left, if it is
     */
    public Optional<String> finishDeletions(LedgerPlace.Folder files) throws LedgerException {
        return isReadOnly()
                ? Optional.empty()
                : new Leftovers(database, files).clear().unfinished();
    }

    /** A checked copy of the ledger in its backup folder, made by the database itself. */
    public Path backUp() throws LedgerException {
        return Backups.make(requireFolder(), Sources.writable(requireFolder().file()));
    }

    /**
     * The same for either kind of ledger.
     *
     * @param beside in whose backup folder the copy of a server's ledger is put
     */
    public Path backUp(LedgerPlace.Folder beside) throws LedgerException {
        return place() instanceof LedgerPlace.Server server
                ? new ServerBackups(server).make(beside.backups())
                : backUp();
    }

    /** Puts a copy of a server's ledger into a database that has none yet. */
    public static void restore(LedgerPlace.Server place, Path backup) throws LedgerException {
        new ServerBackups(place).restore(backup);
    }

    /** Verified backups of a folder's ledger, newest first. */
    public static List<Path> backups(LedgerPlace.Folder place) throws IOException {
        return Backups.all(place);
    }

    /**
     * Puts a backup in the place of a ledger that nobody has open.
     *
     * @return where the ledger that was there is now, if there was one
     */
    public static Optional<Path> restore(LedgerPlace.Folder place, Path backup) throws LedgerException {
        return Restore.put(backup, place);
    }

    /** Refuses to go on with a ledger of which anything is not what was written; what leaves it as one table is all of it. */
    public void requireWhole() throws LedgerException {
        Optional<String> fault = check();
        if (fault.isPresent()) {
            throw new LedgerException(
                    Fault.DAMAGED,
                    SENTENCES.of("check.damaged", place().name(), fault.get()),
                    place() instanceof LedgerPlace.Folder folder ? Backups.newest(folder) : Optional.empty());
        }
    }

    /** Reads everything and compares it with what was written; takes a while. Empty when all is whole. */
    public Optional<String> check() throws LedgerException {
        return new ThoroughCheck(database).firstFault();
    }

    private LedgerPlace.Folder requireFolder() throws LedgerException {
        if (place() instanceof LedgerPlace.Folder folder) {
            return folder;
        }
        throw new LedgerException(Fault.OTHER, SENTENCES.of("kept.no-folder", place().name()));
    }

    @Override
    public void close() {
        database.close();
    }
}

package org.toeline.ledger.store.backup;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.sql.DataSource;
import org.toeline.document.WholeFile;
import org.toeline.language.Sentences;
import org.toeline.ledger.store.place.Faults;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.place.LedgerException.Fault;
import org.toeline.ledger.store.place.LedgerFile;
import org.toeline.ledger.store.place.LedgerPlace;
import org.toeline.ledger.store.place.Schema;
import org.toeline.ledger.store.place.Sources;

/**
 * Copies of a folder's ledger, made by the database itself ({@code VACUUM INTO}), opened and checked whole before they count.
 * Their order is that of their numbers. Older ones go only when a newer one has been checked.
 */
public final class Backups {

    private static final Sentences SENTENCES = Sentences.of(Backups.class);

    /** How many are kept. */
    public static final int KEPT = 5;

    private static final Pattern NAME = Pattern.compile("ledger-(\\d{6})(-before-version-\\d+)?\\.db");
    /** How the name of a ledger begins that a restore put aside. */
    public static final String SET_ASIDE = "ledger-set-aside-";

    private static final String UNFINISHED = ".backup-";

    private Backups() {}

    /** Verified backups, newest first. */
    public static List<Path> all(LedgerPlace.Folder place) throws IOException {
        List<Path> found = new ArrayList<>();
        if (Files.isDirectory(place.backups())) {
            try (DirectoryStream<Path> files = Files.newDirectoryStream(place.backups())) {
                for (Path file : files) {
                    if (NAME.matcher(file.getFileName().toString()).matches()) {
                        found.add(file);
                    }
                }
            }
        }
        found.sort((a, b) -> Integer.compare(number(b), number(a)));
        return found;
    }

    /** How much a backup holds. */
    public record Content(int lessons, int players) {}

    /** Empty where it cannot be read. */
    public static Optional<Content> content(Path backup) {
        try (Connection connection = Sources.unchanging(backup).getConnection();
                Statement statement = connection.createStatement();
                ResultSet row =
                        statement.executeQuery("select (select count(*) from lesson), (select count(*) from player)")) {
            row.next();
            return Optional.of(new Content(row.getInt(1), row.getInt(2)));
        } catch (SQLException e) {
            return Optional.empty();
        }
    }

    private static int number(Path backup) {
        Matcher name = NAME.matcher(backup.getFileName().toString());
        return name.matches() ? Integer.parseInt(name.group(1)) : 0;
    }

    public static Optional<Path> newest(LedgerPlace.Folder place) {
        try {
            return all(place).stream().findFirst();
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    public static Path make(LedgerPlace.Folder place, DataSource source) throws LedgerException {
        Path made = make(place, source, "");
        prune(place);
        return made;
    }

    /** The copy from before a change of the tables. */
    public static void beforeUpdate(LedgerPlace.Folder place, DataSource source) throws LedgerException {
        make(place, source, "-before-version-" + Schema.LATEST);
    }

    private static Path make(LedgerPlace.Folder place, DataSource source, String suffix) throws LedgerException {
        try {
            Files.createDirectories(place.backups());
            sweep(place);
            Path beside = place.backups().resolve(UNFINISHED + UUID.randomUUID() + ".db");
            try {
                copyInto(beside, source, place);
                verify(beside, place);
                int next = all(place).stream().mapToInt(Backups::number).max().orElse(0) + 1;
                return WholeFile.putInPlace(
                        beside,
                        place.backups()
                                .resolve(String.format(java.util.Locale.ROOT, "ledger-%06d%s.db", next, suffix)));
            } finally {
                Files.deleteIfExists(beside);
            }
        } catch (IOException e) {
            throw new LedgerException(
                    Fault.OTHER,
                    SENTENCES.of(
                            "backup.not-made", place.backups(), e.getClass().getSimpleName() + ": " + e.getMessage()),
                    e);
        }
    }

    private static void copyInto(Path file, DataSource source, LedgerPlace place) throws LedgerException {
        try (Connection connection = source.getConnection();
                PreparedStatement statement = connection.prepareStatement("vacuum into ?")) {
            statement.setString(1, file.toAbsolutePath().toString());
            statement.execute();
        } catch (SQLException e) {
            throw Faults.of(e, SENTENCES.of("cannot.back-up"), place);
        }
    }

    /** What is wrong with a copy; empty when it is a whole ledger. */
    static Optional<String> fault(Path copy) {
        DataSource opened = Sources.unchanging(copy);
        Optional<String> fault = LedgerFile.thoroughFault(opened);
        OptionalInt version = OptionalInt.empty();
        try {
            version = Schema.version(opened);
        } catch (SQLException e) {
            fault = Optional.of(Faults.reason(e));
        }
        return fault.isPresent() || version.isPresent() ? fault : Optional.of(SENTENCES.of("file.no-tables"));
    }

    private static void verify(Path made, LedgerPlace place) throws LedgerException {
        Optional<String> fault = fault(made);
        if (fault.isPresent()) {
            throw new LedgerException(
                    Fault.DAMAGED,
                    SENTENCES.of("backup.not-whole", place.name(), fault.get()),
                    place instanceof LedgerPlace.Folder folder ? newest(folder) : Optional.empty());
        }
    }

    private static void sweep(LedgerPlace.Folder place) throws IOException {
        try (DirectoryStream<Path> left = Files.newDirectoryStream(place.backups(), UNFINISHED + "*")) {
            for (Path path : left) {
                Files.delete(path);
            }
        }
    }

    private static void prune(LedgerPlace.Folder place) throws LedgerException {
        try {
            List<Path> all = all(place);
            for (Path old : all.subList(Math.min(KEPT, all.size()), all.size())) {
                Files.delete(old);
            }
        } catch (IOException e) {
            throw new LedgerException(
                    Fault.OTHER, SENTENCES.of("backup.old-stays", place.backups(), String.valueOf(e.getMessage())), e);
        }
    }

    /** Takes away every backup but the one given, which has been verified. */
    public static int dropAllBut(Path kept, LedgerPlace.Folder place) throws IOException {
        int dropped = 0;
        for (Path backup : all(place)) {
            if (!backup.equals(kept)) {
                Files.delete(backup);
                dropped++;
            }
        }
        return dropped;
    }
}

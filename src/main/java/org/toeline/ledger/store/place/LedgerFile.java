package org.toeline.ledger.store.place;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Optional;
import javax.sql.DataSource;
import org.toeline.language.Sentences;

/** What can be told of a ledger's file without trusting it. */
public final class LedgerFile {

    private static final Sentences SENTENCES = Sentences.of(LedgerFile.class);

    private static final int HEADER = 100;
    private static final byte[] MAGIC = "SQLite format 3\0".getBytes(StandardCharsets.US_ASCII);

    private LedgerFile() {}

    /** What is plainly wrong with the file (SQLite's file format, sections 1.3.1 to 1.3.8); quick, whatever its size. */
    public static Optional<String> plainFault(Path file) throws IOException {
        long size = Files.size(file);
        if (size < HEADER) {
            return Optional.of(SENTENCES.of(size == 0 ? "file.empty" : "file.short"));
        }
        ByteBuffer header = ByteBuffer.allocate(HEADER);
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ)) {
            while (header.hasRemaining() && channel.read(header) >= 0) {
                continue;
            }
        }
        for (int i = 0; i < MAGIC.length; i++) {
            if (header.get(i) != MAGIC[i]) {
                return Optional.of(SENTENCES.of("file.no-sqlite"));
            }
        }
        int stated = Short.toUnsignedInt(header.getShort(16));
        long page = stated == 1 ? 65536 : stated;
        boolean counted = header.getInt(24) == header.getInt(92) && !hasLog(file);
        long pages = Integer.toUnsignedLong(header.getInt(28));
        if (page < 512 || counted && pages * page != size) {
            return Optional.of(SENTENCES.of("file.length"));
        }
        return Optional.empty();
    }

    /** Whether commits wait in the log beside the file. */
    public static boolean hasLog(Path file) throws IOException {
        Path log = log(file);
        return Files.exists(log) && Files.size(log) > 0;
    }

    public static Path log(Path file) {
        return file.resolveSibling(file.getFileName() + "-wal");
    }

    public static Path index(Path file) {
        return file.resolveSibling(file.getFileName() + "-shm");
    }

    /** What the database's own full check finds; reads every page. */
    public static Optional<String> thoroughFault(DataSource source) {
        try (Connection connection = source.getConnection();
                Statement statement = connection.createStatement()) {
            try (ResultSet rows = statement.executeQuery("pragma integrity_check(1)")) {
                if (!rows.next()) {
                    return Optional.of(SENTENCES.of("file.unchecked"));
                }
                if (!rows.getString(1).equals("ok")) {
                    return Optional.of(rows.getString(1).lines().findFirst().orElse(SENTENCES.of("file.pages")));
                }
            }
            try (ResultSet rows = statement.executeQuery("pragma foreign_key_check")) {
                return rows.next() ? Optional.of(SENTENCES.of("file.rows-of", rows.getString(1))) : Optional.empty();
            }
        } catch (SQLException e) {
            return Optional.of(Faults.reason(e));
        }
    }
}

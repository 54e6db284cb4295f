package org.toeline.ledger.store.exchange;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import org.toeline.language.Sentences;
import org.toeline.ledger.DocumentException;

/**
 * Looks at the directory at the end of an archive before anything is unpacked (APPNOTE.TXT 6.3, sections 4.3.12 and 4.3.16).
 * Only the names that an archive of a lesson has are allowed, each once whatever its case, and only plain files.
 */
final class ArchiveDirectory {

    private static final Sentences SENTENCES = Sentences.of(ArchiveDirectory.class);

    static final String LESSON = "lesson.lesson.json";
    static final String INDEX = "archive.json";
    private static final Pattern CLIP_OR_STILL = Pattern.compile("(clips|stills)/[A-Za-z0-9][A-Za-z0-9._-]{0,99}");
    private static final int MOST_ENTRIES = 100;

    private static final int END_SIGNATURE = 0x06054b50;
    private static final int ENTRY_SIGNATURE = 0x02014b50;
    private static final int END_SIZE = 22;
    private static final int ENTRY_SIZE = 46;
    private static final int LONGEST_COMMENT = 65535;
    private static final int KIND = 0170000;
    private static final int PLAIN_FILE = 0100000;

    private ArchiveDirectory() {}

    /** The names of the entries, or a sentence that says why none is unpacked. */
    static List<String> check(Path archive) throws DocumentException {
        try (FileChannel channel = FileChannel.open(archive, StandardOpenOption.READ)) {
            ByteBuffer directory = directory(channel, archive);
            List<String> names = new ArrayList<>();
            Set<String> folded = new HashSet<>();
            while (directory.remaining() >= ENTRY_SIZE && directory.getInt(directory.position()) == ENTRY_SIGNATURE) {
                String name = entry(directory, archive);
                if (!folded.add(name.toLowerCase(Locale.ROOT))) {
                    throw refused(archive, "archive.twice", name);
                }
                names.add(name);
                if (names.size() > MOST_ENTRIES) {
                    throw refused(archive, "archive.many", MOST_ENTRIES);
                }
            }
            if (!names.contains(LESSON) || !names.contains(INDEX)) {
                throw refused(archive, "archive.none", LESSON, INDEX);
            }
            return names;
        } catch (IOException e) {
            throw refused(archive, "archive.unreadable", String.valueOf(e.getMessage()));
        }
    }

    private static DocumentException refused(Path archive, String why, Object... values) {
        return new DocumentException(SENTENCES.of("archive.refused", archive, SENTENCES.of(why, values)));
    }

    private static ByteBuffer directory(FileChannel channel, Path archive) throws IOException, DocumentException {
        long size = channel.size();
        int tail = (int) Math.min(size, END_SIZE + LONGEST_COMMENT);
        ByteBuffer end = read(channel, size - tail, tail);
        int at = tail - END_SIZE;
        while (at >= 0 && end.getInt(at) != END_SIGNATURE) {
            at--;
        }
        if (at < 0) {
            throw refused(archive, "archive.no-zip");
        }
        int entries = Short.toUnsignedInt(end.getShort(at + 10));
        long length = Integer.toUnsignedLong(end.getInt(at + 12));
        long start = Integer.toUnsignedLong(end.getInt(at + 16));
        if (entries > MOST_ENTRIES
                || start + length > size
                || length > (long) MOST_ENTRIES * (ENTRY_SIZE + 3 * 65535)) {
            throw refused(archive, "archive.directory");
        }
        return read(channel, start, (int) length);
    }

    private static ByteBuffer read(FileChannel channel, long from, int length) throws IOException {
        ByteBuffer buffer = ByteBuffer.allocate(length).order(ByteOrder.LITTLE_ENDIAN);
        while (buffer.hasRemaining() && channel.read(buffer, from + buffer.position()) >= 0) {
            continue;
        }
        return buffer.flip().order(ByteOrder.LITTLE_ENDIAN);
    }

    private static String entry(ByteBuffer directory, Path archive) throws DocumentException {
        int at = directory.position();
        int madeBy = Byte.toUnsignedInt(directory.get(at + 5));
        int flags = Short.toUnsignedInt(directory.getShort(at + 8));
        int nameLength = Short.toUnsignedInt(directory.getShort(at + 28));
        int rest = Short.toUnsignedInt(directory.getShort(at + 30)) + Short.toUnsignedInt(directory.getShort(at + 32));
        int mode = directory.getInt(at + 38) >>> 16;
        if (directory.remaining() < ENTRY_SIZE + nameLength + rest) {
            throw refused(archive, "archive.directory-short");
        }
        byte[] bytes = new byte[nameLength];
        directory.get(at + ENTRY_SIZE, bytes);
        String name = new String(bytes, StandardCharsets.UTF_8);
        directory.position(at + ENTRY_SIZE + nameLength + rest);
        if (!name.equals(LESSON)
                && !name.equals(INDEX)
                && !CLIP_OR_STILL.matcher(name).matches()) {
            throw refused(archive, "archive.place", shown(name));
        }
        if (madeBy == 3 && (mode & KIND) != 0 && (mode & KIND) != PLAIN_FILE) {
            throw refused(archive, "archive.link", name);
        }
        if ((flags & 1) != 0) {
            throw refused(archive, "archive.locked", name);
        }
        return name;
    }

    private static String shown(String name) {
        String plain = name.replaceAll("\\p{C}", "?");
        return plain.length() > 80 ? plain.substring(0, 80) + " …" : plain;
    }
}

package org.toeline.ledger.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.toeline.ledger.DocumentException;
import org.toeline.ledger.LessonDocument;
import org.toeline.ledger.store.exchange.LessonImport;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.place.LedgerPlace;
import org.toeline.ledger.store.rows.Search;
import org.toeline.ledger.store.rows.TakenIn;

/** Archives made to do harm are refused whole. */
class HostileArchiveTest {

    private static final byte[] INDEX =
            "{\"format\": \"toeline-archive\", \"version\": 1}".getBytes(StandardCharsets.UTF_8);

    @TempDir
    private Path folder;

    private LedgerPlace.Folder place;
    private Ledger ledger;

    @BeforeEach
    void open() throws LedgerException {
        place = new LedgerPlace.Folder(folder.resolve("ledger"));
        ledger = Ledger.open(place, "bay 1");
    }

    @AfterEach
    void close() {
        ledger.close();
    }

    private static Map<String, byte[]> whole() {
        Map<String, byte[]> entries = new LinkedHashMap<>();
        entries.put("lesson.lesson.json", LessonDocument.bytes(TestLessons.lesson("B. Trial")));
        entries.put("archive.json", INDEX);
        return entries;
    }

    private Path zip(Map<String, byte[]> entries) throws Exception {
        Path file = folder.resolve("hostile.zip");
        try (OutputStream out = Files.newOutputStream(file);
                ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Map.Entry<String, byte[]> entry : entries.entrySet()) {
                zip.putNextEntry(new ZipEntry(entry.getKey()));
                zip.write(entry.getValue());
                zip.closeEntry();
            }
        }
        return file;
    }

    private void refused(Path archive, String says) throws Exception {
        List<Path> before = everything();
        assertThatExceptionOfType(DocumentException.class)
                .isThrownBy(() -> new LessonImport(ledger, place, l -> List.of()).take(archive, Optional.empty()))
                .withMessageStartingWith(archive.toString())
                .withMessageContaining(says)
                .satisfies(e -> assertThat(e.getMessage()).doesNotContain("\n"));
        assertThat(everything()).isEqualTo(before);
        assertThat(ledger.find(Search.RECENT)).isEmpty();
    }

    private List<Path> everything() throws Exception {
        List<Path> all = new ArrayList<>();
        try (Stream<Path> files = Files.walk(folder)) {
            files.filter(f -> !f.getFileName().toString().startsWith("hostile"))
                    .sorted()
                    .forEach(all::add);
        }
        return all;
    }

    @Test
    void theWholeOneIsTaken() throws Exception {
        assertThat(new LessonImport(ledger, place, l -> List.of()).take(zip(whole()), Optional.empty()))
                .isEqualTo(new TakenIn.New(1, 1));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "../evil.txt",
                "clips/../../evil.txt",
                "/etc/evil",
                "C:\\evil",
                "c:evil",
                "clips\\evil.mp4",
                "\\\\host\\x",
                "clips/",
                "stills/.hidden",
                "clips/a/b.mp4",
                "ledger.db",
                "clips/\u202Egp4.exe",
                "clips/nul\0.mp4",
                "media/x"
            })
    void namesThatLeadElsewhere(String name) throws Exception {
        Map<String, byte[]> entries = whole();
        entries.put(name, new byte[3]);
        refused(zip(entries), "no place for a lesson's files");
    }

    @Test
    void namesThatDifferInCaseOnly() throws Exception {
        Map<String, byte[]> entries = whole();
        entries.put("clips/a.mp4", new byte[3]);
        entries.put("clips/A.MP4", new byte[3]);
        refused(zip(entries), "once more in other letters");
    }

    /** A link has the file type 0120000 in the upper half of the external attributes (APPNOTE 4.4.15). */
    @Test
    void links() throws Exception {
        Map<String, byte[]> entries = whole();
        entries.put("clips/link.mp4", "/etc/passwd".getBytes(StandardCharsets.UTF_8));
        Path file = zip(entries);
        byte[] bytes = Files.readAllBytes(file);
        String text = new String(bytes, StandardCharsets.ISO_8859_1);
        int entry = text.lastIndexOf("PK\1\2");
        bytes[entry + 5] = 3;
        bytes[entry + 40] = (byte) 0xff;
        bytes[entry + 41] = (byte) 0xa1;
        Files.write(file, bytes);
        refused(file, "as a link");
    }

    @Test
    void bombs() throws Exception {
        Map<String, byte[]> entries = whole();
        entries.put("clips/face-on.mp4", new byte[64 << 20]);
        refused(zip(entries), "unpacks to more than");
        Map<String, byte[]> deep = whole();
        deep.put("lesson.lesson.json", "[".repeat(100_000).getBytes(StandardCharsets.UTF_8));
        refused(zip(deep), "lesson.lesson.json");
        Map<String, byte[]> many = whole();
        for (int i = 0; i < 200; i++) {
            many.put("stills/s" + i + ".png", new byte[0]);
        }
        refused(zip(many), "larger than a lesson's");
    }

    @Test
    void clipsThatAreNotWhatWasPutIn() throws Exception {
        Map<String, byte[]> entries = whole();
        entries.put("clips/face-on.mp4", new byte[10]);
        String index = "{\"format\": \"toeline-archive\", \"version\": 1, \"clips\": [{\"view\": \"face-on\", \"file\":"
                + " \"%s\", \"size\": 10, \"sha256\": \"" + "0".repeat(64) + "\"}]}";
        entries.put("archive.json", index.formatted("clips/face-on.mp4").getBytes(StandardCharsets.UTF_8));
        refused(zip(entries), "is not what was put in");
        entries.put("archive.json", index.formatted("../../ledger.db").getBytes(StandardCharsets.UTF_8));
        refused(zip(entries), "is no clip of this lesson");
        entries.put("archive.json", index.formatted("clips/other.mp4").getBytes(StandardCharsets.UTF_8));
        refused(zip(entries), "is no clip of this lesson");
    }

    /** One digit of one mark: still a lesson, only not the one that was put in. */
    @Test
    void aChangedDigitOfALesson() throws Exception {
        Map<String, byte[]> entries = whole();
        CRC32 sum = new CRC32();
        sum.update(entries.get("lesson.lesson.json"));
        String text = new String(entries.get("lesson.lesson.json"), StandardCharsets.UTF_8);
        String changed = text.replace("635.0", "835.0");
        assertThat(changed).isNotEqualTo(text).hasSameSizeAs(text);
        entries.put("lesson.lesson.json", changed.getBytes(StandardCharsets.UTF_8));
        Path file = zip(entries);
        byte[] bytes = Files.readAllBytes(file);
        ByteBuffer directory = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
        int entry = new String(bytes, StandardCharsets.ISO_8859_1).indexOf("PK\1\2");
        directory.putInt(entry + 16, (int) sum.getValue());
        Files.write(file, bytes);
        refused(file, "hecksum");
    }

    @Test
    void whatIsNoArchive() throws Exception {
        refused(Files.writeString(folder.resolve("hostile-text.zip"), "no archive"), "is no ZIP archive");
        refused(Files.createFile(folder.resolve("hostile-empty.zip")), "is no ZIP archive");
        refused(zip(Map.of("archive.json", INDEX)), "no archive of a lesson");
        refused(folder.resolve("hostile-none.zip"), "cannot be read");
    }
}

package org.toeline.ledger.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import javax.imageio.ImageIO;
import org.apache.commons.io.file.PathUtils;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.toeline.ledger.DocumentException;
import org.toeline.ledger.store.exchange.LessonArchive;
import org.toeline.ledger.store.exchange.LessonImport;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.place.LedgerPlace;
import org.toeline.ledger.store.place.Stills;
import org.toeline.ledger.store.rows.KeptLesson;
import org.toeline.ledger.store.rows.PlayerDetails;
import org.toeline.ledger.store.rows.Take;
import org.toeline.mark.Handedness;
import org.toeline.mark.View;

/**
 * Archives changed at random, in their bytes, in the names of their files or in what their words say of files: each is taken or
 * refused with a sentence, soon; a file that lies beside the ledger is neither read nor changed, by the import or by an
 * export of what was taken.
 */
class ManyArchivesTest {

    private static final String SECRET = "nobody-takes-this-along";
    private static final long SOON_MS = 20_000;

    @Test
    void nothingElseIsTakenAlong(@TempDir Path folder) throws Exception {
        assertThat(run(40, 3, folder).wrong()).isEmpty();
    }

    private record Outcome(int taken, int refused, long longestMs, List<String> wrong) {}

    private static Outcome run(int archives, long seed, Path folder) throws Exception {
        Path secret = Files.writeString(folder.resolve("secret.txt"), SECRET);
        Map<String, byte[]> whole = entries(whole(folder.resolve("source")));
        Random random = new Random(seed);
        int taken = 0;
        long longest = 0;
        List<String> wrong = new ArrayList<>();
        for (int i = 0; i < archives; i++) {
            Path own = Files.createDirectories(folder.resolve("own" + i));
            Path file = Files.write(own.resolve("a.zip"), changed(whole, secret, random));
            LedgerPlace.Folder place = new LedgerPlace.Folder(own.resolve("ledger"));
            long begin = System.nanoTime();
            try (Ledger ledger = Ledger.open(place, "bay 1")) {
                try {
                    int id = new LessonImport(ledger, place, l -> List.of())
                            .take(file, Optional.empty())
                            .lessonId();
                    taken++;
                    exported(ledger, place, id, own.resolve("again.zip"));
                } catch (DocumentException e) {
                    if (!e.getMessage().startsWith(file.toString())
                            || e.getMessage().contains("\n")) {
                        wrong.add(i + ": " + e.getMessage());
                    }
                }
            }
            longest = Math.max(longest, (System.nanoTime() - begin) / 1_000_000);
            Files.delete(file);
            if (holds(own, SECRET) || !Files.readString(secret).equals(SECRET)) {
                wrong.add(i + ": the file beside was taken along");
            }
            try (Stream<Path> beside = Files.list(folder)) {
                if (beside.count() != 3) {
                    wrong.add(i + ": something was put beside the ledger");
                }
            }
            PathUtils.deleteDirectory(own);
        }
        if (longest > SOON_MS) {
            wrong.add("one took " + longest + " ms");
        }
        return new Outcome(taken, archives - taken, longest, wrong);
    }

    private static Path whole(Path folder) throws Exception {
        Files.createDirectories(folder);
        Path clip = folder.resolve("one.png");
        ImageIO.write(new BufferedImage(64, 48, BufferedImage.TYPE_INT_RGB), "png", clip.toFile());
        Path still = Files.copy(clip, folder.resolve("still.png"));
        LedgerPlace.Folder place = new LedgerPlace.Folder(folder.resolve("ledger"));
        try (Ledger ledger = Ledger.open(place, "bay 1")) {
            int player = ledger.addPlayer(PlayerDetails.of(Optional.of("B. Trial"), Handedness.RIGHT))
                    .id();
            KeptLesson kept = ledger.keep(player, TestLessons.lesson("B. Trial"), TestLessons.findings(5));
            Path archive = folder.resolve("whole.zip");
            LessonArchive.write(
                    kept.lesson(),
                    kept.identity(),
                    kept.findings(),
                    Map.of(View.FACE_ON, clip),
                    List.of(still),
                    archive);
            return archive;
        }
    }

    private static void exported(Ledger ledger, LedgerPlace.Folder place, int id, Path into)
            throws LedgerException, DocumentException, IOException {
        KeptLesson kept = ledger.lesson(id).orElseThrow();
        Map<View, Path> clips = new TreeMap<>();
        for (Take take : ledger.takes(id)) {
            if (take.fingerprint().isPresent()) {
                new Media(place.media()).copyOf(take.fingerprint().get()).ifPresent(c -> clips.put(take.view(), c));
            }
        }
        LessonArchive.write(
                kept.lesson(), kept.identity(), kept.findings(), clips, Stills.of(place, kept.identity()), into);
    }

    private static Map<String, byte[]> entries(Path archive) throws Exception {
        Map<String, byte[]> entries = new TreeMap<>();
        try (ZipFile zip = new ZipFile(archive.toFile())) {
            for (ZipEntry entry : zip.stream().toList()) {
                entries.put(entry.getName(), zip.getInputStream(entry).readAllBytes());
            }
        }
        return entries;
    }

    private static byte[] changed(Map<String, byte[]> whole, Path secret, Random random) throws Exception {
        String[] leading = {
            secret.toString(), "../../secret.txt", "../secret.txt", "clips/../../../secret.txt", "file://" + secret
        };
        String lead = leading[random.nextInt(leading.length)];
        Map<String, byte[]> entries = new TreeMap<>(whole);
        int kind = random.nextInt(4);
        String[] names = entries.keySet().toArray(String[]::new);
        String name = names[random.nextInt(names.length)];
        if (kind == 0) {
            entries.put(lead, entries.remove(name));
        } else if (kind == 1) {
            for (String words : List.of("archive.json", "lesson.lesson.json")) {
                String text = new String(entries.get(words), StandardCharsets.UTF_8);
                entries.put(
                        words,
                        text.replace("one.mp4", lead)
                                .replaceAll("(clips|stills)/[^\"]*", Matcher.quoteReplacement(lead))
                                .getBytes(StandardCharsets.UTF_8));
            }
        } else if (kind == 2) {
            byte[] bytes = entries.get(name).clone();
            for (int i = 0; i < 1 + random.nextInt(20); i++) {
                bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
            }
            entries.put(name, bytes);
        }
        byte[] zip = zipped(entries);
        for (int i = 0; kind == 3 && i < 1 + random.nextInt(8); i++) {
            zip[random.nextInt(zip.length)] ^= (byte) (1 << random.nextInt(8));
        }
        return zip;
    }

    private static byte[] zipped(Map<String, byte[]> entries) throws Exception {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (Map.Entry<String, byte[]> entry : entries.entrySet()) {
                zip.putNextEntry(new ZipEntry(entry.getKey()));
                zip.write(entry.getValue());
                zip.closeEntry();
            }
        }
        return bytes.toByteArray();
    }

    /** In a file as it lies there, or within an archive that was written. */
    private static boolean holds(Path folder, String text) throws Exception {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                if (new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1).contains(text)) {
                    return true;
                }
                if (file.endsWith("again.zip")) {
                    for (byte[] entry : entries(file).values()) {
                        if (new String(entry, StandardCharsets.ISO_8859_1).contains(text)) {
                            return true;
                        }
                    }
                }
            }
        }
        return false;
    }

    /** Argument: how many. */
    public static void main(String[] args) throws Exception {
        Path folder = Files.createTempDirectory("many-archives");
        Outcome outcome = run(Integer.parseInt(args[0]), 11, folder);
        outcome.wrong.forEach(System.out::println);
        System.out.printf(
                "%d taken, %d refused with a sentence, the longest took %d ms, %d not as promised%n",
                outcome.taken, outcome.refused, outcome.longestMs, outcome.wrong.size());
        PathUtils.deleteDirectory(folder);
    }
}

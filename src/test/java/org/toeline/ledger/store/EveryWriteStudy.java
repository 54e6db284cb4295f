package org.toeline.ledger.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.commons.io.file.PathUtils;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.store.backup.OldBackups;
import org.toeline.ledger.store.exchange.LessonArchive;
import org.toeline.ledger.store.exchange.LessonImport;
import org.toeline.ledger.store.place.Fingerprint;
import org.toeline.ledger.store.place.LedgerPlace;
import org.toeline.ledger.store.place.Stills;
import org.toeline.ledger.store.rows.KeptLesson;
import org.toeline.ledger.store.rows.PlayerDetails;
import org.toeline.mark.Handedness;
import org.toeline.mark.View;

/**
 * Every piece of work on a ledger, killed before and after every call of the system that writes. A library in front of the C library
 * (src/test/native/every-write.c, compiled here) copies the ledger's folder at each; each copy that differs from the one before
 * is opened as the program opens a ledger and has to be whole, with the content of before or of after. Of a deletion nothing
 * may be left after that opening, once its rows are gone; and nobody's still may be another's. Linux with gcc.
 * Arguments: the pieces of work, all of them without; prints a row for each.
 */
final class EveryWriteStudy {

    private static final String DELETED = "Uniquename";

    private static final Map<String, Work> ALL = new LinkedHashMap<>();

    static {
        ALL.put("save", p -> {
            try (Ledger ledger = Ledger.open(p, "child")) {
                go();
                ledger.save(1, 1, TestLessons.lesson(DELETED, "Other notes", 600), TestLessons.findings(8));
            }
        });
        ALL.put("import", p -> {
            try (Ledger ledger = Ledger.open(p, "child")) {
                go();
                new LessonImport(ledger, p, l -> List.of())
                        .take(p.folder().resolveSibling("other.zip"), Optional.empty());
            }
        });
        ALL.put("backup", p -> {
            try (Ledger ledger = Ledger.open(p, "child")) {
                go();
                ledger.backUp();
            }
        });
        ALL.put("restore", p -> {
            Path backup = Ledger.backups(p).get(0);
            go();
            Ledger.restore(p, backup);
        });
        ALL.put("delete", p -> {
            try (Ledger ledger = Ledger.open(p, "child")) {
                go();
                ledger.deletePlayer(1, OldBackups.REPLACE, p);
            }
        });
        ALL.put("migrate", p -> {
            go();
            Ledger.open(p, "child").close();
        });
        ALL.put("make", p -> {
            go();
            Ledger.open(p, "child").close();
        });
        ALL.put("export", p -> {
            try (Ledger ledger = Ledger.open(p, "child")) {
                go();
                KeptLesson kept = ledger.lesson(1).orElseThrow();
                LessonArchive.write(
                        kept.lesson(),
                        kept.identity(),
                        kept.findings(),
                        Map.of(),
                        Stills.of(p, kept.identity()),
                        p.folder().resolve("out.zip"));
            }
        });
    }

    private interface Work {
        void on(LedgerPlace.Folder place) throws Exception;
    }

    private EveryWriteStudy() {}

    public static void main(String[] args) throws Exception {
        if (args.length == 2 && args[0].equals("child")) {
            ALL.get(args[1]).on(new LedgerPlace.Folder(Path.of(System.getenv("TOELINE_WATCHED"))));
            return;
        }
        Path scratch = Files.createTempDirectory("every-write");
        try {
            Path library = compiled(scratch);
            boolean failed = false;
            for (String work : args.length == 0 ? ALL.keySet() : List.of(args)) {
                failed |= !run(work, scratch.resolve(work), library);
            }
            System.exit(failed ? 1 : 0);
        } finally {
            PathUtils.deleteDirectory(scratch);
        }
    }

    private static Path compiled(Path into) throws Exception {
        Path library = into.resolve("every-write.so");
        require(new ProcessBuilder(
                "gcc", "-shared", "-fPIC", "-O1", "-o", library.toString(), "src/test/native/every-write.c", "-ldl"));
        return library;
    }

    private static void require(ProcessBuilder builder) throws Exception {
        Process process = builder.inheritIO().start();
        if (process.waitFor() != 0) {
            throw new IllegalStateException(builder.command() + " ended with " + process.exitValue());
        }
    }

    /** In the child: what was prepared is done, and counting begins. */
    private static void go() throws IOException {
        Files.createFile(Path.of(System.getenv("TOELINE_COPIES"), "go"));
    }

    private static boolean run(String work, Path scratch, Path library) throws Exception {
        LedgerPlace.Folder place =
                new LedgerPlace.Folder(Files.createDirectories(scratch).resolve("ledger"));
        prepare(work, place);
        Path before = scratch.resolve("before");
        PathUtils.copyDirectory(place.folder(), before);
        Path copies = Files.createDirectory(scratch.resolve("copies"));
        ProcessBuilder child = new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-cp",
                System.getProperty("java.class.path"),
                EveryWriteStudy.class.getName(),
                "child",
                work);
        child.environment().put("LD_PRELOAD", library.toString());
        child.environment().put("TOELINE_WATCHED", place.folder().toString());
        child.environment().put("TOELINE_COPIES", copies.toString());
        require(child);
        Set<String> allowed = new LinkedHashSet<>();
        allowed.add(content(before));
        allowed.add(content(place.folder()));
        return judge(work, copies, allowed);
    }

    private static boolean judge(String work, Path copies, Set<String> allowed) throws Exception {
        List<Path> all;
        try (Stream<Path> files = Files.list(copies)) {
            all = files.filter(Files::isDirectory).sorted().toList();
        }
        String last = "";
        int states = 0;
        int bad = 0;
        for (Path copy : all) {
            String bytes = bytes(copy);
            if (bytes.equals(last)) {
                continue;
            }
            last = bytes;
            states++;
            String fault = fault(copy, allowed);
            if (!fault.isEmpty()) {
                bad++;
                System.out.println("  " + work + ", copy " + copy.getFileName() + ": " + fault);
            }
        }
        System.out.printf("%-8s %5d calls %5d states %3d at fault%n", work, all.size() / 2, states, bad);
        return bad == 0 && states > 0;
    }

    private static String fault(Path copy, Set<String> allowed) {
        try {
            String content = content(copy);
            if (!allowed.contains(content)) {
                return "neither before nor after: " + content;
            }
            if (!content.contains(DELETED) && allowed.iterator().next().contains(DELETED)) {
                return left(copy);
            }
            return "";
        } catch (Exception e) {
            return e.toString();
        }
    }

    /** What of somebody deleted is left in the folder after it was opened once. */
    private static String left(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                String text = new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1);
                if (text.contains("niquename") || text.contains("picture of") || text.contains("moving")) {
                    return "something is left in " + file.getFileName();
                }
            }
        }
        return "";
    }

    private static void prepare(String work, LedgerPlace.Folder place) throws Exception {
        if (work.equals("make")) {
            Files.createDirectories(place.folder());
            return;
        }
        Path clip = Files.writeString(place.folder().resolveSibling("clip.mp4"), "moving ".repeat(2000));
        Fingerprint fingerprint = Fingerprint.of(clip);
        Path archive = place.folder().resolveSibling("other.zip");
        Lesson other = TestLessons.lesson("B. Trial");
        LedgerPlace.Folder elsewhere = new LedgerPlace.Folder(place.folder().resolveSibling("elsewhere"));
        try (Ledger ledger = Ledger.open(elsewhere, "bay 2")) {
            KeptLesson kept = ledger.begin(other, Optional.empty());
            LessonArchive.write(
                    other,
                    kept.identity(),
                    TestLessons.findings(4),
                    Map.of(View.FACE_ON, Files.writeString(clip.resolveSibling("one.mp4"), "other clip")),
                    List.of(),
                    archive);
        }
        try (Ledger ledger = Ledger.open(place, "bay 1")) {
            int player = ledger.addPlayer(PlayerDetails.of(Optional.of(DELETED), Handedness.RIGHT))
                    .id();
            KeptLesson kept = ledger.keep(player, TestLessons.lesson(DELETED), TestLessons.findings(5));
            new Media(place.media()).copyIn(clip, fingerprint);
            ledger.noteClip(kept.id(), View.FACE_ON, fingerprint);
            Path still = Stills.folder(place, kept.identity()).resolve("still-1.png");
            Files.createDirectories(still.getParent());
            Files.writeString(still, "picture of " + DELETED);
            ledger.backUp();
            if (work.equals("restore")) {
                ledger.save(1, 1, TestLessons.lesson(DELETED, "After the backup", 500), TestLessons.findings(7));
            }
        }
        if (work.equals("migrate")) {
            OldTables.backToTheFirst(place);
        }
    }

    /** Everything a ledger shows, once it was opened and found whole. */
    private static String content(Path folder) throws Exception {
        LedgerPlace.Folder place = new LedgerPlace.Folder(folder);
        StringBuilder content = new StringBuilder();
        try (Ledger ledger = Ledger.open(place, "bay 1")) {
            Optional<String> fault = ledger.check();
            if (fault.isPresent()) {
                throw new IllegalStateException(fault.get());
            }
            ledger.players().forEach(p -> content.append(p).append('\n'));
            for (int id : ledger.lessonNumbers(Optional.empty())) {
                KeptLesson kept = ledger.lesson(id).orElseThrow();
                content.append(id)
                        .append(' ')
                        .append(kept.version())
                        .append(kept.lesson().notes())
                        .append(kept.findings());
                for (Path still : Stills.of(place, kept.identity())) {
                    content.append(Files.readString(still));
                }
                content.append('\n');
            }
        }
        return content.toString();
    }

    /** All files and what is in them, so that states that are the same are looked at once. */
    private static String bytes(Path folder) throws IOException {
        var digest = Fingerprint.sha256Digest();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted().toList()) {
                digest.update(folder.relativize(file).toString().getBytes(StandardCharsets.UTF_8));
                if (Files.isRegularFile(file)) {
                    digest.update(Files.readAllBytes(file));
                }
            }
        }
        return HexFormat.of().formatHex(digest.digest());
    }
}

package org.toeline.ledger.store;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.Callable;
import org.toeline.across.AcrossLessons;
import org.toeline.across.StatedFindings;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.store.place.Database;
import org.toeline.ledger.store.place.Database.Access;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.place.LedgerPlace;
import org.toeline.ledger.store.place.Schema;
import org.toeline.ledger.store.place.Sources;
import org.toeline.ledger.store.rows.KeptLesson;
import org.toeline.ledger.store.rows.Lessons;
import org.toeline.ledger.store.rows.Player;
import org.toeline.ledger.store.rows.PlayerDetails;
import org.toeline.ledger.store.rows.Players;
import org.toeline.ledger.store.rows.Saved;
import org.toeline.ledger.store.rows.Search;
import org.toeline.ledger.store.rows.Stamp;
import org.toeline.ledger.store.rows.StatedFinding;
import org.toeline.mark.Club;
import org.toeline.mark.Handedness;
import org.toeline.study.Scenes;

/**
 * The long studies of the ledger. {@code times FOLDER}: a made-up ledger of 500 players and 10 000 lessons, and how long things
 * take. {@code kills FOLDER N}: a program killed N times while it saves. {@code migrations FOLDER}: killed before every statement
 * of a change of tables. {@code writers BAYS SAVES}: bays at once on a PostgreSQL server of their own.
 */
public final class LedgerStudy {

    private static final int PLAYERS = 500;
    private static final int LESSONS = 10_000;
    private static final int LONG_STANDING = 60;
    private static final int SHEETS = 40;
    private static final String[] WORDS = {
        "ball",
        "forward",
        "grip",
        "weaker",
        "stance",
        "wider",
        "heels",
        "feel",
        "shoulders",
        "square",
        "tee",
        "higher",
        "patience",
        "tempo",
        "range",
        "rods",
        "mirror",
        "again",
        "next",
        "week",
        "wedge",
        "driver",
        "breathe",
        "height",
        "posture",
        "hips",
        "knees",
        "lead",
        "trail",
        "foot"
    };

    private LedgerStudy() {}

    public static void main(String[] args) throws Exception {
        PrintStream out = System.out;
        switch (args[0]) {
            case "times" -> times(new LedgerPlace.Folder(Path.of(args[1])), out);
            case "start" -> start(new LedgerPlace.Folder(Path.of(args[1])), out);
            case "kills" -> kills(new LedgerPlace.Folder(Path.of(args[1])), Integer.parseInt(args[2]), out);
            case "migrations" -> migrations(Path.of(args[1]), out);
            case "writers" -> writers(Integer.parseInt(args[1]), Integer.parseInt(args[2]), out);
            default -> throw new IllegalArgumentException(args[0]);
        }
    }

    private static void fill(LedgerPlace.Folder place) throws LedgerException {
        Ledger.open(place, "study").close();
        List<Lesson> lessons = new ArrayList<>();
        List<List<StatedFinding>> findings = new ArrayList<>();
        for (int seed = 0; seed < SHEETS; seed++) {
            lessons.add(Lesson.of(Scenes.bothViews(seed)));
            findings.add(StatedFindings.of(lessons.get(seed)));
        }
        SplittableRandom random = new SplittableRandom(1);
        Stamp stamp = new Stamp("study", java.time.Clock.systemUTC());
        try (Database database = new Database(place, Sources.writable(place.file()), Access.WRITE)) {
            database.write("the study could not be filled", h -> {
                List<Player> players = new ArrayList<>();
                for (int i = 0; i < PLAYERS; i++) {
                    players.add(
                            new Players(h, stamp).add(PlayerDetails.of(Optional.of(name(random)), Handedness.RIGHT)));
                }
                Lessons rows = new Lessons(h, stamp, place);
                for (int i = 0; i < LESSONS; i++) {
                    int pick = random.nextInt(SHEETS);
                    Player player = i % (LESSONS / LONG_STANDING) == 0
                            ? players.get(0)
                            : players.get(1 + random.nextInt(PLAYERS - 1));
                    Lesson lesson = lessons.get(pick).withNotes(notes(random));
                    Club club = player.id() == 1 ? Club.DRIVER : Club.values()[random.nextInt(Club.values().length)];
                    rows.add(
                            player,
                            lesson.withSheet(lesson.sheet().withClub(club)),
                            findings.get(pick),
                            java.util.UUID.randomUUID().toString(),
                            java.util.Map.of());
                }
                return true;
            });
        }
    }

    private static String name(SplittableRandom random) {
        StringBuilder name = new StringBuilder();
        for (int word = 0; word < 2; word++) {
            name.append(word == 0 ? "" : " ").append((char) ('A' + random.nextInt(26)));
            for (int i = 3 + random.nextInt(5); i > 0; i--) {
                name.append(i % 2 == 0 ? "aeiou".charAt(random.nextInt(5)) : (char) ('a' + random.nextInt(26)));
            }
        }
        return name.toString();
    }

    private static String notes(SplittableRandom random) {
        StringBuilder notes = new StringBuilder();
        for (int i = 5 + random.nextInt(20); i > 0; i--) {
            notes.append(WORDS[random.nextInt(WORDS.length)]).append(' ');
        }
        return notes.toString().strip();
    }

    private static void times(LedgerPlace.Folder place, PrintStream out) throws Exception {
        if (!Files.exists(place.file())) {
            fill(place);
        }
        out.printf("%d players, %d lessons: %.0f MB%n", PLAYERS, LESSONS, Files.size(place.file()) / 1e6);
        double[] starts = new double[15];
        double[] processor = new double[starts.length];
        for (int i = 0; i < starts.length; i++) {
            String[] said = child("start", place.folder().toString()).split(" ");
            starts[i] = Double.parseDouble(said[0]);
            processor[i] = Double.parseDouble(said[1]);
        }
        print(out, "open to first list, in a program just started", starts);
        print(out, "the same, processor time", processor);
        print(out, "open to first list, in a running program", measure(40, () -> {
            try (Ledger ledger = Ledger.open(place, "study")) {
                return ledger.find(Search.RECENT);
            }
        }));
        try (Ledger ledger = Ledger.open(place, "study")) {
            SplittableRandom random = new SplittableRandom(2);
            String letters = "abcdefghijklmnopqrstuvwxyz";
            print(
                    out,
                    "find by two letters of a name or of notes",
                    measure(
                            400,
                            () -> ledger.find(Search.text(
                                    "" + letters.charAt(random.nextInt(26)) + "aeiou".charAt(random.nextInt(5))))));
            print(
                    out,
                    "find by two words",
                    measure(
                            400,
                            () -> ledger.find(Search.text(WORDS[random.nextInt(WORDS.length)].substring(0, 2) + " "
                                    + letters.charAt(random.nextInt(26))))));
            print(
                    out,
                    "find by club and finding",
                    measure(
                            400,
                            () -> ledger.find(Search.RECENT
                                    .withClub(Club.values()[random.nextInt(8)])
                                    .withFinding("shoulder-tilt", java.util.Set.of("out-low", "out-high")))));
            print(
                    out,
                    "find what nobody has",
                    measure(
                            400,
                            () -> ledger.find(
                                    Search.RECENT.withFinding("shoulder-tilt", java.util.Set.of("no-such-verdict")))));
            int lessons = ledger.acrossLessons(1, Club.DRIVER).size();
            print(out, "across " + lessons + " lessons of a player, with changes and trends", measure(400, () -> {
                List<AcrossLessons> all = AcrossLessons.of(ledger.acrossLessons(1, Club.DRIVER));
                all.forEach(a -> a.trend().orElseThrow());
                return all;
            }));
            KeptLesson kept = ledger.lesson(1).orElseThrow();
            int[] version = {kept.version()};
            print(out, "save a gesture", measure(200, () -> {
                Saved saved = ledger.save(1, version[0], kept.lesson(), kept.findings());
                version[0] = ((Saved.Done) saved).version();
                return saved;
            }));
            print(out, "backup, checked", measure(3, ledger::backUp));
            print(out, "check every page and lesson", measure(3, ledger::check));
        }
    }

    private static void start(LedgerPlace.Folder place, PrintStream out) throws LedgerException {
        var system = (com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
        long used = system.getProcessCpuTime();
        long begin = System.nanoTime();
        try (Ledger ledger = Ledger.open(place, "study")) {
            int listed = ledger.find(Search.RECENT).size();
            long end = System.nanoTime();
            out.printf(
                    java.util.Locale.ROOT,
                    "%.1f %.1f %d%n",
                    (end - begin) / 1e6,
                    (system.getProcessCpuTime() - used) / 1e6,
                    listed);
        }
    }

    private static String child(String... args) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:+UseSerialGC",
                "-Dslf4j.provider=org.slf4j.jul.JULServiceProvider",
                "-Dslf4j.internal.verbosity=WARN",
                "-cp",
                System.getProperty("java.class.path"),
                LedgerStudy.class.getName()));
        command.addAll(List.of(args));
        Process process = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        return new String(process.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
    }

    private static double[] measure(int times, Callable<?> work) throws Exception {
        double[] ms = new double[times];
        for (int i = 0; i < times; i++) {
            long begin = System.nanoTime();
            work.call();
            ms[i] = (System.nanoTime() - begin) / 1e6;
        }
        return ms;
    }

    private static void print(PrintStream out, String what, double[] ms) {
        Arrays.sort(ms);
        out.printf(
                java.util.Locale.ROOT,
                "%-60s median %7.1f  90 %% %7.1f  longest %7.1f ms (%d)%n",
                what,
                ms[ms.length / 2],
                ms[(int) (ms.length * 0.9)],
                ms[ms.length - 1],
                ms.length);
    }

    private static void writers(int bays, int saves, PrintStream out) throws Exception {
        try (EmbeddedPostgres server = EmbeddedPostgres.builder()
                .setPGStartupWait(java.time.Duration.ofSeconds(90))
                .start()) {
            long begin = System.nanoTime();
            Writers.Outcome outcome = Writers.run(
                    new LedgerPlace.Server(server.getJdbcUrl("postgres", "postgres"), "postgres", ""), bays, saves);
            out.printf(
                    "%d bays, %.0f s: %s; no save lost, every conflict kept beside%n",
                    bays, (System.nanoTime() - begin) / 1e9, outcome);
        }
    }

    private static void kills(LedgerPlace.Folder place, int times, PrintStream out) throws Exception {
        try (Ledger ledger = Ledger.open(place, "study")) {
            Player player = ledger.addPlayer(PlayerDetails.of(Optional.of("B. Trial"), Handedness.RIGHT));
            ledger.keep(player.id(), TestLessons.lesson("B. Trial"), TestLessons.findings(1));
        }
        SplittableRandom random = new SplittableRandom(3);
        for (int i = 0; i < times; i++) {
            ProcessesTest.killedOnce(place, 1 + random.nextInt(60));
        }
        out.println(times + " kills while saving: nothing that was said to be kept was lost, and no mix");
    }

    private static void migrations(Path folder, PrintStream out) throws Exception {
        int dieAt = 1;
        java.util.Set<Integer> versions = new HashSet<>();
        while (true) {
            LedgerPlace.Folder place =
                    new LedgerPlace.Folder(Files.createTempDirectory(Files.createDirectories(folder), "migrate"));
            Schema.migrateTo(Sources.writable(place.file()), place, 1);
            Process child = LedgerChild.start("migrate", place.folder(), dieAt);
            if (child.waitFor() == 0) {
                break;
            }
            versions.add(Schema.version(Sources.writable(place.file())).orElseThrow());
            try (Ledger ledger = Ledger.open(place, "study")) {
                if (ledger.check().isPresent()) {
                    throw new IllegalStateException("not whole after a kill before statement " + dieAt);
                }
            }
            dieAt++;
        }
        out.println("killed before each of " + (dieAt - 1) + " statements of a change of tables: versions found "
                + versions + ", all whole and brought up to date by the next start");
    }
}

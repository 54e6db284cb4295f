package org.toeline.ledger.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.toeline.flight.Shot;
import org.toeline.flight.ShotFigure;
import org.toeline.ledger.LessonDocument;
import org.toeline.ledger.store.exchange.ReadingsCsv;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.place.LedgerPlace;
import org.toeline.ledger.store.rows.KeptLesson;
import org.toeline.ledger.store.rows.LessonLine;
import org.toeline.ledger.store.rows.Player;
import org.toeline.ledger.store.rows.PlayerDetails;
import org.toeline.ledger.store.rows.Search;
import org.toeline.mark.Club;
import org.toeline.mark.Handedness;

/** One bit of the file is another: what is shown and given out is as it was, or is refused; never other than it was. */
class FlippedBitsTest {

    private static final int IN_THE_SUITE = 25;

    @TempDir
    private Path folder;

    /** What is shown and given out, piece by piece; a piece that is refused is told as that. */
    private interface Piece {
        Object of(Ledger ledger) throws Exception;
    }

    private static final List<Piece> PIECES = List.of(
            l -> lesson(l, 1),
            l -> lesson(l, 2),
            l -> l.player(1),
            l -> l.players(),
            FlippedBitsTest::lines,
            l -> l.find(Search.text("ball")).size(),
            l -> l.takes(1),
            l -> l.shots(1),
            l -> l.asides(1),
            l -> l.acrossLessons(1, Club.DRIVER),
            FlippedBitsTest::table);

    private static String lesson(Ledger ledger, int id) throws LedgerException {
        KeptLesson kept = ledger.lesson(id).orElseThrow();
        return LessonDocument.line(kept.lesson())
                + kept.findings()
                + kept.version()
                + kept.playerId()
                + kept.changedBy();
    }

    private static List<LessonLine> lines(Ledger ledger) throws LedgerException {
        List<LessonLine> lines = ledger.find(Search.RECENT);
        if (lines.stream().anyMatch(l -> l.judged() == LessonLine.Judged.DAMAGED)) {
            throw new IllegalStateException("a line is told as damaged");
        }
        return lines;
    }

    private static String table(Ledger ledger) throws Exception {
        StringWriter out = new StringWriter();
        ReadingsCsv.write(ledger, out);
        return out.toString();
    }

    private static List<Object> shown(LedgerPlace.Folder place) {
        List<Object> shown = new ArrayList<>();
        try (Ledger ledger = Ledger.open(place, "bay 1")) {
            for (Piece piece : PIECES) {
                shown.add(refusedOr(piece, ledger));
            }
        } catch (LedgerException e) {
            shown.add(e);
        }
        return shown;
    }

    private static Object refusedOr(Piece piece, Ledger ledger) {
        try {
            return piece.of(ledger);
        } catch (Exception e) {
            return e;
        }
    }

    private Path whole() throws Exception {
        LedgerPlace.Folder place = new LedgerPlace.Folder(folder.resolve("whole"));
        try (Ledger ledger = Ledger.open(place, "bay 1")) {
            Player player = ledger.addPlayer(PlayerDetails.of(Optional.of("B. Trial"), Handedness.RIGHT));
            ledger.keep(player.id(), TestLessons.lesson("B. Trial"), TestLessons.findings(5));
            ledger.keep(player.id(), TestLessons.lesson("B. Trial", "Other notes", 600), TestLessons.findings(8));
            ledger.keepShots(1, List.of(new Shot(java.util.Map.of(ShotFigure.BALL_SPEED, 61.5), "off the toe")));
            ledger.save(1, 7, TestLessons.lesson("B. Trial", "Aside", 610), List.of());
        }
        return place.file();
    }

    private record Outcome(int silent, int said, int harmless, List<String> how) {}

    private Outcome flip(int flips, long seed) throws Exception {
        byte[] bytes = Files.readAllBytes(whole());
        List<Object> before = shown(new LedgerPlace.Folder(folder.resolve("whole")));
        Random random = new Random(seed);
        LedgerPlace.Folder place = new LedgerPlace.Folder(folder.resolve("flipped"));
        Files.createDirectories(place.folder());
        int said = 0;
        int harmless = 0;
        List<String> silent = new ArrayList<>();
        for (int i = 0; i < flips; i++) {
            int at = random.nextInt(bytes.length);
            int bit = random.nextInt(8);
            byte[] flipped = bytes.clone();
            flipped[at] ^= (byte) (1 << bit);
            Files.write(place.file(), flipped);
            List<Object> after = shown(place);
            boolean refused = after.stream().anyMatch(o -> o instanceof Exception);
            for (int k = 0; k < Math.min(after.size(), before.size()); k++) {
                if (!(after.get(k) instanceof Exception) && !after.get(k).equals(before.get(k))) {
                    silent.add("byte " + at + " bit " + bit + ", piece " + k + ": " + after.get(k));
                }
            }
            said += refused ? 1 : 0;
            harmless += refused ? 0 : 1;
            Files.deleteIfExists(place.folder().resolve("ledger.db-wal"));
            Files.deleteIfExists(place.folder().resolve("ledger.db-shm"));
        }
        return new Outcome(silent.size(), said, harmless, silent);
    }

    @Test
    void nothingIsShownOtherThanItWas() throws Exception {
        assertThat(flip(IN_THE_SUITE, 3).how).isEmpty();
    }

    /** The same for so many flips as are asked for: prints how many were refused, made no difference, and were silent. */
    public static void main(String[] args) throws Exception {
        FlippedBitsTest test = new FlippedBitsTest();
        test.folder = Files.createTempDirectory("flipped-bits");
        Outcome outcome = test.flip(Integer.parseInt(args[0]), 11);
        outcome.how.forEach(System.out::println);
        System.out.printf(
                "%d flips: %d refused, %d without effect, %d silent%n",
                Integer.parseInt(args[0]), outcome.said, outcome.harmless, outcome.silent);
        org.apache.commons.io.file.PathUtils.deleteDirectory(test.folder);
    }
}

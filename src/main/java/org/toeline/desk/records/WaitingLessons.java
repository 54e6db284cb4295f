package org.toeline.desk.records;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.WeakHashMap;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.toeline.document.Json;
import org.toeline.document.WholeFile;
import org.toeline.ledger.DocumentException;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.LessonDocument;
import org.toeline.ledger.store.Ledger;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.place.LedgerPlace;
import org.toeline.ledger.store.rows.KeptLesson;
import org.toeline.ledger.store.rows.Saved;

/**
 * Lessons that the ledger did not take, on this machine's own disk until it does: a server may be away for longer than the window is
 * open. On the ledger's thread only.
 */
final class WaitingLessons {

    private static final Logger LOG = Logger.getLogger(WaitingLessons.class.getName());
    private static final String ENDING = ".waiting.json";

    private final Path folder;
    private final Map<Keeping, Path> files = new WeakHashMap<>();

    WaitingLessons(LedgerPlace.Folder place) {
        this.folder = place.folder().resolve("waiting");
    }

    /** False when it could not be put there either. */
    boolean keep(Keeping keeping, Lesson lesson) {
        Path file = files.computeIfAbsent(keeping, k -> folder.resolve(UUID.randomUUID() + ENDING));
        ObjectNode node = Json.object();
        node.put("format", "toeline-waiting").put("version", 1);
        keeping.lessonId().ifPresent(id -> node.put("lesson", id));
        keeping.identity().ifPresent(identity -> node.put("identity", identity));
        keeping.playerId().ifPresent(id -> node.put("player", id));
        node.put("base", keeping.version());
        node.put("document", LessonDocument.line(lesson));
        try {
            Files.createDirectories(folder);
            WholeFile.write(file, Json.bytes(node));
            return true;
        } catch (IOException e) {
            LOG.log(Level.WARNING, "what waits could not be put on the disk", e);
            return false;
        }
    }

    /** The ledger has it. */
    void done(Keeping keeping) {
        Optional.ofNullable(files.remove(keeping)).ifPresent(WaitingLessons::drop);
    }

    private static void drop(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            LOG.log(Level.WARNING, "what was kept could not be taken away", e);
        }
    }

    /** Puts into the ledger what waits from earlier; what another bay changed meanwhile stands beside it. How many there were. */
    int takeUp(Ledger ledger) throws LedgerException {
        int taken = 0;
        for (Path file : all()) {
            try {
                JsonNode node = Json.read(Files.readAllBytes(file));
                Lesson lesson = LessonDocument.parse(
                        node.path("document").asText().getBytes(StandardCharsets.UTF_8), file.toString());
                put(ledger, node, lesson);
                drop(file);
                taken++;
            } catch (IOException | DocumentException e) {
                // it stays for a person to look at
                LOG.log(Level.WARNING, file + " waits and cannot be read", e);
            }
        }
        return taken;
    }

    private List<Path> all() {
        List<Path> found = new ArrayList<>();
        if (Files.isDirectory(folder)) {
            try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, "*" + ENDING)) {
                files.forEach(found::add);
            } catch (IOException e) {
                LOG.log(Level.WARNING, "what waits cannot be listed", e);
            }
        }
        return found;
    }

    private static void put(Ledger ledger, JsonNode node, Lesson lesson) throws LedgerException {
        int id = node.path("lesson").asInt();
        Optional<KeptLesson> now = ledger.lesson(id)
                .filter(kept -> kept.identity().equals(node.path("identity").asText()));
        if (now.isPresent()
                && (LessonDocument.line(now.get().lesson()).equals(LessonDocument.line(lesson))
                        || !(ledger.saveMarks(id, node.path("base").asInt(), lesson) instanceof Saved.Gone))) {
            return;
        }
        Optional<Integer> player = Optional.of(node.path("player").asInt()).filter(p -> p > 0);
        ledger.begin(lesson, player.isPresent() && ledger.player(player.get()).isPresent() ? player : Optional.empty());
    }
}

package org.toeline.ledger.store.rows;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.toeline.document.Json;
import org.toeline.flight.Shot;
import org.toeline.flight.ShotFigure;
import org.toeline.language.Sentences;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.place.LedgerException.Fault;

/** The rows of shots: each a JSON object of its figures in the units used inside (metres, seconds, radians). */
public final class ShotRows {

    /** So many rows wait in memory for the database. */
    private static final int TOGETHER = 1000;

    private final Handle handle;

    public ShotRows(Handle handle) {
        this.handle = handle;
    }

    public int replace(int lessonId, List<Shot> shots) {
        handle.execute("delete from shot where lesson_id = ?", lessonId);
        for (int from = 0; from < shots.size(); from += TOGETHER) {
            insert(lessonId, from, shots.subList(from, Math.min(shots.size(), from + TOGETHER)));
        }
        new RowSums(handle).sealLesson(lessonId);
        return shots.size();
    }

    /** One statement that is read by the database once: of many shots reading it took as long as writing them. */
    private void insert(int lessonId, int before, List<Shot> some) {
        PreparedBatch batch = handle.prepareBatch("insert into shot (lesson_id, number, document) values (?, ?, ?)");
        for (int i = 0; i < some.size(); i++) {
            batch.add(lessonId, before + i + 1, text(some.get(i)));
        }
        batch.execute();
    }

    private static String text(Shot shot) {
        ObjectNode node = Json.object();
        ObjectNode figures = node.putObject("figures");
        shot.figures().forEach((figure, value) -> figures.put(figure.id(), value));
        if (!shot.remark().isEmpty()) {
            node.put("remark", shot.remark());
        }
        if (!shot.aside().isEmpty()) {
            node.put("aside", shot.aside());
        }
        if (!shot.setup().isEmpty()) {
            node.put("setup", shot.setup());
        }
        return Json.line(node);
    }

    public List<Shot> of(int lessonId) throws LedgerException {
        List<Shot> shots = new ArrayList<>();
        for (String document : handle.createQuery("select document from shot where lesson_id = :id order by number")
                .bind("id", lessonId)
                .mapTo(String.class)
                .list()) {
            shots.add(shot(document, lessonId));
        }
        return shots;
    }

    private static Shot shot(String document, int lessonId) throws LedgerException {
        try {
            JsonNode node = Json.read(document);
            Map<ShotFigure, Double> figures = new EnumMap<>(ShotFigure.class);
            node.path("figures")
                    .properties()
                    .forEach(e -> ShotFigure.of(e.getKey())
                            .ifPresent(
                                    figure -> figures.put(figure, e.getValue().asDouble())));
            return new Shot(
                    figures,
                    node.path("remark").asText(""),
                    node.path("aside").asText(""),
                    node.path("setup").asText(""));
        } catch (Json.NotJson | IllegalArgumentException e) {
            throw new LedgerException(
                    Fault.DAMAGED, Sentences.of(ShotRows.class).of("kept.shot", lessonId), e);
        }
    }
}

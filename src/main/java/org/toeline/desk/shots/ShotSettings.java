package org.toeline.desk.shots;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.Set;
import org.toeline.desk.text.Texts;
import org.toeline.document.Json;
import org.toeline.document.OwnDocument;
import org.toeline.document.WholeFile;
import org.toeline.flight.FigureUnit;
import org.toeline.flight.table.Meaning;

/**
 * What a coach chooses once for all shots: units, the columns to type into, and the air. Kept as a small JSON document beside
 * the ledger.
 *
 * @param columns which columns are there to type into
 */
record ShotSettings(ShotUnits units, Set<Meaning> columns, Conditions conditions) {

    static final ShotSettings USUAL = new ShotSettings(
            ShotUnits.METRIC,
            EnumSet.of(
                    Meaning.BALL_SPEED,
                    Meaning.LAUNCH_ANGLE,
                    Meaning.LAUNCH_DIRECTION,
                    Meaning.SPIN_RATE,
                    Meaning.SPIN_AXIS,
                    Meaning.CLUB_SPEED,
                    Meaning.CARRY,
                    Meaning.APEX,
                    Meaning.SIDE),
            Conditions.USUAL);

    private static final String FORMAT = "toeline-shot-settings";

    ShotSettings {
        EnumSet<Meaning> copy = EnumSet.noneOf(Meaning.class);
        copy.addAll(columns);
        if (copy.isEmpty()) {
            throw new IllegalArgumentException(Texts.of("shots.settings.columns"));
        }
        columns = java.util.Collections.unmodifiableSet(copy);
    }

    ShotSettings withUnits(ShotUnits changed) {
        return new ShotSettings(changed, columns, conditions);
    }

    ShotSettings withConditions(Conditions changed) {
        return new ShotSettings(units, columns, changed);
    }

    ShotSettings withColumns(Set<Meaning> more) {
        EnumSet<Meaning> changed = EnumSet.copyOf(columns);
        changed.addAll(more);
        return new ShotSettings(units, changed, conditions);
    }

    /** The last column stays: there is always one to type into. */
    ShotSettings withColumn(Meaning meaning, Shown shown) {
        EnumSet<Meaning> changed = EnumSet.copyOf(columns);
        if (shown == Shown.YES) {
            changed.add(meaning);
        } else if (changed.size() > 1) {
            changed.remove(meaning);
        }
        return new ShotSettings(units, changed, conditions);
    }

    /** Whether a column is there to type into. */
    enum Shown {
        YES,
        NO
    }

    static Path file(Path folder) {
        return folder.resolve("shots.json");
    }

    /** What the document says; one that cannot be read is set aside, and the usual counts. */
    static OwnDocument.Read<ShotSettings> read(Path file) {
        return OwnDocument.read(file, USUAL, bytes -> of(Json.read(bytes)));
    }

    private static ShotSettings of(JsonNode root) {
        if (!root.path("format").asText().equals(FORMAT)) {
            throw new IllegalArgumentException(Texts.of("shots.settings.format", FORMAT));
        }
        EnumSet<Meaning> columns = EnumSet.noneOf(Meaning.class);
        root.path("columns").forEach(c -> Meaning.of(c.asText()).ifPresent(columns::add));
        JsonNode air = root.path("air");
        return new ShotSettings(
                new ShotUnits(unit(root, "speed"), unit(root, "length"), unit(root, "height")),
                columns.isEmpty() ? USUAL.columns : columns,
                new Conditions(
                        air.path("temperatureC").asDouble(),
                        air.path("from").asText().equals(Conditions.From.PRESSURE.id())
                                ? Conditions.From.PRESSURE
                                : Conditions.From.ALTITUDE,
                        air.path("height").asDouble(),
                        air.path("humidityPercent").asDouble(),
                        air.path("behindMps").asDouble(),
                        air.path("fromLeftMps").asDouble()));
    }

    private static FigureUnit unit(JsonNode root, String key) {
        return FigureUnit.of(root.path(key).asText())
                .orElseThrow(() -> new IllegalArgumentException(Texts.of("shots.settings.unit", key)));
    }

    void write(Path file) throws IOException {
        ObjectNode root = Json.object().put("format", FORMAT).put("version", 1);
        root.put("speed", units.speed().id())
                .put("length", units.length().id())
                .put("height", units.height().id());
        columns.forEach(c -> root.withArray("/columns").add(c.id()));
        root.putObject("air")
                .put("temperatureC", conditions.temperatureC())
                .put("from", conditions.from().id())
                .put("height", conditions.height())
                .put("humidityPercent", conditions.humidityPercent())
                .put("behindMps", conditions.behindMps())
                .put("fromLeftMps", conditions.fromLeftMps());
        WholeFile.write(file, Json.bytes(root));
    }
}

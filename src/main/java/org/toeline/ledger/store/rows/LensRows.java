package org.toeline.ledger.store.rows;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.jdbi.v3.core.Handle;
import org.toeline.document.Json;
import org.toeline.ledger.LensBook.Profile;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.place.LedgerException.Fault;
import org.toeline.mark.LensNote;

/** The rows of lenses: each the “lens” object of a lesson's view with the size of the pictures it was
 * calibrated with, under a name; what {@link org.toeline.ledger.LensBook} keeps for one machine, for all bays. */
public final class LensRows {

    private final Handle handle;
    private final Stamp stamp;

    public LensRows(Handle handle, Stamp stamp) {
        this.handle = handle;
        this.stamp = stamp;
    }

    public int put(Profile profile) {
        LensNote lens = profile.lens();
        ObjectNode node = Json.object();
        node.put("width", profile.widthPx()).put("height", profile.heightPx());
        put(node, "focal", lens.focalPx());
        put(node, "focalSd", lens.focalSigmaPx());
        put(node, "cx", lens.cxPx());
        put(node, "cy", lens.cyPx());
        put(node, "k1", lens.k1());
        put(node, "k2", lens.k2());
        return handle.createUpdate("insert into lens_profile (name, document, changed_at, changed_by) values (:name,"
                        + " :document, :at, :by) on conflict (name) do update set document = excluded.document, changed_at ="
                        + " excluded.changed_at, changed_by = excluded.changed_by")
                .bind("name", PlayerDetails.storable(profile.name()))
                .bind("document", Json.line(node))
                .bind("at", stamp.now())
                .bind("by", stamp.bay())
                .execute();
    }

    private static void put(ObjectNode node, String key, OptionalDouble value) {
        value.ifPresent(v -> node.put(key, v));
    }

    public List<Profile> all() throws LedgerException {
        record Row(String name, String document) {}
        List<Profile> lenses = new ArrayList<>();
        for (Row row : handle.createQuery("select name, document from lens_profile order by name")
                .map((r, context) -> new Row(r.getString(1), r.getString(2)))
                .list()) {
            lenses.add(profile(row.name, row.document));
        }
        return lenses;
    }

    private static Profile profile(String name, String document) throws LedgerException {
        try {
            JsonNode node = Json.read(document);
            return new Profile(
                    name,
                    node.path("width").asInt(),
                    node.path("height").asInt(),
                    new LensNote(
                            number(node, "focal"),
                            number(node, "focalSd"),
                            number(node, "cx"),
                            number(node, "cy"),
                            number(node, "k1"),
                            number(node, "k2")));
        } catch (Json.NotJson | IllegalArgumentException e) {
            throw new LedgerException(Fault.DAMAGED, "the lens “" + name + "” is damaged; calibrate it again", e);
        }
    }

    private static OptionalDouble number(JsonNode node, String key) {
        return node.path(key).isNumber() ? OptionalDouble.of(node.path(key).asDouble()) : OptionalDouble.empty();
    }
}

package org.toeline.ledger.store.backup;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.toeline.document.Json;
import org.toeline.language.Sentences;
import org.toeline.ledger.store.backup.ServerTables.Table;
import org.toeline.ledger.store.backup.ServerTables.Written;
import org.toeline.ledger.store.place.ZipEntries;

/**
 * The index of a server's backup: a zip archive with {@code backup.json} and a file a table. What is in it is checked against
 * the tables this program knows; nothing of it becomes SQL.
 *
 * @param version of the tables
 */
public record ServerArchive(int version, List<Written> tables) {

    private static final Sentences SENTENCES = Sentences.of(ServerArchive.class);

    public static final String INDEX = "backup.json";
    private static final String FORMAT = "toeline-server-backup";
    private static final int LARGEST_INDEX = 1 << 20;

    public ServerArchive {
        tables = List.copyOf(tables);
    }

    public static String file(Table table) {
        return table.name() + ".copy";
    }

    public byte[] bytes() {
        ObjectNode out = Json.object().put("format", FORMAT).put("version", 1).put("tablesVersion", version);
        ArrayNode all = out.putArray("tables");
        for (Written table : tables) {
            ObjectNode node = all.addObject()
                    .put("name", table.name())
                    .put("rows", table.rows())
                    .put("sha256", table.sha256());
            ArrayNode columns = node.putArray("columns");
            table.columns().forEach(columns::add);
        }
        return Json.bytes(out);
    }

    public static ServerArchive of(ZipFile zip) throws IOException {
        ZipEntry entry = zip.getEntry(INDEX);
        if (entry == null || entry.getSize() > LARGEST_INDEX) {
            throw new IOException(SENTENCES.of("server-backup.none"));
        }
        JsonNode tree;
        try (InputStream in = ZipEntries.open(zip, entry)) {
            tree = Json.read(in.readNBytes(LARGEST_INDEX + 1));
        }
        int version = tree.path("tablesVersion").asInt();
        if (!tree.path("format").asText().equals(FORMAT) || tree.path("version").asInt() != 1 || version < 1) {
            throw new IOException(SENTENCES.of("server-backup.unknown"));
        }
        List<Written> tables = new ArrayList<>();
        for (JsonNode node : tree.path("tables")) {
            List<String> columns = new ArrayList<>();
            node.path("columns").forEach(c -> columns.add(c.asText()));
            tables.add(new Written(
                    node.path("name").asText(),
                    columns,
                    node.path("rows").asLong(-1),
                    node.path("sha256").asText()));
        }
        return new ServerArchive(version, tables);
    }

    public Written written(Table table) throws IOException {
        return tables.stream()
                .filter(t -> t.name().equals(table.name()))
                .findFirst()
                .orElseThrow(() -> new IOException(SENTENCES.of("server-backup.table", table.name())));
    }

    public static InputStream open(ZipFile zip, Table table) throws IOException {
        ZipEntry entry = zip.getEntry(file(table));
        if (entry == null) {
            throw new IOException(SENTENCES.of("server-backup.table", table.name()));
        }
        return ZipEntries.open(zip, entry);
    }
}

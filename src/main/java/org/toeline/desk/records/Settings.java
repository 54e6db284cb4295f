package org.toeline.desk.records;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.toeline.desk.look.Look;
import org.toeline.desk.text.Texts;
import org.toeline.document.Json;
import org.toeline.document.WholeFile;
import org.toeline.language.Language;
import org.toeline.ledger.store.place.LedgerPlace;

/**
 * What the coach set once: where the ledger is, what this bay is called, and whether clips are copied. Kept in one JSON
 * document; what it has besides is kept as it was.
 *
 * @param server  the database of several bays; empty when the ledger is a file of this machine
 * @param folder  the ledger's folder; with a server, that of copied clips and stills
 * @param language what the desk speaks; empty for the system's
 * @param look    how large its text is, and on what paper
 * @param bay     what other bays are told this one is called, 1 to 60 characters
 */
public record Settings(
        Optional<LedgerPlace.Server> server,
        LedgerPlace.Folder folder,
        String bay,
        Clips clips,
        Optional<Locale> language,
        Look look,
        ObjectNode rest) {

    private static final int LONGEST_BAY = 60;

    /** What becomes of a clip's file. */
    public enum Clips {
        /** It stays where it is. */
        STAY,
        /** It is copied into the ledger's folder. */
        COPY
    }

    public Settings {
        bay = bay.strip();
        if (bay.isEmpty() || bay.length() > LONGEST_BAY) {
            throw new IllegalArgumentException(Texts.of("settings.no-bay"));
        }
    }

    public static Settings usual(Path folder) {
        return new Settings(
                Optional.empty(),
                new LedgerPlace.Folder(folder),
                Texts.of("settings.this-bay"),
                Clips.STAY,
                Optional.empty(),
                Look.USUAL,
                Json.object());
    }

    public LedgerPlace place() {
        return server.isPresent() ? server.get() : folder;
    }

    public Settings withServer(Optional<LedgerPlace.Server> changed) {
        return new Settings(changed, folder, bay, clips, language, look, rest);
    }

    public Settings withFolder(Path changed) {
        return new Settings(server, new LedgerPlace.Folder(changed), bay, clips, language, look, rest);
    }

    public Settings withBay(String changed) {
        return new Settings(server, folder, changed, clips, language, look, rest);
    }

    public Settings withClips(Clips changed) {
        return new Settings(server, folder, bay, changed, language, look, rest);
    }

    public Settings withLanguage(Optional<Locale> changed) {
        return new Settings(server, folder, bay, clips, changed, look, rest);
    }

    public Settings withLook(Look changed) {
        return new Settings(server, folder, bay, clips, language, changed, rest);
    }

    /** @throws IllegalArgumentException when it does not tell what settings tell */
    static Settings of(JsonNode tree, Settings usual) {
        if (!(tree instanceof ObjectNode object)
                || !object.path("format").asText().equals("toeline-settings")) {
            throw new IllegalArgumentException(Texts.of("settings.format"));
        }
        Settings read = new Settings(
                usual.server, usual.folder, usual.bay, usual.clips, usual.language, usual.look, object.deepCopy());
        if (object.has("folder")) {
            read = read.withFolder(Path.of(text(object, "folder")));
        }
        if (object.has("bay")) {
            read = read.withBay(text(object, "bay"));
        }
        if (object.has("clips")) {
            read = read.withClips(text(object, "clips").equals("copy") ? Clips.COPY : Clips.STAY);
        }
        if (object.has("language")) {
            String tag = text(object, "language");
            read = read.withLanguage(Language.all().stream()
                    .filter(l -> l.toLanguageTag().equals(tag))
                    .findFirst());
        }
        if (Look.SIZES.contains(object.path("text").asInt())) {
            read = read.withLook(new Look(object.path("text").asInt(), read.look.paper()));
        }
        if (object.path("paper").asText().equals("dark")) {
            read = read.withLook(new Look(read.look.textPercent(), Look.Paper.DARK));
        }
        if (object.get("server") instanceof ObjectNode server) {
            read = read.withServer(Optional.of(new LedgerPlace.Server(
                    text(server, "url"),
                    text(server, "user"),
                    server.path("password").asText())));
        }
        return read;
    }

    private static String text(ObjectNode object, String key) {
        JsonNode value = object.path(key);
        if (!value.isTextual() || value.asText().isBlank()) {
            throw new IllegalArgumentException(Texts.of("settings.no-text", key));
        }
        return value.asText();
    }

    void write(Path file) throws IOException {
        ObjectNode out = rest.deepCopy();
        out.put("format", "toeline-settings")
                .put("version", 1)
                .put("folder", folder.folder().toString())
                .put("bay", bay)
                .put("clips", clips == Clips.COPY ? "copy" : "stay")
                .put("text", look.textPercent())
                .put("paper", look.paper() == Look.Paper.DARK ? "dark" : "light");
        out.remove(List.of("server", "language"));
        language.ifPresent(l -> out.put("language", l.toLanguageTag()));
        server.ifPresent(s -> out.putObject("server")
                .put("url", s.url())
                .put("user", s.user())
                .put("password", s.password()));
        // it may hold a password
        WholeFile.writeForOwner(file, Json.bytes(out));
    }
}

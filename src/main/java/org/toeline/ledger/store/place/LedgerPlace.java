package org.toeline.ledger.store.place;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import org.toeline.language.Sentences;

/** Where a ledger is kept. */
public sealed interface LedgerPlace {

    /** What it is called in messages. */
    String name();

    /** The user's data folder, where each system has it: the place of a ledger for which no other was chosen. */
    static Path usualFolder() {
        String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        Path home = Path.of(System.getProperty("user.home", "."));
        if (system.contains("windows")) {
            return stated("APPDATA").orElse(home.resolve("AppData/Roaming")).resolve("Toeline");
        }
        if (system.contains("mac")) {
            return home.resolve("Library/Application Support/Toeline");
        }
        return stated("XDG_DATA_HOME")
                .filter(Path::isAbsolute)
                .orElse(home.resolve(".local/share"))
                .resolve("toeline");
    }

    private static Optional<Path> stated(String variable) {
        return Optional.ofNullable(System.getenv(variable))
                .filter(v -> !v.isBlank())
                .map(Path::of);
    }

    /** A folder of one machine: the ledger's file, its backups and media in it. */
    record Folder(Path folder) implements LedgerPlace {

        static final String FILE = "ledger.db";

        public Path file() {
            return folder.resolve(FILE);
        }

        public Path backups() {
            return folder.resolve("backups");
        }

        public Path media() {
            return folder.resolve("media");
        }

        public Path stills() {
            return folder.resolve("stills");
        }

        @Override
        public String name() {
            return file().toString();
        }
    }

    /**
     * A PostgreSQL database that several bays share.
     *
     * @param url {@code jdbc:postgresql://host:port/database}
     */
    record Server(String url, String user, String password) implements LedgerPlace {

        public Server {
            if (!url.startsWith("jdbc:postgresql:")) {
                throw new IllegalArgumentException(
                        Sentences.of(LedgerPlace.class).of("server.address", told(url)));
            }
        }

        /** Without what may be a secret. */
        @Override
        public String name() {
            return told(url);
        }

        /** Neither what follows a question mark nor what stands before an “at” sign. */
        private static String told(String url) {
            int rest = url.indexOf('?');
            String bare = rest < 0 ? url : url.substring(0, rest);
            return bare.replaceFirst("//[^/]*@", "//");
        }

        @Override
        public String toString() {
            return name();
        }
    }
}

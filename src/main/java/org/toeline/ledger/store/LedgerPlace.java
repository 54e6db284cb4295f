package org.toeline.ledger.store;

import java.nio.file.Path;

/** Where a ledger is kept. */
public sealed interface LedgerPlace {

    /** What it is called in messages. */
    String name();

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
                throw new IllegalArgumentException("“" + url + "” is no address of a PostgreSQL database; "
                        + "jdbc:postgresql://host:port/database is needed");
            }
        }

        /** Without what may be a secret. */
        @Override
        public String name() {
            int rest = url.indexOf('?');
            return rest < 0 ? url : url.substring(0, rest);
        }

        @Override
        public String toString() {
            return name();
        }
    }
}

package org.toeline.install;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** The Java that a package brings: the modules that the program and its libraries ask for, and no other. */
final class JavaRuntime {

    /**
     * As jdeps finds them; and the data of languages, without which German pages have English dates and points; elliptic
     * curves, without which a server's certificate may not be read; and file systems in archives.
     */
    private static final String MODULES =
            "java.base,java.desktop,java.management,java.naming,java.prefs,java.security.jgss,"
                    + "java.sql,jdk.jfr,jdk.unsupported,jdk.unsupported.desktop,jdk.localedata,jdk.crypto.ec,jdk.zipfs";

    private JavaRuntime() {}

    static void make(Path to) throws IOException {
        Running.run(List.of(
                Path.of(System.getProperty("java.home"), "bin", "jlink").toString(),
                "--add-modules",
                MODULES,
                "--include-locales=en,de,fr",
                "--strip-java-debug-attributes",
                "--no-header-files",
                "--no-man-pages",
                // what is packed as a whole is smaller so, and starts faster
                "--compress=0",
                "--output",
                to.toString()));
    }
}

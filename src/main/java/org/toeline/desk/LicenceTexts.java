package org.toeline.desk;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;

/** What the libraries say of their licences, as the libraries at hand carry it, and the list the build made. */
final class LicenceTexts {

    private LicenceTexts() {}

    /** The list, then each library's texts and notices under its name. Reads every library: not on the interface thread. */
    static String all() throws IOException {
        StringBuilder text = new StringBuilder(list().orElse(""));
        for (Path jar : libraries()) {
            of(jar, text);
        }
        return text.toString();
    }

    private static Optional<String> list() throws IOException {
        Path home =
                Path.of(Optional.ofNullable(System.getProperty("toeline.home")).orElse("."));
        for (String place : List.of("licences/third-party.md", "docs/third-party.md")) {
            if (Files.isRegularFile(home.resolve(place))) {
                return Optional.of(Files.readString(home.resolve(place)));
            }
        }
        return Optional.empty();
    }

    private static List<Path> libraries() {
        return Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator))
                .filter(p -> p.endsWith(".jar"))
                .map(Path::of)
                .filter(Files::isRegularFile)
                .toList();
    }

    private static void of(Path jar, StringBuilder to) throws IOException {
        try (JarFile file = new JarFile(jar.toFile())) {
            for (JarEntry entry : Collections.list(file.entries())) {
                if (isLicence(entry)) {
                    try (InputStream in = file.getInputStream(entry)) {
                        to.append("\n\n――― ")
                                .append(jar.getFileName())
                                .append(" · ")
                                .append(entry.getName())
                                .append("\n\n")
                                .append(new String(in.readAllBytes(), StandardCharsets.UTF_8));
                    }
                }
            }
        }
    }

    private static boolean isLicence(JarEntry entry) {
        String name = entry.getName().toLowerCase(Locale.ROOT);
        return !entry.isDirectory()
                && name.substring(name.lastIndexOf('/') + 1)
                        .matches("(dejavu-)?(license|licence|notice|copying|copyright)([-._](txt|md|[a-z]+))*")
                && !name.endsWith(".class");
    }
}

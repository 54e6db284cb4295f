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
        StringBuilder text = new StringBuilder(list().map(LicenceTexts::plain).orElse(""));
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

    /**
     * A list as the build writes it, without its marks: a row of a table becomes a line, the lines of a paragraph one, so that a
     * text of any width wraps them.
     */
    static String plain(String markdown) {
        StringBuilder text = new StringBuilder();
        boolean goesOn = false;
        for (String line : markdown.lines().toList()) {
            boolean row = line.startsWith("|");
            if (row && line.chars().allMatch(c -> "|-: ".indexOf(c) >= 0)) {
                continue;
            }
            String said = line.replaceFirst("^#+ *", "").replace("`", "").strip();
            String[] cells = row ? said.substring(1).split(" *\\| *") : new String[] {said};
            boolean begins = row || line.isBlank() || line.startsWith("#") || line.startsWith("- ");
            text.append(text.isEmpty() ? "" : goesOn && !begins ? " " : "\n")
                    .append(
                            row
                                    ? cells[0].strip() + " "
                                            + String.join(
                                                    " · ", Arrays.asList(cells).subList(1, cells.length))
                                    : said);
            goesOn = !row && !line.isBlank() && !line.startsWith("#");
        }
        return text.append("\n").toString();
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

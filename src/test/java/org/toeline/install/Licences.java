package org.toeline.install;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;

/** The texts and notices that the libraries carry, laid in the open, a folder for each library. */
final class Licences {

    private Licences() {}

    static void gather(Path libraries, Path project, Path to) throws IOException {
        Files.createDirectories(to);
        Files.copy(project.resolve("LICENSE"), to.resolve("Toeline-LICENSE.txt"));
        Files.copy(project.resolve("docs/third-party.md"), to.resolve("third-party.md"));
        Folders.copy(project.resolve("src/package/licences"), to.resolve("texts"));
        List<Path> jars;
        try (var files = Files.list(libraries)) {
            jars = files.filter(f -> f.toString().endsWith(".jar")).sorted().toList();
        }
        for (Path jar : jars) {
            gather(jar, to);
        }
    }

    private static void gather(Path jar, Path to) throws IOException {
        String library = jar.getFileName().toString().replaceFirst("\\.jar$", "");
        try (JarFile from = new JarFile(jar.toFile())) {
            for (JarEntry entry : Collections.list(from.entries())) {
                String name = entry.getName();
                if (!entry.isDirectory() && isLicence(name)) {
                    Path file = to.resolve(library).resolve(name.replace('/', '_'));
                    Files.createDirectories(file.getParent());
                    try (InputStream in = from.getInputStream(entry)) {
                        Files.copy(in, file, StandardCopyOption.REPLACE_EXISTING);
                    }
                }
            }
        }
    }

    static boolean isLicence(String name) {
        String file = name.substring(name.lastIndexOf('/') + 1).toLowerCase(Locale.ROOT);
        return file.matches(
                        "(license|licence|notice|copying|copyright|additional_license_info|assembly_exception)([-._].*)?")
                && !file.endsWith(".class");
    }
}

package org.toeline.install;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;

/** Folders as wholes. */
final class Folders {

    private Folders() {}

    static void copy(Path from, Path to) throws IOException {
        try (var all = Files.walk(from)) {
            for (Path file : all.toList()) {
                Path target = to.resolve(from.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(target);
                } else {
                    Files.copy(file, target);
                }
            }
        }
    }

    static void delete(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return;
        }
        try (var all = Files.walk(folder)) {
            for (Path file : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }

    static long bytes(Path folder) throws IOException {
        try (var all = Files.walk(folder)) {
            long sum = 0;
            for (Path file : all.filter(f -> Files.isRegularFile(f, java.nio.file.LinkOption.NOFOLLOW_LINKS))
                    .toList()) {
                sum += Files.size(file);
            }
            return sum;
        }
    }
}

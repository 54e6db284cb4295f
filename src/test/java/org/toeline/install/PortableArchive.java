package org.toeline.install;

import java.io.IOException;
import java.net.URI;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The program as a folder in a ZIP, for a system that has Java: what can be made for another system than this. */
final class PortableArchive {

    private final Path project;
    private final NativePlatform platform;

    PortableArchive(Path project, NativePlatform platform) {
        this.project = project;
        this.platform = platform;
    }

    /** The file that was made. */
    Path make(Path jar, Path libraries, String version, Path to) throws IOException {
        String name = "toeline-" + version + "-" + platform.id();
        Path folder = to.resolve("portable-" + platform.id());
        Folders.delete(folder);
        Files.createDirectories(folder);
        Files.copy(jar, folder.resolve("toeline.jar"));
        new Slim(platform, Optional.empty()).jars(libraries, folder.resolve("lib"));
        Folders.copy(project.resolve("sample-media"), folder.resolve("sample-media"));
        Licences.gather(folder.resolve("lib"), project, folder.resolve("licences"));
        String launcher = platform.windows() ? "toeline.cmd" : "toeline";
        Files.copy(project.resolve("src/package/portable").resolve(launcher), folder.resolve(launcher));
        Path file = to.resolve(name + ".zip");
        zip(folder, name, file);
        return file;
    }

    private static void zip(Path folder, String name, Path to) throws IOException {
        List<Path> files;
        try (var all = Files.walk(folder)) {
            files = all.filter(Files::isRegularFile).sorted().toList();
        }
        Files.deleteIfExists(to);
        // so that the launcher is a program still when it is unpacked
        Map<String, String> keeps = Map.of("create", "true", "enablePosixFileAttributes", "true");
        try (FileSystem zip = FileSystems.newFileSystem(URI.create("jar:" + to.toUri()), keeps)) {
            for (Path file : files) {
                Path inside =
                        zip.getPath(name, folder.relativize(file).toString().replace('\\', '/'));
                Files.createDirectories(inside.getParent());
                Files.copy(file, inside);
                Files.setPosixFilePermissions(inside, Files.getPosixFilePermissions(file));
            }
        }
    }
}

package org.toeline.install;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The package for Windows ({@code msi}) and macOS ({@code dmg}), by the tool that comes with Java; made on that system only. */
final class DesktopPackage {

    private final Path project;
    private final Path tree;
    private final NativePlatform platform;

    DesktopPackage(Path project, Path tree, NativePlatform platform) {
        this.project = project;
        this.tree = tree;
        this.platform = platform;
    }

    /** The file that was made. */
    Path make(Path jar, Path libraries, String version, Path to) throws IOException {
        Path input = Files.createDirectories(tree.resolve("input"));
        Files.copy(jar, input.resolve("toeline.jar"));
        // natives stay in their jars here: how they lie beside the program was tried on Linux only
        new Slim(platform, Optional.empty()).jars(libraries, input.resolve("lib"));
        Folders.copy(project.resolve("sample-media"), input.resolve("sample-media"));
        Licences.gather(input.resolve("lib"), project, input.resolve("licences"));
        JavaRuntime.make(tree.resolve("runtime"));
        Path out = Files.createDirectories(tree.resolve("out"));
        Running.run(command(input, version, out));
        try (var files = Files.list(out)) {
            Path made = files.findFirst().orElseThrow();
            Path named = to.resolve("toeline-" + version + "-" + platform.id() + ending());
            return Files.move(made, named, java.nio.file.StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private String ending() {
        return platform.windows() ? ".msi" : ".dmg";
    }

    List<String> command(Path input, String version, Path out) throws IOException {
        Path icon = tree.resolve(platform.windows() ? "toeline.ico" : "toeline.icns");
        Files.createDirectories(tree);
        Files.write(icon, platform.windows() ? Icon.ico() : Icon.icns());
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "jpackage").toString(),
                "--type",
                ending().substring(1),
                "--name",
                "Toeline",
                // macOS takes no version that begins with 0
                "--app-version",
                platform.windows() ? version : version.replaceFirst("^0", "1"),
                "--input",
                input.toString(),
                "--main-jar",
                "toeline.jar",
                "--main-class",
                "org.toeline.Main",
                "--runtime-image",
                tree.resolve("runtime").toString(),
                "--icon",
                icon.toString(),
                "--java-options",
                "-Dtoeline.home=$APPDIR",
                "--java-options",
                "-Dfile.encoding=UTF-8",
                "--java-options",
                "-XX:+UseSerialGC",
                "--dest",
                out.toString()));
        if (platform.windows()) {
            command.addAll(List.of(
                    "--win-menu",
                    "--win-shortcut",
                    "--win-per-user-install",
                    // an update replaces what has the same number
                    "--win-upgrade-uuid",
                    "6e6f3f6a-0d0c-4c1e-9d53-5b6a7f0f1c11",
                    "--add-launcher",
                    "toeline-command=" + project.resolve("src/package/windows/command.properties")));
        }
        return command;
    }
}

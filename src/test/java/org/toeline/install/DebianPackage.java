package org.toeline.install;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The package for Debian: everything lies in {@code /opt/toeline} or is a link or an entry that the package owns, so that removing
 * it takes away what installing brought. Entries of menus and file types are files of their own, which the desktop's packages
 * notice, where there are any; no script here needs a desktop.
 */
final class DebianPackage {

    static final String HOME = "/opt/toeline";

    private static final String DEPENDS =
            "libc6, libstdc++6, zlib1g, libgtk-3-0, libgl1, libxxf86vm1, libxtst6, libxi6,"
                    + " libxrender1, libpangoft2-1.0-0, libfreetype6, libharfbuzz0b, liblcms2-2,"
                    + " libjpeg62-turbo, libpng16-16, libgif7, fontconfig, fonts-dejavu-core";

    private final Path project;
    private final Path tree;
    private final NativePlatform platform;

    DebianPackage(Path project, Path tree, NativePlatform platform) {
        this.project = project;
        this.tree = tree;
        this.platform = platform;
    }

    /** The file that was made. */
    Path make(Path jar, Path libraries, String version, Path to) throws IOException {
        Path home = Files.createDirectories(tree.resolve(HOME.substring(1)));
        List<String> jars = program(jar, libraries, home);
        options(HOME, jars, home.resolve("java.options"));
        ClassList classes = new ClassList(home, jars);
        classes.writeMeasuring(home.resolve("measure.list"));
        classes.writeAll(home.resolve("classes.list"));
        Licences.gather(home.resolve("lib"), project, home.resolve("licences"));
        entries(home);
        control(version);
        Path file = to.resolve("toeline_" + version + "_" + platform.debian() + ".deb");
        Running.run(List.of("dpkg-deb", "--root-owner-group", "--build", tree.toString(), file.toString()));
        return file;
    }

    private List<String> program(Path jar, Path libraries, Path home) throws IOException {
        List<String> jars = new ArrayList<>(List.of("toeline.jar"));
        Files.copy(jar, home.resolve("toeline.jar"));
        Path lib = home.resolve("lib");
        new Slim(platform, Optional.of(lib)).jars(libraries, lib).forEach(name -> jars.add("lib/" + name));
        // the same library under the name by which OpenCV asks for it
        Files.createSymbolicLink(lib.resolve("libopenblas_nolapack.so.0"), Path.of("libopenblas.so.0"));
        Folders.copy(project.resolve("sample-media"), home.resolve("sample-media"));
        JavaRuntime.make(home.resolve("runtime"));
        return jars;
    }

    static void options(String home, List<String> jars, Path file) throws IOException {
        Files.writeString(
                file,
                String.join(
                        "\n",
                        "-Dtoeline.home=" + home,
                        "-Dfile.encoding=UTF-8",
                        "-Djava.library.path=" + home + "/lib",
                        "-Dorg.bytedeco.javacpp.pathsFirst=true",
                        "-Dorg.sqlite.lib.path=" + home + "/lib",
                        "-cp",
                        String.join(":", jars.stream().map(j -> home + "/" + j).toList()),
                        ""));
    }

    private void entries(Path home) throws IOException {
        Path own = project.resolve("src/package/linux");
        put(own.resolve("toeline"), home.resolve("bin/toeline"), "rwxr-xr-x");
        put(own.resolve("share-classes"), home.resolve("share-classes"), "rwxr-xr-x");
        put(own.resolve("toeline.desktop"), tree.resolve("usr/share/applications/toeline.desktop"), "rw-r--r--");
        put(own.resolve("toeline.xml"), tree.resolve("usr/share/mime/packages/toeline.xml"), "rw-r--r--");
        put(project.resolve("src/package/copyright"), tree.resolve("usr/share/doc/toeline/copyright"), "rw-r--r--");
        Path command = tree.resolve("usr/bin/toeline");
        Files.createDirectories(command.getParent());
        Files.createSymbolicLink(command, Path.of(HOME, "bin/toeline"));
        for (int size : List.of(16, 24, 32, 48, 64, 128, 256)) {
            Path icon = tree.resolve("usr/share/icons/hicolor/" + size + "x" + size + "/apps/toeline.png");
            Files.createDirectories(icon.getParent());
            Files.write(icon, Icon.png(size));
        }
    }

    private static void put(Path from, Path to, String permissions) throws IOException {
        Files.createDirectories(to.getParent());
        Files.copy(from, to);
        Files.setPosixFilePermissions(to, PosixFilePermissions.fromString(permissions));
    }

    private void control(String version) throws IOException {
        Path control = Files.createDirectories(tree.resolve("DEBIAN"));
        Path own = project.resolve("src/package/linux");
        for (String script : List.of("preinst", "postinst", "prerm")) {
            put(own.resolve(script), control.resolve(script), "rwxr-xr-x");
        }
        Map<String, String> fields = Map.of(
                "VERSION",
                version,
                "ARCHITECTURE",
                platform.debian(),
                "SIZE",
                Long.toString(Folders.bytes(tree) / 1024),
                "DEPENDS",
                DEPENDS);
        String text = Files.readString(own.resolve("control"), StandardCharsets.UTF_8);
        for (Map.Entry<String, String> field : fields.entrySet()) {
            text = text.replace("@" + field.getKey() + "@", field.getValue());
        }
        Files.writeString(control.resolve("control"), text);
    }
}

package org.toeline.install;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * Makes this system's package from what the build left in {@code target}: {@code MakePackage PROJECT VERSION NATIVES LIBRARIES}.
 * Or, where the natives are another system's, an archive to unpack. The sum of what was made lies beside it.
 */
final class MakePackage {

    private MakePackage() {}

    public static void main(String[] args) throws IOException {
        Path project = Path.of(args[0]).toAbsolutePath();
        String version = args[1];
        NativePlatform platform = NativePlatform.of(args[2]);
        Path libraries = Path.of(args[3]);
        Path to = Files.createDirectories(project.resolve("target/package"));
        Path tree = to.resolve("tree-" + platform.id());
        Folders.delete(tree);
        Path jar = project.resolve("target/toeline.jar");
        Path made = here(platform)
                ? platform.linux()
                        ? new DebianPackage(project, tree, platform).make(jar, libraries, version, to)
                        : new DesktopPackage(project, tree, platform).make(jar, libraries, version, to)
                : new PortableArchive(project, platform).make(jar, libraries, version, to);
        Files.writeString(
                made.resolveSibling(made.getFileName() + ".sha256"), sum(made) + "  " + made.getFileName() + "\n");
        System.out.printf("%s, %.1f MB%n", made, Files.size(made) / 1e6);
    }

    private static boolean here(NativePlatform platform) {
        String system = System.getProperty("os.name").toLowerCase(java.util.Locale.ROOT);
        String processor =
                System.getProperty("os.arch").replace("amd64", "x86_64").replace("aarch64", "arm64");
        String name = system.startsWith("mac") ? "macosx" : system.startsWith("windows") ? "windows" : "linux";
        return platform.id().equals(name + "-" + processor);
    }

    private static String sum(Path file) throws IOException {
        try (var in = Files.newInputStream(file)) {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            byte[] block = new byte[1 << 16];
            for (int n = in.read(block); n >= 0; n = in.read(block)) {
                digest.update(block, 0, n);
            }
            return HexFormat.of().formatHex(digest.digest());
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}

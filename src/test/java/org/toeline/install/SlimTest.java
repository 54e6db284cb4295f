package org.toeline.install;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.jar.JarFile;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a package leaves out of the libraries, and what it must not. */
class SlimTest {

    @TempDir
    private Path folder;

    /** Names as they stand in the jars of OpenCV 4.13.0, FFmpeg 8.0.1, OpenBLAS 0.3.31 and SQLite's driver 3.54.1. */
    @Test
    void keepsWhatIsLoadedAndNothingOfOtherSystems() {
        Slim linux = new Slim(NativePlatform.of("linux-x86_64"), Optional.empty());
        String opencv = "org/bytedeco/opencv/linux-x86_64/";
        assertThat(List.of(
                        "org/toeline/Main.class",
                        opencv + "libopencv_core.so.413",
                        opencv + "libjniopencv_videoio.so",
                        "org/bytedeco/openblas/linux-x86_64/libgfortran.so.5",
                        "org/bytedeco/ffmpeg/linux-x86_64/libavcodec.so.62",
                        "org/bytedeco/ffmpeg/linux-x86_64/libva-drm.so.2",
                        "org/sqlite/native/Linux/x86_64/libsqlitejdbc.so",
                        "META-INF/LICENSE"))
                .allMatch(linux::wanted);
        assertThat(List.of(
                        opencv + "python/cv2.cpython-314-x86_64-linux-gnu.so",
                        opencv + "libopencv_tracking.so.413",
                        opencv + "libjniopencv_stitching.so",
                        opencv + "libopencv_java.so",
                        opencv + "share/opencv4/haarcascades/haarcascade_eye.xml",
                        opencv + "include/opencv2/core.hpp",
                        "org/bytedeco/ffmpeg/linux-x86_64/ffmpeg",
                        "org/bytedeco/ffmpeg/linux-x86_64/libavdevice.so.62",
                        "org/bytedeco/openblas/linux-x86_64/libjniopenblas_full.so",
                        "org/sqlite/native/Linux-Musl/x86_64/libsqlitejdbc.so",
                        "org/sqlite/native/Windows/x86_64/sqlitejdbc.dll"))
                .noneMatch(linux::wanted);
        Slim windows = new Slim(NativePlatform.of("windows-x86_64"), Optional.empty());
        assertThat(List.of(
                        "org/bytedeco/opencv/windows-x86_64/opencv_core4130.dll",
                        "org/bytedeco/opencv/windows-x86_64/jniopencv_dnn.dll",
                        "org/sqlite/native/Windows/x86_64/sqlitejdbc.dll"))
                .allMatch(windows::wanted);
        assertThat(List.of(
                        "org/bytedeco/opencv/windows-x86_64/opencv_tracking4130.dll",
                        "org/bytedeco/opencv/windows-x86_64/opencv_core4130.lib",
                        "org/sqlite/native/Windows/aarch64/sqlitejdbc.dll"))
                .noneMatch(windows::wanted);
        Slim mac = new Slim(NativePlatform.of("macosx-arm64"), Optional.empty());
        assertThat(mac.wanted("org/bytedeco/opencv/macosx-arm64/libopencv_core.413.dylib"))
                .isTrue();
        assertThat(mac.wanted("org/bytedeco/opencv/macosx-arm64/libopencv_face.413.dylib"))
                .isFalse();
    }

    @Test
    void everyClassOfALibraryStaysAndItsNativesLieBeside() throws IOException {
        Path jar = Arrays.stream(System.getProperty("java.class.path").split(java.io.File.pathSeparator))
                .map(Path::of)
                .filter(p -> p.getFileName().toString().startsWith("sqlite-jdbc"))
                .findFirst()
                .orElseThrow();
        Path from = Files.createDirectories(folder.resolve("from"));
        Files.copy(jar, from.resolve("sqlite.jar"));
        Path beside = folder.resolve("beside");
        Path to = folder.resolve("to");
        assertThat(new Slim(NativePlatform.of("linux-x86_64"), Optional.of(beside)).jars(from, to))
                .containsExactly("sqlite.jar");
        assertThat(entries(to.resolve("sqlite.jar"), ".class"))
                .hasSizeGreaterThan(100)
                .isEqualTo(entries(jar, ".class"));
        assertThat(entries(to.resolve("sqlite.jar"), "")).noneMatch(Slim::isNative);
        assertThat(beside.resolve("libsqlitejdbc.so")).isRegularFile();
        try (Stream<Path> laid = Files.list(beside)) {
            assertThat(laid).hasSize(1);
        }
    }

    private static TreeSet<String> entries(Path jar, String ending) throws IOException {
        try (JarFile file = new JarFile(jar.toFile())) {
            return file.stream()
                    .filter(e -> !e.isDirectory())
                    .map(e -> e.getName())
                    .filter(n -> n.endsWith(ending))
                    .collect(java.util.stream.Collectors.toCollection(TreeSet::new));
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "src/package/linux/toeline",
                "src/package/linux/share-classes",
                "src/package/linux/preinst",
                "src/package/linux/postinst",
                "src/package/linux/prerm",
                "src/package/portable/toeline",
                ".ci/installed.sh",
                ".ci/run",
                "toeline"
            })
    void theShellUnderstandsEachScript(String script) throws Exception {
        assertThat(Path.of(script)).isExecutable();
        Process shell = new ProcessBuilder("sh", "-n", script).inheritIO().start();
        assertThat(shell.waitFor()).isZero();
    }

    /** The icon files of other systems by their published layouts: ICO's directory of 16 bytes an entry, ICNS's typed blocks. */
    @Test
    void iconsAreWhatOtherSystemsRead() throws IOException {
        byte[] ico = Icon.ico();
        var icoBytes = java.nio.ByteBuffer.wrap(ico).order(java.nio.ByteOrder.LITTLE_ENDIAN);
        List<Integer> sizes = new ArrayList<>();
        for (int i = 0; i < icoBytes.getShort(4); i++) {
            int entry = 6 + 16 * i;
            int at = icoBytes.getInt(entry + 12);
            var image =
                    javax.imageio.ImageIO.read(new java.io.ByteArrayInputStream(ico, at, icoBytes.getInt(entry + 8)));
            assertThat(image.getWidth() & 255).isEqualTo(ico[entry] & 255);
            sizes.add(image.getWidth());
        }
        assertThat(sizes).containsExactly(16, 32, 48, 256);
        byte[] icns = Icon.icns();
        var icnsBytes = java.nio.ByteBuffer.wrap(icns);
        assertThat(icnsBytes.getInt(4)).isEqualTo(icns.length);
        int at = 8;
        while (at < icns.length) {
            assertThat(javax.imageio.ImageIO.read(
                            new java.io.ByteArrayInputStream(icns, at + 8, icnsBytes.getInt(at + 4) - 8)))
                    .isNotNull();
            at += icnsBytes.getInt(at + 4);
        }
        assertThat(at).isEqualTo(icns.length);
    }
}

package org.toeline.install;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.regex.Pattern;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * Copies the libraries without what this program never loads: natives of other systems, modules of OpenCV nobody here asks for,
 * Python, headers, data of other programs. What is kept is stored unpacked, since a package is packed as a whole, and better.
 */
final class Slim {

    /** The modules that the program names, those that these link, and those that the bindings of these load. */
    private static final Pattern OPENCV_USED =
            Pattern.compile("(calib3d|core|dnn|features2d|flann|highgui|imgcodecs|imgproc|video|videoio)");

    private static final Pattern OPENCV_MODULE =
            Pattern.compile("(?:lib)?(?:jni)?opencv_([a-z0-9_]+?)(?:\\d{3,4})?\\.(?:so|dll|dylib|\\d).*");
    private static final Pattern NATIVE = Pattern.compile(".*(\\.so(\\.\\d+)*|\\.dll|\\.dylib|\\.jnilib)");
    private static final Pattern FFMPEG_UNUSED = Pattern.compile("(?:lib)?(?:jni)?(avdevice|avfilter|postproc)\\b.*");
    private static final long THE_EPOCH_OF_ZIP = 315_576_000_000L;

    private final NativePlatform platform;
    private final Optional<Path> beside;

    /** @param beside where natives are laid; empty: they stay in their jars, and are unpacked when the program runs first */
    Slim(NativePlatform platform, Optional<Path> beside) {
        this.platform = platform;
        this.beside = beside;
    }

    /** Copies every jar of a folder that holds something then; the names of the copies, in order. */
    List<String> jars(Path from, Path to) throws IOException {
        Files.createDirectories(to);
        List<String> names = new ArrayList<>();
        for (Path jar : sorted(from)) {
            if (copy(jar, to.resolve(jar.getFileName()))) {
                names.add(jar.getFileName().toString());
            }
        }
        return names;
    }

    private static List<Path> sorted(Path folder) throws IOException {
        try (var files = Files.list(folder)) {
            return files.filter(f -> f.toString().endsWith(".jar")).sorted().toList();
        }
    }

    private boolean copy(Path jar, Path to) throws IOException {
        boolean held = false;
        try (JarFile from = new JarFile(jar.toFile());
                ZipOutputStream out = new ZipOutputStream(new BufferedOutputStream(Files.newOutputStream(to)))) {
            out.setMethod(ZipOutputStream.STORED);
            for (JarEntry entry : Collections.list(from.entries())) {
                String name = entry.getName();
                if (entry.isDirectory() || !wanted(name)) {
                    continue;
                }
                byte[] bytes;
                try (InputStream in = from.getInputStream(entry)) {
                    bytes = in.readAllBytes();
                }
                if (isNative(name) && beside.isPresent()) {
                    lay(name, bytes, beside.get());
                } else {
                    store(out, name, bytes);
                    held |= !name.startsWith("META-INF/");
                }
            }
        }
        if (!held) {
            Files.delete(to);
        }
        return held;
    }

    private static void store(ZipOutputStream out, String name, byte[] bytes) throws IOException {
        ZipEntry entry = new ZipEntry(name);
        CRC32 sum = new CRC32();
        sum.update(bytes);
        entry.setCrc(sum.getValue());
        entry.setSize(bytes.length);
        entry.setTime(THE_EPOCH_OF_ZIP);
        out.putNextEntry(entry);
        out.write(bytes);
        out.closeEntry();
    }

    /** The toolkit of the desk looks beside its jar, the others where the options say. */
    private static void lay(String name, byte[] bytes, Path folder) throws IOException {
        Files.createDirectories(folder);
        Path file = folder.resolve(name.substring(name.lastIndexOf('/') + 1));
        Files.write(file, bytes);
    }

    static boolean isNative(String name) {
        return NATIVE.matcher(name).matches();
    }

    boolean wanted(String name) {
        if (name.startsWith("META-INF/") && name.matches(".*\\.(SF|RSA|DSA)")) {
            return false;
        }
        if (name.startsWith("org/sqlite/native/")) {
            return name.startsWith("org/sqlite/native/" + platform.sqlite() + "/");
        }
        String folder = "/" + platform.id() + "/";
        if (name.startsWith("org/bytedeco/") && name.contains(folder)) {
            String rest = name.substring(name.indexOf(folder) + folder.length());
            return !rest.contains("/") && isNative(rest) && used(rest);
        }
        return true;
    }

    private static boolean used(String file) {
        var module = OPENCV_MODULE.matcher(file);
        if (module.matches()) {
            return OPENCV_USED.matcher(module.group(1)).matches();
        }
        return !FFMPEG_UNUSED.matcher(file).matches() && !file.startsWith("libjniopenblas_full");
    }
}

package org.toeline.install;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;

/**
 * The classes that the program loads when it does what people do with it. On installing they are laid in an archive, which is
 * mapped into memory on every start, in place of reading and checking each class. Where there is no screen, and no virtual one,
 * the desk's classes are not among them, and the desk starts more slowly.
 */
final class ClassList {

    private static final int LONGEST_SECONDS = 240;
    /** A desk that has loaded nothing for so long has all it needs, however busy the machine is. */
    private static final int STILL_SECONDS = 15;

    private final Path home;
    private final List<String> jars;

    /** @param home where the program lies now */
    ClassList(Path home, List<String> jars) {
        this.home = home.toAbsolutePath();
        this.jars = jars;
    }

    /** Those of one measurement alone: an archive takes longer to map the larger it is, and this is over soonest. */
    void writeMeasuring(Path file) throws IOException {
        write(file, List.of(List.of("measure", sample())), false);
    }

    /** Those of whatever is done, the desk included. */
    void writeAll(Path file) throws IOException {
        write(
                file,
                List.of(
                        List.of("measure", sample()),
                        List.of("handout", sample(), "--out", "out"),
                        List.of("ledger", "import", sample(), "--ledger", "ledger")),
                true);
    }

    private String sample() {
        return home.resolve("sample-media/before/before.lesson.json").toString();
    }

    private void write(Path file, List<List<String>> commands, boolean desk) throws IOException {
        Path folder = Files.createTempDirectory("toeline-classes");
        try {
            DebianPackage.options(home.toString(), jars, folder.resolve("java.options"));
            Set<String> lines = new LinkedHashSet<>();
            for (List<String> command : commands) {
                lines.addAll(classes(folder, List.of(), command));
            }
            Optional<List<String>> screen = screen();
            if (desk && screen.isPresent()) {
                lines.addAll(classes(folder, screen.get(), List.of(sample())));
            } else if (desk) {
                System.err.println("no screen and no xvfb-run: the desk will start more slowly from this package");
            }
            Files.write(file, lines);
        } finally {
            Folders.delete(folder);
        }
    }

    /** What comes before a command that needs a screen. */
    private static Optional<List<String>> screen() {
        if (Files.isExecutable(Path.of("/usr/bin/xvfb-run"))) {
            return Optional.of(List.of("xvfb-run", "-a", "-s", "-screen 0 1400x900x24"));
        }
        return System.getenv("DISPLAY") == null ? Optional.empty() : Optional.of(List.of());
    }

    /** The desk does not end by itself: it is asked to, after a while. */
    private List<String> classes(Path folder, List<String> before, List<String> command) throws IOException {
        Path list = folder.resolve("classes.list");
        Files.deleteIfExists(list);
        List<String> all = new ArrayList<>(before);
        all.addAll(List.of(
                home.resolve("runtime/bin/java").toString(),
                "-Xshare:off",
                "-XX:DumpLoadedClassList=" + list,
                "-Duser.home=" + folder,
                "-Djava.util.prefs.userRoot=" + folder,
                "-Dorg.bytedeco.javacpp.cachedir=" + folder.resolve("natives"),
                "@" + folder.resolve("java.options"),
                "org.toeline.Main"));
        all.addAll(command);
        ProcessBuilder builder = new ProcessBuilder(all)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("said.txt").toFile());
        Process process = builder.start();
        try {
            if (!ends(process, list, !before.isEmpty())) {
                process.descendants().forEach(ProcessHandle::destroy);
                process.destroy();
                process.waitFor(20, TimeUnit.SECONDS);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("interrupted", e);
        }
        if (!Files.isRegularFile(list)) {
            throw new IOException(
                    String.join(" ", command) + " came to nothing: " + Files.readString(folder.resolve("said.txt")));
        }
        return Files.readAllLines(list);
    }

    /** Whether it ended by itself; a desk does not, and is waited for until it loads nothing more. */
    private static boolean ends(Process process, Path list, boolean desk) throws IOException, InterruptedException {
        long length = 0;
        int still = 0;
        for (int second = 0; second < LONGEST_SECONDS; second++) {
            if (process.waitFor(1, TimeUnit.SECONDS)) {
                return true;
            }
            long now = Files.isRegularFile(list) ? Files.size(list) : 0;
            still = now == length ? still + 1 : 0;
            length = now;
            if (desk && length > 0 && still >= STILL_SECONDS) {
                return false;
            }
        }
        return false;
    }
}

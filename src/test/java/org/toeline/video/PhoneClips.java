package org.toeline.video;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.LongStream;
import org.toeline.video.TestClips.Coding;

/**
 * Clips in codings that the library's own encoders cannot make, by the {@code ffmpeg} program where one is installed, from
 * a clip whose frames carry their number, with noise that is never the same in two frames.
 */
final class PhoneClips {

    private PhoneClips() {}

    /** Whether the program is there and knows these encoders. */
    static boolean canMake(String... encoders) {
        try {
            Process process = new ProcessBuilder("ffmpeg", "-hide_banner", "-encoders")
                    .redirectErrorStream(true)
                    .start();
            String known = new String(process.getInputStream().readAllBytes());
            return process.waitFor() == 0 && List.of(encoders).stream().allMatch(known::contains);
        } catch (IOException e) {
            return false;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    /** Numbered frames at 30 a second to code anew. */
    static Path source(Path folder, int frames) {
        return TestClips.write(
                folder.resolve("source.mkv"),
                new Coding("mpeg4", "mkv", 12, 0, 0),
                LongStream.range(0, frames)
                        .map(i -> Math.round(i * 1000 / 30.0))
                        .toArray());
    }

    /** Runs the program on {@code from}: options before the input, a bar, options of the output. */
    static Path make(Path from, Path to, String options) throws IOException, InterruptedException {
        String[] parts = options.split("\\|", -1);
        List<String> command =
                new ArrayList<>(List.of("ffmpeg", "-hide_banner", "-loglevel", "error", "-nostdin", "-y"));
        add(command, parts[0]);
        command.addAll(List.of("-i", from.toString()));
        add(command, parts[1]);
        command.add(to.toString());
        Path log = to.resolveSibling(to.getFileName() + ".log");
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(log.toFile())
                .start();
        if (!process.waitFor(60, TimeUnit.SECONDS)) {
            process.destroyForcibly();
            throw new IOException("ffmpeg took longer than a minute: " + command);
        }
        if (process.exitValue() != 0) {
            throw new IOException(command + " failed: " + Files.readString(log));
        }
        return to;
    }

    private static void add(List<String> command, String options) {
        for (String option : options.trim().split(" +")) {
            if (!option.isEmpty()) {
                command.add(option);
            }
        }
    }
}

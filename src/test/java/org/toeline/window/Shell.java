package org.toeline.window;

import java.io.IOException;
import java.nio.charset.StandardCharsets;

/** Other programs, as a person would start them. */
final class Shell {

    private Shell() {}

    static byte[] run(String... command) throws IOException, InterruptedException {
        Process process = started(command);
        byte[] said = process.getInputStream().readAllBytes();
        if (process.waitFor() != 0) {
            throw new IOException(String.join(" ", command) + ": " + new String(said, StandardCharsets.UTF_8));
        }
        return said;
    }

    /** What a program answers; nothing where it found nothing, which it may call a fault. */
    static String said(String... command) throws IOException, InterruptedException {
        Process process = started(command);
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        process.waitFor();
        return said.strip();
    }

    private static Process started(String... command) throws IOException {
        Process process = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        process.getOutputStream().close();
        return process;
    }
}

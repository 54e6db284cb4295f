package org.toeline.install;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Another program, whose words are let through. */
final class Running {

    private Running() {}

    static void run(List<String> command) throws IOException {
        run(command, Optional.empty(), Map.of());
    }

    static void run(List<String> command, Optional<Path> folder, Map<String, String> environment) throws IOException {
        ProcessBuilder builder = new ProcessBuilder(command).inheritIO();
        folder.ifPresent(f -> builder.directory(f.toFile()));
        builder.environment().putAll(environment);
        try {
            int status = builder.start().waitFor();
            if (status != 0) {
                throw new IOException(command.get(0) + " ended with " + status);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException(command.get(0) + " was interrupted", e);
        }
    }
}

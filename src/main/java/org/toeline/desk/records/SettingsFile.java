package org.toeline.desk.records;

import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermissions;

/**
 * The document of the settings. One that cannot be read is moved aside, never written over, and the usual settings are used
 * meanwhile.
 *
 * @param file  need not exist
 * @param usual what counts where the document says nothing
 */
public record SettingsFile(Path file, Settings usual) {

    private static final JsonMapper STRICT = JsonMapper.builder(com.fasterxml.jackson.core.JsonFactory.builder()
                    .streamReadConstraints(
                            StreamReadConstraints.builder().maxNestingDepth(50).build())
                    .build())
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    /**
     * What was read.
     *
     * @param remark one sentence for the person; empty when all is well
     */
    public record Read(Settings settings, String remark) {}

    public Read read() {
        if (!Files.exists(file)) {
            return new Read(usual, "");
        }
        try {
            JsonNode tree = STRICT.readTree(Files.readAllBytes(file));
            return new Read(Settings.of(tree, usual), "");
        } catch (IOException | IllegalArgumentException e) {
            return new Read(
                    usual,
                    movedAside(
                            String.valueOf(e.getMessage()).lines().findFirst().orElse("")));
        }
    }

    private String movedAside(String why) {
        try {
            return file + " could not be read (" + why + "); it was moved to "
                    + aside(file).getFileName() + ", and the usual settings are used";
        } catch (IOException e) {
            return file + " could not be read (" + why
                    + ") nor moved aside; the usual settings are used, and it is left as it is";
        }
    }

    /** Moves a file that cannot be read to a name beside it that nothing has. */
    static Path aside(Path file) throws IOException {
        Path aside = file.resolveSibling(file.getFileName() + ".unreadable");
        for (int n = 2; Files.exists(aside); n++) {
            aside = file.resolveSibling(file.getFileName() + ".unreadable-" + n);
        }
        return Files.move(file, aside, StandardCopyOption.ATOMIC_MOVE);
    }

    /** It may hold a password. */
    static void onlyForTheOwner(Path file) throws IOException {
        if (Files.getFileAttributeView(file, PosixFileAttributeView.class) != null) {
            Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-------"));
        }
    }

    public void write(Settings settings) throws IOException {
        settings.write(file);
    }
}

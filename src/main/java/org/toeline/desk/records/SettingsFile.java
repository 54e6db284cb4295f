package org.toeline.desk.records;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermissions;
import org.toeline.document.Json;
import org.toeline.document.OwnDocument;

/**
 * The document of the settings. One that cannot be read is moved aside, never written over, and the usual settings are used
 * meanwhile.
 *
 * @param file  need not exist
 * @param usual what counts where the document says nothing
 */
public record SettingsFile(Path file, Settings usual) {

    public OwnDocument.Read<Settings> read() {
        return OwnDocument.read(file, usual, bytes -> Settings.of(Json.read(bytes), usual));
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

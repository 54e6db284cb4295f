package org.toeline.desk.records;

import java.io.IOException;
import java.nio.file.Path;
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

    public void write(Settings settings) throws IOException {
        settings.write(file);
    }
}

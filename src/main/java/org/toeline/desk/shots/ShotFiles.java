package org.toeline.desk.shots;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import javafx.stage.Window;
import org.toeline.desk.dialog.FileDialog;
import org.toeline.desk.text.Texts;
import org.toeline.document.OwnDocument;
import org.toeline.document.WholeFile;
import org.toeline.flight.table.Template;
import org.toeline.flight.table.TemplateDocument;

/**
 * The documents of this screen beside the ledger: its settings, and the templates of tables, each a document of its own.
 *
 * @param folder the ledger's
 */
record ShotFiles(Path folder) {

    private static final Logger LOG = Logger.getLogger(ShotFiles.class.getName());

    OwnDocument.Read<ShotSettings> settings() {
        return ShotSettings.read(ShotSettings.file(folder));
    }

    ShotSettings keep(ShotSettings settings) throws IOException {
        settings.write(ShotSettings.file(folder));
        return settings;
    }

    private Path templateFolder() {
        return folder.resolve("shot-templates");
    }

    /** Those that can be read, by name; one that cannot is left as it is. */
    List<Template> templates() throws IOException {
        if (!Files.isDirectory(templateFolder())) {
            return List.of();
        }
        List<Template> all = new ArrayList<>();
        try (Stream<Path> files = Files.list(templateFolder())) {
            for (Path file :
                    files.filter(f -> f.toString().endsWith(".json")).sorted().toList()) {
                try {
                    all.add(TemplateDocument.read(Files.readAllBytes(file)));
                } catch (IOException | IllegalArgumentException e) {
                    LOG.log(Level.WARNING, file + " is not a template of shots: " + e.getMessage());
                }
            }
        }
        return all;
    }

    /** A template under its name; an earlier one of that name is replaced. */
    Path keep(Template template) throws IOException {
        String plain = template.name().toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
        Path file = templateFolder()
                .resolve(plain + "-" + Integer.toHexString(template.name().hashCode()) + ".json");
        WholeFile.write(file, TemplateDocument.write(template));
        return file;
    }

    /** Asks which table is to be read. */
    static Optional<Path> choose(Window window) {
        return new FileDialog(FileDialog.Kind.SHOTS, "shots.import")
                .showing(Texts.of("shots.tables"), "*.csv", "*.txt", "*.tsv")
                .showing(Texts.of("shots.any-file"), "*.*")
                .open(window);
    }

    /** Asks where something is to be written. */
    static Optional<Path> save(String pressed, String name, Window window) {
        return new FileDialog(FileDialog.Kind.SHOTS, pressed).named(name).save(window);
    }
}

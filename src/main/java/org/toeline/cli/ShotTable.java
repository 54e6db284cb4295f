package org.toeline.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.toeline.document.Json;
import org.toeline.document.WholeFile;
import org.toeline.flight.table.Asked;
import org.toeline.flight.table.Imported;
import org.toeline.flight.table.Proposal;
import org.toeline.flight.table.ShotImport;
import org.toeline.flight.table.Template;
import org.toeline.flight.table.TemplateDocument;
import org.toeline.language.Sentences;
import org.toeline.ledger.DocumentException;

/**
 * A table of shots as it was read from a file.
 *
 * @param asked    columns that only a person can decide, if no template was given
 * @param unmapped headings that nothing was made of, if no template was given
 */
record ShotTable(Path file, Template template, Imported imported, List<Asked> asked, List<String> unmapped) {

    private static final Sentences SENTENCES = Sentences.of(ShotTable.class);

    /** Tables larger than this are not of shots. */
    private static final long MOST_BYTES = 20_000_000;

    static ShotTable read(Path file, Optional<Path> templateFile) throws DocumentException {
        byte[] bytes = bytes(file);
        if (templateFile.isPresent()) {
            Template template = template(templateFile.get());
            return withShots(new ShotTable(file, template, ShotImport.read(bytes, template), List.of(), List.of()));
        }
        Proposal proposal = Proposal.of(bytes, name(file));
        if (proposal.template().columns().isEmpty() && proposal.asked().isEmpty()) {
            throw new DocumentException(SENTENCES.of("shots.no-heading", file));
        }
        return withShots(new ShotTable(
                file,
                proposal.template(),
                ShotImport.read(bytes, proposal.template()),
                proposal.asked(),
                proposal.unmapped()));
    }

    private static ShotTable withShots(ShotTable table) throws DocumentException {
        if (table.imported.shots().isEmpty() && table.asked.isEmpty()) {
            String why = table.imported.leftOut().stream()
                    .findFirst()
                    .map(l -> SENTENCES.of("shots.line", l.line(), l.reason()))
                    .orElseGet(() -> SENTENCES.of("shots.empty"));
            throw new DocumentException(SENTENCES.of("shots.none", table.file, why));
        }
        return table;
    }

    /** Only the shots with these values under these headings. */
    ShotTable only(Map<String, String> wanted) throws DocumentException {
        if (wanted.isEmpty()) {
            return this;
        }
        ShotTable only = new ShotTable(file, template, imported.only(wanted), asked, unmapped);
        if (only.imported.shots().isEmpty() && !imported.shots().isEmpty()) {
            throw new DocumentException(SENTENCES.of("shots.none-such", file, wanted, imported.filters()));
        }
        return only;
    }

    static void write(Template template, Path file) throws IOException {
        WholeFile.write(file, TemplateDocument.write(template));
    }

    private static Template template(Path file) throws DocumentException {
        try {
            return TemplateDocument.read(bytes(file));
        } catch (Json.NotJson | IllegalArgumentException e) {
            throw new DocumentException(SENTENCES.of("shots.no-template", file, String.valueOf(e.getMessage())));
        }
    }

    private static byte[] bytes(Path file) throws DocumentException {
        try {
            if (Files.isRegularFile(file) && Files.size(file) > MOST_BYTES) {
                throw new DocumentException(SENTENCES.of("shots.large", file, Files.size(file), MOST_BYTES));
            }
            return Files.readAllBytes(file);
        } catch (NoSuchFileException e) {
            throw new DocumentException(SENTENCES.of("shots.no-file", file));
        } catch (IOException e) {
            throw new DocumentException(SENTENCES.of("shots.unreadable", file));
        }
    }

    private static String name(Path file) {
        return SENTENCES.of(
                "shots.from-headings",
                Optional.ofNullable(file.getFileName())
                        .map(Path::toString)
                        .orElseGet(() -> SENTENCES.of("shots.a-table")));
    }
}

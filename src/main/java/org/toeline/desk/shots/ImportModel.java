package org.toeline.desk.shots;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.toeline.desk.text.Texts;
import org.toeline.flight.FigureUnit;
import org.toeline.flight.table.Asked;
import org.toeline.flight.table.Column;
import org.toeline.flight.table.DecimalMark;
import org.toeline.flight.table.Imported;
import org.toeline.flight.table.Meaning;
import org.toeline.flight.table.PositiveSide;
import org.toeline.flight.table.Proposal;
import org.toeline.flight.table.Separator;
import org.toeline.flight.table.ShotImport;
import org.toeline.flight.table.TableLook;
import org.toeline.flight.table.Template;

/**
 * A table that is looked at before its shots are taken in: what each column is taken to mean, corrected by the coach. Knows no
 * control.
 */
final class ImportModel {

    /** Larger files are not tables of shots. */
    private static final long MOST_BYTES = 20_000_000;

    private static final int ROWS = 5;

    private final Path file;
    private final byte[] bytes;
    private final List<Template> templates;
    private final Proposal proposal;
    private final Set<String> decided = new HashSet<>();
    private Template template;
    private TableLook look;
    private Imported imported;

    private ImportModel(Path file, byte[] bytes, List<Template> kept) {
        this.file = file;
        this.bytes = bytes;
        this.proposal = Proposal.of(bytes, Texts.of("shots.import.proposed"));
        List<Template> all = new ArrayList<>(List.of(proposal.template()));
        all.addAll(kept);
        this.templates = List.copyOf(all);
        this.template = kept.stream()
                .filter(t -> TableLook.of(bytes, t, 1).has(t))
                .findFirst()
                .orElse(proposal.template());
        this.look = TableLook.of(bytes, template, ROWS);
        this.imported = ShotImport.read(bytes, template);
    }

    /** @param kept the templates kept so far; the first whose headings all stand in the table is chosen */
    static ImportModel read(Path file, List<Template> kept) throws IOException {
        long size = Files.size(file);
        if (size > MOST_BYTES) {
            throw new IOException(Texts.of("shots.import.too-large", file, size, MOST_BYTES));
        }
        return new ImportModel(file, Files.readAllBytes(file), kept);
    }

    /** What came of it. */
    record Taken(Path file, Imported imported, Optional<Template> template) {}

    Path file() {
        return file;
    }

    TableLook look() {
        return look;
    }

    Imported imported() {
        return imported;
    }

    Template template() {
        return template;
    }

    /** The proposal first, then those that were kept. */
    List<Template> templates() {
        return templates;
    }

    /** What a person has to decide; nothing of a column that is decided, or once another template is used. */
    List<Asked> asked() {
        return template.name().equals(proposal.template().name())
                ? proposal.asked().stream()
                        .filter(a -> !decided.contains(a.heading())
                                && column(a.heading()).isEmpty())
                        .toList()
                : List.of();
    }

    Optional<Column> column(String heading) {
        return template.columns().stream()
                .filter(c -> c.header().equals(heading))
                .findFirst();
    }

    boolean remark(String heading) {
        return template.remarks().contains(heading);
    }

    void use(Template changed) {
        template = changed;
        look = TableLook.of(bytes, template, ROWS);
        imported = ShotImport.read(bytes, template);
    }

    /** A heading means a figure from now on; another heading that did means nothing any more. */
    void means(String heading, Meaning meaning) {
        FigureUnit unit = column(heading)
                .map(Column::unit)
                .filter(u -> u.quantity() == meaning.quantity())
                .orElseGet(() -> ShotUnits.METRIC.of(meaning));
        Column plain = new Column(heading, meaning, unit, PositiveSide.RIGHT);
        Column meant = proposal.asked().stream()
                .filter(a -> a.heading().equals(heading))
                .flatMap(a -> a.perhaps().stream())
                .filter(c -> c.meaning() == meaning)
                .findFirst()
                .orElse(plain);
        put(heading, Optional.of(meant), false);
    }

    void meansNothing(String heading) {
        put(heading, Optional.empty(), false);
    }

    void meansRemark(String heading) {
        put(heading, Optional.empty(), true);
    }

    void in(String heading, FigureUnit unit) {
        column(heading)
                .ifPresent(c ->
                        put(heading, Optional.of(new Column(heading, c.meaning(), unit, c.positiveSide())), false));
    }

    void plusIs(String heading, PositiveSide side) {
        column(heading)
                .ifPresent(c -> put(heading, Optional.of(new Column(heading, c.meaning(), c.unit(), side)), false));
    }

    void cutAt(Separator separator, DecimalMark mark) {
        use(new Template(template.name(), separator, mark, template.columns(), template.remarks()));
    }

    private void put(String heading, Optional<Column> column, boolean asRemark) {
        decided.add(heading);
        List<Column> columns = new ArrayList<>(template.columns().stream()
                .filter(c -> !c.header().equals(heading)
                        && column.map(n -> n.meaning() != c.meaning()).orElse(true))
                .toList());
        column.ifPresent(columns::add);
        List<String> remarks = new ArrayList<>(template.remarks());
        remarks.remove(heading);
        if (asRemark) {
            remarks.add(heading);
        }
        use(new Template(template.name(), template.separator(), template.decimalMark(), columns, remarks));
    }

    /** @param name under which the template is to be kept; blank when it is not */
    Taken taken(String name) {
        return new Taken(
                file,
                imported,
                name.isBlank() || template.columns().isEmpty()
                        ? Optional.empty()
                        : Optional.of(template.withName(name.strip())));
    }
}

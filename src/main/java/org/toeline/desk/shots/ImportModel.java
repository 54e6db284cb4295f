package org.toeline.desk.shots;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.toeline.desk.text.Texts;
import org.toeline.flight.FigureUnit;
import org.toeline.flight.ShotFigure;
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
 * A table that is looked at before its shots are taken in: what each column is taken to mean, and which of its clubs, players
 * and days are wanted. Does not change: what the coach corrects makes another, which of a long table takes a while and may be
 * made on any thread. Knows no control.
 */
final class ImportModel {

    /** Larger files are not tables of shots. */
    private static final long MOST_BYTES = 20_000_000;

    private static final int ROWS = 5;

    /**
     * A file and what is proposed for it.
     *
     * @param templates the proposal first, then those that were kept
     */
    private record Source(Path file, byte[] bytes, Proposal proposal, List<Template> templates) {}

    private final Source source;
    private final Set<String> decided;
    private final Template template;
    private final TableLook look;
    private final Imported all;
    private final Map<String, Map<String, Integer>> filters;
    private final Map<String, String> wanted;
    /** Under which heading the setups stand. */
    private final Optional<String> setups;

    private final Imported imported;
    private final Set<ShotFigure> figures;
    private final List<TypedShot> rows;

    private ImportModel(Source source, Set<String> decided, Template template) {
        this(source, decided, template, ShotImport.read(source.bytes, template));
    }

    private ImportModel(Source source, Set<String> decided, Template template, Imported all) {
        this(source, decided, template, TableLook.of(source.bytes, template, ROWS), all, Map.of(), all.setups());
    }

    private ImportModel(
            Source source,
            Set<String> decided,
            Template template,
            TableLook look,
            Imported all,
            Map<String, String> wanted,
            Optional<String> setups) {
        this.source = source;
        this.decided = Set.copyOf(decided);
        this.template = template;
        this.look = look;
        this.all = all;
        this.filters = all.filters();
        this.wanted = Map.copyOf(wanted);
        this.setups = setups;
        Imported some = wanted.isEmpty() ? all : all.only(wanted);
        this.imported = setups.map(some::inSetups).orElse(some);
        this.figures = imported.shots().stream()
                .flatMap(s -> s.figures().keySet().stream())
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(ShotFigure.class)));
        this.rows = ShotsModel.rowsOf(imported.shots());
    }

    /** @param kept the templates kept so far; the first whose headings all stand in the table is chosen */
    static ImportModel read(Path file, List<Template> kept) throws IOException {
        long size = Files.size(file);
        if (size > MOST_BYTES) {
            throw new IOException(Texts.of("shots.import.too-large", file, size, MOST_BYTES));
        }
        byte[] bytes = Files.readAllBytes(file);
        Proposal proposal = Proposal.of(bytes, Texts.of("shots.import.proposed"));
        List<Template> templates = new ArrayList<>(List.of(proposal.template()));
        templates.addAll(kept);
        Template first = kept.stream()
                .filter(t -> TableLook.of(bytes, t, 1).has(t))
                .findFirst()
                .orElse(proposal.template());
        return new ImportModel(new Source(file, bytes, proposal, List.copyOf(templates)), Set.of(), first);
    }

    /**
     * What came of it.
     *
     * @param rows    its shots as the table of shots has them
     * @param figures those that some of them have
     */
    record Taken(Path file, List<TypedShot> rows, Set<Meaning> figures, int leftOut, Optional<Template> template) {}

    Path file() {
        return source.file;
    }

    TableLook look() {
        return look;
    }

    /** The shots that are wanted; all of them as long as nothing is chosen. */
    Imported imported() {
        return imported;
    }

    /** The figures that some shot has. */
    Set<ShotFigure> figures() {
        return figures;
    }

    /** By which headings the shots are of several clubs, players or days, which no one mixes: how many of each. */
    Map<String, Map<String, Integer>> filters() {
        return filters;
    }

    /** Which of them is wanted, by heading. */
    Optional<String> wanted(String heading) {
        return Optional.ofNullable(wanted.get(heading));
    }

    /** Whether it is said of each heading which is wanted. */
    boolean chosen() {
        return filters.keySet().stream()
                .allMatch(h -> wanted.containsKey(h) || setups.filter(h::equals).isPresent());
    }

    /** Under which heading it stands with which setup each shot was hit, of several in turns all of them are wanted. */
    Optional<String> setups() {
        return setups;
    }

    /** What stands under a heading are setups, all of them wanted, to be compared. */
    ImportModel inSetups(String heading) {
        Map<String, String> others = new HashMap<>(wanted);
        others.remove(heading);
        return new ImportModel(source, decided, template, look, all, others, Optional.of(heading));
    }

    ImportModel only(String heading, String value) {
        Map<String, String> more = new HashMap<>(wanted);
        more.put(heading, value);
        return new ImportModel(source, decided, template, look, all, more, setups);
    }

    Template template() {
        return template;
    }

    /** The proposal first, then those that were kept. */
    List<Template> templates() {
        return source.templates;
    }

    /** What a person has to decide; nothing of a column that is decided, or once another template is used. */
    List<Asked> asked() {
        return template.name().equals(source.proposal.template().name())
                ? source.proposal.asked().stream()
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

    ImportModel use(Template changed) {
        return new ImportModel(source, decided, changed);
    }

    /** A heading means a figure from now on; another heading that did means nothing any more. */
    ImportModel means(String heading, Meaning meaning) {
        Column decided = Column.decided(heading, meaning, look.cells(heading), ShotUnits.METRIC.of(meaning));
        Column plain = column(heading)
                .filter(c -> c.unit().quantity() == meaning.quantity())
                .map(c -> new Column(heading, meaning, c.unit(), decided.positiveSide()))
                .orElse(decided);
        Column meant = source.proposal.asked().stream()
                .filter(a -> a.heading().equals(heading))
                .flatMap(a -> a.perhaps().stream())
                .filter(c -> c.meaning() == meaning)
                .findFirst()
                .orElse(plain);
        return put(heading, Optional.of(meant), false);
    }

    ImportModel meansNothing(String heading) {
        return put(heading, Optional.empty(), false);
    }

    ImportModel meansRemark(String heading) {
        return put(heading, Optional.empty(), true);
    }

    ImportModel in(String heading, FigureUnit unit) {
        return column(heading)
                .map(c -> put(heading, Optional.of(new Column(heading, c.meaning(), unit, c.positiveSide())), false))
                .orElse(this);
    }

    ImportModel plusIs(String heading, PositiveSide side) {
        return column(heading)
                .map(c -> put(heading, Optional.of(new Column(heading, c.meaning(), c.unit(), side)), false))
                .orElse(this);
    }

    ImportModel cutAt(Separator separator, DecimalMark mark) {
        return use(new Template(template.name(), separator, mark, template.columns(), template.remarks()));
    }

    private ImportModel put(String heading, Optional<Column> column, boolean asRemark) {
        Set<String> more = new HashSet<>(decided);
        more.add(heading);
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
        return new ImportModel(
                source,
                more,
                new Template(template.name(), template.separator(), template.decimalMark(), columns, remarks));
    }

    /** @param name under which the template is to be kept; blank when it is not */
    Taken taken(String name) {
        return new Taken(
                source.file,
                rows,
                figures.stream().map(Meaning::of).collect(Collectors.toSet()),
                imported.leftOut().size(),
                name.isBlank() || template.columns().isEmpty()
                        ? Optional.empty()
                        : Optional.of(template.withName(name.strip())));
    }
}

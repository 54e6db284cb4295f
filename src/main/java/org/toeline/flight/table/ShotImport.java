package org.toeline.flight.table;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.toeline.flight.Shot;
import org.toeline.flight.ShotFigure;

/**
 * Shots out of a table, by a template. Whatever can be read is kept; whatever cannot is listed by line and reason. Never
 * throws for what a table holds.
 */
public final class ShotImport {

    private static final List<String> SUMMARY_WORDS = List.of(
            "average",
            "avg",
            "mean",
            "median",
            "total",
            "sum",
            "std",
            "std.",
            "st.dev",
            "stdev",
            "standard deviation",
            "deviation",
            "min",
            "max",
            "minimum",
            "maximum",
            "consistency",
            "mittelwert",
            "durchschnitt",
            "mittel",
            "summe",
            "gesamt",
            "standardabweichung",
            "streuung",
            "ø");

    /** A word that begins more rows than this is a name or a club, not a summary. */
    private static final long OFTEN = 3;

    private final Template template;
    private final List<Shot> shots = new ArrayList<>();
    private final List<Integer> lines = new ArrayList<>();
    private final List<LeftOut> leftOut = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();
    private Map<String, Long> beginnings = Map.of();
    private final Map<List<String>, Integer> seen = new HashMap<>();
    private final Map<Column, Integer> places = new LinkedHashMap<>();
    private final List<Integer> remarkPlaces = new ArrayList<>();

    private ShotImport(Template template) {
        this.template = template;
    }

    /** Reads the bytes of a table, whatever their encoding. */
    public static Imported read(byte[] bytes, Template template) {
        TableText text = TableText.of(bytes);
        ShotImport work = new ShotImport(template);
        work.read(template.separator().cut(text.text()));
        return new Imported(
                work.shots,
                work.lines,
                work.leftOut,
                work.notes,
                text.encoding().name());
    }

    private void read(Grid grid) {
        List<String> sought = Stream.concat(
                        template.columns().stream().map(Column::header), template.remarks().stream())
                .toList();
        Optional<Header> found = Header.find(grid, sought);
        if (found.isEmpty()) {
            leftOut.add(LeftOut.row(
                    1,
                    "none of the headings of “" + template.name() + "” stands in the first " + Header.LOOK_AT
                            + " lines"));
            return;
        }
        Header header = found.get();
        place(header);
        List<Row> body = grid.rows().subList(header.index() + 1, grid.rows().size());
        for (Row above : grid.rows().subList(0, header.index())) {
            if (!above.blank()) {
                leftOut.add(LeftOut.row(above.line(), "stands above the headings"));
            }
        }
        beginnings = body.stream().collect(Collectors.groupingBy(ShotImport::first, Collectors.counting()));
        char decimal = decimal(body, grid.separator());
        for (Row row : body) {
            if (!row.blank()) {
                read(row, header, decimal);
            }
        }
    }

    private void place(Header header) {
        for (Column column : template.columns()) {
            header.column(column.header())
                    .ifPresentOrElse(
                            i -> places.put(column, i),
                            () -> notes.add("there is no column “" + column.header() + "”"));
            long often = header.row().cells().stream()
                    .filter(c -> Header.plain(c).equals(Header.plain(column.header())))
                    .count();
            if (often > 1) {
                notes.add("“" + FigureCell.shortened(column.header()) + "” stands over " + often
                        + " columns; the first was read");
            }
        }
        template.remarks().forEach(r -> header.column(r).ifPresent(remarkPlaces::add));
    }

    /** Decimals as the template says, else as the cells that fit one mark only, else as the separator suggests. */
    private char decimal(List<Row> body, char separator) {
        if (template.decimalMark() != DecimalMark.GUESS) {
            return template.decimalMark() == DecimalMark.COMMA ? ',' : '.';
        }
        Map<Character, Long> votes = body.stream()
                .flatMap(r -> places.values().stream().map(r::cell))
                .map(FigureCell::decisive)
                .filter(c -> c != 0)
                .collect(Collectors.groupingBy(c -> c, Collectors.counting()));
        return votes.getOrDefault(',', 0L) > votes.getOrDefault('.', 0L) && separator != ',' || onlyQuotedCommas(votes)
                ? ','
                : '.';
    }

    private static boolean onlyQuotedCommas(Map<Character, Long> votes) {
        return votes.getOrDefault(',', 0L) > 0 && votes.getOrDefault('.', 0L) == 0;
    }

    private void read(Row row, Header header, char decimal) {
        Optional<String> fault = faultOf(row, header);
        if (fault.isPresent()) {
            leftOut.add(LeftOut.row(row.line(), fault.get()));
            return;
        }
        Map<Meaning, Double> figures = new EnumMap<>(Meaning.class);
        List<LeftOut> cells = new ArrayList<>();
        places.forEach((column, place) -> {
            String cell = row.cell(place);
            if (!FigureCell.nothing(cell)) {
                try {
                    figures.put(column.meaning(), figure(cell, column, decimal));
                } catch (FigureCell.Unreadable e) {
                    cells.add(LeftOut.cell(
                            row.line(), "“" + FigureCell.shortened(column.header()) + "”: " + e.getMessage()));
                }
            }
        });
        Shot shot = new Shot(figuresOf(figures), remark(row));
        if (shot.figures().isEmpty()) {
            leftOut.add(LeftOut.row(
                    row.line(),
                    cells.isEmpty()
                            ? "no figure stands under a heading that was mapped"
                            : cells.get(0).reason()));
            return;
        }
        leftOut.addAll(cells);
        shots.add(shot);
        lines.add(row.line());
        seen.put(row.cells(), row.line());
    }

    private Optional<String> faultOf(Row row, Header header) {
        Integer twin = seen.get(row.cells());
        if (twin != null) {
            return Optional.of("the same as line " + twin);
        }
        if (row.cells().equals(header.row().cells())) {
            return Optional.of("the headings again");
        }
        if (summary(row) && beginnings.getOrDefault(first(row), 0L) <= OFTEN) {
            return Optional.of("a summary, not a shot (“" + FigureCell.shortened(first(row)) + "”)");
        }
        long beyond = row.cells().stream()
                .skip(header.width())
                .filter(c -> !c.isEmpty())
                .count();
        if (beyond > 0) {
            return Optional.of((header.width() + beyond) + " cells under " + header.width()
                    + " headings: a separator within a figure?");
        }
        boolean units = row.filled() > 0
                && row.cells().stream()
                        .filter(c -> !c.isEmpty())
                        .allMatch(c -> UnitWords.of(c).isPresent());
        return units ? Optional.of("units, not a shot") : Optional.empty();
    }

    private static String first(Row row) {
        return row.cells().stream().filter(c -> !c.isEmpty()).findFirst().orElse("");
    }

    private static boolean summary(Row row) {
        String first =
                first(row).toLowerCase(Locale.ROOT).replaceAll("[:=]$", "").strip();
        return SUMMARY_WORDS.stream()
                .anyMatch(w -> first.equals(w) || first.startsWith(w + " ") || first.startsWith(w + ":"));
    }

    private static double figure(String cell, Column column, char decimal) throws FigureCell.Unreadable {
        double figure = FigureCell.read(cell, column, decimal);
        if (column.meaning() == Meaning.SPIN_RATE && figure < 0) {
            throw new FigureCell.Unreadable("a spin rate of “" + FigureCell.shortened(cell) + "” is below zero");
        }
        return figure;
    }

    /** Back and side spin become rate and axis, unless these stand in the row themselves. Back spin alone is the rate. */
    private static Map<ShotFigure, Double> figuresOf(Map<Meaning, Double> read) {
        Map<ShotFigure, Double> figures = new EnumMap<>(ShotFigure.class);
        read.forEach((meaning, value) -> meaning.figure().ifPresent(f -> figures.put(f, value)));
        Double back = read.get(Meaning.BACK_SPIN);
        if (back != null) {
            Double side = read.get(Meaning.SIDE_SPIN);
            figures.putIfAbsent(ShotFigure.SPIN_RATE, Math.hypot(back, side == null ? 0 : side));
            if (side != null) {
                figures.putIfAbsent(ShotFigure.SPIN_AXIS, Math.atan2(side, back));
            }
        }
        return figures;
    }

    private String remark(Row row) {
        return remarkPlaces.stream().map(row::cell).filter(c -> !c.isEmpty()).collect(Collectors.joining(", "));
    }
}

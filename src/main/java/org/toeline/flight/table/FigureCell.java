package org.toeline.flight.table;

import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.toeline.flight.FigureUnit;
import org.toeline.language.Sentences;

/** The figure in a cell: a number with or without sign, side, grouping and unit. */
final class FigureCell {

    private static final Set<String> NOTHING =
            Set.of("", "-", "--", "---", "–", "—", "n/a", "na", "nan", "null", "none", "k.a.", "?", "#n/a", "#nv");
    private static final String SIDES = java.util.stream.Stream.concat(
                    HeadingNames.words("left").stream(), HeadingNames.words("right").stream())
            .sorted((a, b) -> b.length() - a.length())
            .map(Pattern::quote)
            .collect(java.util.stream.Collectors.joining("|"));

    private static final Pattern PARTS = Pattern.compile(
            "(?<before>" + SIDES + ")?\\s*(?<sign>[+-])?\\s*" + "(?<number>\\d[\\d.,'’ ]*|[.,]\\d+)\\s*(?<rest>.*)");
    private static final Pattern SIDE_LAST = Pattern.compile("(?<unit>.*?)\\s*\\b(?<side>" + SIDES + ")");
    private static final Pattern DECIMAL_COMMA =
            Pattern.compile("\\d*,(\\d{1,2}|\\d{4,})(\\D.*)?|[^,]*\\.\\d{3},\\d+.*");
    private static final Pattern DECIMAL_POINT =
            Pattern.compile("\\d*\\.(\\d{1,2}|\\d{4,})(\\D.*)?|[^.]*,\\d{3}\\.\\d+.*");

    private static final Pattern GROUPING = Pattern.compile("['’ ]");
    private static final Pattern BY_COMMAS = Pattern.compile("\\d{1,3}(,\\d{3})+");
    private static final Pattern BY_POINTS = Pattern.compile("\\d{1,3}(\\.\\d{3})+");
    private static final Pattern PERHAPS_MINUS = Pattern.compile("\\(\\s*[\\d.,]+\\s*\\)|[\\d.,]+\\s*-");
    private static final Pattern DIGITS = Pattern.compile("\\d*");

    private static final int MOST_DIGITS = 24;
    /** A longer cell holds no figure. */
    private static final int MOST_LETTERS = 80;

    private FigureCell() {}

    /** A cell is not a figure; the message says why, in the middle of a sentence. */
    static final class Unreadable extends Exception {

        private static final long serialVersionUID = 1;

        Unreadable(String message) {
            super(message);
        }
        /** The sentence for the person; never empty. */
        @Override
        public String getMessage() {
            return Objects.requireNonNull(super.getMessage());
        }
    }

    /** Whether a cell says that there is no figure. */
    static boolean nothing(String cell) {
        return NOTHING.contains(plain(cell));
    }

    /** Whether a cell is a number with a minus behind it or in brackets, as accounts have it, or something else again. */
    static boolean perhapsMinus(String cell) {
        return PERHAPS_MINUS.matcher(plain(cell)).matches();
    }

    /** Which decimal mark a cell can only have; 0 if it fits both, else ',' or '.'. */
    static char decisive(String cell) {
        if (cell.length() > MOST_LETTERS) {
            return 0;
        }
        String plain = plain(cell).replaceAll("^[^\\d.,]+", "");
        if (DECIMAL_COMMA.matcher(plain).matches()) {
            return ',';
        }
        return DECIMAL_POINT.matcher(plain).matches() ? '.' : 0;
    }

    /**
     * The figure in the unit used inside, positive towards {@code h}.
     *
     * @param decimal '.' or ','
     */
    static double read(String cell, Column column, char decimal) throws Unreadable {
        Matcher parts = PARTS.matcher(plain(cell));
        if (cell.length() > MOST_LETTERS || !parts.matches()) {
            throw new Unreadable(Sentences.of(FigureCell.class).of("table.no-figure", shortened(cell)));
        }
        String rest = parts.group("rest");
        Optional<String> side = Optional.ofNullable(parts.group("before"));
        Matcher last = SIDE_LAST.matcher(rest);
        if (last.matches()) {
            side = Optional.of(last.group("side"));
            rest = last.group("unit");
        }
        FigureUnit unit = unit(cell, rest, column);
        double figure = unit.toInside(number(cell, parts.group("number"), decimal));
        boolean minus = "-".equals(parts.group("sign"));
        if (side.isPresent()) {
            return sided(cell, column, figure, HeadingNames.words("left").contains(side.get()), minus);
        }
        if (column.meaning().sided() && column.positiveSide() == PositiveSide.LETTERS && figure != 0) {
            throw new Unreadable(Sentences.of(FigureCell.class).of("table.no-side", shortened(cell)));
        }
        double signed = minus ? -figure : figure;
        return column.meaning().sided() ? column.positiveSide().towardsH(signed) : signed;
    }

    private static double sided(String cell, Column column, double figure, boolean left, boolean minus)
            throws Unreadable {
        if (!column.meaning().sided()) {
            throw new Unreadable(Sentences.of(FigureCell.class)
                    .of("table.side-of-none", shortened(cell), column.meaning().words()));
        }
        if (minus) {
            throw new Unreadable(Sentences.of(FigureCell.class).of("table.minus-and-side", shortened(cell)));
        }
        return left ? figure : -figure;
    }

    private static FigureUnit unit(String cell, String rest, Column column) throws Unreadable {
        if (rest.isBlank()) {
            return column.unit();
        }
        FigureUnit stated = UnitWords.of(rest)
                .orElseThrow(
                        () -> new Unreadable(Sentences.of(FigureCell.class).of("table.no-figure", shortened(cell))));
        if (stated.quantity() != column.meaning().quantity()) {
            throw new Unreadable(Sentences.of(FigureCell.class)
                    .of("table.other-unit", shortened(cell), column.meaning().words()));
        }
        return stated;
    }

    private static double number(String cell, String digits, char decimal) throws Unreadable {
        char group = decimal == '.' ? ',' : '.';
        String plain = GROUPING.matcher(digits.strip()).replaceAll("");
        if (plain.length() > MOST_DIGITS) {
            throw new Unreadable(Sentences.of(FigureCell.class).of("table.digits", shortened(cell)));
        }
        int mark = plain.indexOf(decimal);
        String whole = mark < 0 ? plain : plain.substring(0, mark);
        if (whole.indexOf(group) >= 0
                        && !(group == ',' ? BY_COMMAS : BY_POINTS)
                                .matcher(whole)
                                .matches()
                || mark >= 0 && !DIGITS.matcher(plain.substring(mark + 1)).matches()) {
            throw new Unreadable(
                    Sentences.of(FigureCell.class).of("table.no-figure-with", shortened(cell), mark(decimal)));
        }
        return Double.parseDouble(whole.replace(String.valueOf(group), "")
                + (mark < 0 ? "" : "." + plain.substring(mark + 1))
                + (mark == plain.length() - 1 ? "0" : ""));
    }

    /** Whether a cell names a side of the target line beside a figure. */
    static boolean lettered(String cell) {
        Matcher parts = PARTS.matcher(plain(cell));
        return parts.matches()
                && (parts.group("before") != null
                        || SIDE_LAST.matcher(parts.group("rest")).matches());
    }

    /** Whether a cell states a unit beside its figure. */
    static boolean united(String cell) {
        Matcher parts = PARTS.matcher(plain(cell));
        if (!parts.matches()) {
            return false;
        }
        Matcher last = SIDE_LAST.matcher(parts.group("rest"));
        return UnitWords.of(last.matches() ? last.group("unit") : parts.group("rest"))
                .isPresent();
    }

    /** The bare number in a cell, a side to the right below zero; empty when there is none. */
    static java.util.OptionalDouble bare(String cell, char decimal) {
        Matcher parts = PARTS.matcher(plain(cell));
        if (cell.length() > MOST_LETTERS || !parts.matches()) {
            return java.util.OptionalDouble.empty();
        }
        try {
            double number = number(cell, parts.group("number"), decimal);
            Matcher last = SIDE_LAST.matcher(parts.group("rest"));
            String side =
                    parts.group("before") != null ? parts.group("before") : last.matches() ? last.group("side") : "";
            boolean below = "-".equals(parts.group("sign"))
                    || HeadingNames.words("right").contains(side);
            return java.util.OptionalDouble.of(below ? -number : number);
        } catch (Unreadable e) {
            return java.util.OptionalDouble.empty();
        }
    }

    /** Lower case, one kind of minus and of space, no quotes, plain letters and digits for those of full width. */
    private static String plain(String cell) {
        return java.text.Normalizer.normalize(cell.replace('º', '°'), java.text.Normalizer.Form.NFKC)
                .replace('\u2212', '-')
                .replace('\u2012', '-')
                .replaceAll("[\u2010\u2013](?=\\s?[\\d.,])", "-")
                .replace('\u00a0', ' ')
                .replace('\u202f', ' ')
                .replace('\u2009', ' ')
                .replace("\"", "")
                .strip()
                .toLowerCase(Locale.ROOT);
    }

    /** The mark before the decimals, by its name. */
    static String mark(char decimal) {
        return Sentences.of(FigureCell.class).of(decimal == ',' ? "table.comma" : "table.point");
    }

    static String shortened(String cell) {
        return cell.length() <= 30 ? cell : cell.substring(0, 29) + "…";
    }
}

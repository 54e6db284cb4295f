package org.toeline.flight.table;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.toeline.flight.FigureUnit;

/** Units as people write them, in English and German. */
final class UnitWords {

    private static final Map<String, FigureUnit> WORDS = Map.ofEntries(
            Map.entry("mi/hr", FigureUnit.MILES_PER_HOUR),
            Map.entry("miles/h", FigureUnit.MILES_PER_HOUR),
            Map.entry("マイル/時", FigureUnit.MILES_PER_HOUR),
            Map.entry("mile/h", FigureUnit.MILES_PER_HOUR),
            Map.entry("mp/h", FigureUnit.MILES_PER_HOUR),
            Map.entry("m/sec", FigureUnit.METRES_PER_SECOND),
            Map.entry("m/sek", FigureUnit.METRES_PER_SECOND),
            Map.entry("メートル/秒", FigureUnit.METRES_PER_SECOND),
            Map.entry("km/std", FigureUnit.KILOMETRES_PER_HOUR),
            Map.entry("km/hr", FigureUnit.KILOMETRES_PER_HOUR),
            Map.entry("キロ/時", FigureUnit.KILOMETRES_PER_HOUR),
            Map.entry("mètre", FigureUnit.METRE),
            Map.entry("mètres", FigureUnit.METRE),
            Map.entry("metros", FigureUnit.METRE),
            Map.entry("metro", FigureUnit.METRE),
            Map.entry("metri", FigureUnit.METRE),
            Map.entry("メートル", FigureUnit.METRE),
            Map.entry("mtr", FigureUnit.METRE),
            Map.entry("ヤード", FigureUnit.YARD),
            Map.entry("yarda", FigureUnit.YARD),
            Map.entry("yardas", FigureUnit.YARD),
            Map.entry("iarda", FigureUnit.YARD),
            Map.entry("iarde", FigureUnit.YARD),
            Map.entry("verge", FigureUnit.YARD),
            Map.entry("verges", FigureUnit.YARD),
            Map.entry("pied", FigureUnit.FOOT),
            Map.entry("pieds", FigureUnit.FOOT),
            Map.entry("pie", FigureUnit.FOOT),
            Map.entry("pies", FigureUnit.FOOT),
            Map.entry("piede", FigureUnit.FOOT),
            Map.entry("piedi", FigureUnit.FOOT),
            Map.entry("フィート", FigureUnit.FOOT),
            Map.entry("degré", FigureUnit.DEGREE),
            Map.entry("degrés", FigureUnit.DEGREE),
            Map.entry("grado", FigureUnit.DEGREE),
            Map.entry("grados", FigureUnit.DEGREE),
            Map.entry("gradi", FigureUnit.DEGREE),
            Map.entry("度", FigureUnit.DEGREE),
            Map.entry("tr/min", FigureUnit.TURNS_PER_MINUTE),
            Map.entry("giri/min", FigureUnit.TURNS_PER_MINUTE),
            Map.entry("g/min", FigureUnit.TURNS_PER_MINUTE),
            Map.entry("r/min", FigureUnit.TURNS_PER_MINUTE),
            Map.entry("rev/min", FigureUnit.TURNS_PER_MINUTE),
            Map.entry("vpm", FigureUnit.TURNS_PER_MINUTE),
            Map.entry("回転/分", FigureUnit.TURNS_PER_MINUTE),
            Map.entry("回/分", FigureUnit.TURNS_PER_MINUTE),
            Map.entry("rpms", FigureUnit.TURNS_PER_MINUTE),
            Map.entry("seconde", FigureUnit.SECOND),
            Map.entry("secondes", FigureUnit.SECOND),
            Map.entry("segundo", FigureUnit.SECOND),
            Map.entry("segundos", FigureUnit.SECOND),
            Map.entry("seg", FigureUnit.SECOND),
            Map.entry("secondi", FigureUnit.SECOND),
            Map.entry("secondo", FigureUnit.SECOND),
            Map.entry("秒", FigureUnit.SECOND),
            Map.entry("sekunde", FigureUnit.SECOND),
            Map.entry("×", FigureUnit.TIMES),
            Map.entry("x", FigureUnit.TIMES),
            Map.entry("ratio", FigureUnit.TIMES),
            Map.entry("mph", FigureUnit.MILES_PER_HOUR),
            Map.entry("mi/h", FigureUnit.MILES_PER_HOUR),
            Map.entry("m/s", FigureUnit.METRES_PER_SECOND),
            Map.entry("mps", FigureUnit.METRES_PER_SECOND),
            Map.entry("km/h", FigureUnit.KILOMETRES_PER_HOUR),
            Map.entry("kmh", FigureUnit.KILOMETRES_PER_HOUR),
            Map.entry("kph", FigureUnit.KILOMETRES_PER_HOUR),
            Map.entry("m", FigureUnit.METRE),
            Map.entry("meter", FigureUnit.METRE),
            Map.entry("meters", FigureUnit.METRE),
            Map.entry("metre", FigureUnit.METRE),
            Map.entry("metres", FigureUnit.METRE),
            Map.entry("yd", FigureUnit.YARD),
            Map.entry("yds", FigureUnit.YARD),
            Map.entry("yard", FigureUnit.YARD),
            Map.entry("yards", FigureUnit.YARD),
            Map.entry("ft", FigureUnit.FOOT),
            Map.entry("feet", FigureUnit.FOOT),
            Map.entry("foot", FigureUnit.FOOT),
            Map.entry("fuß", FigureUnit.FOOT),
            Map.entry("fuss", FigureUnit.FOOT),
            Map.entry("°", FigureUnit.DEGREE),
            Map.entry("deg", FigureUnit.DEGREE),
            Map.entry("degrees", FigureUnit.DEGREE),
            Map.entry("degree", FigureUnit.DEGREE),
            Map.entry("grad", FigureUnit.DEGREE),
            Map.entry("rad", FigureUnit.RADIAN),
            Map.entry("rad/s", FigureUnit.RADIANS_PER_SECOND),
            Map.entry("rpm", FigureUnit.TURNS_PER_MINUTE),
            Map.entry("u/min", FigureUnit.TURNS_PER_MINUTE),
            Map.entry("upm", FigureUnit.TURNS_PER_MINUTE),
            Map.entry("1/min", FigureUnit.TURNS_PER_MINUTE),
            Map.entry("min-1", FigureUnit.TURNS_PER_MINUTE),
            Map.entry("s", FigureUnit.SECOND),
            Map.entry("sec", FigureUnit.SECOND),
            Map.entry("sek", FigureUnit.SECOND),
            Map.entry("seconds", FigureUnit.SECOND),
            Map.entry("sekunden", FigureUnit.SECOND));

    /** A unit at the end of a heading: in brackets, after “in”, or after a comma, slash, bar, dash or underscore. */
    private static final Pattern AT_END = Pattern.compile(
            "^(?<name>.*?)\\s*(?:[(\\[{]\\s*(?<in>[^)\\]}]+?)\\s*[)\\]}]|(?:\\s+in\\s+|\\s*[,|_\\-]\\s*|\\s+/?\\s*)"
                    + "(?<after>[^\\s,|_(\\[]+))\\s*\\.?$",
            Pattern.CASE_INSENSITIVE);

    /** A longer text is no heading. */
    private static final int MOST_LETTERS = 120;

    private UnitWords() {}

    static Optional<FigureUnit> of(String word) {
        String plain = java.text.Normalizer.normalize(word.replace('º', '°'), java.text.Normalizer.Form.NFKC)
                .replace('\u2212', '-')
                .strip()
                .toLowerCase(Locale.ROOT)
                .replaceAll("^[(\\[{]|[)\\]}.]$", "")
                .strip();
        return Optional.ofNullable(WORDS.get(plain));
    }

    /** A heading taken apart: its words without the unit, and the unit it states if it states one. */
    record Heading(String words, Optional<FigureUnit> unit) {}

    static Heading heading(String text) {
        Matcher matcher = AT_END.matcher(text.strip());
        if (text.length() <= MOST_LETTERS && matcher.matches()) {
            String candidate = Optional.ofNullable(matcher.group("in")).orElseGet(() -> matcher.group("after"));
            Optional<FigureUnit> unit = of(candidate);
            if (unit.isPresent() && !matcher.group("name").isBlank()) {
                return new Heading(matcher.group("name").strip(), unit);
            }
        }
        return new Heading(text.strip(), Optional.empty());
    }
}

package org.toeline.flight.table;

import java.text.Normalizer;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.toeline.flight.FigureUnit;

/**
 * A heading taken apart.
 *
 * @param words      what is left without unit and signs
 * @param unit       the unit it states
 * @param plus       the side it says a plus means
 * @param hand       whether it states signs by draw and fade, which lie on different sides for different hands
 * @param up         whether it says that a plus is up
 * @param twoVoices  whether its statements of signs contradict each other
 */
record HeadingText(
        String words,
        Optional<FigureUnit> unit,
        Optional<PositiveSide> plus,
        boolean hand,
        boolean up,
        boolean twoVoices) {

    private static final String LEFT = sides("left");
    private static final String RIGHT = sides("right");
    private static final String HAND = "draw|hook|fade|slice|ドロー|フェード";
    private static final String SIDE = "(?<side>" + LEFT + "|" + RIGHT + "|" + HAND + ")";
    private static final String POSITIVE = "positive|positiv|positif|positivo|positiva|pos|plus|プラス|正";
    private static final String NEGATIVE = "negative|negativ|négatif|negativo|negativa|neg|minus|moins|マイナス|負";
    private static final String EQUALS = "\\s*(?:=>|=|:|→|\\bis\\b|\\bist\\b|が|は)\\s*";
    private static final String BOUND = "(?![\\p{IsLatin}])";
    private static final String BEGIN = "(?<![\\p{IsLatin}])";
    /** “+ = left”, “+L”, “positive left”; a dash counts as a minus only where it cannot join two words. */
    private static final Pattern SIGN_FIRST = Pattern.compile("(?:(?<sign>\\+|(?<=[(\\[,;/]\\s?)-|-(?=\\s*=)|" + BEGIN
            + "(?:" + POSITIVE + "|" + NEGATIVE + ")" + BOUND + ")(?:" + EQUALS + "|\\s*))" + BEGIN + SIDE + BOUND);
    /** “left +”, “L+”, “left = positive”, “right −”. */
    private static final Pattern SIDE_FIRST = Pattern.compile(BEGIN + SIDE + BOUND
            + "(?:" + EQUALS + "(?<sign>[+-]|" + POSITIVE + "|" + NEGATIVE + ")|\\s*(?<plus>\\+|" + POSITIVE
            + ")|(?<minus>-)(?=\\s*(?:$|[)\\],;/])))");

    private static final Pattern BOTH = Pattern.compile("[(\\[]?\\s*" + BEGIN
            + "(l|left|links|g|gauche|izq|sx)\\s*/\\s*(r|right|rechts|d|droite|der|dx)" + BOUND + "\\s*[)\\]]?");

    private static final Pattern UP = Pattern.compile(BEGIN + "(?:up|oben|haut|arriba|su|上)" + BOUND
            + "\\s*\\+|\\+\\s*=?\\s*(?:up|oben|haut|arriba|su|上)" + BOUND);

    private static String sides(String side) {
        return HeadingNames.words(side).stream()
                .sorted((a, b) -> b.length() - a.length())
                .map(Pattern::quote)
                .collect(Collectors.joining("|"));
    }

    static HeadingText of(String heading) {
        String text = Normalizer.normalize(Header.unnumbered(heading).replace('º', '°'), Normalizer.Form.NFKC)
                .replaceAll("[\u2212\u2012\u2013]", "-")
                .replaceAll("(?<=\\p{Ll})(?=\\p{Lu})", " ")
                .replaceAll("\\s+", " ")
                .strip();
        String whole = text.toLowerCase(java.util.Locale.ROOT);
        Matcher upwards = UP.matcher(whole);
        boolean up = upwards.find();
        String lower = up ? upwards.replaceAll(" ") : whole;
        Set<String> said = new HashSet<>();
        StringBuilder rest = new StringBuilder();
        int from = 0;
        while (from < lower.length()) {
            Matcher next = next(lower, from);
            if (next == null) {
                break;
            }
            said.add(said(next));
            rest.append(lower, from, next.start());
            from = next.end();
        }
        rest.append(lower.substring(Math.min(from, lower.length())));
        UnitWords.Heading parts = UnitWords.heading(tidy(BOTH.matcher(rest).replaceAll(" ")));
        boolean hand = said.contains("hand");
        said.remove("hand");
        return new HeadingText(
                parts.words(),
                parts.unit(),
                said.size() == 1 && !hand
                        ? Optional.of(said.contains("left") ? PositiveSide.LEFT : PositiveSide.RIGHT)
                        : Optional.empty(),
                hand,
                up,
                said.size() > 1);
    }

    /** The statement of signs that begins first. */
    private static @org.jspecify.annotations.Nullable Matcher next(String text, int from) {
        return Stream.of(SIGN_FIRST.matcher(text), SIDE_FIRST.matcher(text))
                .filter(m -> m.find(from))
                .min(java.util.Comparator.comparingInt(Matcher::start))
                .orElse(null);
    }

    /** On which side it says a plus is. */
    private static String said(Matcher statement) {
        String side = statement.group("side");
        if (side.matches(HAND)) {
            return "hand";
        }
        boolean left = HeadingNames.words("left").contains(side);
        boolean minus;
        if (statement.pattern() == SIGN_FIRST) {
            minus = statement.group("sign").matches("-|" + NEGATIVE);
        } else {
            String sign = statement.group("sign");
            minus = sign == null ? statement.group("minus") != null : sign.matches("-|" + NEGATIVE);
        }
        return left != minus ? "left" : "right";
    }

    private static String tidy(String text) {
        String tidy = text;
        for (int i = 0; i < 3; i++) {
            tidy = tidy.replaceAll("([(\\[{])[\\s,;:/]+", "$1")
                    .replaceAll("[\\s,;:/]+([)\\]}])", "$1")
                    .replaceAll("\\(\\s*\\)|\\[\\s*\\]|\\{\\s*\\}", " ");
        }
        return tidy.replaceAll("\\s+", " ").replaceAll("[\\s,;:/]+$", "").strip();
    }
}

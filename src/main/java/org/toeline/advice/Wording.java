package org.toeline.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.toeline.language.Sentences;

/**
 * The phrases of one language, by key: those of the resource bundle {@code words}, and a coach's own where they can take
 * their place. Immutable; any thread.
 */
final class Wording {

    private static final Pattern PLACE = Pattern.compile("\\{(\\d)}");

    private final ResourceBundle bundle;
    private final Phrases phrases;

    Wording(Locale locale, Phrases phrases) {
        this.bundle = bundle(locale);
        this.phrases = phrases;
    }

    private static ResourceBundle bundle(Locale locale) {
        return ResourceBundle.getBundle(
                "org.toeline.advice.words",
                locale,
                ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
    }

    String language() {
        return bundle.getString("language");
    }

    boolean has(String key) {
        return bundle.containsKey(key);
    }

    /** A phrase with {0}, {1} … filled in, each once: what is filled in stays as it is. */
    String text(String key, String... arguments) {
        String shipped = bundle.getString(key);
        String text = phrases.phrase(language(), key)
                .filter(own -> Phrases.fault(key, shipped, own).isEmpty())
                .orElse(shipped);
        return PLACE.matcher(text).replaceAll(place -> Matcher.quoteReplacement(filling(place, arguments)));
    }

    private static String filling(MatchResult place, String[] arguments) {
        int at = Integer.parseInt(place.group(1));
        return at < arguments.length ? arguments[at] : place.group();
    }

    /** The keys of the phrases a coach may replace, sorted. */
    static List<String> replaceable() {
        return bundle(Locale.ENGLISH).keySet().stream()
                .filter(Phrases::isReplaceable)
                .sorted()
                .toList();
    }

    /** What is wrong with phrases that are to take the place of shipped ones, a clause each. */
    static List<String> faults(String language, Map<String, String> own) {
        ResourceBundle shipped = bundle(Locale.forLanguageTag(language));
        List<String> faults = new ArrayList<>();
        own.forEach((key, text) -> {
            if (shipped.containsKey(key)) {
                Phrases.fault(key, shipped.getString(key), text).ifPresent(faults::add);
            } else {
                faults.add(Sentences.of(Wording.class).of("phrases.none", key));
            }
        });
        return faults;
    }
}

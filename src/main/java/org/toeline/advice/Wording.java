package org.toeline.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.toeline.language.Sentences;

/**
 * The phrases of one language, by key: those of the resource bundle {@code words}, and a coach's own where they can take
 * their place. Immutable; any thread.
 */
final class Wording {

    private static final Pattern PLACE = Pattern.compile("\\{([A-Za-z0-9]+)}");
    private static final List<String> BUNDLES = List.of("words", "page");

    private final List<ResourceBundle> bundles;
    private final Phrases phrases;

    Wording(Locale locale, Phrases phrases) {
        this.bundles = bundles(locale);
        this.phrases = phrases;
    }

    private static List<ResourceBundle> bundles(Locale locale) {
        return BUNDLES.stream()
                .map(name -> ResourceBundle.getBundle(
                        "org.toeline.advice." + name,
                        locale,
                        ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES)))
                .toList();
    }

    private static Optional<String> shipped(List<ResourceBundle> bundles, String key) {
        return bundles.stream()
                .filter(b -> b.containsKey(key))
                .map(b -> b.getString(key))
                .findFirst();
    }

    private String shipped(String key) {
        return shipped(bundles, key).orElseThrow(() -> new IllegalStateException("the words lack " + key));
    }

    String language() {
        return shipped("language");
    }

    boolean has(String key) {
        return shipped(bundles, key).isPresent();
    }

    /** A phrase with {0}, {1} … filled in, each once: what is filled in stays as it is. */
    String text(String key, String... arguments) {
        return filled(key, place -> {
            boolean number = Character.isDigit(place.charAt(0));
            int at = number ? Integer.parseInt(place) : arguments.length;
            return at < arguments.length ? arguments[at] : "{" + place + "}";
        });
    }

    /** A phrase with what stands in braces filled in, each once. */
    String filled(String key, UnaryOperator<String> filling) {
        String shipped = shipped(key);
        String text = phrases.phrase(language(), key)
                .filter(own -> Phrases.fault(key, shipped, own).isEmpty())
                .orElse(shipped);
        return PLACE.matcher(text).replaceAll(place -> Matcher.quoteReplacement(filling.apply(place.group(1))));
    }

    /** The keys of the phrases a coach may replace, sorted. */
    static List<String> replaceable() {
        return bundles(Locale.ENGLISH).stream()
                .flatMap(b -> b.keySet().stream())
                .filter(Phrases::isReplaceable)
                .sorted()
                .toList();
    }

    /** What is wrong with phrases that are to take the place of shipped ones, a clause each. */
    static List<String> faults(String language, Map<String, String> own) {
        List<ResourceBundle> bundles = bundles(Locale.forLanguageTag(language));
        List<String> faults = new ArrayList<>();
        own.forEach((key, text) -> {
            Optional<String> shipped = shipped(bundles, key);
            if (shipped.isPresent()) {
                Phrases.fault(key, shipped.get(), text).ifPresent(faults::add);
            } else {
                faults.add(Sentences.of(Wording.class).of("phrases.none", key));
            }
        });
        return faults;
    }
}

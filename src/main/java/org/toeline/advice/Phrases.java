package org.toeline.advice;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.toeline.document.Json;
import org.toeline.language.Sentences;

/**
 * A coach's own phrases: in place of shipped ones, by language and key, and sentences kept for the coach's own words. What
 * says how sure a finding is cannot be replaced, so that own words claim no more than the shipped ones. Immutable; any
 * thread. Kept as JSON ({@code phrases.schema.json}).
 *
 * @param byLanguage for each language the phrases by key; also those that cannot be used, which stay as they are
 * @param own        sentences for the coach's own words, in the coach's order
 * @param rest       the parts of the document that this program does not know, as JSON
 */
public record Phrases(Map<String, Map<String, String>> byLanguage, List<String> own, String rest) {

    public static final Phrases NONE = new Phrases(Map.of(), List.of(), "{}");
    /** Longest phrase, characters: more would not fit on a still. */
    public static final int LONGEST = 300;

    private static final Set<String> REPLACEABLE =
            Set.of("do.", "out.", "why.", "check.", "reading.", "step.", "place.");
    private static final Set<String> HEADINGS = Set.of(
            "handout.first",
            "handout.why",
            "handout.check",
            "handout.good",
            "handout.untold",
            "handout.measured.heading",
            "handout.terms.heading",
            "handout.cautions.heading",
            "handout.coach",
            "handout.title",
            "handout.keep",
            "handout.target");
    private static final Pattern PLACE = Pattern.compile("\\{\\d+}");

    public Phrases {
        Map<String, Map<String, String>> copy = new TreeMap<>();
        byLanguage.forEach(
                (language, phrases) -> copy.put(language, Collections.unmodifiableMap(new TreeMap<>(phrases))));
        byLanguage = Collections.unmodifiableMap(copy);
        own = List.copyOf(own);
    }

    /** What was read, and what of it could not be used, a sentence each. */
    public record Read(Phrases phrases, List<String> said) {

        public Read {
            said = List.copyOf(said);
        }
    }

    /** Whether a coach may put own words in the place of that phrase. */
    public static boolean isReplaceable(String key) {
        return HEADINGS.contains(key) || REPLACEABLE.stream().anyMatch(key::startsWith);
    }

    /** The keys of the phrases a coach may replace, sorted. */
    public static List<String> replaceable() {
        return Wording.replaceable();
    }

    /** Whether own words can take a shipped phrase's place: not too long, and nothing in them to fill in that the shipped has not. */
    public static boolean canStandFor(String language, String key, String own) {
        return Wording.faults(language, Map.of(key, own)).isEmpty();
    }

    /** Why own words cannot take a shipped phrase's place; empty when they can. */
    static Optional<String> fault(String key, String shipped, String own) {
        if (!isReplaceable(key)) {
            return Optional.of(Sentences.of(Phrases.class).of("phrases.fixed", key));
        }
        if (own.isBlank() || own.length() > LONGEST) {
            return Optional.of(Sentences.of(Phrases.class)
                    .of("phrases.length", key, own.strip().length(), LONGEST));
        }
        Matcher places = PLACE.matcher(own);
        while (places.find()) {
            if (!shipped.contains(places.group())) {
                return Optional.of(Sentences.of(Phrases.class).of("phrases.place", key, places.group()));
            }
        }
        return Optional.empty();
    }

    public Phrases with(String language, String key, String text) {
        Map<String, Map<String, String>> changed = new TreeMap<>(byLanguage);
        Map<String, String> phrases = new TreeMap<>(byLanguage.getOrDefault(language, Map.of()));
        phrases.put(key, text);
        changed.put(language, phrases);
        return new Phrases(changed, own, rest);
    }

    /** Back to the shipped phrase. */
    public Phrases without(String language, String key) {
        Map<String, Map<String, String>> changed = new TreeMap<>(byLanguage);
        Map<String, String> phrases = new TreeMap<>(byLanguage.getOrDefault(language, Map.of()));
        phrases.remove(key);
        changed.put(language, phrases);
        return new Phrases(changed, own, rest);
    }

    public Phrases withOwn(List<String> sentences) {
        return new Phrases(byLanguage, sentences, rest);
    }

    Optional<String> phrase(String language, String key) {
        return Optional.ofNullable(byLanguage.getOrDefault(language, Map.of()).get(key));
    }

    /**
     * Reads what a document holds.
     *
     * @param name what the document is called, for the sentences about what of it cannot be used
     * @throws IllegalArgumentException with a clause, when it is no such document
     */
    public static Read read(byte[] json, String name) throws Json.NotJson {
        JsonNode document = Data.checked(Json.read(json), "phrases");
        List<String> said = new ArrayList<>();
        Phrases read = NONE;
        for (Map.Entry<String, JsonNode> language : document.path("phrases").properties()) {
            for (Map.Entry<String, JsonNode> phrase : language.getValue().properties()) {
                if (phrase.getValue().isTextual()) {
                    read = read.with(
                            language.getKey(),
                            phrase.getKey(),
                            phrase.getValue().asText());
                } else {
                    said.add(Sentences.of(Phrases.class).of("phrases.no-text", name, phrase.getKey()));
                }
            }
        }
        List<String> own = new ArrayList<>();
        document.path("own").forEach(n -> own.add(n.asText()));
        ObjectNode rest = ((ObjectNode) document).deepCopy();
        rest.remove(List.of("format", "version", "phrases", "own"));
        Phrases whole = new Phrases(
                read.byLanguage, own.stream().filter(o -> !o.isBlank()).toList(), rest.toString());
        whole.byLanguage.forEach((language, phrases) -> said.addAll(Wording.faults(language, phrases).stream()
                .map(f -> Sentences.of(Phrases.class).of("phrases.not-used", name, f))
                .toList()));
        return new Read(whole, said);
    }

    /** The document. */
    public byte[] written() {
        ObjectNode document = Json.object().put("format", "toeline-phrases").put("version", 1);
        ObjectNode languages = document.putObject("phrases");
        byLanguage.forEach((language, phrases) -> {
            ObjectNode one = languages.putObject(language);
            phrases.forEach(one::put);
        });
        own.forEach(document.putArray("own")::add);
        try {
            document.setAll((ObjectNode) Json.read(rest));
        } catch (Json.NotJson e) {
            throw new IllegalStateException("what is not known of the own phrases is no JSON: " + rest, e);
        }
        return Json.bytes(document);
    }
}

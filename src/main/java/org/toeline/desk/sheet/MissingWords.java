package org.toeline.desk.sheet;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.toeline.assist.ViewSuggestion.Part;
import org.toeline.assist.ViewSuggestion.Reason;
import org.toeline.desk.text.Texts;

/** What a look at a whole view did not find, and why not. */
public final class MissingWords {

    private MissingWords() {}

    /** One sentence where body, club and uprights are missing for the same reason: nobody was found. */
    public static Optional<String> ofNobody(Map<Part, Reason> missing) {
        return Optional.ofNullable(missing.get(Part.BODY))
                .filter(r -> missing.get(Part.SHAFT) == r && missing.get(Part.UPRIGHTS) == r)
                .map(r -> Texts.of("suggest.none." + word(r)));
    }

    public static String of(Part part, Reason reason) {
        return Texts.of("suggest.missing." + word(part) + "." + word(reason));
    }

    private static String word(Enum<?> of) {
        return of.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}

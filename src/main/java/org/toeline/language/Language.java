package org.toeline.language;

import java.util.List;
import java.util.Locale;

/**
 * The language the program speaks with the person at it: the one chosen in the settings, else the system's. What a player is
 * given has a language of its own. Any thread.
 */
public final class Language {

    private Language() {}

    /** The languages there are sentences in, English first; one more is a file {@code _xx} beside each bundle and a line here. */
    public static List<Locale> all() {
        return List.of(Locale.ENGLISH, Locale.GERMAN);
    }

    /** The language, with the person's way to write numbers where the system speaks it too. */
    public static Locale now() {
        return Locale.getDefault(Locale.Category.DISPLAY);
    }

    /** That of {@link #all} which is nearest to the person's. */
    public static Locale spoken() {
        return all().stream()
                .filter(l -> l.getLanguage().equals(now().getLanguage()))
                .findFirst()
                .orElse(Locale.ENGLISH);
    }

    /** Whose way to write numbers is used: the person's own where their language is spoken, else that of the one that is. */
    public static Locale written() {
        return spoken().getLanguage().equals(now().getLanguage()) ? now() : spoken();
    }

    /** From now on, in the whole program. */
    public static void choose(Locale language) {
        if (!Locale.getDefault(Locale.Category.DISPLAY).getLanguage().equals(language.getLanguage())) {
            Locale.setDefault(Locale.Category.DISPLAY, language);
        }
    }
}

package org.toeline.desk.text;

import org.toeline.language.Sentences;

/** The desk's own words, from {@code desk.properties}, in the person's language. */
public final class Texts {

    private static final Sentences DESK = Sentences.in("org.toeline.desk.desk");

    private Texts() {}

    public static String of(String key, Object... values) {
        return DESK.of(key, values);
    }
}

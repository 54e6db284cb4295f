package org.toeline.desk.text;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/** The desk's own words, from {@code desk.properties}. */
public final class Texts {

    private static final ResourceBundle BUNDLE = ResourceBundle.getBundle("org.toeline.desk.desk", Locale.getDefault());

    private Texts() {}

    public static String of(String key, Object... values) {
        return values.length == 0 ? BUNDLE.getString(key) : MessageFormat.format(BUNDLE.getString(key), values);
    }
}

package org.toeline.language;

import java.text.DecimalFormat;
import java.text.Format;
import java.text.MessageFormat;
import java.util.ResourceBundle;

/**
 * The sentences of one stage, in the language the person reads ({@link Language#now}), English where that language lacks
 * one. Asked for anew each time, so that a change of language shows with the next sentence. In a bundle {@code {0}},
 * {@code {1}} … are filled in and an apostrophe is an apostrophe. Immutable; any thread.
 */
public final class Sentences {

    private static final String ROOT = "org.toeline.";

    private final String bundle;
    private final ClassLoader loader;

    private Sentences(String bundle, ClassLoader loader) {
        this.bundle = bundle;
        this.loader = loader;
    }

    /** Those of the stage that a class belongs to: {@code sentences.properties} in the stage's folder, not its parts'. */
    public static Sentences of(Class<?> asking) {
        String rest = asking.getPackageName().substring(ROOT.length());
        int dot = rest.indexOf('.');
        return new Sentences(ROOT + (dot < 0 ? rest : rest.substring(0, dot)) + ".sentences", asking.getClassLoader());
    }

    /** @param bundle the full name of a bundle, such as {@code org.toeline.desk.desk} */
    public static Sentences in(String bundle) {
        return new Sentences(bundle, Sentences.class.getClassLoader());
    }

    /** The sentence of that key; whole numbers are written plainly, without groups, and choose where a sentence has a choice. */
    public String of(String key, Object... values) {
        String sentence = bundle().getString(key);
        if (values.length == 0) {
            return sentence;
        }
        MessageFormat format = new MessageFormat(sentence.replace("'", "''"), Language.now());
        Format[] asked = format.getFormatsByArgumentIndex();
        for (int i = 0; i < asked.length; i++) {
            if (asked[i] instanceof DecimalFormat number) {
                Written.withMinus(number);
                format.setFormatByArgumentIndex(i, number);
            }
        }
        Object[] plain = new Object[values.length];
        for (int i = 0; i < values.length; i++) {
            plain[i] = plain(values[i], i < asked.length && asked[i] != null);
        }
        return format.format(plain);
    }

    /** A number that a sentence does not say how to write. */
    private static Object plain(Object value, boolean formatted) {
        if (!(value instanceof Number number)) {
            return String.valueOf(value);
        }
        if (formatted) {
            return number;
        }
        return value instanceof Double
                ? Written.patterned("#,##0.###", number.doubleValue())
                : Written.minus(value.toString());
    }

    /** All of them as they are now, for a library that asks for itself. */
    public ResourceBundle bundle() {
        return ResourceBundle.getBundle(
                bundle,
                Language.now(),
                loader,
                ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
    }
}

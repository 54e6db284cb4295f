package org.toeline.desk.film;

import java.util.Locale;
import org.toeline.desk.text.Texts;
import org.toeline.language.Written;

/** What is said of a tie, with how well it is known. */
final class TieWords {

    /** Two standard deviations: what is said to be known to so much. */
    private static final double SAID = 2;

    private TieWords() {}

    static String of(Tie tie) {
        return Texts.of("tie." + tie.by().name().toLowerCase(Locale.ROOT), Written.number("%.2f", SAID * tie.sigmaS()));
    }
}

package org.toeline.desk.handover;

import java.util.Locale;
import java.util.Optional;
import org.toeline.handout.FaceCover;
import org.toeline.handout.Handout;
import org.toeline.handout.Paper;
import org.toeline.handout.Signed;
import org.toeline.handout.StillOptions;
import org.toeline.language.Language;
import org.toeline.mark.View;

/**
 * What the coach chose for a handout.
 *
 * @param shown       how it is looked at
 * @param language    the language of its words
 * @param coachsWords the coach's own, at most as many characters as fit on the page
 */
record Choices(Shown shown, StillOptions still, Locale language, Paper paper, String coachsWords) {

    /** How the handout is looked at on the screen. */
    enum Shown {
        /** The still as wide as a phone's screen: 360 px. */
        PHONE,
        /** The still as large as the screen allows. */
        LARGE,
        /** The page as it is printed. */
        PAPER
    }

    Choices {
        if (coachsWords.length() > Handout.MOST_COACHS_WORDS) {
            coachsWords = coachsWords.substring(0, Handout.MOST_COACHS_WORDS);
        }
    }

    static Choices usual(Locale locale) {
        return new Choices(Shown.PHONE, StillOptions.USUAL, Language.spoken(), Paper.usual(locale), "");
    }

    Choices withShown(Shown changed) {
        return new Choices(changed, still, language, paper, coachsWords);
    }

    Choices withLines(StillOptions.Lines changed) {
        return new Choices(shown, still.withLines(changed), language, paper, coachsWords);
    }

    Choices withSigned(Signed changed) {
        return new Choices(shown, still.withSigned(changed), language, paper, coachsWords);
    }

    Choices withFace(FaceCover changed) {
        return new Choices(shown, still.withFace(changed), language, paper, coachsWords);
    }

    Choices withView(Optional<View> changed) {
        return new Choices(
                shown,
                new StillOptions(still.lines(), still.signed(), changed, still.face()),
                language,
                paper,
                coachsWords);
    }

    Choices withLanguage(Locale changed) {
        return new Choices(shown, still, changed, paper, coachsWords);
    }

    Choices withPaper(Paper changed) {
        return new Choices(shown, still, language, changed, coachsWords);
    }

    Choices withCoachsWords(String changed) {
        return new Choices(shown, still, language, paper, changed);
    }
}

package org.toeline.advice;

import org.toeline.mark.Landmark;
import org.toeline.posture.Doubt;

/** What does not fit: marks that contradict each other, what undoes it, and single marks in doubt. Immutable; any thread. */
public final class ContradictionWords {

    private final Words words;

    public ContradictionWords(Words words) {
        this.words = words;
    }

    /** What contradicts what, with the likeliest slip. */
    public String sentence(Contradiction c) {
        return words.text("contradiction", clash(c), slip(c));
    }

    /** What contradicts what. */
    public String clash(Contradiction c) {
        return words.text("clash." + c.clash().id(), c.view().map(words::name).orElse(""));
    }

    /** The likeliest slip. */
    public String slip(Contradiction c) {
        return words.text("slip." + c.likely().id(), where(c), hand(c));
    }

    /** What undoes it. */
    public String mend(Contradiction c) {
        return words.text("mend." + c.likely().id(), where(c), hand(c));
    }

    private String where(Contradiction c) {
        return c.mend()
                .flatMap(Mend::view)
                .map(v -> words.text("slip.in", words.name(v)))
                .orElse("");
    }

    private String hand(Contradiction c) {
        return c.mend()
                .map(m -> words.text("slip.hand." + m.sheet().handedness().id()))
                .orElse("");
    }

    /** A mark that does not fit the rest. */
    public String doubt(Doubt doubt) {
        String name = Landmark.of(doubt.mark())
                .map(words::name)
                .map(n -> words.text("doubt.landmark", n))
                .orElseGet(() -> doubt.mark().equals("ball")
                        ? words.text("doubt.ball")
                        : words.text("doubt.floor", new FloorWords(words).name(doubt.mark())));
        return words.text(
                doubt.moves() ? "doubt" : "doubt.unusual",
                Words.sentenceCase(name),
                words.figures().number(doubt.offPx(), 0),
                words.name(doubt.view()));
    }
}

package org.toeline.advice;

import java.math.RoundingMode;
import java.util.Optional;
import org.toeline.reading.Reading;
import org.toeline.reading.Unit;

/**
 * What findings say, never more than their verdict: a side is named only when the 95 % interval has one side, a fault only when
 * it is out of range. Immutable; any thread.
 */
public final class FindingWords {

    private final Words words;

    public FindingWords(Words words) {
        this.words = words;
    }

    /** What the finding says, with its size and uncertainty. */
    public String sentence(Finding finding) {
        Reading reading = finding.reading();
        String state = state(finding);
        Optional<Verdict> verdict = finding.verdict();
        if (verdict.isEmpty()) {
            return words.text("finding.none", Words.sentenceCase(state));
        }
        String recommended = finding.range().map(words::recommended).orElse("");
        return switch (verdict.get()) {
            case DRAFT, WITHHELD, NOT_FOR_CHILDREN ->
                words.text("finding." + verdict.get().id(), Words.sentenceCase(state));
            case IN_RANGE -> words.text("finding.in-range", Words.sentenceCase(state), recommended);
            case OUT_LOW, OUT_HIGH -> words.text("finding.out", fault(finding), state, recommended);
            case TOO_CLOSE -> words.text("finding.too-close", Words.sentenceCase(state), recommended);
            case CANNOT_TELL ->
                words.text(
                        "finding.cannot-tell",
                        words.name(reading.kind()),
                        words.range(reading.kind(), reading.low(), reading.high()),
                        words.help(reading.dominatedBy()));
        };
    }

    private String state(Finding finding) {
        Reading reading = finding.reading();
        Unit unit = reading.kind().unit();
        String key = "state." + reading.kind().id();
        Written w = words.figures().written(unit, reading.value(), reading.low(), reading.high(), finding.range());
        if (!words.twoSided(reading.kind())) {
            return words.text(key + ".plus", words.written(unit, w, false));
        }
        double far = Math.max(-reading.low(), reading.high());
        boolean straddles = reading.low() < 0 && reading.high() > 0;
        if (straddles && !agrees(finding, far)) {
            return words.text("state.either", words.name(reading.kind()), words.written(unit, w, w.value() > 0));
        }
        if (straddles) {
            double shown = words.figures().shown(unit, far);
            int decimals = Figures.decimals(shown);
            return words.text(
                    key + ".zero",
                    words.figures().number(shown, decimals, RoundingMode.CEILING)
                            + words.text(words.figures().unitKey(unit)));
        }
        return words.text(key + (w.value() < 0 ? ".minus" : ".plus"), words.written(unit, w.unsigned(), false));
    }

    /** Whether “within so much of nought” is said to lie in the range, or outside, as the interval does. */
    private static boolean agrees(Finding finding, double far) {
        Reading r = finding.reading();
        if (finding.range().isEmpty()) {
            return true;
        }
        Range range = finding.range().get();
        Verdict said = Verdict.of(-far, far, range.low(), range.high());
        Verdict found = Verdict.of(r.low(), r.high(), range.low(), range.high());
        return said == found || !said.isDecided() && !found.isDecided();
    }

    /** What is wrong, without figures; only for a finding that is out of range. */
    public String fault(Finding finding) {
        return words.text("out." + finding.kind().id() + "." + outOf(finding).id());
    }

    private static Verdict outOf(Finding finding) {
        return finding.verdict()
                .filter(Verdict::isOut)
                .orElseThrow(() -> new IllegalStateException(
                        finding.kind().id() + " is not out of range; only what is out has a fault and an instruction"));
    }

    /** What to say when no finding is out of range: that all is well only where every judged finding is in range. */
    public String nothing(Advice advice) {
        if (advice.isDraft()) {
            return words.text("nothing.draft");
        }
        if (!advice.isJudged()) {
            return words.text("nothing.unmeasured");
        }
        return words.text(advice.allInRange() ? "nothing" : "nothing.unsure");
    }

    /** Why nothing is judged, of what is neither a contradiction nor judged. */
    public String unjudged(Advice advice) {
        String why = advice.isDraft()
                ? "draft"
                : advice.has(Verdict.CANNOT_TELL)
                        ? "unsure"
                        : advice.has(Verdict.NOT_FOR_CHILDREN)
                                ? "children"
                                : advice.findings().isEmpty() ? "why" : "club";
        return words.text("handout.not-measured." + why);
    }
}

package org.toeline.advice;

import java.util.List;
import java.util.Optional;
import org.toeline.mark.Club;
import org.toeline.reading.ReadingKind;

/**
 * The findings in the order of the catalogue, and the one thing to change first, where something is out of range.
 *
 * @param withheld what contradicts what; then nothing is judged and nothing comes first
 */
public record Advice(List<Finding> findings, Optional<FirstThing> first, Optional<Contradiction> withheld) {

    public Advice {
        findings = List.copyOf(findings);
        if (withheld.isPresent() && first.isPresent()) {
            throw new IllegalStateException("something comes first, and all is withheld; only one can be");
        }
    }

    /** What follows from findings that nothing contradicts. */
    static Advice of(List<Finding> findings, Club club, CauseChain causes) {
        return new Advice(findings, causes.first(findings, club), Optional.empty());
    }

    /** Nothing judged, since the marks contradict each other. */
    static Advice withheld(List<Finding> findings, Contradiction why) {
        return new Advice(
                findings.stream()
                        .map(f -> new Finding(f.reading(), Optional.empty(), Optional.of(Verdict.WITHHELD)))
                        .toList(),
                Optional.empty(),
                Optional.of(why));
    }

    /** Whether something was judged, nothing is a draft, and all that was judged is in range. */
    public boolean allInRange() {
        return isJudged()
                && findings.stream()
                        .filter(f -> f.isJudged() || f.isDraft())
                        .allMatch(f -> f.verdict().equals(Optional.of(Verdict.IN_RANGE)));
    }

    /** Whether anything was held against a range; where not, nothing may be said of the setup. */
    public boolean isJudged() {
        return findings.stream().anyMatch(Finding::isJudged);
    }

    /** Whether nothing is judged since the marks are suggestions that nobody has accepted yet. */
    public boolean isDraft() {
        return !isJudged() && findings.stream().anyMatch(Finding::isDraft);
    }

    public Optional<Finding> finding(ReadingKind kind) {
        return findings.stream().filter(f -> f.kind() == kind).findFirst();
    }
}

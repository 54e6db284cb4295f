package org.toeline.advice;

import java.util.List;
import java.util.Optional;
import org.toeline.reading.ReadingKind;

/** The findings in the order of the catalogue, and the one thing to change first, where something is out of range. */
public record Advice(List<Finding> findings, Optional<FirstThing> first) {

    public Advice {
        findings = List.copyOf(findings);
    }

    /** Whether something was judged and all that was judged is in range. */
    public boolean allInRange() {
        List<Finding> judged =
                findings.stream().filter(f -> f.judged().isPresent()).toList();
        return !judged.isEmpty() && judged.stream().allMatch(f -> f.verdict().equals(Optional.of(Verdict.IN_RANGE)));
    }

    /** Whether anything was measured for which there is a range; where not, nothing may be said of the setup. */
    public boolean isJudged() {
        return findings.stream().anyMatch(f -> f.judged().isPresent());
    }

    public Optional<Finding> finding(ReadingKind kind) {
        return findings.stream().filter(f -> f.kind() == kind).findFirst();
    }
}

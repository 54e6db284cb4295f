package org.toeline.advice;

import java.util.List;
import java.util.Optional;
import org.toeline.reading.ReadingKind;

/** The findings in the order of the catalogue, and the one thing to change first, where something is out of range. */
public record Advice(List<Finding> findings, Optional<FirstThing> first) {

    public Advice {
        findings = List.copyOf(findings);
    }

    public Optional<Finding> finding(ReadingKind kind) {
        return findings.stream().filter(f -> f.kind() == kind).findFirst();
    }
}

package org.toeline.advice;

/** On whose word a range stands. */
public enum Provenance {
    /** A published figure; the range cites it. */
    PUBLISHED("published"),
    /** What teachers commonly say; no study is cited. */
    COMMON_PRACTICE("common-practice"),
    /** Set by the coach who uses it. */
    COACHS_OWN("coachs-own");

    private final String id;

    Provenance(String id) {
        this.id = id;
    }

    /** The name in documents. */
    public String id() {
        return id;
    }
}

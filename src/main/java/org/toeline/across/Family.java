package org.toeline.across;

/**
 * The readings that are looked at together. Of twenty of them, one in twenty would be called changed by chance alone nearly always; so
 * each has to meet a stricter limit, by which 5 % of whole comparisons say anything false (Šidák 1967, J. Am. Stat. Assoc. 62:626,
 * which holds for readings that go together too; what it comes to is in docs/accuracy.md).
 *
 * @param readings how many, 1 or more
 */
public record Family(int readings) {

    /** Of a reading that is looked at alone. */
    public static final Family ALONE = new Family(1);

    static final double FALSE_AT_MOST = 0.05;

    public Family {
        if (readings < 1) {
            throw new IllegalArgumentException("a family of " + readings + " readings; 1 or more are needed");
        }
    }

    /** How often one of them may be called real by chance. */
    double each() {
        return 1 - Math.pow(1 - FALSE_AT_MOST, 1.0 / readings);
    }
}

package org.toeline.ledger.store.backup;

/** What becomes of backups that hold what is deleted. */
public enum OldBackups {
    /** They stay, and are named. */
    KEEP,
    /** A new one is made and checked; then the older ones go. */
    REPLACE
}

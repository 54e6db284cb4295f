/**
 * The rows of the tables and the SQL that reads and writes them: players, lessons, findings, takes, shots, lenses.
 *
 * <p>May use: {@code ledger.store.place}, {@code ledger.store.backup}.
 */
@NullMarked
package org.toeline.ledger.store.rows;

import org.jspecify.annotations.NullMarked;

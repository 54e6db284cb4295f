/**
 * Lessons in and out of a ledger: documents, archives with clips and stills, tables of readings.
 *
 * <p>May use: {@code ledger.store} and its other parts.
 */
@NullMarked
package org.toeline.ledger.store.exchange;

import org.jspecify.annotations.NullMarked;

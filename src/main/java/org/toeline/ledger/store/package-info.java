/**
 * The ledger: players, lessons and what was found in them, in one SQLite file or on a PostgreSQL server that several bays
 * share. {@link org.toeline.ledger.store.Ledger} is the way in. A lesson is kept as its document beside columns that are
 * searched (the reasons are in {@code docs/decisions}); order is by number, never by a clock.
 *
 * <p>Everything here may be called from any thread but the interface's: calls wait for the disk, one at a time. What goes
 * wrong is a {@link org.toeline.ledger.store.place.LedgerException} whose message is one sentence for the person.
 *
 * <p>Parts: {@code place} (files and connections), {@code rows} (tables), {@code backup}, {@code exchange} (documents and
 * archives).
 *
 * <p>May use: {@code ledger}, {@code mark}, {@code reading} and what those may use. Used by {@code across}, {@code cli} and
 * {@code desk}; JDBI, Flyway and JDBC types stay inside.
 */
@NullMarked
package org.toeline.ledger.store;

import org.jspecify.annotations.NullMarked;

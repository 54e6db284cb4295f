/**
 * Shots in and out of tables of text. No table's layout is built in: a {@link org.toeline.flight.table.Template} says
 * which column means what and in which unit, and {@link org.toeline.flight.table.Proposal} takes what is surely
 * ours by its heading, its unit and its figures, in six languages, and asks about the rest. Bytes go in and come out; files are opened elsewhere.
 *
 * <p>May use: {@code flight}, {@code geometry}. Used by {@code ledger}, {@code cli} and {@code desk}.
 */
@NullMarked
package org.toeline.flight.table;

import org.jspecify.annotations.NullMarked;

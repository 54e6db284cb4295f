/**
 * Shots in and out of tables of text. No table's layout is built in: a {@link org.toeline.flight.table.Template} says
 * which column means what and in which unit, and {@link org.toeline.flight.table.Proposal} makes a first one from plain
 * header words in English and German. Bytes go in and come out; files are opened elsewhere.
 *
 * <p>May use: {@code flight}, {@code geometry}. Used by {@code ledger}, {@code cli} and {@code desk}.
 */
@NullMarked
package org.toeline.flight.table;

import org.jspecify.annotations.NullMarked;

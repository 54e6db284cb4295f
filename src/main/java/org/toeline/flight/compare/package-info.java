/**
 * Two setups compared by their shots, and readings beside launch figures over lessons. One shot proves nothing: a
 * difference comes with a 95 % interval and is called real, not shown, or too early to tell.
 *
 * <p>May use: {@code flight}, {@code geometry}. Used by {@code ledger}, {@code cli} and {@code desk}.
 */
@NullMarked
package org.toeline.flight.compare;

import org.jspecify.annotations.NullMarked;

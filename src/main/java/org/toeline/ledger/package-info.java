/**
 * What is kept: lessons, read from and written to the lesson document whole or not at all.
 *
 * <p>May use: {@code mark}, {@code reading}, {@code flight} and what those may use.
 */
@NullMarked
package org.toeline.ledger;

import org.jspecify.annotations.NullMarked;

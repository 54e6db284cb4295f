/**
 * The ledger as the desk has it: opened off the interface thread, asked off it, and given every gesture of the lesson on
 * the desk. Its settings are a small document of their own.
 *
 * <p>May use: {@code ledger}, {@code advice}, {@code cli} (for findings as stated), {@code desk.dialog} and {@code desk.work}. Used
 * by all screens.
 */
@NullMarked
package org.toeline.desk.records;

import org.jspecify.annotations.NullMarked;

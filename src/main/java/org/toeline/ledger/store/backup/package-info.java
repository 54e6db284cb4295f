/**
 * Checked copies of a ledger, of a folder's file and of a server's tables.
 *
 * <p>May use: {@code ledger.store.place}.
 */
@NullMarked
package org.toeline.ledger.store.backup;

import org.jspecify.annotations.NullMarked;

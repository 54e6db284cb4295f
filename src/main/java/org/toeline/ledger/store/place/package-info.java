/**
 * Where a ledger is: the folder or the server, its files, locks and connections, the tables' versions, and what a fault of the
 * disk or the database is called.
 *
 * <p>May use: {@code ledger}. Used by the other parts of {@code ledger.store}, and wherever a ledger is opened.
 */
@NullMarked
package org.toeline.ledger.store.place;

import org.jspecify.annotations.NullMarked;

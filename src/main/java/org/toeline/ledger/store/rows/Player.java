package org.toeline.ledger.store.rows;

/**
 * A player of the ledger.
 *
 * @param id      number, rising in the order of keeping
 * @param version rises with every change of the details
 */
public record Player(int id, int version, PlayerDetails details) {}

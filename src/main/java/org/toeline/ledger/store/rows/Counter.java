package org.toeline.ledger.store.rows;

import org.jdbi.v3.core.Handle;

/** Numbers that rise in the order in which writers came. */
public final class Counter {

    private Counter() {}

    /** Others who do this wait until the transaction ends: what is looked up from here on is there once. */
    public static void inTurn(Handle handle) {
        handle.execute("update counter set value = value where name = 'lesson'");
    }

    /** Within a transaction: others wait until it ends. */
    public static int next(Handle handle, String name) {
        return handle.createQuery("update counter set value = value + 1 where name = :name returning value")
                .bind("name", name)
                .mapTo(Integer.class)
                .one();
    }
}

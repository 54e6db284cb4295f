package org.toeline.ledger.store.rows;

import org.jdbi.v3.core.Handle;

/** Numbers that rise in the order in which writers came. */
final class Counter {

    private Counter() {}

    /** Within a transaction: others wait until it ends. */
    static int next(Handle handle, String name) {
        return handle.createQuery("update counter set value = value + 1 where name = :name returning value")
                .bind("name", name)
                .mapTo(Integer.class)
                .one();
    }
}

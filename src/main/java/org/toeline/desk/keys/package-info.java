/**
 * The keys of the desk: what can be done by key, which key does it, and the sheet on which the coach changes them. Used by
 * the desk's window only. On the interface thread.
 *
 * <p>May use: {@code desk.dialog}.
 */
@NullMarked
package org.toeline.desk.keys;

import org.jspecify.annotations.NullMarked;

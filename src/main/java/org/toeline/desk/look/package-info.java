/**
 * How the desk looks: the size of its text and the paper it stands on.
 *
 * <p>May use: everything below {@code desk}.
 */
@NullMarked
package org.toeline.desk.look;

import org.jspecify.annotations.NullMarked;

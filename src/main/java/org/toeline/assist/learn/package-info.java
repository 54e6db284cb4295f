/**
 * How a coach's marks differ from what was suggested, by view and landmark, and what follows from that for later suggestions. It
 * reads and writes one small document of the user's; no picture, name or clip is in it.
 *
 * <p>May use: {@code assist}.
 */
@NullMarked
package org.toeline.assist.learn;

import org.jspecify.annotations.NullMarked;

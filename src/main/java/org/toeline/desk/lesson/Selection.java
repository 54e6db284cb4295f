package org.toeline.desk.lesson;

import java.util.Optional;
import org.toeline.mark.View;

/**
 * What the next gesture is for.
 *
 * @param view   the one shown large
 * @param item   empty when everything is marked
 * @param handle which end of an upright
 */
record Selection(View view, Optional<Item> item, int handle) {}

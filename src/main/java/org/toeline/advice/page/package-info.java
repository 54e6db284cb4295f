/**
 * What a player reads about one finding: what is so, what to do, why, how to check it, how to practise it. The phrases stand
 * in {@code page.properties}; one small grammar picks the most particular phrase there is for the reading, the direction and
 * the kind of club, and fills in the player's own sides, how far and up to where.
 */
@NullMarked
package org.toeline.advice.page;

import org.jspecify.annotations.NullMarked;

/**
 * Handing over: which picture, which lines, whose it is, in which words; shown exactly as the player will have it, then
 * kept as files. Nothing is sent anywhere.
 *
 * <p>May use: {@code handout}, {@code desk.screen}, {@code desk.records} and what those may use.
 */
@NullMarked
package org.toeline.desk.handover;

import org.jspecify.annotations.NullMarked;

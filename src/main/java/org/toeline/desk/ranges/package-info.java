/**
 * What is recommended for each reading and club, and on whose word: the coach's own ranges beside those that come with the
 * program.
 *
 * <p>May use: {@code desk.screen}, {@code desk.records} and what those may use.
 */
@NullMarked
package org.toeline.desk.ranges;

import org.jspecify.annotations.NullMarked;

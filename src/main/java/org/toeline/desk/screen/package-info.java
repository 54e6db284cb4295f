/**
 * What every screen of the desk is: something with a name that is shown when its button is pressed. A screen's package
 * holds its view and its view model; it gets a {@link org.toeline.desk.screen.Studio} and knows no other screen.
 *
 * <p>May use: {@code desk.lesson}, {@code desk.records}, {@code desk.work} and everything below the desk. Owned by the JavaFX
 * thread.
 */
@NullMarked
package org.toeline.desk.screen;

import org.jspecify.annotations.NullMarked;

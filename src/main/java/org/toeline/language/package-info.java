/**
 * The sentences a person reads, in the person's language: each stage has a bundle {@code sentences} of its own beside its
 * classes, English and German, and asks it through one {@link org.toeline.language.Sentences}.
 *
 * <p>May use: nothing of the project. Any thread.
 */
@NullMarked
package org.toeline.language;

import org.jspecify.annotations.NullMarked;

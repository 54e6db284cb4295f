/**
 * Readings judged: ranges with their provenance, the decision rule of JCGM 106, the chain of causes that tells what to
 * change first, and the words for all of it. Ranges, causes and words are data (JSON and a resource bundle), not code.
 *
 * <p>{@link org.toeline.advice.Assessment#of} is the pure function from a mark sheet to everything that follows.
 *
 * <p>{@link org.toeline.advice.CauseGraph} is the part of the chain that concerns one address, for a picture of it;
 * {@link org.toeline.advice.Words#step} and {@link org.toeline.advice.Words#grounds} explain each link.
 * {@link org.toeline.advice.Phrases} are a coach's own words over the shipped ones ({@code words.with(phrases)}).
 *
 * <p>May use: {@code reading} and what that may use.
 */
@NullMarked
package org.toeline.advice;

import org.jspecify.annotations.NullMarked;

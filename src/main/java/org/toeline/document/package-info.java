/**
 * How documents are read and written, the same for all of them: {@link org.toeline.document.Json} is the one mapper,
 * {@link org.toeline.document.DocumentSchema} what a document must be, {@link org.toeline.document.OwnDocument} how one of
 * the person's own is read or set aside, {@link org.toeline.document.WholeFile} how a file comes whole into its place.
 *
 * <p>May use: language. Any thread.
 */
@NullMarked
package org.toeline.document;

import org.jspecify.annotations.NullMarked;

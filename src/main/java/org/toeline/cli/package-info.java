/**
 * The program's jobs without a screen: one class a command. Exit status: 0 done; 1 anything unforeseen; 2 the command
 * line or a document is at fault; 3 a clip cannot be read. Results go to standard output, sentences to standard error.
 *
 * <p>May use: everything but {@code desk}.
 */
@NullMarked
package org.toeline.cli;

import org.jspecify.annotations.NullMarked;

/** Drives the program from outside, in a real window, by mouse and keys alone. */
@org.jspecify.annotations.NullMarked
package org.toeline.window;

/** Makes packages to install: the runtime, the program without what it does not need, and what a system wants beside it. */
@org.jspecify.annotations.NullMarked
package org.toeline.install;

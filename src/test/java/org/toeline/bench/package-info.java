/** Benchmarks: commands of their own, never run by the test suite. Their results stand in {@code docs/performance.md}. */
@org.jspecify.annotations.NullMarked
package org.toeline.bench;

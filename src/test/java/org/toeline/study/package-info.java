/**
 * Random scenes of known truth, and the study that measures how accurate and how honest the readings are. The study is
 * a command of its own (see {@link org.toeline.study.AccuracyStudy}); the test suite runs a short version of it.
 */
@org.jspecify.annotations.NullMarked
package org.toeline.study;

/**
 * A clip as frames addressed by presentation time: the frame asked for is the frame shown, forwards, backwards and by
 * time. FFmpeg does the decoding and never shows in a public signature; what is native is released by {@code close}.
 *
 * <p>May use: {@code geometry}.
 */
@NullMarked
package org.toeline.video;

import org.jspecify.annotations.NullMarked;

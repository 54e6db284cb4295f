/**
 * A clip as frames addressed by presentation time: the frame asked for is the frame shown, forwards, backwards and by
 * time. FFmpeg does the decoding and never shows in a public signature; what is native is released by {@code close}.
 *
 * <p>{@code OpenedStream} opens within limits, {@code PacketIndex} lists, {@code FrameDecoder} reaches a frame exactly,
 * {@code DecodingThread} does so ahead of the coach into a {@code FrameCache}, {@code PictureConverter} makes a picture of
 * it, ahead of the coach in {@code PreparedPictures}. {@code KeptIndexes} spares long files a second reading,
 * {@code TileGrid} puts photographs together. {@code GreyScan} is the quick pass for motion. Pictures are upright, of square pixels, in full resolution: x right,
 * y down, the origin at the top left corner. A photograph is a clip of one frame.
 *
 * <p>May use: {@code geometry}.
 */
@NullMarked
package org.toeline.video;

import org.jspecify.annotations.NullMarked;

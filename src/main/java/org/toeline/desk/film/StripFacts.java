package org.toeline.desk.film;

import java.util.Optional;
import java.util.OptionalDouble;
import org.toeline.assist.Movement;

/**
 * What a strip tells of a clip.
 *
 * @param movement once it was looked through
 * @param markedS  the marked frame
 * @param struckS  the strike, heard or seen
 */
public record StripFacts(Reel reel, Optional<Movement> movement, OptionalDouble markedS, OptionalDouble struckS) {}

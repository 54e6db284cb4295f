package org.toeline.ledger.store.rows;

import java.util.Optional;
import java.util.OptionalDouble;
import org.toeline.ledger.store.place.Fingerprint;
import org.toeline.mark.View;

/**
 * A lesson's clip.
 *
 * @param path        as the document names it
 * @param seconds     presentation time of the frame that was marked
 * @param fingerprint what it holds, once that was noted
 */
public record Take(View view, String path, OptionalDouble seconds, Optional<Fingerprint> fingerprint) {}

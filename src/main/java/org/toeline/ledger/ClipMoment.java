package org.toeline.ledger;

import java.util.OptionalDouble;

/**
 * The frame a view was marked on.
 *
 * @param clip    the clip's file name as written in the document, relative to it or absolute
 * @param seconds the frame's presentation time; empty when none was chosen yet
 */
public record ClipMoment(String clip, OptionalDouble seconds) {
}

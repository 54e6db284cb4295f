package org.toeline.advice;

import java.util.Optional;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.View;

/**
 * A slip undone.
 *
 * @param view  the one view it was made in; empty when it concerns the whole sheet
 * @param sheet the sheet without it
 */
public record Mend(Slip slip, Optional<View> view, MarkSheet sheet) {}

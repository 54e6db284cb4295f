package org.toeline.video;

import java.nio.file.Path;
import org.toeline.language.Sentences;

/** A clip, or a frame of it, cannot be read; the message is one sentence for a person and names the file. */
public final class ClipException extends Exception {

    private static final long serialVersionUID = 1;

    public ClipException(String message) {
        super(message);
    }

    private ClipException(String message, Throwable cause) {
        super(message, cause);
    }

    /** What no file should lead to, and no reader can put right. */
    static ClipException unexpected(Path file, Throwable cause) {
        return new ClipException(
                Sentences.of(ClipException.class)
                        .of("clip.unexpected", file, cause.getClass().getSimpleName()),
                cause);
    }
}

package org.toeline.video;

/** A clip, or a frame of it, cannot be read; the message is one sentence for a person and names the file. */
public final class ClipException extends Exception {

    private static final long serialVersionUID = 1;

    public ClipException(String message) {
        super(message);
    }
}

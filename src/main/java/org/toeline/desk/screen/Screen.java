package org.toeline.desk.screen;

import javafx.scene.Parent;

/** One screen of the desk. */
public interface Screen {

    /** Names its button ({@code go-<id>}) and its words ({@code screen.<id>} and {@code screen.<id>.hint}). */
    String id();

    Parent root();

    /** It is shown from now on: what it shows is brought up to date, and the focus goes where the hand expects it. */
    void entered();

    /** It gives way to another screen. */
    default void left() {}

    /** The desk is closed. */
    default void close() {}
}

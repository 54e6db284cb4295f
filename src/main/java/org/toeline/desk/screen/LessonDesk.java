package org.toeline.desk.screen;

import java.nio.file.Path;
import org.toeline.ledger.store.rows.Player;

/** What can be put on the desk; the screen with the sheet is shown then. */
public interface LessonDesk {

    /** A lesson of the ledger. */
    void open(int lessonId);

    /** A lesson's file: a document, or an archive, which the ledger takes in. */
    void open(Path file);

    /** A new lesson of a player. */
    void fresh(Player player);

    /** A new lesson of the same player and club: the setup of a lesson of the ledger, addressed once more. */
    void sameSetup(int lessonId);

    /** A new lesson of nobody named yet. */
    void fresh();
}

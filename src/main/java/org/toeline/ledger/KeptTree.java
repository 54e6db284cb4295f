package org.toeline.ledger;

import com.fasterxml.jackson.databind.node.ObjectNode;

/** The document a lesson was read from, so that what this program does not know goes back as it was. Never changed. */
record KeptTree(ObjectNode document) implements Lesson.Kept {
}

package org.toeline.ledger;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** The document a lesson was read from, so that what this program does not know goes back as it was. Never changed. */
record KeptTree(ObjectNode document) implements Lesson.Kept {

    /** A text at the top of the document; empty when there is none. */
    static String text(Lesson.Kept kept, String key) {
        return kept instanceof KeptTree tree ? tree.document.path(key).asText("") : "";
    }

    /** What is kept, with a text at the top changed, or taken out when it is empty. */
    static KeptTree with(Lesson.Kept kept, String key, String text) {
        ObjectNode changed =
                kept instanceof KeptTree tree ? tree.document.deepCopy() : JsonNodeFactory.instance.objectNode();
        if (text.isEmpty()) {
            changed.remove(key);
        } else {
            changed.put(key, text);
        }
        return new KeptTree(changed);
    }
}

package org.toeline.desk.screen;

import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.TextInputControl;

/** Whoever goes by Tab goes on from where they are, also when what stands there is made anew. */
public final class KeptFocus {

    private KeptFocus() {}

    /** Does something after which other nodes with the same ids stand in a part; the one that had the focus there has it then. */
    public static void over(Parent part, Runnable anew) {
        Optional<Node> before = Optional.ofNullable(part.getScene()).map(Scene::getFocusOwner);
        Optional<String> id = before.map(Node::getId).filter(i -> part.lookup("#" + i) == before.get());
        anew.run();
        Optional<Node> now =
                id.flatMap(i -> Optional.ofNullable(part.lookup("#" + i))).filter(n -> n != before.get());
        now.ifPresent(Node::requestFocus);
        // a field that gets the focus selects all it holds, and the next key would replace it
        now.filter(TextInputControl.class::isInstance)
                .map(TextInputControl.class::cast)
                .ifPresent(TextInputControl::end);
    }
}

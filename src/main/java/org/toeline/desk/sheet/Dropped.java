package org.toeline.desk.sheet;

import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.input.TransferMode;

/** Files that are dropped onto something; while they are over it, it shows that it would take them. */
final class Dropped {

    private static final PseudoClass OVER = PseudoClass.getPseudoClass("dropped");

    private Dropped() {}

    static void onto(Node place, Consumer<List<Path>> then) {
        place.setOnDragOver(e -> {
            if (e.getDragboard().hasFiles()) {
                e.acceptTransferModes(TransferMode.COPY);
                place.pseudoClassStateChanged(OVER, true);
            }
            e.consume();
        });
        place.setOnDragExited(e -> place.pseudoClassStateChanged(OVER, false));
        place.setOnDragDropped(e -> {
            then.accept(e.getDragboard().getFiles().stream().map(File::toPath).toList());
            e.setDropCompleted(true);
            e.consume();
        });
    }
}

package org.toeline.desk;

import javafx.scene.Node;
import javafx.scene.control.Alert;
import javafx.scene.control.ButtonBar;
import javafx.scene.control.ButtonType;
import javafx.scene.control.Label;
import org.toeline.desk.records.Records;
import org.toeline.desk.screen.Studio;
import org.toeline.ledger.store.Saved;

/** Another bay changed the lesson that is on the desk: both are kept, and the coach chooses. */
final class OtherBay implements Records.Listener {

    private final Studio studio;
    private final Node owner;
    private boolean asking;

    OtherBay(Studio studio, Node owner) {
        this.studio = studio;
        this.owner = owner;
    }

    @Override
    public void changed() {
        // nothing to do: only a conflict asks
    }

    @Override
    public void conflict(Saved.Conflict conflict) {
        studio.say().accept(conflict.sentence());
        if (asking) {
            return;
        }
        asking = true;
        ButtonType own = new ButtonType(Texts.of("other-bay.own"), ButtonBar.ButtonData.OK_DONE);
        ButtonType theirs = new ButtonType(Texts.of("other-bay.theirs"), ButtonBar.ButtonData.NO);
        Alert alert = new Alert(Alert.AlertType.CONFIRMATION, "", own, theirs, ButtonType.CANCEL);
        alert.initOwner(owner.getScene().getWindow());
        alert.setHeaderText(Texts.of("other-bay.title", conflict.theirs().changedBy()));
        Label text = new Label(Texts.of("other-bay.text"));
        text.setWrapText(true);
        text.setMaxWidth(440);
        alert.getDialogPane().setContent(text);
        alert.setOnHidden(e -> {
            asking = false;
            if (alert.getResult() == own) {
                studio.records().keepOwn(conflict, studio.model().lesson());
            } else if (alert.getResult() == theirs) {
                studio.desk().open(conflict.theirs().id());
            }
        });
        alert.show();
    }
}

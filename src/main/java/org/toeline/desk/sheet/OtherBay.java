package org.toeline.desk.sheet;

import javafx.scene.Node;
import org.toeline.desk.dialog.DialogFrame;
import org.toeline.desk.records.Records;
import org.toeline.desk.screen.Studio;
import org.toeline.desk.text.Texts;
import org.toeline.ledger.store.rows.Saved;

/** Another bay changed the lesson that is on the desk: both are kept, and the coach chooses. */
public final class OtherBay implements Records.Listener {

    private final Studio studio;
    private final Node owner;
    private boolean asking;

    public OtherBay(Studio studio, Node owner) {
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
        new DialogFrame(owner.getScene().getWindow(), Texts.of("other-bay.name"))
                .heading(Texts.of("other-bay.title", conflict.theirs().changedBy()))
                .text(Texts.of("other-bay.text"))
                .leave(Texts.of("other-bay.later"))
                .destroy(
                        "other-bay-own",
                        Texts.of("other-bay.own"),
                        () -> studio.records().keepOwn(conflict, studio.model().lesson()))
                .choice(
                        "other-bay-theirs",
                        Texts.of("other-bay.theirs"),
                        () -> studio.desk().open(conflict.theirs().id()))
                .closed(() -> asking = false)
                .show();
    }
}

package org.toeline.desk.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.toeline.geometry.ImagePoint;
import org.toeline.ledger.Lesson;
import org.toeline.mark.Club;
import org.toeline.mark.FloorKind;
import org.toeline.mark.FloorLayout;
import org.toeline.mark.Handedness;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.View;

/** What the guide asks for next is what is missing, whatever was done, undone and done again. */
class GuideTest {

    private final LessonModel model = new LessonModel(Lesson.of(MarkSheet.empty(Handedness.RIGHT, Club.DRIVER)));

    private void clip(View view) {
        model.clip(view, "/clips/" + view.id() + ".mp4", 1920, 1080);
    }

    @Test
    void aClipBroughtBackIsAskedAboutAsWhenItCame() {
        clip(View.FACE_ON);
        Optional<Item> first = model.selected();
        assertThat(first).isPresent();
        model.undo();
        model.redo();
        assertThat(model.selected()).isEqualTo(first);
    }

    @Test
    void theGroundIsAskedFirstAndOnce() {
        clip(View.FACE_ON);
        assertThat(model.selected()).contains(Item.GROUND);
        model.place(new ImagePoint(400, 300));
        assertThat(model.sheet().view(View.FACE_ON).orElseThrow().isBlank())
                .as("a click is no answer")
                .isTrue();
        model.delete();
        model.skip();
        assertThat(model.selected()).as("nothing lies there: then the ball").contains(Item.BALL);
        clip(View.DOWN_THE_LINE);
        model.show(View.DOWN_THE_LINE);
        assertThat(model.selected()).as("not asked again").contains(Item.BALL);
        model.select(Item.GROUND);
        model.ground(FloorKind.TAPE.layout());
        assertThat(model.selected()).contains(new Item.OfFloor("tape-trail"));
    }

    @Test
    void whatLayThereBeforeIsOfferedAndNotTaken() {
        model.open(Lesson.of(model.sheet().withFloor(FloorKind.RODS_AS_L.layout())), Optional.empty());
        model.open(Lesson.of(MarkSheet.empty(Handedness.LEFT, Club.DRIVER)), Optional.empty());
        clip(View.FACE_ON);
        assertThat(model.sheet().floor().points()).isEmpty();
        assertThat(model.groundBefore()).isEqualTo(FloorKind.RODS_AS_L.layout());
        assertThat(model.selected()).contains(Item.GROUND);
        model.ground(model.groundBefore());
        assertThat(model.selected()).contains(new Item.OfFloor("corner"));
        model.undo();
        assertThat(model.selected()).contains(Item.GROUND);
    }

    @Test
    void rodsOfWhichIsToldLaterAreAskedFor() {
        clip(View.FACE_ON);
        for (Item item : MarkOrder.items(model, View.FACE_ON)) {
            model.select(item);
            model.skip();
        }
        assertThat(model.selected()).as("all of it is answered").isEmpty();
        model.apply(model.sheet().withFloor(FloorKind.RODS_AS_T.layout()));
        assertThat(model.selected()).contains(new Item.OfFloor("rod-near"));
        model.apply(model.sheet().withFloor(FloorLayout.NONE));
        assertThat(model.selected()).as("rods that are not there").isEmpty();
    }
}

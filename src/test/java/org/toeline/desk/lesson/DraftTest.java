package org.toeline.desk.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.toeline.geometry.ImagePoint;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.Unfinished;
import org.toeline.mark.Club;
import org.toeline.mark.Handedness;
import org.toeline.mark.Landmark;
import org.toeline.mark.Mark;
import org.toeline.mark.Mark.Origin;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;

/** What is suggested by itself is never in the way of the hand: it changes nothing the hand did, chose or may undo. */
class DraftTest {

    private static final ImagePoint HERE = new ImagePoint(400, 300);
    private static final ImagePoint THERE = new ImagePoint(900, 500);
    private static final double ADDRESS_S = 1.5;
    private static final double LATER_S = 2.5;

    private final LessonModel model = new LessonModel(Lesson.of(MarkSheet.empty(Handedness.RIGHT, Club.DRIVER)));
    private double shownS = ADDRESS_S;

    @BeforeEach
    void aClipAtItsMomentOfAddress() {
        model.watch(new Film() {
            @Override
            public boolean has(View view) {
                return view == View.FACE_ON;
            }

            @Override
            public OptionalDouble shown(View view) {
                return OptionalDouble.of(shownS);
            }

            @Override
            public boolean shows(View view, OptionalDouble seconds) {
                return seconds.orElse(0) == shownS;
            }
        });
        model.clip(View.FACE_ON, "clip.mp4", 1920, 1080);
        model.propose(View.FACE_ON, ADDRESS_S);
        model.skip();
    }

    private static ViewMarks onto(MarkSheet sheet, Unfinished unfinished) {
        ViewMarks v = sheet.view(View.FACE_ON).orElseThrow().onlyAccepted();
        for (Landmark landmark : List.of(Landmark.LEAD_SHOULDER, Landmark.TRAIL_SHOULDER, Landmark.LEAD_TOE)) {
            if (v.mark(landmark).isEmpty()) {
                v = v.withMark(new Mark(landmark, HERE, 9, Origin.SUGGESTED));
            }
        }
        return v;
    }

    private void draft() {
        model.draft(View.FACE_ON, DraftTest::onto);
    }

    private ViewMarks marks() {
        return model.marks(View.FACE_ON).orElseThrow();
    }

    @Test
    void whatIsSelectedStaysSelected() {
        Optional<Item> before = model.selected();
        draft();
        assertThat(marks().marks()).hasSize(3);
        assertThat(model.selected()).isEqualTo(before);
        assertThat(model.markedAt(View.FACE_ON)).hasValue(ADDRESS_S);
    }

    @Test
    void whatTheHandPlacedBeforeItStays() {
        model.select(new Item.OfLandmark(Landmark.LEAD_SHOULDER));
        model.place(THERE);
        draft();
        assertThat(marks().mark(Landmark.LEAD_SHOULDER).orElseThrow().at()).isEqualTo(THERE);
        assertThat(marks().mark(Landmark.LEAD_SHOULDER).orElseThrow().origin()).isEqualTo(Origin.PLACED);
        assertThat(marks().mark(Landmark.LEAD_TOE).orElseThrow().origin()).isEqualTo(Origin.SUGGESTED);
    }

    /** Undoing takes back the last thing the hand did, before the draft as after it. */
    @Test
    void undoingTakesBackTheHandAndNotTheDraft() {
        model.select(new Item.OfLandmark(Landmark.LEAD_SHOULDER));
        model.place(THERE);
        draft();
        model.undo();
        assertThat(marks().mark(Landmark.LEAD_SHOULDER).orElseThrow().origin()).isEqualTo(Origin.SUGGESTED);
        assertThat(marks().marks()).hasSize(3);
        assertThat(model.markedAt(View.FACE_ON)).hasValue(ADDRESS_S);
        model.redo();
        assertThat(marks().mark(Landmark.LEAD_SHOULDER).orElseThrow().at()).isEqualTo(THERE);
        assertThat(marks().marks()).hasSize(3);
    }

    /** A drag that is going on goes on. */
    @Test
    void aDragIsNotDisturbed() {
        model.select(new Item.OfLandmark(Landmark.NECK));
        model.place(HERE);
        model.select(new Item.OfLandmark(Landmark.NECK));
        model.grab();
        model.drag(THERE);
        draft();
        model.drag(THERE.plus(10, 0));
        model.release();
        assertThat(marks().mark(Landmark.NECK).orElseThrow().at()).isEqualTo(THERE.plus(10, 0));
        model.undo();
        assertThat(marks().mark(Landmark.NECK).orElseThrow().at()).isEqualTo(HERE);
        assertThat(marks().marks()).as("and the draft stays").hasSize(4);
    }

    /** Whoever marks another frame marks that one, as if nothing were suggested of this. */
    @Test
    void onAnotherFrameTheDraftGivesWayToTheFirstMark() {
        draft();
        shownS = LATER_S;
        assertThat(marks().isBlank()).as("nothing of another frame is shown").isTrue();
        assertThat(model.away(View.FACE_ON)).isFalse();
        model.select(new Item.OfLandmark(Landmark.LEAD_TOE));
        model.place(THERE);
        assertThat(model.markedAt(View.FACE_ON)).hasValue(LATER_S);
        assertThat(marks().marks()).hasSize(1);
        model.undo();
        shownS = ADDRESS_S;
        assertThat(marks().marks()).as("undone with the frame it belongs to").hasSize(3);
        assertThat(model.markedAt(View.FACE_ON)).hasValue(ADDRESS_S);
    }

    /** While another frame is looked at, nothing of this one is accepted unseen, or lost. */
    @Test
    void acceptingAllElsewhereDoesNothing() {
        draft();
        shownS = LATER_S;
        model.suggestions().acceptAll();
        shownS = ADDRESS_S;
        assertThat(marks().marks()).hasSize(3).allMatch(m -> m.origin() == Origin.SUGGESTED);
    }

    /** Another moment of address is another picture. */
    @Test
    void anotherMomentOfAddressTakesTheDraftAway() {
        draft();
        model.propose(View.FACE_ON, LATER_S);
        shownS = LATER_S;
        assertThat(model.sheet().view(View.FACE_ON).orElseThrow().isBlank()).isTrue();
    }

    @Test
    void onceAnythingIsAcceptedTheFrameIsTheMarkedOne() {
        draft();
        model.select(new Item.OfLandmark(Landmark.LEAD_TOE));
        model.suggestions().accept();
        shownS = LATER_S;
        assertThat(model.away(View.FACE_ON)).isTrue();
        assertThat(marks().marks()).hasSize(3);
    }
}

package org.toeline.desk.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.toeline.geometry.ImagePoint;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.LessonDocument;
import org.toeline.mark.BallMark;
import org.toeline.mark.Club;
import org.toeline.mark.Handedness;
import org.toeline.mark.Landmark;
import org.toeline.mark.Mark;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;

/** Whatever is done in whatever order: what is marked goes where it was meant, and nothing marked is lost. */
class LessonModelTest {

    private static final ImagePoint HERE = new ImagePoint(400, 300);
    private static final ImagePoint THERE = new ImagePoint(900, 500);
    private static final Item SHOULDER = new Item.OfLandmark(Landmark.LEAD_SHOULDER);
    private static final Item TOE = new Item.OfLandmark(Landmark.LEAD_TOE);
    private static final BallMark BALL = new BallMark(HERE, OptionalDouble.of(15), 0.2, 0.3);

    private LessonModel model;

    @BeforeEach
    void twoViews() {
        MarkSheet sheet = MarkSheet.empty(Handedness.RIGHT, Club.DRIVER);
        for (View view : new View[] {View.FACE_ON, View.DOWN_THE_LINE}) {
            sheet = sheet.withView(
                    ViewMarks.empty(view, 1920, 1080).withMark(Mark.placed(Landmark.LEAD_SHOULDER, HERE, 2)));
        }
        model = new LessonModel(Lesson.of(MarkSheet.empty(Handedness.RIGHT, Club.DRIVER)));
        model.open(Lesson.of(sheet), Optional.empty());
    }

    private ImagePoint shoulder(View view) {
        return model.marks(view)
                .orElseThrow()
                .mark(Landmark.LEAD_SHOULDER)
                .orElseThrow()
                .at();
    }

    @Test
    void aViewShownInTheMiddleOfADragEndsIt() {
        model.select(SHOULDER);
        model.grab();
        model.drag(THERE);
        model.show(View.DOWN_THE_LINE);
        model.select(SHOULDER);
        model.drag(new ImagePoint(1500, 900));
        model.release();
        assertThat(shoulder(View.FACE_ON)).isEqualTo(THERE);
        assertThat(shoulder(View.DOWN_THE_LINE)).isEqualTo(HERE);
        model.undo();
        assertThat(shoulder(View.FACE_ON)).isEqualTo(HERE);
    }

    @Test
    void anythingElseDoneInTheMiddleOfADragEndsIt() {
        model.select(SHOULDER);
        model.grab();
        model.drag(THERE);
        model.delete();
        model.drag(new ImagePoint(1500, 900));
        assertThat(model.marks(View.FACE_ON).orElseThrow().marks())
                .as("deleted, not placed anew")
                .isEmpty();
        model.undo();
        assertThat(shoulder(View.FACE_ON)).isEqualTo(THERE);
    }

    @Test
    void aDragThatIsDroppedLeavesNoTrace() {
        MarkSheet before = model.sheet();
        model.select(SHOULDER);
        model.grab();
        model.drag(THERE);
        assertThat(model.drop()).isTrue();
        assertThat(model.sheet()).isEqualTo(before);
        assertThat(model.canUndo()).isFalse();
        assertThat(model.drop()).as("there is none any more").isFalse();
    }

    @Test
    void aLateAnswerGoesToItsView() {
        model.select(Item.BALL);
        model.show(View.DOWN_THE_LINE);
        model.select(TOE);
        model.place(View.FACE_ON, BALL);
        model.place(View.FACE_ON, new LineMark(new Item.OfVertical(0), HERE, 1, THERE, 1));
        assertThat(model.marks(View.FACE_ON).orElseThrow().ball()).contains(BALL);
        assertThat(model.marks(View.FACE_ON).orElseThrow().verticals()).hasSize(1);
        assertThat(model.marks(View.DOWN_THE_LINE).orElseThrow().ball()).isEmpty();
        assertThat(model.marks(View.DOWN_THE_LINE).orElseThrow().verticals()).isEmpty();
        assertThat(model.large()).isEqualTo(View.DOWN_THE_LINE);
        assertThat(model.selected()).as("what was chosen meanwhile").contains(TOE);
    }

    @Test
    void undoSelectsWhatItTookBack() {
        model.select(TOE);
        model.place(HERE);
        assertThat(model.selected()).isNotEqualTo(Optional.of(TOE));
        Optional<Item> next = model.selected();
        model.show(View.DOWN_THE_LINE);
        model.undo();
        assertThat(model.large()).as("in the view it was placed in").isEqualTo(View.FACE_ON);
        assertThat(model.selected()).contains(TOE);
        model.place(THERE);
        assertThat(model.marks(View.FACE_ON)
                        .orElseThrow()
                        .mark(Landmark.LEAD_TOE)
                        .orElseThrow()
                        .at())
                .isEqualTo(THERE);
        assertThat(model.selected()).isEqualTo(next);
    }

    private Lesson kept() throws Exception {
        return LessonDocument.parse(LessonDocument.bytes(model.lesson()), "kept");
    }

    @Test
    void whatCannotBeSeenIsNotAskedForAgain() throws Exception {
        model.select(Item.GROUND);
        model.skip();
        model.select(TOE);
        model.skip();
        Optional<Item> next = model.selected();
        assertThat(next).isNotEqualTo(Optional.of(TOE));
        for (Item item : MarkOrder.items(model, View.FACE_ON)) {
            if (model.marks(View.FACE_ON)
                            .filter(v -> Marking.handles(v, item).isEmpty())
                            .isPresent()
                    && !item.equals(TOE)
                    && !item.equals(Item.GROUND)) {
                model.select(item);
                model.place(HERE);
            }
        }
        assertThat(MarkOrder.next(model)).as("all but the toe is marked").isEmpty();
        model.open(kept(), Optional.empty());
        assertThat(model.selected()).as("kept").isEmpty();
        model.select(TOE);
        model.place(THERE);
        assertThat(model.unseen(View.FACE_ON, TOE)).as("it was seen after all").isFalse();
    }

    @Test
    void undoTakesASkipBack() {
        model.select(TOE);
        model.skip();
        model.undo();
        assertThat(model.unseen(View.FACE_ON, TOE)).isFalse();
        assertThat(model.selected()).contains(TOE);
    }

    @Test
    void secondMarksAreKeptAtOnceAndOutliveAnotherView() throws Exception {
        int[] settled = new int[1];
        model.listen(new LessonListener() {
            @Override
            public void changed() {
                // counted when settled
            }

            @Override
            public void settled() {
                settled[0]++;
            }
        });
        MarkSheet first = model.sheet();
        model.repeat();
        model.select(SHOULDER);
        int before = settled[0];
        model.place(THERE);
        assertThat(settled[0]).as("kept as it happens").isGreaterThan(before);
        model.show(View.DOWN_THE_LINE);
        assertThat(shoulder(View.DOWN_THE_LINE)).isEqualTo(HERE);
        model.show(View.FACE_ON);
        assertThat(shoulder(View.FACE_ON)).isEqualTo(THERE);
        model.open(kept(), Optional.empty());
        assertThat(model.sheet()).as("the first marks are as they were").isEqualTo(first);
        assertThat(shoulder(View.FACE_ON)).isEqualTo(HERE);
        assertThat(model.canGoOnRepeating()).isTrue();
        model.repeat();
        assertThat(shoulder(View.FACE_ON)).isEqualTo(THERE);
    }

    @Test
    void endingWithTooFewKeepsThem() {
        model.repeat();
        model.select(SHOULDER);
        model.place(THERE);
        assertThat(model.endRepeat()).isEmpty();
        assertThat(shoulder(View.FACE_ON)).isEqualTo(HERE);
        model.repeat();
        assertThat(shoulder(View.FACE_ON)).isEqualTo(THERE);
        model.undo();
        model.undo();
        assertThat(model.repeating()).as("undone").isFalse();
    }

    @Test
    void anotherClipStartsAfreshAndUndoBringsTheMarksBack() {
        model.repeat();
        model.clip(View.FACE_ON, "other.mp4", 1920, 1080);
        assertThat(model.sheet().view(View.FACE_ON).orElseThrow().isBlank()).isTrue();
        model.undo();
        model.leaveRepeat();
        assertThat(shoulder(View.FACE_ON)).isEqualTo(HERE);
    }

    /** What was found to a fifth of a pixel is not known so well any more when a hand has moved it. */
    @Test
    void whatTheHandMovesIsKnownAsAClickIs() {
        model.select(Item.BALL);
        model.place(View.FACE_ON, BALL);
        model.select(Item.BALL);
        model.place(THERE);
        BallMark moved = model.marks(View.FACE_ON).orElseThrow().ball().orElseThrow();
        assertThat(moved.sigmaPx()).isEqualTo(model.sheet().clickSigmaPx());
        assertThat(moved.diameterSigmaPx()).isEqualTo(BALL.diameterSigmaPx());
    }

    @Test
    void theArrowsMoveWhatWasJustPlaced() {
        model.select(TOE);
        model.place(HERE);
        Optional<Item> next = model.selected();
        assertThat(model.byKeys().move(1, 0)).contains(TOE);
        assertThat(model.marks(View.FACE_ON)
                        .orElseThrow()
                        .mark(Landmark.LEAD_TOE)
                        .orElseThrow()
                        .at())
                .isEqualTo(new ImagePoint(401, 300));
        assertThat(model.selected()).as("the next click is still for the next").isEqualTo(next);
        model.show(View.DOWN_THE_LINE);
        MarkSheet before = model.sheet();
        assertThat(model.byKeys().move(1, 0)).as("it is not in this view").isEmpty();
        assertThat(model.sheet()).isEqualTo(before);
    }

    @Test
    void oneSuggestionIsRefused() {
        model.apply(model.sheet()
                .withView(model.marks(View.FACE_ON)
                        .orElseThrow()
                        .withMark(new Mark(Landmark.LEAD_TOE, HERE, 4, Mark.Origin.SUGGESTED))));
        model.select(SHOULDER);
        model.suggestions().refuse();
        assertThat(shoulder(View.FACE_ON)).as("placed, not suggested").isEqualTo(HERE);
        model.select(TOE);
        model.suggestions().refuse();
        assertThat(model.marks(View.FACE_ON).orElseThrow().mark(Landmark.LEAD_TOE))
                .isEmpty();
        assertThat(model.selected()).as("to be marked by hand").contains(TOE);
    }

    /** Only what was clicked before teaches anything: nothing else is asked for a second time. */
    @Test
    void theSecondTimeWhatWasClickedIsAskedFor() {
        model.place(View.FACE_ON, BALL);
        model.repeat();
        assertThat(model.selected()).contains(SHOULDER);
        model.place(THERE);
        assertThat(model.selected()).as("that was all").isEmpty();
        model.leaveRepeat();
        assertThat(model.selected()).as("not asked for yet").isPresent();
    }

    /** The hand is of no picture: undoing its change leaves the coach where he looks. */
    @Test
    void undoingAChangeOfHandLeavesTheViewAsItIs() {
        LessonModel m = new LessonModel(Lesson.of(MarkSheet.empty(Handedness.RIGHT, Club.DRIVER)
                .withView(ViewMarks.empty(View.FACE_ON, 1920, 1080))
                .withView(ViewMarks.empty(View.DOWN_THE_LINE, 1920, 1080))));
        m.show(View.FACE_ON);
        m.handedness(Handedness.LEFT);
        m.show(View.DOWN_THE_LINE);
        m.select(Item.BALL);
        m.undo();
        assertThat(m.sheet().handedness()).isEqualTo(Handedness.RIGHT);
        assertThat(m.large()).isEqualTo(View.DOWN_THE_LINE);
        assertThat(m.selected()).contains(Item.BALL);
    }

    /** The same film under another name keeps what is marked, and on which frame. */
    @Test
    void theSameFilmKeepsMarksAndMarkedFrame() {
        model.clip(View.FACE_ON, "one.mp4", 1920, 1080);
        model.select(SHOULDER);
        model.place(THERE);
        model.markFrame(
                2.5, model.marks(View.FACE_ON).orElseThrow(), model.lesson().words());
        model.sameFilm(View.FACE_ON, "two.mp4");
        assertThat(model.lesson().clips().get(View.FACE_ON).clip()).isEqualTo("two.mp4");
        assertThat(model.markedAt(View.FACE_ON)).hasValue(2.5);
        assertThat(shoulder(View.FACE_ON)).isEqualTo(THERE);
    }

    /** Undoing a mark does not take back what the coach said of the clip. */
    @Test
    void theRateAClipWasFilmedAtOutlastsUndoing() {
        model.clip(View.FACE_ON, "one.mp4", 1920, 1080);
        model.select(SHOULDER);
        model.place(THERE);
        model.filmedAt(View.FACE_ON, OptionalDouble.of(240));
        model.undo();
        assertThat(model.marks(View.FACE_ON).orElseThrow().isBlank()).isTrue();
        assertThat(model.lesson().clips().get(View.FACE_ON).filmedAt()).hasValue(240);
        model.redo();
        assertThat(model.lesson().clips().get(View.FACE_ON).filmedAt()).hasValue(240);
    }

    /** The very first clip of a lesson too, whose view is the large one already. */
    @Test
    void aClipOnTheLargeViewSaysWhatToMarkFirst() {
        model.open(Lesson.of(MarkSheet.empty(Handedness.RIGHT, Club.DRIVER)), Optional.empty());
        assertThat(model.selected()).isEmpty();
        model.clip(View.FACE_ON, "one.mp4", 1920, 1080);
        assertThat(model.selected()).contains(Item.GROUND);
    }

    @Test
    void exchangedClipsComeBack() {
        model.clip(View.FACE_ON, "one.mp4", 1920, 1080);
        model.clip(View.DOWN_THE_LINE, "two.mp4", 1080, 1920);
        Lesson before = model.lesson();
        model.exchangeClips();
        assertThat(model.lesson().clips().get(View.FACE_ON).clip()).isEqualTo("two.mp4");
        assertThat(model.sheet().view(View.FACE_ON).orElseThrow().widthPx()).isEqualTo(1080);
        model.undo();
        assertThat(model.lesson()).isEqualTo(before);
    }
}

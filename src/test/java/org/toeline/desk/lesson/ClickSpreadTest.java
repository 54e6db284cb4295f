package org.toeline.desk.lesson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.toeline.geometry.ImagePoint;
import org.toeline.ledger.Lesson;
import org.toeline.mark.Club;
import org.toeline.mark.FloorLayout;
import org.toeline.mark.FloorMark;
import org.toeline.mark.Handedness;
import org.toeline.mark.Landmark;
import org.toeline.mark.Mark;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.Takes;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;

/** Property: clicks of a known spread, twice. */
class ClickSpreadTest {

    private static ViewMarks clicked(SplittableRandom random, double sigmaPx) {
        ViewMarks v = ViewMarks.empty(View.FACE_ON, 1920, 1080);
        for (Landmark landmark : Landmark.values()) {
            v = v.withMark(Mark.placed(
                    landmark,
                    new ImagePoint(
                            300 + 40 * landmark.ordinal() + sigmaPx * random.nextGaussian(),
                            500 + sigmaPx * random.nextGaussian()),
                    2));
        }
        return v;
    }

    /** The median of twenty distances has some 17 % of its own; of two hundred coaches the mean must be right to 3 %. */
    @Test
    void findsTheSpread() {
        SplittableRandom random = new SplittableRandom(3);
        double sum = 0;
        int coaches = 200;
        for (int i = 0; i < coaches; i++) {
            sum += ClickSpread.of(clicked(random, 1.7), clicked(random, 1.7)).orElseThrow() / coaches;
        }
        assertThat(sum).isCloseTo(1.7, within(0.05));
    }

    @Test
    void oneMistakeDoesNotCount() {
        SplittableRandom random = new SplittableRandom(5);
        ViewMarks first = clicked(random, 1.5);
        ViewMarks again = clicked(random, 1.5);
        double without = ClickSpread.of(first, again).orElseThrow();
        ViewMarks wrong = again.withMark(Mark.placed(Landmark.LEAD_HIP, new ImagePoint(1500, 900), 2));
        assertThat(ClickSpread.of(first, wrong).orElseThrow()).isCloseTo(without, within(0.25 * without));
    }

    @Test
    void fewMarksTeachNothing() {
        ViewMarks few =
                ViewMarks.empty(View.FACE_ON, 1920, 1080).withMark(Mark.placed(Landmark.NECK, new ImagePoint(5, 5), 2));
        assertThat(ClickSpread.of(few, few)).isEmpty();
    }

    /** Marking again hides the first marks and gives them back untouched. */
    @Test
    void theFirstMarksComeBack() {
        SplittableRandom random = new SplittableRandom(7);
        ViewMarks first = clicked(random, 1.5);
        LessonModel model = new LessonModel(
                Lesson.of(MarkSheet.empty(Handedness.RIGHT, Club.DRIVER).withView(first)));
        MarkSheet before = model.sheet();
        model.repeat();
        assertThat(model.marks(View.FACE_ON).orElseThrow().marks()).isEmpty();
        for (Mark mark : clicked(random, 1.5).marks()) {
            model.select(new Item.OfLandmark(mark.landmark()));
            model.place(mark.at());
        }
        assertThat(model.sheet()).as("nothing is kept of it meanwhile").isEqualTo(before);
        assertThat(model.endRepeat()).isPresent();
        assertThat(model.marks(View.FACE_ON)).contains(first);
        MarkSheet learnt = ClickSpread.applied(model.sheet(), 1.4);
        assertThat(learnt.clickSigmaPx()).isEqualTo(1.4);
        assertThat(learnt.view(View.FACE_ON)
                        .orElseThrow()
                        .mark(Landmark.NECK)
                        .orElseThrow()
                        .sigmaPx())
                .isEqualTo(1.4);
    }

    /** Suggestions that were accepted and rods that were found tell nothing of the hand. */
    @Test
    void whatWasNotClickedDoesNotCount() {
        SplittableRandom random = new SplittableRandom(9);
        ViewMarks first = clicked(random, 1.5);
        ViewMarks again = clicked(random, 1.5);
        double clicked = ClickSpread.of(first, again).orElseThrow();
        ViewMarks accepted = first;
        for (Landmark landmark : new Landmark[] {Landmark.LEAD_HIP, Landmark.TRAIL_HIP, Landmark.NECK}) {
            accepted = accepted.withMark(Mark.placed(landmark, new ImagePoint(100, 900), 8));
        }
        ViewMarks fewer = again.withoutMark(Landmark.LEAD_HIP)
                .withoutMark(Landmark.TRAIL_HIP)
                .withoutMark(Landmark.NECK);
        assertThat(ClickSpread.learnsFrom(accepted, 2)).isTrue();
        assertThat(ClickSpread.learnsFrom(
                        ClickSpread.applied(
                                        new MarkSheet(
                                                Handedness.RIGHT,
                                                Club.DRIVER,
                                                Takes.SEPARATE,
                                                FloorLayout.NONE,
                                                List.of(first),
                                                2),
                                        5)
                                .views()
                                .get(0),
                        2))
                .as("all less sure than a click")
                .isFalse();
        assertThat(ClickSpread.of(accepted, again)).isEqualTo(ClickSpread.of(first, fewer));
        ViewMarks found = first;
        ViewMarks foundAgain = again;
        for (int i = 0; i < 40; i++) {
            found = found.withFloorMark(new FloorMark("p" + i, new ImagePoint(i, i), 0.1));
            foundAgain = foundAgain.withFloorMark(new FloorMark("p" + i, new ImagePoint(i, i), 2));
        }
        assertThat(ClickSpread.of(found, foundAgain).orElseThrow()).isEqualTo(clicked);
    }
}

package org.toeline.desk.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.toeline.geometry.ImagePoint;
import org.toeline.ledger.Lesson;
import org.toeline.mark.BallMark;
import org.toeline.mark.Club;
import org.toeline.mark.FloorKind;
import org.toeline.mark.FloorMark;
import org.toeline.mark.Handedness;
import org.toeline.mark.Landmark;
import org.toeline.mark.Mark;
import org.toeline.mark.Mark.Origin;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.VerticalMark;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;

/** Looking and agreeing: whatever was suggested is looked at, what is doubtful first, and each answer can be undone. */
class SuggestionsTest {

    private static final ImagePoint HERE = new ImagePoint(400, 300);
    private static final ImagePoint THERE = new ImagePoint(900, 500);
    private static final Item SHOULDER = new Item.OfLandmark(Landmark.LEAD_SHOULDER);
    private static final Item TOE = new Item.OfLandmark(Landmark.LEAD_TOE);
    private static final Item ROD = new Item.OfFloor("rod-near");
    private static final Item UPRIGHT = new Item.OfVertical(0);
    private static final BallMark BALL = new BallMark(HERE, OptionalDouble.of(15), 0.2, 0.3, Origin.SUGGESTED);

    private LessonModel model;

    @BeforeEach
    void everythingSuggested() {
        MarkSheet sheet = MarkSheet.empty(Handedness.RIGHT, Club.DRIVER).withFloor(FloorKind.RODS_AS_T.layout());
        for (View view : List.of(View.FACE_ON, View.DOWN_THE_LINE)) {
            sheet = sheet.withView(ViewMarks.empty(view, 1920, 1080)
                    .withMark(new Mark(Landmark.LEAD_SHOULDER, HERE, 9, Origin.SUGGESTED))
                    .withMark(new Mark(Landmark.LEAD_TOE, HERE, 9, Origin.SUGGESTED))
                    .withFloorMark(new FloorMark("rod-near", HERE, 0.6, Origin.SUGGESTED))
                    .withVerticals(List.of(new VerticalMark(HERE, THERE, 0.2, Origin.SUGGESTED)))
                    .withBall(Optional.of(BALL)));
        }
        model = new LessonModel(Lesson.of(MarkSheet.empty(Handedness.RIGHT, Club.DRIVER)));
        model.open(Lesson.of(sheet), Optional.empty());
    }

    private ViewMarks marks() {
        return model.marks(model.large()).orElseThrow();
    }

    @Test
    void oneAfterTheOtherIsAcceptedWithItsSpread() {
        model.suggestions().lookAtNext();
        assertThat(model.suggestions().left()).containsExactly(ROD, Item.BALL, SHOULDER, TOE, UPRIGHT);
        for (int left = 5; left > 0; left--) {
            assertThat(model.suggestions().left()).hasSize(left);
            assertThat(model.selected()).contains(model.suggestions().left().get(0));
            model.suggestions().accept();
        }
        ViewMarks faceOn = model.marks(View.FACE_ON).orElseThrow();
        assertThat(faceOn.isAccepted()).isTrue();
        assertThat(faceOn.ball().orElseThrow()).isEqualTo(BALL.accepted());
        assertThat(faceOn.mark(Landmark.LEAD_SHOULDER).orElseThrow().sigmaPx()).isEqualTo(9);
        assertThat(model.large()).as("on to what is suggested of the next view").isEqualTo(View.DOWN_THE_LINE);
        assertThat(model.selected()).as("the doubtful first").contains(SHOULDER);
    }

    /** After the last suggestion of all, what nobody marked yet. */
    @Test
    void afterTheLastSuggestionComesWhatIsToBeMarked() {
        model.suggestions().acceptAll();
        model.suggestions().acceptAll();
        model.suggestions().accept();
        assertThat(model.sheet().views()).allMatch(ViewMarks::isAccepted);
        assertThat(model.selected()).isPresent();
        assertThat(model.suggestions().suggestion()).isEmpty();
    }

    /** Then the hand is needed where nothing could be suggested, as of a ball before a white shoe. */
    @Test
    void afterTheLastSuggestionComesTheViewThatIsBlank() {
        model.open(Lesson.of(model.sheet().withView(ViewMarks.empty(View.TEE, 1920, 1080))), Optional.empty());
        model.suggestions().acceptAll();
        model.suggestions().acceptAll();
        assertThat(model.large()).as("the doubtful first").isEqualTo(View.DOWN_THE_LINE);
        while (model.large() == View.DOWN_THE_LINE) {
            assertThat(model.suggestions().left()).isNotEmpty();
            model.suggestions().accept();
        }
        assertThat(model.large()).isEqualTo(View.TEE);
        assertThat(model.selected()).contains(Item.BALL);
    }

    /** By hand one goes through a view in its order, whether the program suggests the next thing or not. */
    @Test
    void theHandPlacesOnInTheSameOrderOverSuggestions() {
        model.select(ROD);
        for (Item item : List.of(ROD, new Item.OfFloor("rod-far"))) {
            assertThat(model.selected()).contains(item);
            model.place(THERE);
        }
        ViewMarks v = model.marks(View.FACE_ON).orElseThrow();
        assertThat(v.floorMark("rod-near").orElseThrow().at()).isEqualTo(THERE);
        assertThat(v.floorMark("rod-near").orElseThrow().origin()).isEqualTo(Origin.PLACED);
    }

    @Test
    void eachAcceptanceIsUndoneByItself() {
        model.suggestions().lookAtNext();
        model.suggestions().accept();
        model.suggestions().accept();
        model.undo();
        assertThat(model.suggestions().left()).containsExactly(Item.BALL, SHOULDER, TOE, UPRIGHT);
        model.undo();
        assertThat(model.suggestions().left()).hasSize(5);
    }

    /** What the other marks speak against comes first, and is never accepted with the rest. */
    @Test
    void theDoubtfulComesFirstAndIsNotAcceptedWithTheRest() {
        model.suggestions().doubted(Set.of("rod-near", "lead-toe"));
        model.suggestions().lookAtNext();
        assertThat(model.suggestions().left()).startsWith(ROD, TOE).hasSize(5);
        model.suggestions().acceptAll();
        assertThat(model.suggestions().left()).containsExactly(ROD, TOE);
        assertThat(model.selected()).contains(ROD);
        model.undo();
        assertThat(model.suggestions().left()).as("undone as one").hasSize(5);
    }

    /** Down the line one shoulder hides the other. */
    @Test
    void shouldersDownTheLineAreLookedAtByThemselves() {
        model.show(View.DOWN_THE_LINE);
        model.suggestions().acceptAll();
        assertThat(model.suggestions().left()).containsExactly(SHOULDER);
        model.suggestions().accept();
        assertThat(model.marks(View.DOWN_THE_LINE).orElseThrow().isAccepted()).isTrue();
    }

    /** Which is which is one question, and one answer. */
    @Test
    void shouldersDownTheLineAreAcceptedTogether() {
        Item trail = new Item.OfLandmark(Landmark.TRAIL_SHOULDER);
        model.show(View.DOWN_THE_LINE);
        model.apply(model.sheet()
                .withView(marks().withMark(new Mark(Landmark.TRAIL_SHOULDER, HERE.plus(5, 0), 9, Origin.SUGGESTED))
                        .withMark(new Mark(Landmark.TRAIL_HIP, HERE.plus(0, 200), 9, Origin.SUGGESTED))));
        model.suggestions().acceptAll();
        assertThat(model.suggestions().left()).containsExactly(SHOULDER, trail);
        model.suggestions().accept();
        assertThat(model.marks(View.DOWN_THE_LINE).orElseThrow().isAccepted()).isTrue();
        model.undo();
        assertThat(model.suggestions().left()).as("undone together").containsExactly(SHOULDER, trail);
        model.suggestions().doubted(Set.of(trail.name()));
        model.select(SHOULDER);
        model.suggestions().accept();
        assertThat(model.suggestions().left())
                .as("one that the other marks speak against is looked at by itself")
                .containsExactly(trail);
    }

    /** Where they lie clear of one another nothing is hidden. */
    @Test
    void shouldersDownTheLineThatLieApartAreLikely() {
        model.show(View.DOWN_THE_LINE);
        MarkSheet sheet = model.sheet();
        model.apply(sheet.withView(marks().withMark(new Mark(Landmark.TRAIL_SHOULDER, THERE, 9, Origin.SUGGESTED))
                .withMark(new Mark(Landmark.TRAIL_HIP, HERE.plus(0, 300), 9, Origin.SUGGESTED))));
        assertThat(model.suggestions().doubtful(SHOULDER)).isFalse();
        model.apply(sheet.withView(
                marks().withMark(new Mark(Landmark.TRAIL_SHOULDER, HERE.plus(20, 0), 9, Origin.SUGGESTED))));
        assertThat(model.suggestions().doubtful(SHOULDER)).isTrue();
    }

    @Test
    void draggingOneCorrectsAndAcceptsIt() {
        for (Item item : model.suggestions().left()) {
            model.select(item);
            model.grab();
            model.drag(THERE.plus(0, 100));
            model.release();
        }
        assertThat(marks().isAccepted()).isTrue();
        assertThat(marks().ball().orElseThrow().centre()).isEqualTo(THERE.plus(0, 100));
    }

    @Test
    void oneIsRefusedAndStaysToBeMarkedByHand() {
        model.select(Item.BALL);
        model.suggestions().refuse();
        assertThat(marks().ball()).isEmpty();
        assertThat(model.selected()).contains(Item.BALL);
        assertThat(model.suggestions().left()).hasSize(4);
    }
}

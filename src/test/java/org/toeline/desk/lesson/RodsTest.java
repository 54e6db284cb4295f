package org.toeline.desk.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.toeline.geometry.ImagePoint;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.LessonDocument;
import org.toeline.mark.Club;
import org.toeline.mark.FloorKind;
import org.toeline.mark.FloorLayout;
import org.toeline.mark.FloorMark;
import org.toeline.mark.FloorReference;
import org.toeline.mark.Handedness;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;

/** A rod is drawn from either end, and its ends go to where they are; never to another rod. */
class RodsTest {

    private static final List<List<String>> RODS =
            List.of(List.of("rod-near", "rod-far"), List.of("cross-ball", "cross-feet"));

    /** Reference: the sample lessons, whose rods were marked end by end; all four strokes that a hand may draw. */
    @ParameterizedTest
    @ValueSource(strings = {"before", "after", "left-handed", "all-good"})
    void eachEndIsFoundFromEitherEnd(String id) throws Exception {
        Lesson lesson = LessonDocument.read(Path.of("sample-media", id, id + ".lesson.json"));
        int drawn = 0;
        for (View view : new View[] {View.FACE_ON, View.DOWN_THE_LINE}) {
            ViewMarks truth = lesson.sheet().view(view).orElseThrow();
            for (List<String> rod : RODS) {
                Optional<FloorMark> one = truth.floorMark(rod.get(0));
                Optional<FloorMark> other = truth.floorMark(rod.get(1));
                if (one.isPresent() && other.isPresent()) {
                    drawn++;
                    for (String selected : rod) {
                        drawn(lesson, truth, selected, one.get(), other.get());
                        drawn(lesson, truth, selected, other.get(), one.get());
                    }
                }
            }
        }
        assertThat(drawn).as("rods that are marked").isGreaterThan(1);
    }

    private static void drawn(Lesson lesson, ViewMarks truth, String selected, FloorMark from, FloorMark to) {
        LessonModel model = new LessonModel(lesson);
        model.open(
                lesson.withSheet(
                        lesson.sheet().withView(ViewMarks.empty(truth.view(), truth.widthPx(), truth.heightPx()))),
                Optional.empty());
        model.place(truth.view(), new LineMark(new Item.OfFloor(selected), from.at(), 1, to.at(), 2));
        ViewMarks marked = model.sheet().view(truth.view()).orElseThrow();
        assertThat(marked.floorMarks()).hasSize(2);
        for (FloorMark end : List.of(from, to)) {
            FloorMark placed = marked.floorMark(end.pointId()).orElseThrow();
            assertThat(placed.at().distancePx(end.at())).isLessThan(0.1);
            assertThat(placed.sigmaPx()).isEqualTo(end == from ? 1 : 2);
        }
    }

    @Test
    void aRodDrawnAnewMovesNothingElse() {
        LessonModel model = new LessonModel(Lesson.of(MarkSheet.empty(Handedness.RIGHT, Club.DRIVER)
                .withFloor(FloorKind.RODS_AS_T.layout())
                .withView(ViewMarks.empty(View.FACE_ON, 1920, 1080))));
        Item near = new Item.OfFloor("rod-near");
        model.place(View.FACE_ON, new LineMark(near, new ImagePoint(400, 900), 1, new ImagePoint(1400, 900), 1));
        model.place(View.FACE_ON, new LineMark(near, new ImagePoint(1410, 905), 1, new ImagePoint(395, 905), 1));
        ViewMarks view = model.sheet().view(View.FACE_ON).orElseThrow();
        assertThat(view.floorMarks()).extracting(FloorMark::pointId).containsExactlyInAnyOrder("rod-near", "rod-far");
        assertThat(view.floorMark("rod-near").orElseThrow().at()).isEqualTo(new ImagePoint(395, 905));
        assertThat(view.floorMark("rod-far").orElseThrow().at()).isEqualTo(new ImagePoint(1410, 905));
    }

    /** Whose other end nobody knows is marked alone. */
    @Test
    void ofALayoutOfOnesOwnOneEndIsMarked() {
        FloorLayout own = new FloorLayout(
                List.of(
                        new FloorReference("a", 0, 0),
                        new FloorReference("b", 1, 0),
                        new FloorReference("c", 0, 1),
                        new FloorReference("d", 1, 1)),
                0.005);
        ViewMarks empty = ViewMarks.empty(View.FACE_ON, 1920, 1080);
        LineMark stroke =
                new LineMark(new Item.OfFloor("b"), new ImagePoint(400, 900), 1, new ImagePoint(1400, 900), 1);
        assertThat(Marking.put(empty, stroke, own, Handedness.RIGHT).floorMarks())
                .extracting(FloorMark::pointId)
                .containsExactly("b");
    }

    /** Every end that the common layouts lay down is the end of something, but for the joints of tiles, which are clicked. */
    @ParameterizedTest
    @ValueSource(strings = {"RODS_AS_T", "RODS_AS_L", "MAT", "TAPE"})
    void everyEndHasAnother(String kind) {
        FloorLayout floor = FloorKind.valueOf(kind).layout();
        ViewMarks empty = ViewMarks.empty(View.FACE_ON, 1920, 1080);
        for (FloorReference point : floor.points()) {
            String other = Rods.otherEnd(floor, empty, point.id()).orElseThrow();
            assertThat(floor.point(other)).isPresent();
            assertThat(other).isNotEqualTo(point.id());
        }
    }
}

package org.toeline.handout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.toeline.geometry.ImagePoint;
import org.toeline.ledger.Lesson;
import org.toeline.mark.PinnedWords;
import org.toeline.mark.View;
import org.toeline.paint.PinnedNote;
import org.toeline.paint.StillOverlay;

/** The coach's words on the player's still. */
class PinnedOnStillTest {

    private static final PinnedWords TICKED =
            new PinnedWords(View.FACE_ON, "keep this elbow close", at(560, 330), at(420, 200), true);
    private static final PinnedWords NOT_TICKED =
            new PinnedWords(View.FACE_ON, "a private remark", at(600, 300), at(700, 100), false);
    private static final PinnedWords OTHER_VIEW =
            new PinnedWords(View.DOWN_THE_LINE, "hips", at(600, 300), at(700, 100), true);

    private static ImagePoint at(double x, double y) {
        return new ImagePoint(x, y);
    }

    private static Still still(List<PinnedWords> words) throws Exception {
        Lesson lesson = Samples.lesson("before");
        return Samples.handout(lesson.withWords(words), "before")
                .withOptions(StillOptions.USUAL.withView(View.FACE_ON))
                .still();
    }

    @Test
    void onlyWhatIsTickedIsShownAndPointsAtItsPlace() throws Exception {
        Still still = still(List.of(TICKED, NOT_TICKED, OTHER_VIEW));
        StillPicture picture = still.picture().orElseThrow();
        List<PinnedNote> notes = picture.overlay().notes();
        assertThat(notes).hasSize(1);
        assertThat(notes.get(0).said()).isEqualTo("keep this elbow close");
        Point2D there = picture.picture().toDevice().transform(new Point2D.Double(560, 330), null);
        assertThat(notes.get(0).tip().distance(there)).isCloseTo(0, within(1e-9));
        assertThat(picture.picture().frame().contains(notes.get(0).box())).isTrue();
        assertThat(still.described()).contains("keep this elbow close").doesNotContain("private", "hips");
    }

    @Test
    void noOtherWritingLiesOverThem() throws Exception {
        for (int y = 150; y <= 600; y += 50) {
            StillOverlay overlay = still(List.of(
                            new PinnedWords(View.FACE_ON, "so far, and no further", at(560, 330), at(620, y), true)))
                    .picture()
                    .orElseThrow()
                    .overlay();
            Rectangle2D box = overlay.notes().get(0).box();
            assertThat(overlay.labels()).noneMatch(l -> l.box().intersects(box));
        }
    }

    /** Pixel by pixel: the paper they are written on is there, and gone without them. */
    @Test
    void theyArePainted() throws Exception {
        BufferedImage with = PictureFormat.image(still(List.of(TICKED)));
        Rectangle2D box = still(List.of(TICKED))
                .picture()
                .orElseThrow()
                .overlay()
                .notes()
                .get(0)
                .box();
        int x = (int) box.getX() + 12;
        int y = (int) box.getCenterY();
        assertThat(with.getRGB(x, y) & 0xffffff).isEqualTo(0xFAF9F6);
        BufferedImage without = PictureFormat.image(still(List.of(NOT_TICKED)));
        assertThat(without.getRGB(x, y) & 0xffffff).isNotEqualTo(0xFAF9F6);
    }

    @Test
    void whatTurnsWritingAroundIsTakenOut() throws Exception {
        Still still = still(List.of(TICKED.saying("left\u202Eright\u0007"), TICKED.saying("\u202E")));
        assertThat(still.picture().orElseThrow().overlay().notes())
                .extracting(PinnedNote::said)
                .containsExactly("leftright");
    }
}

package org.toeline.desk.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.toeline.ledger.ClipMoment;
import org.toeline.ledger.Lesson;
import org.toeline.mark.Club;
import org.toeline.mark.Handedness;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.View;

/** The hand that the pictures show, held against the one that is set. */
class HandSeenTest {

    private static final Lesson RIGHT = lesson(Handedness.RIGHT);
    private static final Lesson LEFT = lesson(Handedness.LEFT);

    private final HandSeen hands = new HandSeen();

    private static Lesson lesson(Handedness set) {
        return Lesson.of(MarkSheet.empty(set, Club.DRIVER))
                .withClip(View.FACE_ON, new ClipMoment("face.mp4", OptionalDouble.of(1)))
                .withClip(View.DOWN_THE_LINE, new ClipMoment("line.mp4", OptionalDouble.of(1)));
    }

    @Test
    void whatAgreesOrDoesNotTellIsNotAskedAbout() {
        hands.saw(View.FACE_ON, "face.mp4", Optional.of(Handedness.RIGHT));
        hands.saw(View.DOWN_THE_LINE, "line.mp4", Optional.empty());
        assertThat(hands.asks(RIGHT)).isEmpty();
        assertThat(hands.tellsSides(View.FACE_ON, RIGHT)).isTrue();
        assertThat(hands.tellsSides(View.DOWN_THE_LINE, RIGHT)).isTrue();
    }

    /** Sides of a view that does not tell its hand would be exchanged as well. */
    @Test
    void whileItIsAskedNoViewTellsSides() {
        hands.saw(View.FACE_ON, "face.mp4", Optional.empty());
        hands.saw(View.DOWN_THE_LINE, "line.mp4", Optional.of(Handedness.LEFT));
        assertThat(hands.asks(RIGHT)).contains(new HandSeen.Differs(View.DOWN_THE_LINE, Handedness.LEFT));
        assertThat(hands.tellsSides(View.FACE_ON, RIGHT)).isFalse();
        assertThat(hands.tellsSides(View.DOWN_THE_LINE, RIGHT)).isFalse();
    }

    @Test
    void changingTheHandAnswersIt() {
        hands.saw(View.FACE_ON, "face.mp4", Optional.of(Handedness.LEFT));
        assertThat(hands.asks(LEFT)).isEmpty();
        assertThat(hands.tellsSides(View.FACE_ON, LEFT)).isTrue();
        assertThat(hands.asks(RIGHT)).as("and changing it back asks again").isPresent();
    }

    /** A mirrored clip looks like the other hand: it goes on telling nothing of sides, the others do. */
    @Test
    void keepingTheHandAnswersItForGood() {
        hands.saw(View.FACE_ON, "face.mp4", Optional.of(Handedness.LEFT));
        hands.keep(RIGHT);
        assertThat(hands.asks(RIGHT)).isEmpty();
        assertThat(hands.tellsSides(View.FACE_ON, RIGHT)).isFalse();
        assertThat(hands.tellsSides(View.DOWN_THE_LINE, RIGHT)).isTrue();
        hands.saw(View.FACE_ON, "face.mp4", Optional.of(Handedness.LEFT));
        assertThat(hands.asks(RIGHT)).as("once for each clip").isEmpty();
    }

    @Test
    void whatIsKeptIsKeptOfThoseClipsAndThatHand() {
        hands.saw(View.FACE_ON, "face.mp4", Optional.of(Handedness.LEFT));
        hands.keep(RIGHT);
        hands.saw(View.DOWN_THE_LINE, "line.mp4", Optional.of(Handedness.LEFT));
        assertThat(hands.asks(RIGHT)).contains(new HandSeen.Differs(View.DOWN_THE_LINE, Handedness.LEFT));
        hands.keep(RIGHT);
        assertThat(hands.asks(RIGHT)).isEmpty();
        hands.saw(View.FACE_ON, "face.mp4", Optional.of(Handedness.RIGHT));
        assertThat(hands.asks(LEFT)).contains(new HandSeen.Differs(View.FACE_ON, Handedness.RIGHT));
    }

    @Test
    void whatWasSeenOfAClipThatIsGoneCountsNoMore() {
        hands.saw(View.FACE_ON, "another.mp4", Optional.of(Handedness.LEFT));
        assertThat(hands.asks(RIGHT)).isEmpty();
        hands.saw(View.FACE_ON, "face.mp4", Optional.of(Handedness.LEFT));
        hands.forget();
        assertThat(hands.asks(RIGHT)).isEmpty();
    }
}

package org.toeline.desk.sheet;

import java.nio.file.Path;
import java.util.Optional;
import org.toeline.assist.Movement;
import org.toeline.assist.OneMoment;
import org.toeline.assist.Strike;
import org.toeline.desk.film.Films;
import org.toeline.desk.film.Tie;
import org.toeline.desk.work.Background;
import org.toeline.mark.View;
import org.toeline.video.ClipException;
import org.toeline.video.SlowMotion;
import org.toeline.video.SoundTrack;

/**
 * Which moments of the face-on and the down-the-line clip are one: the strike where it is heard in both, else what moves. Sound
 * is not trusted in slow motion, where it may be late. Nothing is tied that does not stand out; the coach then says it.
 */
final class TieFinder {

    /** Heard to a fiftieth of a second in nearly all of the clips it was tried on. */
    private static final double HEARD_SIGMA_S = 0.01;

    private static final double SEEN_SIGMA_S = 0.02;

    /** What is known of one clip. */
    private record Of(Path file, Movement movement, SlowMotion motion) {}

    private final ClipDrawer clips;
    private final Films films;
    private final Background background;
    private Optional<Of> faceOn = Optional.empty();
    private Optional<Of> downTheLine = Optional.empty();

    TieFinder(ClipDrawer clips, Films films, Background background) {
        this.clips = clips;
        this.films = films;
        this.background = background;
    }

    /** Another lesson. */
    void forget() {
        faceOn = Optional.empty();
        downTheLine = Optional.empty();
    }

    /** A clip was looked through. */
    void lookedThrough() {
        Optional<Of> one = of(View.FACE_ON);
        Optional<Of> other = of(View.DOWN_THE_LINE);
        boolean same = one.equals(faceOn) && other.equals(downTheLine);
        if (one.isEmpty() || other.isEmpty() || same) {
            return;
        }
        faceOn = one;
        downTheLine = other;
        background.run(() -> find(one.get(), other.get()), tie -> {
            if (one.equals(of(View.FACE_ON)) && other.equals(of(View.DOWN_THE_LINE))) {
                films.found(tie);
            }
        });
    }

    private Optional<Of> of(View view) {
        return clips.file(view).flatMap(file -> clips.movement(view).map(m -> new Of(file, m, clips.slowMotion(view))));
    }

    private static Optional<Tie> find(Of one, Of other) throws ClipException {
        Optional<Tie> heard =
                heard(one, other).map(m -> new Tie(m.firstSeconds(), m.secondSeconds(), HEARD_SIGMA_S, Tie.By.SOUND));
        return heard.isPresent()
                ? heard
                : OneMoment.seen(one.movement(), one.motion(), other.movement(), other.motion())
                        .map(m -> new Tie(m.firstSeconds(), m.secondSeconds(), SEEN_SIGMA_S, Tie.By.MOTION));
    }

    private static Optional<OneMoment> heard(Of one, Of other) throws ClipException {
        Optional<Double> firstMost = mostMotion(one);
        Optional<Double> secondMost = mostMotion(other);
        if (firstMost.isEmpty() || secondMost.isEmpty()) {
            return Optional.empty();
        }
        Optional<Strike> first = heard(one, firstMost.get());
        Optional<Strike> second = first.isEmpty() ? Optional.empty() : heard(other, secondMost.get());
        return second.flatMap(s -> OneMoment.heard(first.orElseThrow(), firstMost.get(), s, secondMost.get()));
    }

    private static Optional<Strike> heard(Of clip, double mostMotionS) throws ClipException {
        return SoundTrack.of(clip.file()).flatMap(sound -> Strike.heard(sound, mostMotionS));
    }

    /** Where its sound is trusted. */
    private static Optional<Double> mostMotion(Of clip) {
        return clip.motion().factor() != 1
                ? Optional.empty()
                : OneMoment.swing(clip.movement(), clip.motion()).map(Movement.Amount::seconds);
    }
}

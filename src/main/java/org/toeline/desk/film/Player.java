package org.toeline.desk.film;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.animation.AnimationTimer;
import javafx.animation.PauseTransition;
import javafx.util.Duration;
import org.toeline.desk.text.Texts;
import org.toeline.video.QuickFilm;

/** Plays the films that are looked at, and moves along them by hand; the exact frames come when it rests. */
public final class Player {

    private static final Duration RESTS = Duration.millis(150);
    private static final double NANOS = 1e9;

    /** Told of what has changed. */
    public interface Listener {

        /** Another moment is shown. */
        void moved();

        /** It plays or stands, more slowly, the other way, over and over. */
        void changed();
    }

    private final Supplier<Optional<InStep>> looked;
    private final Listener listener;
    private final Consumer<String> say;
    private final PauseTransition rest = new PauseTransition(RESTS);
    private final AnimationTimer timer = new AnimationTimer() {
        @Override
        public void handle(long now) {
            pulse(now);
        }
    };
    private Optional<InStep> playing = Optional.empty();
    private Optional<Span> repeated = Optional.empty();
    private Pace pace = Pace.REAL;
    private double atS;
    private long lastNanos;

    /** @param looked the films that are looked at now; none without a clip */
    Player(Supplier<Optional<InStep>> looked, Listener listener, Consumer<String> say) {
        this.looked = looked;
        this.listener = listener;
        this.say = say;
        rest.setOnFinished(e -> looked.get().ifPresent(InStep::rest));
    }

    public boolean plays() {
        return playing.isPresent();
    }

    public Pace pace() {
        return pace;
    }

    /** The stretch that is played over and over, real seconds from where the films are tied. */
    public Optional<Span> repeated() {
        return repeated;
    }

    /** Plays, or stands. */
    public void toggle() {
        if (plays()) {
            stop();
        } else {
            play();
        }
    }

    private void play() {
        playing = looked.get();
        if (playing.isEmpty()) {
            say.accept(Texts.of("film.none"));
            return;
        }
        rest.stop();
        InStep films = playing.get();
        atS = films.atS();
        if (repeated.isEmpty() && FilmClock.ended(atS, pace, films.whole())) {
            // at its end it begins again
            atS = pace.direction() == Pace.Direction.FORWARDS
                    ? films.whole().fromS()
                    : films.whole().toS();
        }
        lastNanos = 0;
        timer.start();
        listener.changed();
    }

    /** Stands, with the exact frames. */
    public void stop() {
        Optional<InStep> was = playing;
        playing = Optional.empty();
        timer.stop();
        rest.stop();
        was.ifPresent(films -> {
            films.rest();
            listener.changed();
        });
    }

    /** Another lesson or clip: nothing plays, nothing is repeated, no frame is asked for. */
    public void forget() {
        playing = Optional.empty();
        repeated = Optional.empty();
        timer.stop();
        rest.stop();
        listener.changed();
    }

    private void pulse(long now) {
        InStep films = playing.orElseThrow();
        double pulseS = lastNanos == 0 ? 0 : (now - lastNanos) / NANOS;
        lastNanos = now;
        atS = FilmClock.next(atS, pulseS, pace, films.whole(), films.readyS(), repeated);
        films.look(atS);
        listener.moved();
        if (repeated.isEmpty() && FilmClock.ended(atS, pace, films.whole())) {
            stop();
            films.parts().stream()
                    .map(p -> p.reel().film())
                    .map(QuickFilm::fault)
                    .flatMap(Optional::stream)
                    .findFirst()
                    .ifPresent(say);
        }
    }

    public void pace(Pace other) {
        pace = other;
        listener.changed();
    }

    /** @param span empty to play all of it once */
    public void repeat(Optional<Span> span) {
        repeated = span;
        listener.changed();
    }

    /** To a moment while the hand is on the strip. */
    void scrub(double realS) {
        if (plays()) {
            playing = Optional.empty();
            timer.stop();
            listener.changed();
        }
        looked.get().ifPresent(films -> {
            films.look(films.whole().within(realS));
            listener.moved();
            rest.playFromStart();
        });
    }
}

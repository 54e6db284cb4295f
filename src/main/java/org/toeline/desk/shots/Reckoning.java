package org.toeline.desk.shots;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.DoubleConsumer;
import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.util.Duration;
import org.toeline.desk.text.Texts;
import org.toeline.desk.work.Background;
import org.toeline.flight.Air;
import org.toeline.flight.RememberedFlights;
import org.toeline.flight.compare.GoesTogether;

/**
 * What follows from the shots, reckoned off the interface thread: how far it has come is told while it is long, it can
 * be stopped, and of what is typed fast only the latest is answered.
 */
final class Reckoning {

    /** So many shots are reckoned before anyone could read how far it has come. */
    private static final int LONG = 3000;

    private static final Duration LOOK_EVERY = Duration.millis(100);

    private final Background.Lane reckoning;
    private final Background.Lane pairing;
    private final DoubleConsumer progress;
    private final Timeline looking = new Timeline(new KeyFrame(LOOK_EVERY, e -> working()));
    private RememberedFlights through;
    private Reckoned reckoned = Reckoned.NOTHING;
    private Watch watch = new Watch(0);

    /** @param progress takes the share that is done, from 0 to 1, and −1 when nothing is being reckoned */
    Reckoning(Background background, Air air, DoubleConsumer progress) {
        this.reckoning = background.lane();
        this.pairing = background.lane();
        this.through = new RememberedFlights(air);
        this.progress = progress;
        looking.setCycleCount(Animation.INDEFINITE);
    }

    /** The latest that was reckoned. */
    Reckoned reckoned() {
        return reckoned;
    }

    /** What is to be said of the shots that do not count, or were not reckoned because somebody stopped it. */
    List<String> said() {
        List<String> said = new ArrayList<>();
        if (watch.stopped()) {
            said.add(Texts.of("shots.said.stopped", watch.done(), watch.all()));
        }
        if (reckoned.aside() > 0) {
            said.add(Texts.of("shots.said.aside", reckoned.aside()));
        }
        if (reckoned.impossible() > 0) {
            said.add(Texts.of("shots.said.impossible", reckoned.impossible()));
        }
        return said;
    }

    void stop() {
        watch.stop();
    }

    /** What was remembered of flights through other air is forgotten. */
    void through(Air air) {
        through = new RememberedFlights(air);
    }

    void setups(Reckoned.Asked mine, Reckoned.Against against, Runnable then) {
        watch.stop();
        Watch begun = new Watch(mine.shots().size());
        RememberedFlights flights = through;
        watch = begun;
        if (begun.all() > LONG) {
            looking.play();
        }
        reckoning.run(() -> Reckoned.of(mine, against, flights, begun), done -> {
            reckoned = done;
            looking.stop();
            progress.accept(-1);
            then.run();
        });
    }

    void lessons(PlayersShots lessons, Consumer<List<GoesTogether>> then) {
        RememberedFlights flights = through;
        pairing.run(() -> TogetherPane.of(lessons, flights), then);
    }

    private void working() {
        progress.accept((double) watch.done() / Math.max(1, watch.all()));
    }
}

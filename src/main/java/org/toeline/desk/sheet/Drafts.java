package org.toeline.desk.sheet;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.prefs.Preferences;
import org.toeline.assist.Movement;
import org.toeline.desk.lesson.LessonListener;
import org.toeline.desk.lesson.LessonModel;
import org.toeline.mark.BallMark;
import org.toeline.mark.Handedness;
import org.toeline.mark.View;
import org.toeline.video.Frame;

/**
 * Views whose clips arrive together are looked at by themselves, one after the other, as soon as the moment of address of each is
 * shown; once more when the coach says that the player plays from the other hand, and the tee when its ball was drawn by hand.
 */
public final class Drafts implements LessonListener {

    private static final String SETTING = "suggestsByItself";

    private final Preferences left = Preferences.userRoot().node("/org/toeline/desk");
    private final LessonModel model;
    private final Suggesting suggesting;
    private final ClipDrawer clips;
    private final Set<View> awaited = EnumSet.noneOf(View.class);
    private final Set<View> lookedThrough = EnumSet.noneOf(View.class);
    private Optional<View> going = Optional.empty();
    private Handedness hand;
    private Optional<BallMark> teed = Optional.empty();

    Drafts(LessonModel model, Suggesting suggesting, ClipDrawer clips) {
        this.model = model;
        this.suggesting = suggesting;
        this.clips = clips;
        this.hand = model.sheet().handedness();
        model.listen(this);
    }

    /** Whether the coach wants it. */
    public boolean wanted() {
        return left.getBoolean(SETTING, true);
    }

    public void want(boolean wanted) {
        left.putBoolean(SETTING, wanted);
        if (!wanted) {
            stop();
        }
    }

    /** Clips have come for these views, or have changed places. */
    void arrived(Set<View> views) {
        if (wanted()) {
            awaited.addAll(views);
            lookedThrough.removeAll(views);
        }
    }

    /** A view's clip was looked through for the moment of address. */
    void lookedThrough(View view) {
        lookedThrough.add(view);
        next();
    }

    /** Gives up what is awaited. */
    void stop() {
        awaited.clear();
    }

    /** The first of the views that are due, while none is being looked at. */
    void next() {
        if (going.isPresent()) {
            return;
        }
        awaited.stream().filter(this::isDue).findFirst().ifPresent(view -> {
            Frame frame = clips.toBeMarked(view).orElseThrow();
            awaited.remove(view);
            going = Optional.of(view);
            suggesting.draft(view, frame, () -> {
                going = Optional.empty();
                next();
            });
        });
    }

    /** A photograph is due at once, the tee also where nobody moves; else a moment of address must have been found. */
    private boolean isDue(View view) {
        boolean still = clips.has(view) && clips.reel(view).isEmpty();
        boolean address = lookedThrough.contains(view)
                && (view == View.TEE
                        || clips.movement(view).flatMap(Movement::address).isPresent());
        return (still || address)
                && clips.toBeMarked(view).isPresent()
                && model.sheet().view(view).isPresent();
    }

    @Override
    public void changed() {
        Handedness now = model.sheet().handedness();
        if (now != hand) {
            hand = now;
            for (View view : View.values()) {
                if (wanted() && suggesting.hand(view).filter(h -> h != now).isPresent()) {
                    awaited.add(view);
                }
            }
            next();
        }
        Optional<BallMark> ball =
                model.sheet().view(View.TEE).flatMap(v -> v.onlyAccepted().ball());
        boolean placed = teed.isEmpty() && ball.isPresent();
        teed = ball;
        // before a white shoe the ball is drawn by hand, and the rest is found beside it
        if (placed && wanted() && suggesting.hand(View.TEE).isPresent() && isBallAlone()) {
            awaited.add(View.TEE);
            next();
        }
    }

    private boolean isBallAlone() {
        return model.sheet().view(View.TEE).filter(v -> v.marks().isEmpty()).isPresent();
    }
}

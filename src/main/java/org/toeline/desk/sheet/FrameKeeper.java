package org.toeline.desk.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.animation.PauseTransition;
import javafx.util.Duration;
import org.toeline.desk.lesson.LessonModel;
import org.toeline.desk.records.AddressFrames;
import org.toeline.desk.records.Records;
import org.toeline.desk.work.Background;
import org.toeline.ledger.ClipMoment;
import org.toeline.ledger.store.place.LedgerPlace;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;
import org.toeline.video.Frame;

/**
 * Keeps the marked frames of the lesson on the desk as pictures, when the hand has rested for a while or the lesson leaves: so
 * that there is something to look at when a clip is gone. Only for a ledger of this machine: what is deleted from a server must
 * not be left in the folder of a bay.
 */
final class FrameKeeper implements LessonModel.Listener {

    private static final Logger LOG = Logger.getLogger(FrameKeeper.class.getName());
    private static final Duration RESTS = Duration.seconds(4);
    /** Times are written with three digits. */
    private static final double SAME_S = 0.001;

    /** Whose frame is kept. */
    private record Place(int lessonId, View view) {}

    /** The frame that is kept there. */
    private record Kept(String clip, int frame) {}

    private final LessonModel model;
    private final Records records;
    private final Background background;
    private final ClipDrawer clips;
    private final PauseTransition rest = new PauseTransition(RESTS);
    private final Map<Place, Kept> last = new HashMap<>();

    FrameKeeper(LessonModel model, Records records, Background background, ClipDrawer clips) {
        this.model = model;
        this.records = records;
        this.background = background;
        this.clips = clips;
        rest.setOnFinished(e -> keep());
    }

    @Override
    public void changed() {
        rest.playFromStart();
    }

    @Override
    public void settled() {
        rest.playFromStart();
    }

    /** In the background; before the lesson leaves the desk, while its frames are still there. */
    void keep() {
        rest.stop();
        due().forEach(work -> background.run(work, kept -> {}));
    }

    /** At once: the program ends. */
    void close() {
        rest.stop();
        due().forEach(work -> {
            try {
                work.call();
            } catch (Exception e) {
                LOG.log(Level.WARNING, "a frame could not be kept", e);
            }
        });
    }

    private List<Callable<View>> due() {
        OptionalInt id = records.lessonId();
        List<Callable<View>> work = new ArrayList<>();
        Optional<String> identity = records.identity();
        if (id.isEmpty()
                || identity.isEmpty()
                || !records.keeps()
                || !(records.settings().place() instanceof LedgerPlace.Folder place)) {
            return work;
        }
        model.lesson()
                .clips()
                .forEach((view, moment) -> clips.frame(view)
                        .filter(f -> isMarked(view, moment, f))
                        .filter(f -> isNew(new Place(id.getAsInt(), view), new Kept(moment.clip(), f.index())))
                        .ifPresent(f -> work.add(() -> {
                            AddressFrames.write(place, identity.get(), view, f.toImage());
                            return view;
                        })));
        return work;
    }

    private boolean isNew(Place where, Kept what) {
        return !what.equals(last.put(where, what));
    }

    /** The frame shown is the one that was marked. */
    private boolean isMarked(View view, ClipMoment moment, Frame frame) {
        boolean marked =
                model.sheet().view(view).filter(FrameKeeper::holdsAnything).isPresent();
        return marked
                && moment.seconds().isPresent()
                && Math.abs(moment.seconds().getAsDouble() - frame.seconds()) < SAME_S;
    }

    private static boolean holdsAnything(ViewMarks marks) {
        return !marks.marks().isEmpty() || marks.ball().isPresent();
    }
}

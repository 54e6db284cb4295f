package org.toeline.desk.sheet;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.animation.PauseTransition;
import javafx.util.Duration;
import org.toeline.desk.lesson.LessonListener;
import org.toeline.desk.lesson.LessonModel;
import org.toeline.desk.records.AddressFrames;
import org.toeline.desk.records.Records;
import org.toeline.desk.work.Background;
import org.toeline.ledger.store.place.LedgerPlace;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;
import org.toeline.video.Frame;

/**
 * Keeps the marked frames of the lesson on the desk as pictures, when the hand has rested for a while or the lesson leaves: so
 * that there is something to look at when a clip is gone. Only for a ledger of this machine: what is deleted from a server must
 * not be left in the folder of a bay.
 */
final class FrameKeeper implements LessonListener {

    private static final Logger LOG = Logger.getLogger(FrameKeeper.class.getName());
    private static final Duration RESTS = Duration.seconds(4);

    /** Whose frame is kept. */
    private record Place(String lesson, View view) {}

    /** The frame that is kept there. */
    private record Kept(String clip, int frame) {}

    /** A frame that is to be written. It counts as kept when it is. */
    private record Due(LedgerPlace.Folder in, Place where, Kept what, Frame frame) {

        void write() throws IOException {
            AddressFrames.write(in, where.lesson(), where.view(), frame.toImage());
        }
    }

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
        due().forEach(work -> background.run(
                () -> {
                    work.write();
                    return work;
                },
                written -> last.put(written.where(), written.what())));
    }

    /** At once: the program ends. */
    void close() {
        rest.stop();
        due().forEach(work -> {
            try {
                work.write();
            } catch (IOException e) {
                LOG.log(Level.WARNING, "a frame could not be kept", e);
            }
        });
    }

    private List<Due> due() {
        Optional<String> identity = records.identity();
        List<Due> work = new ArrayList<>();
        if (identity.isEmpty()
                || !records.keeps()
                || !(records.settings().place() instanceof LedgerPlace.Folder place)) {
            return work;
        }
        model.lesson()
                .clips()
                .forEach((view, moment) -> clips.frame(view)
                        .filter(f -> isMarked(view, f))
                        .map(f ->
                                new Due(place, new Place(identity.get(), view), new Kept(moment.clip(), f.index()), f))
                        .filter(d -> !d.what().equals(last.get(d.where())))
                        .ifPresent(work::add));
        return work;
    }

    /** Something is marked, and this is the picture it was marked on. */
    private boolean isMarked(View view, Frame frame) {
        boolean marked =
                model.sheet().view(view).filter(FrameKeeper::holdsAnything).isPresent();
        OptionalDouble at = clips.marked(view);
        return marked && at.isPresent() && at.getAsDouble() == frame.seconds();
    }

    private static boolean holdsAnything(ViewMarks marks) {
        return !marks.marks().isEmpty() || marks.ball().isPresent();
    }
}

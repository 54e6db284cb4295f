package org.toeline.desk;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import org.toeline.advice.Assessment;
import org.toeline.advice.Words;
import org.toeline.desk.lesson.LessonModel;
import org.toeline.desk.records.OwnRanges;
import org.toeline.desk.records.Records;
import org.toeline.desk.records.Settings;
import org.toeline.desk.screen.LessonDesk;
import org.toeline.desk.screen.Studio;
import org.toeline.desk.work.Background;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.store.rows.Player;
import org.toeline.mark.Club;
import org.toeline.mark.Handedness;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.View;
import org.toeline.video.Frame;

/** What a screen shares with the others, over a real ledger in a folder; what it asks the desk for is written down. */
public final class StudioForTests {

    private final LessonModel model = new LessonModel(Lesson.of(MarkSheet.empty(Handedness.RIGHT, Club.DRIVER)));
    private final CopyOnWriteArrayList<String> asked = new CopyOnWriteArrayList<>();
    private final OwnRanges ranges;
    private Map<View, Frame> frames = Map.of();
    private final Records records;
    private final Studio studio;

    public StudioForTests(Path folder, Consumer<String> say) {
        ranges = new OwnRanges(folder.resolve("ranges.json"));
        records = new Records(Settings.usual(folder), ranges::all, say::accept);
        studio = new Studio(
                model,
                new Asked(),
                records,
                new Background(say),
                this::assessment,
                () -> frames,
                ranges,
                Words::english,
                say,
                id -> asked.add("go " + id));
    }

    private Optional<Assessment> assessment() {
        return model.sheet().views().isEmpty()
                ? Optional.empty()
                : Optional.of(Assessment.of(model.sheet(), ranges.all()));
    }

    /** Puts a lesson on the desk, with the frame that each view shows. */
    public void open(Lesson lesson, Map<View, Frame> shown) {
        frames = Map.copyOf(shown);
        model.open(lesson, Optional.empty());
    }

    public Studio studio() {
        return studio;
    }

    public Records records() {
        return records;
    }

    public OwnRanges ranges() {
        return ranges;
    }

    /** What the screen asked the desk for, in order. */
    public CopyOnWriteArrayList<String> asked() {
        return asked;
    }

    public void close() {
        records.close();
    }

    private final class Asked implements LessonDesk {

        @Override
        public void open(int lessonId) {
            asked.add("lesson " + lessonId);
        }

        @Override
        public void open(Path document) {
            asked.add("document " + document.getFileName());
        }

        @Override
        public void fresh(Player player) {
            asked.add("fresh for " + player.id());
        }

        @Override
        public void sameSetup(int lessonId) {
            asked.add("same setup as " + lessonId);
        }

        @Override
        public void fresh() {
            asked.add("fresh");
        }
    }
}

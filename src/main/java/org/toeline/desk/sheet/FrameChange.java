package org.toeline.desk.sheet;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.toeline.advice.Words;
import org.toeline.assist.Follow;
import org.toeline.assist.Track;
import org.toeline.desk.bodymap.ItemNames;
import org.toeline.desk.lesson.FollowedMarks;
import org.toeline.desk.lesson.Item;
import org.toeline.desk.lesson.LessonModel;
import org.toeline.desk.text.Texts;
import org.toeline.desk.work.Background;
import org.toeline.desk.work.WorkLines;
import org.toeline.language.Written;
import org.toeline.mark.PinnedWords;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;
import org.toeline.video.Clip;
import org.toeline.video.Progress;

/** Another frame becomes the marked one: the marks follow what they were placed on, or are placed afresh. */
final class FrameChange {

    private final LessonModel model;
    private final Background background;
    private final ClipDrawer clips;
    private final Supplier<Words> words;
    private final Consumer<String> say;

    FrameChange(
            LessonModel model, Background background, ClipDrawer clips, Supplier<Words> words, Consumer<String> say) {
        this.model = model;
        this.background = background;
        this.clips = clips;
        this.words = words;
        this.say = say;
    }

    /** The frame shown, with nothing marked on it; the lens stays known. */
    void afresh(View view) {
        OptionalDouble to = clips.shown(view);
        Optional<ViewMarks> marks = model.sheet().view(view);
        if (to.isEmpty() || marks.isEmpty()) {
            say.accept(Texts.of("film.coming"));
            return;
        }
        model.markFrame(
                to.getAsDouble(),
                FollowedMarks.none(marks.get()),
                model.lesson().withoutWords(view).words());
        say.accept(Texts.of("away.afresh.done", seconds(to.getAsDouble())));
    }

    /** The frame shown, with the marks where what is under them has gone. */
    void follow(View view) {
        OptionalDouble from = clips.marked(view);
        OptionalDouble to = clips.shown(view);
        Optional<ViewMarks> marks = model.sheet().view(view);
        if (from.isEmpty() || to.isEmpty() || marks.isEmpty()) {
            say.accept(Texts.of("film.coming"));
            return;
        }
        follow(view, from.getAsDouble(), to.getAsDouble(), marks.get());
    }

    private void follow(View view, double fromS, double toS, ViewMarks marks) {
        WorkLines.Work work =
                clips.lines().begin(Texts.of("steady.following"), () -> say.accept(Texts.of("search.stopped")));
        var file = clips.file(view).orElseThrow();
        List<PinnedWords> pinned = model.lesson().words();
        background.run(() -> work.during(() -> followed(file, fromS, toS, marks, pinned, work)), found -> {
            // what was marked or shown meanwhile counts more
            if (!work.stopped()
                    && found.isPresent()
                    && model.sheet().view(view).equals(Optional.of(marks))
                    && model.lesson().words().equals(pinned)
                    && clips.marked(view).equals(OptionalDouble.of(fromS))) {
                model.markFrame(toS, found.get().marks(), found.get().words());
                say.accept(sentence(toS, found.get().lost()));
            }
        });
    }

    private static Optional<FollowedMarks> followed(
            java.nio.file.Path file,
            double fromS,
            double toS,
            ViewMarks marks,
            List<PinnedWords> pinned,
            Progress progress)
            throws Exception {
        try (Clip clip = Clip.open(file)) {
            Optional<List<Track>> tracks = Follow.to(
                    clip, clip.indexAt(fromS), clip.indexAt(toS), FollowedMarks.points(marks, pinned), progress);
            return tracks.map(t -> FollowedMarks.of(marks, pinned, t, clip.seconds(clip.indexAt(toS))));
        }
    }

    private String sentence(double toS, List<Item> lost) {
        return lost.isEmpty()
                ? Texts.of("away.follow.done", seconds(toS))
                : Texts.of(
                        "away.follow.lost",
                        seconds(toS),
                        lost.stream().map(i -> ItemNames.of(i, words.get())).collect(Collectors.joining(", ")));
    }

    private static String seconds(double s) {
        return Written.number("%.3f", s);
    }
}

package org.toeline.desk.sheet;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.toeline.advice.Words;
import org.toeline.assist.AddressFinder;
import org.toeline.assist.Follow;
import org.toeline.assist.StillSpan;
import org.toeline.assist.Track;
import org.toeline.desk.lesson.LessonModel;
import org.toeline.desk.text.Texts;
import org.toeline.desk.work.Background;
import org.toeline.desk.work.WorkLines;
import org.toeline.language.Written;
import org.toeline.mark.Mark;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;
import org.toeline.video.Clip;
import org.toeline.video.Progress;
import org.toeline.video.SlowMotion;

/**
 * Follows a view's marks through the span in which the player stands still, puts each where it is on the average, and says how
 * much the player swayed and which marks drifted off. Those stay where they are.
 */
final class Steadier {

    private final LessonModel model;
    private final Background background;
    private final ClipDrawer clips;
    private final Supplier<Words> words;
    private final Consumer<String> say;
    private Optional<WorkLines.Work> going = Optional.empty();

    Steadier(LessonModel model, Background background, ClipDrawer clips, Supplier<Words> words, Consumer<String> say) {
        this.model = model;
        this.background = background;
        this.clips = clips;
        this.words = words;
        this.say = say;
    }

    void steady() {
        View of = model.large();
        Optional<Path> file = clips.file(of);
        Optional<ViewMarks> marks = model.marks(of).filter(v -> !v.marks().isEmpty() && !model.repeating(of));
        if (file.isEmpty() || marks.isEmpty()) {
            say.accept(Texts.of("steady.nothing"));
            return;
        }
        double at = clips.marked(of).orElseThrow();
        SlowMotion filmed = clips.slowMotion(of);
        stop();
        WorkLines.Work work =
                clips.lines().begin(Texts.of("steady.following"), () -> say.accept(Texts.of("search.stopped")));
        going = Optional.of(work);
        background.run(() -> work.during(() -> tracks(file.get(), filmed, at, marks.get(), work)), tracks -> {
            if (work.stopped()) {
                return;
            }
            going = Optional.empty();
            if (tracks.isEmpty()) {
                say.accept(Texts.of("steady.not-still"));
            } else if (model.sheet().view(of).equals(marks)) {
                put(marks.get(), tracks.get());
            }
        });
    }

    /** Gives it up; answers whether it was going on. */
    boolean stop() {
        Optional<WorkLines.Work> was = going;
        going = Optional.empty();
        was.ifPresent(WorkLines.Work::stop);
        return was.isPresent();
    }

    private static Optional<List<Track>> tracks(
            Path file, SlowMotion filmed, double at, ViewMarks marks, Progress progress) throws Exception {
        try (Clip clip = Clip.open(file)) {
            Optional<StillSpan> span = AddressFinder.find(clip, filmed, progress)
                    .filter(s -> s.startSeconds() <= at && at <= s.endSeconds());
            return span.isEmpty()
                    ? Optional.empty()
                    : Follow.through(
                            clip,
                            span.get(),
                            at,
                            marks.marks().stream().map(Mark::at).toList(),
                            progress);
        }
    }

    private void put(ViewMarks marks, List<Track> tracks) {
        ViewMarks steady = marks;
        for (int i = 0; i < tracks.size(); i++) {
            Mark mark = marks.marks().get(i);
            if (tracks.get(i).held()) {
                steady =
                        steady.withMark(new Mark(mark.landmark(), tracks.get(i).mean(), mark.sigmaPx(), mark.origin()));
            }
        }
        model.apply(model.sheet().withView(steady));
        say.accept(sentence(marks.marks(), tracks, words.get()));
    }

    /** How it went, with the names of the mark that swayed most and of those that drifted off. */
    static String sentence(List<Mark> marks, List<Track> tracks, Words words) {
        List<String> drifted = new ArrayList<>();
        for (int i = 0; i < tracks.size(); i++) {
            if (!tracks.get(i).held()) {
                drifted.add(Texts.of(
                        "steady.drifted."
                                + tracks.get(i)
                                        .outcome()
                                        .name()
                                        .toLowerCase(Locale.ROOT)
                                        .replace('_', '-'),
                        words.name(marks.get(i).landmark())));
            }
        }
        String sway = Follow.sway(tracks)
                .map(s -> px(Math.hypot(s.acrossPx(), s.upPx())))
                .orElse("0.0");
        String done = Texts.of("steady.done", tracks.size() - drifted.size(), tracks.size(), sway);
        Optional<String> most = IntStream.range(0, tracks.size())
                .boxed()
                .filter(i -> tracks.get(i).held())
                .max(Comparator.comparingDouble(i -> spreadPx(tracks.get(i))))
                .map(i -> " "
                        + Texts.of("steady.most", words.name(marks.get(i).landmark()), px(spreadPx(tracks.get(i)))));
        return done
                + most.orElse("")
                + (drifted.isEmpty() ? "" : " " + Texts.of("steady.drifted", String.join(", ", drifted)));
    }

    private static double spreadPx(Track track) {
        return Math.hypot(track.spreadXPx().orElse(0), track.spreadYPx().orElse(0));
    }

    private static String px(double px) {
        return Written.number("%.1f", px);
    }
}

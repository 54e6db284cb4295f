package org.toeline.desk.sheet;

import java.io.IOException;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.toeline.assist.ViewSuggestion;
import org.toeline.assist.learn.CorrectionBook;
import org.toeline.assist.learn.Shown;
import org.toeline.desk.lesson.LessonListener;
import org.toeline.desk.lesson.LessonModel;
import org.toeline.desk.records.OwnCorrections;
import org.toeline.desk.text.Texts;
import org.toeline.document.OwnDocument;
import org.toeline.ledger.ClipMoment;
import org.toeline.mark.Handedness;
import org.toeline.mark.Landmark;
import org.toeline.mark.Mark;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;

/**
 * Learns from where the coach has suggested landmarks of the body in the end: when the lesson leaves the desk, what was shown as a
 * suggestion of the frame that is still the marked one is held against the marks that are placed by then. Undone, refused and
 * not looked at is nothing; a lesson that was cut off by the program's being killed is not learnt from.
 */
public final class Learning implements LessonListener {

    /** What was suggested of one view. */
    private static final class Watched {

        final Map<Landmark, Shown> suggested = new EnumMap<>(Landmark.class);
        /** Of these, what stood on the sheet as a suggestion. */
        final Set<Landmark> seen = EnumSet.noneOf(Landmark.class);
        /** On which frame it stood. */
        Optional<ClipMoment> frame = Optional.empty();
    }

    private final Map<View, Watched> views = new EnumMap<>(View.class);
    private final LessonModel model;
    private final OwnCorrections own;
    private final Consumer<String> say;

    Learning(LessonModel model, OwnCorrections own, Consumer<String> say) {
        this.model = model;
        this.own = own;
        this.say = say;
        model.listen(this);
    }

    /** What is kept of it. */
    public OwnCorrections own() {
        return own;
    }

    /** What the program sees in a view, with the landmarks where this coach would mark them; they are watched from now on. */
    ViewSuggestion suggested(View of, Handedness hand, ViewSuggestion seen) {
        ViewSuggestion shown = own.book().onto(seen, of, hand);
        Watched before = Optional.ofNullable(views.remove(of)).orElseGet(Watched::new);
        Watched watched = new Watched();
        // what the coach answered of this frame stays answered
        before.seen.stream()
                .filter(l -> isAt(of, before.frame) && placed(of, l).isPresent())
                .forEach(l -> {
                    watched.suggested.put(
                            l, Optional.ofNullable(before.suggested.get(l)).orElseThrow());
                    watched.seen.add(l);
                    watched.frame = before.frame;
                });
        seen.spanPx().ifPresent(span -> {
            for (int i = 0; i < seen.landmarks().size(); i++) {
                Mark mark = seen.landmarks().get(i);
                if (OntoView.isOfTheBody(mark)) {
                    watched.suggested.putIfAbsent(
                            mark.landmark(),
                            new Shown(of, mark, shown.landmarks().get(i), span, hand));
                }
            }
        });
        views.put(of, watched);
        return shown;
    }

    @Override
    public void changed() {
        views.forEach((view, watched) -> model.sheet().view(view).ifPresent(v -> watch(v, watched)));
    }

    private void watch(ViewMarks view, Watched watched) {
        for (Mark mark : view.marks()) {
            boolean there = mark.origin() == Mark.Origin.SUGGESTED
                    && Optional.ofNullable(watched.suggested.get(mark.landmark()))
                            .filter(s -> s.shown().equals(mark))
                            .isPresent();
            if (there) {
                watched.seen.add(mark.landmark());
                if (watched.frame.isEmpty()) {
                    watched.frame = Optional.ofNullable(model.lesson().clips().get(view.view()));
                }
            }
        }
    }

    private boolean isAt(View view, Optional<ClipMoment> frame) {
        ClipMoment now = model.lesson().clips().get(view);
        return now != null
                && frame.filter(f -> f.clip().equals(now.clip()) && f.seconds().equals(now.seconds()))
                        .isPresent();
    }

    private Optional<Mark> placed(View view, Landmark landmark) {
        return model.sheet().view(view).flatMap(v -> v.mark(landmark)).filter(m -> m.origin() == Mark.Origin.PLACED);
    }

    /** The lesson leaves the desk: what it tells is kept. */
    void leave() {
        try {
            if (!told(CorrectionBook.EMPTY).equals(CorrectionBook.EMPTY)) {
                String remark = own.add(this::told);
                if (!remark.isEmpty()) {
                    say.accept(remark);
                }
            }
        } catch (IOException e) {
            say.accept(Texts.of("corrections.not-kept", own.file(), OwnDocument.reason(e)));
        } finally {
            views.clear();
        }
    }

    private CorrectionBook told(CorrectionBook book) {
        CorrectionBook told = book;
        for (Map.Entry<View, Watched> entry : views.entrySet()) {
            View view = entry.getKey();
            Watched watched = entry.getValue();
            if (!isAt(view, watched.frame)) {
                continue;
            }
            for (Landmark landmark : watched.seen) {
                Shown shown =
                        Optional.ofNullable(watched.suggested.get(landmark)).orElseThrow();
                Optional<Mark> mark = placed(view, landmark)
                        .filter(m -> shown.hand() == model.sheet().handedness());
                if (mark.isPresent()) {
                    Shown.Look look =
                            model.suggestions().lookedAt(view, landmark) ? Shown.Look.ALONE : Shown.Look.OTHERWISE;
                    told = shown.onto(told, mark.get(), look);
                }
            }
        }
        return told;
    }

    /** Nothing that was learnt counts any more, nor what is on the desk now. */
    public void forget() throws IOException {
        views.clear();
        own.forget();
    }
}

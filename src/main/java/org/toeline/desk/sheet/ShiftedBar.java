package org.toeline.desk.sheet;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.toeline.assist.Movement;
import org.toeline.assist.ShiftedFrame;
import org.toeline.desk.lesson.LessonModel;
import org.toeline.desk.screen.Controls;
import org.toeline.desk.text.Texts;
import org.toeline.desk.work.Background;
import org.toeline.geometry.ImagePoint;
import org.toeline.language.Written;
import org.toeline.mark.Mark;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;
import org.toeline.video.Clip;
import org.toeline.video.ClipException;
import org.toeline.video.Progress;

/**
 * Over the picture of a view whose marks seem to belong to another frame than the one they are kept with, as earlier versions
 * could leave them: says so and asks, once for each lesson and view.
 */
final class ShiftedBar extends OverPicture {

    private final LessonModel model;
    private final ClipDrawer clips;
    private final Background background;
    private final Map<View, Double> found = new EnumMap<>(View.class);
    private final Set<View> looked = EnumSet.noneOf(View.class);

    /** @param rest what is done afterwards: the hand goes back to the picture */
    ShiftedBar(LessonModel model, ClipDrawer clips, Background background, Runnable rest) {
        super("shifted");
        this.model = model;
        this.clips = clips;
        this.background = background;
        actions(
                Controls.button("shifted-take", "shifted.take", () -> {
                    rest.run();
                    take();
                }),
                Controls.button("shifted-leave", "shifted.leave", () -> {
                    rest.run();
                    sure(model.large());
                }));
    }

    /** Another lesson. */
    void forget() {
        found.clear();
        looked.clear();
        update();
    }

    /** A view's clip was looked through: once, its marks are too. */
    void lookedThrough(View view) {
        Optional<Movement> movement = clips.movement(view);
        Optional<ViewMarks> marks = model.sheet().view(view).filter(v -> model.begun(view));
        boolean asked = model.lesson().framesSure().contains(view.id());
        if (movement.isEmpty() || marks.isEmpty() || clips.marked(view).isEmpty() || asked || !looked.add(view)) {
            return;
        }
        var file = clips.file(view).orElseThrow();
        double kept = clips.marked(view).orElseThrow();
        List<ImagePoint> points = marks.get().marks().stream().map(Mark::at).toList();
        background.run(() -> shifted(file, kept, movement.get(), points), belongs -> {
            boolean same = model.sheet().view(view).equals(marks)
                    && clips.file(view).filter(file::equals).isPresent();
            belongs.filter(s -> same).ifPresent(s -> {
                found.put(view, s);
                update();
            });
        });
    }

    private static Optional<Double> shifted(
            java.nio.file.Path file, double kept, Movement movement, List<ImagePoint> points) throws ClipException {
        try (Clip clip = Clip.open(file)) {
            return ShiftedFrame.belongsTo(clip, kept, movement.moments(), points, Progress.NONE);
        }
    }

    private void take() {
        View view = model.large();
        Double to = found.get(view);
        Optional<ViewMarks> marks = model.sheet().view(view);
        if (to != null && marks.isPresent()) {
            sure(view);
            model.markFrame(to, marks.get(), model.lesson().words());
        }
    }

    private void sure(View view) {
        found.remove(view);
        model.describe(l -> l.withFramesSure((l.framesSure() + " " + view.id()).strip()));
        update();
    }

    void update() {
        Double belongs = found.get(model.large());
        setVisible(belongs != null);
        if (belongs != null) {
            said.setText(Texts.of(
                    "shifted.text",
                    Written.number("%.3f", clips.marked(model.large()).orElse(0)),
                    Written.number("%.3f", belongs)));
        }
    }
}

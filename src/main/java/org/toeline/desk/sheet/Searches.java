package org.toeline.desk.sheet;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;
import org.toeline.desk.lesson.Item;
import org.toeline.desk.lesson.LessonModel;
import org.toeline.desk.lesson.Marking;
import org.toeline.desk.text.Texts;
import org.toeline.desk.work.Background;
import org.toeline.desk.work.WorkLines;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;
import org.toeline.video.Frame;

/**
 * What is being looked for in a picture, a line each that tells so: one search for each thing of each view, a later one in
 * place of an earlier one. An answer counts only while the picture and the thing are as they were when it was asked for, so that
 * it goes to what it was asked for or nowhere.
 */
final class Searches {

    /** A thing of a view; no item for the whole player. */
    private record Target(View view, Optional<Item> item) {}

    private record Search(BooleanSupplier stands, boolean again, List<ImagePoint> was, WorkLines.Work line) {}

    private final LessonModel model;
    private final Background background;
    private final ClipDrawer clips;
    private final Consumer<String> say;
    private final Map<Target, Search> going = new HashMap<>();

    Searches(LessonModel model, Background background, ClipDrawer clips, Consumer<String> say) {
        this.model = model;
        this.background = background;
        this.clips = clips;
        this.say = say;
    }

    /**
     * Looks for one thing of a view.
     *
     * @param what the line that tells of it
     */
    <T> void run(View of, Item item, Frame in, String what, Supplier<T> work, Consumer<T> then) {
        run(new Target(of, Optional.of(item)), isShown(of, in), what, stopped -> work.get(), then);
    }

    /** Looks for all there is in a view, and may be asked whether it is still wanted. */
    <T> void run(View of, Frame in, String what, Function<BooleanSupplier, T> work, Consumer<T> then) {
        run(of, isShown(of, in), what, work, then);
    }

    /** @param stands whether the answer still counts */
    <T> void run(View of, BooleanSupplier stands, String what, Function<BooleanSupplier, T> work, Consumer<T> then) {
        run(new Target(of, Optional.empty()), stands, what, work, then);
    }

    private BooleanSupplier isShown(View of, Frame in) {
        return () -> clips.frame(of).filter(f -> f == in).isPresent();
    }

    private <T> void run(
            Target target, BooleanSupplier stands, String what, Function<BooleanSupplier, T> work, Consumer<T> then) {
        stop(target::equals);
        WorkLines.Work line = clips.lines().begin(what, () -> {
            going.remove(target);
            say.accept(Texts.of("search.stopped"));
        });
        Search search = new Search(stands, model.repeating(target.view()), was(target), line);
        going.put(target, search);
        background.run(() -> line.during(() -> work.apply(line::stopped)), found -> {
            if (going.remove(target, search) && stands(target, search)) {
                then.accept(found);
            }
        });
    }

    /** What is suggested meanwhile is none of the hand's. */
    private List<ImagePoint> was(Target target) {
        return model.marks(target.view())
                .map(ViewMarks::onlyAccepted)
                .flatMap(v -> target.item().map(i -> Marking.handles(v, i)))
                .orElse(List.of());
    }

    private boolean stands(Target target, Search search) {
        return search.stands().getAsBoolean()
                && search.again() == model.repeating(target.view())
                && search.was().equals(was(target));
    }

    /** Ends all of them without an answer; whether there was one. */
    boolean stop() {
        return stop(target -> true);
    }

    private boolean stop(Predicate<Target> which) {
        Optional<Target> any = going.keySet().stream().filter(which).findFirst();
        going.entrySet().removeIf(e -> {
            if (which.test(e.getKey())) {
                e.getValue().line().stop();
                return true;
            }
            return false;
        });
        return any.isPresent();
    }
}

package org.toeline.desk.sheet;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.toeline.desk.dialog.DialogFrame;
import org.toeline.desk.keys.Act;
import org.toeline.desk.lesson.LessonModel;
import org.toeline.desk.text.Texts;
import org.toeline.mark.View;

/**
 * Clips that come onto the sheet: one for a view, or several at once for the views in their order; one that takes another's place
 * does so knowingly.
 */
final class Arrivals {

    private final Sheet sheet;
    private final LessonModel model;
    private final ClipDrawer clips;

    private final ArrivedBar which;

    Arrivals(Sheet sheet, ArrivedBar which) {
        this.sheet = sheet;
        this.which = which;
        this.model = sheet.model();
        this.clips = sheet.clips();
    }

    /** @param onto the view one clip is meant for */
    void arrived(List<Path> files, View onto) {
        if (files.size() == 1) {
            one(onto, files.get(0));
        } else if (!files.isEmpty()) {
            several(files);
        }
    }

    private void one(View view, Path file) {
        Optional<View> already = model.lesson().clips().entrySet().stream()
                .filter(clip -> clip.getKey() != view)
                .filter(clip -> isOne(KeptClips.resolved(clip.getValue(), model.file()), file))
                .map(Map.Entry::getKey)
                .findFirst();
        if (already.isPresent()) {
            sheet.say(Texts.of("replace.twice", file.getFileName(), name(already.get())));
        } else if (model.begun(view)) {
            ask(view, file);
        } else {
            clips.choose(view, file);
        }
    }

    private static boolean isOne(Path file, Path other) {
        try {
            return Files.isSameFile(file, other);
        } catch (IOException e) {
            // one of them is not there
            return file.toAbsolutePath()
                    .normalize()
                    .equals(other.toAbsolutePath().normalize());
        }
    }

    private static String name(View view) {
        return Texts.of("view." + view.id());
    }

    private void ask(View view, Path file) {
        new DialogFrame(sheet.root().getScene().getWindow(), Texts.of("replace.title"))
                .heading(Texts.of("replace.heading", name(view), file.getFileName()))
                .text(Texts.of("replace.same"))
                .text(Texts.of("replace.other"))
                .choice("replace-keep", Texts.of("replace.keep"), () -> clips.sameFilm(view, file))
                .choice("replace-afresh", Texts.of("replace.afresh"), () -> clips.choose(view, file))
                .leave(Texts.of("replace.leave"))
                .show();
    }

    /** In the order of what their names say, else in that of the views; said, since it is only likely. */
    private void several(List<Path> files) {
        for (View view : View.values()) {
            if (model.begun(view)) {
                sheet.say(Texts.of("drop.marked"));
                return;
            }
        }
        View[] views = View.values();
        List<String> said = new ArrayList<>();
        Map<View, Path> placed = Named.placed(files.subList(0, Math.min(views.length, files.size())));
        placed.forEach((view, file) -> said.add(Texts.of("drop.one", name(view), file.getFileName())));
        model.show(placed.keySet().iterator().next());
        clips.chooseAll(placed);
        sheet.assistant().drafts().arrived(placed.keySet());
        String key = sheet.keyBook().key(Act.EXCHANGE).getDisplayText();
        String many = files.size() > views.length ? Texts.of("drop.too-many", files.size()) + " " : "";
        which.ask(many + Texts.of("drop.several", String.join(", ", said), key));
    }

    /** The face-on and the down-the-line clip change places. */
    void exchange() {
        boolean both = clips.has(View.FACE_ON) && clips.has(View.DOWN_THE_LINE);
        if (!both || model.begun(View.FACE_ON) || model.begun(View.DOWN_THE_LINE)) {
            sheet.say(Texts.of(both ? "exchange.marked" : "exchange.one"));
            return;
        }
        model.exchangeClips();
        sheet.assistant().drafts().arrived(Set.of(View.FACE_ON, View.DOWN_THE_LINE));
        which.answered();
        sheet.say(Texts.of("exchange.done"));
    }

    /** What the names of files say of their views. */
    private static final class Named {

        private static final List<List<String>> SAYING = List.of(
                List.of("face", "front", "vorn"), List.of("line", "dtl", "hinten", "ziel"), List.of("tee", "ball"));

        static Map<View, Path> placed(List<Path> files) {
            List<Path> left = new ArrayList<>(files);
            Map<View, Path> placed = new EnumMap<>(View.class);
            for (View view : View.values()) {
                left.stream()
                        .filter(f -> SAYING.get(view.ordinal()).stream()
                                .anyMatch(f.getFileName().toString().toLowerCase(Locale.ROOT)::contains))
                        .findFirst()
                        .ifPresent(named -> {
                            left.remove(named);
                            placed.put(view, named);
                        });
            }
            for (View view : View.values()) {
                if (!placed.containsKey(view) && !left.isEmpty()) {
                    placed.put(view, left.remove(0));
                }
            }
            return placed;
        }
    }
}

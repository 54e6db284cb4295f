package org.toeline.desk.shots;

import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.toeline.desk.screen.Studio;
import org.toeline.flight.Shot;
import org.toeline.ledger.Lesson;

/**
 * Keeps the shots of the lesson on the desk. A lesson that is not in the ledger yet goes there with its first shot, as it
 * would with its first mark.
 */
final class ShotKeeping {

    private final Studio studio;
    private final Consumer<List<TypedShot>> opened;
    private OptionalInt loaded = OptionalInt.empty();
    private @Nullable List<Shot> waiting;

    /** @param opened is given the rows when another lesson is on the desk */
    ShotKeeping(Studio studio, Consumer<List<TypedShot>> opened) {
        this.studio = studio;
        this.opened = opened;
        studio.records().listen(this::lessonChanged);
    }

    /** The lesson whose shots are shown; empty while it is not in the ledger. */
    OptionalInt lessonId() {
        return loaded;
    }

    void keep(List<Shot> shots) {
        OptionalInt lesson = studio.records().lessonId();
        if (lesson.isPresent()) {
            loaded = lesson;
            waiting = null;
            put(lesson.getAsInt(), shots);
        } else {
            waiting = shots;
            studio.records().keep(dated(studio.model().lesson()));
        }
    }

    private void put(int lesson, List<Shot> shots) {
        studio.records()
                .ask(
                        ledger -> {
                            ledger.keepShots(lesson, shots);
                            return true;
                        },
                        done -> {});
    }

    /** The day tells lessons without marks apart. */
    private static Lesson dated(Lesson lesson) {
        return lesson.recorded().isPresent()
                ? lesson
                : lesson.withRecorded(OffsetDateTime.now().truncatedTo(ChronoUnit.SECONDS));
    }

    /** Looks which lesson is on the desk. */
    void lessonChanged() {
        OptionalInt now = studio.records().lessonId();
        if (waiting != null && now.isPresent()) {
            List<Shot> shots = waiting;
            waiting = null;
            loaded = now;
            put(now.getAsInt(), shots);
        } else if (now.isPresent() && !now.equals(loaded)) {
            loaded = now;
            int lesson = now.getAsInt();
            studio.records().ask(l -> ShotsModel.rowsOf(l.shots(lesson)), rows -> {
                if (loaded.equals(OptionalInt.of(lesson))) {
                    opened.accept(rows);
                }
            });
        } else if (now.isEmpty() && (loaded.isPresent() || studio.records().failed())) {
            loaded = OptionalInt.empty();
            waiting = null;
            opened.accept(List.of());
        }
    }

    /** Why shots are not kept now, if they are not. */
    Optional<String> unable() {
        return studio.records().failed()
                ? Optional.of(org.toeline.desk.text.Texts.of("shots.not-kept"))
                : Optional.empty();
    }
}

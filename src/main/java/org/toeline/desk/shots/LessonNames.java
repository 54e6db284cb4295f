package org.toeline.desk.shots;

import java.util.Optional;
import java.util.regex.Pattern;
import org.toeline.advice.Words;
import org.toeline.desk.text.Days;
import org.toeline.desk.text.Texts;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.store.rows.Player;

/** What lessons are called on this screen. */
record LessonNames(Words words) {

    private static final int LONGEST_NOTE = 40;
    private static final int SHORT = 2;
    /** A setup's name longer than this is shown by its beginning and its end. */
    private static final int LONGEST_SETUP = 30;

    private static final int END = 10;
    /** What ends a line, and what turns round the writing of all that follows. */
    private static final Pattern UNSHOWN = Pattern.compile("[\\p{Cc}\u200E\u200F\u202A-\u202E\u2066-\u2069]+");

    String title(Optional<Player> player, Optional<PlayersShots.OfLesson> own, Lesson lesson) {
        String who =
                player.flatMap(p -> p.details().name()).or(lesson::playerName).orElse(Texts.of("shots.nobody"));
        String day = own.flatMap(PlayersShots.OfLesson::day)
                .or(() -> lesson.recorded().map(t -> t.toLocalDate().toString()))
                .map(d -> ", " + day(d))
                .orElse("");
        return Texts.of("shots.title", who, day, words.name(lesson.sheet().club()));
    }

    String own(Optional<PlayersShots.OfLesson> lesson) {
        return Texts.of(
                "shots.this-lesson",
                lesson.flatMap(PlayersShots.OfLesson::day)
                        .map(d -> ", " + day(d))
                        .orElse(""));
    }

    String shortly(PlayersShots.OfLesson lesson) {
        return lesson.day()
                .map(d -> Texts.of("shots.other-lesson", day(d)))
                .orElseGet(() -> Texts.of("shots.other-lesson.number", String.valueOf(lesson.lessonId())));
    }

    /** A letter or a number says more with a word beside it. */
    static String setup(String label) {
        String line = line(label);
        return line.length() > SHORT ? line : Texts.of("shots.setup", line);
    }

    /** What a table calls something, on one line and not too long. */
    static String line(String label) {
        String line = UNSHOWN.matcher(label).replaceAll(" ").strip();
        int length = line.codePointCount(0, line.length());
        if (length <= LONGEST_SETUP) {
            return line;
        }
        String first = line.substring(0, line.offsetByCodePoints(0, LONGEST_SETUP - END - 1));
        return first.strip() + "…"
                + line.substring(line.offsetByCodePoints(0, length - END)).strip();
    }

    private static String day(String iso) {
        return Days.of(iso).orElse(iso);
    }

    String choice(PlayersShots.OfLesson lesson) {
        String notes = lesson.notes().strip().lines().findFirst().orElse("");
        String shortened = notes.length() > LONGEST_NOTE ? notes.substring(0, LONGEST_NOTE - 1) + "…" : notes;
        return Texts.of(
                        "shots.compare.choice",
                        shortly(lesson),
                        words.name(lesson.club()),
                        lesson.shots().size())
                + (shortened.isEmpty() ? "" : " · " + shortened);
    }
}

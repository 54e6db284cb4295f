package org.toeline.desk.shots;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.toeline.desk.screen.Studio;
import org.toeline.desk.text.Texts;
import org.toeline.flight.Shot;
import org.toeline.flight.compare.SetupComparison;
import org.toeline.ledger.store.rows.Player;
import org.toeline.mark.Club;

/** With which lesson of the player the shots are compared: the nearest in time until the coach chooses one, or none. */
final class OtherLesson {

    private record LookedUp(Optional<Player> player, PlayersShots shots) {}

    private final Studio studio;
    private final ShotKeeping keeping;
    private final Runnable changed;
    private PlayersShots all;
    private Optional<Player> player = Optional.empty();
    private Optional<PlayersShots.OfLesson> other = Optional.empty();
    private boolean chosen;

    /** @param changed done when it is another, or more is known of the player's lessons */
    OtherLesson(Studio studio, ShotKeeping keeping, Runnable changed) {
        this.studio = studio;
        this.keeping = keeping;
        this.changed = changed;
        this.all = PlayersShots.none(studio.model().sheet().club());
    }

    /** Another lesson is on the desk: nothing is chosen for it yet. */
    void forget() {
        chosen = false;
        other = Optional.empty();
    }

    void choose(Optional<PlayersShots.OfLesson> lesson) {
        chosen = true;
        other = lesson;
        changed.run();
    }

    /** The player, and the lessons that can be compared with. */
    void lookUp() {
        OptionalInt whose = studio.records().playerId();
        OptionalInt lesson = keeping.lessonId();
        Club club = studio.model().sheet().club();
        if (whose.isEmpty() || lesson.isEmpty()) {
            player = Optional.empty();
            found(PlayersShots.none(club));
            return;
        }
        int id = lesson.getAsInt();
        studio.records()
                .ask(
                        l -> {
                            Optional<Player> named = l.player(whose.getAsInt());
                            return new LookedUp(named, PlayersShots.read(l, whose.getAsInt(), id, club));
                        },
                        read -> {
                            if (keeping.lessonId().equals(lesson)) {
                                player = read.player;
                                found(read.shots);
                            }
                        });
    }

    private void found(PlayersShots read) {
        all = read;
        other = chosen ? other.flatMap(o -> all.lesson(o.lessonId())) : all.nearest(own());
        changed.run();
    }

    private int own() {
        return keeping.lessonId().orElse(0);
    }

    private LessonNames names() {
        return new LessonNames(studio.words().get());
    }

    String title() {
        return names().title(player, all.lesson(own()), studio.model().lesson());
    }

    List<DifferencesPane.Choice> choices() {
        List<DifferencesPane.Choice> choices = new ArrayList<>();
        choices.add(new DifferencesPane.Choice(Optional.empty(), Texts.of("shots.compare.nothing")));
        all.lessons().stream()
                .filter(l -> l.lessonId() != own() && !l.shots().isEmpty())
                .forEach(l -> choices.add(new DifferencesPane.Choice(Optional.of(l), names().choice(l))));
        return choices;
    }

    Optional<PlayersShots.OfLesson> lesson() {
        return other;
    }

    /** Whether it was held before the lesson on the desk. */
    boolean isEarlier() {
        return other.isPresent() && other.get().lessonId() < own();
    }

    Reckoned.Asked mine(List<Shot> shots) {
        return new Reckoned.Asked(names().own(all.lesson(own())), shots);
    }

    Optional<Reckoned.Asked> theirs() {
        return other.map(o -> new Reckoned.Asked(names().shortly(o), o.shots()));
    }

    /** All of the player's, with the shots on the desk in the lesson's place. */
    PlayersShots allWith(List<Shot> shots) {
        return all.withShots(own(), shots);
    }

    /** What was to be expected of what changed in the setup from the earlier of the two to the later. */
    List<String> expectations(Optional<SetupComparison> comparison) {
        Optional<PlayersShots.OfLesson> mine = all.lesson(own());
        if (mine.isEmpty() || other.isEmpty() || comparison.isEmpty()) {
            return List.of();
        }
        return new ExpectationWords(studio.words().get())
                .of(isEarlier() ? other.get() : mine.get(), isEarlier() ? mine.get() : other.get(), comparison.get());
    }
}

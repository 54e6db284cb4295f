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

/**
 * With what the shots are compared, until the coach chooses: two setups of the lesson itself where its shots name them, else
 * the player's nearest lesson in time.
 */
final class ComparedWith {

    /** Of more setups than that, each is only compared with the first: nobody looks through more pairs. */
    private static final int ALL_PAIRS = 5;

    private record LookedUp(Optional<Player> player, PlayersShots shots) {}

    private final Studio studio;
    private final ShotKeeping keeping;
    private final Runnable changed;
    private PlayersShots all;
    private Optional<Player> player = Optional.empty();
    private Comparing comparing = new Comparing.Nothing();
    /** Those of the lesson's shots, in the order in which they were first hit. */
    private List<String> setups = List.of();

    private boolean chosen;

    /** @param changed done when it is another, or more is known of the player's lessons */
    ComparedWith(Studio studio, ShotKeeping keeping, Runnable changed) {
        this.studio = studio;
        this.keeping = keeping;
        this.changed = changed;
        this.all = PlayersShots.none(studio.model().sheet().club());
    }

    /** Another lesson is on the desk: nothing is chosen for it yet. */
    void forget() {
        chosen = false;
        comparing = new Comparing.Nothing();
    }

    void choose(Comparing wanted) {
        chosen = true;
        comparing = wanted;
        changed.run();
    }

    /**
     * With which setups the shots of the lesson say by now that they were hit.
     *
     * @return whether others than before
     */
    boolean of(List<String> now) {
        if (now.equals(setups)) {
            return false;
        }
        setups = now;
        chosen = chosen && !(now.size() > 1 && lesson().isEmpty());
        settle();
        return true;
    }

    /** Whether any shot says with which setup it was hit. */
    boolean namesSetups() {
        return !setups.isEmpty();
    }

    /** What was chosen stays as long as it is there. */
    private void settle() {
        if (chosen && comparing instanceof Comparing.Lesson lesson) {
            comparing = all.lesson(lesson.other().lessonId())
                    .<Comparing>map(Comparing.Lesson::new)
                    .orElse(new Comparing.Nothing());
        } else if (!chosen
                || comparing instanceof Comparing.Setups two
                        && !setups.containsAll(List.of(two.first(), two.second()))) {
            comparing = setups.size() > 1
                    ? new Comparing.Setups(setups.get(0), setups.get(1))
                    : all.nearest(own()).<Comparing>map(Comparing.Lesson::new).orElse(new Comparing.Nothing());
        }
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
        settle();
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
        choices.add(new DifferencesPane.Choice(new Comparing.Nothing(), Texts.of("shots.compare.nothing")));
        for (int i = 0; i < (setups.size() > ALL_PAIRS ? 1 : setups.size()); i++) {
            for (String second : setups.subList(i + 1, setups.size())) {
                choices.add(new DifferencesPane.Choice(
                        new Comparing.Setups(setups.get(i), second),
                        Texts.of("shots.compare.setups", LessonNames.setup(setups.get(i)), LessonNames.setup(second))));
            }
        }
        all.lessons().stream()
                .filter(l -> l.lessonId() != own() && !l.shots().isEmpty())
                .forEach(l -> choices.add(new DifferencesPane.Choice(new Comparing.Lesson(l), names().choice(l))));
        return choices;
    }

    Comparing comparing() {
        return comparing;
    }

    private Optional<PlayersShots.OfLesson> lesson() {
        return comparing instanceof Comparing.Lesson lesson ? Optional.of(lesson.other()) : Optional.empty();
    }

    /** Whether a lesson was held before the one on the desk. */
    private boolean isEarlier(PlayersShots.OfLesson other) {
        return other.lessonId() < own();
    }

    Reckoned.Asked mine(List<Shot> shots) {
        return new Reckoned.Asked(names().own(all.lesson(own())), shots);
    }

    Reckoned.Against against() {
        if (comparing instanceof Comparing.Setups two) {
            return new Reckoned.Against.Setups(two.first(), two.second());
        }
        return lesson().<Reckoned.Against>map(other -> new Reckoned.Against.Lesson(
                        new Reckoned.Asked(names().shortly(other), other.shots()),
                        isEarlier(other) ? Reckoned.Order.OTHER_FIRST : Reckoned.Order.OWN_FIRST))
                .orElse(new Reckoned.Against.Nothing());
    }

    /** All of the player's, with the shots on the desk in the lesson's place. */
    PlayersShots allWith(List<Shot> shots) {
        return all.withShots(own(), shots);
    }

    /** What was to be expected of what changed in the setup from the earlier of the two to the later. */
    List<String> expectations(Optional<SetupComparison> comparison) {
        Optional<PlayersShots.OfLesson> mine = all.lesson(own());
        Optional<PlayersShots.OfLesson> other = lesson();
        if (mine.isEmpty() || other.isEmpty() || comparison.isEmpty()) {
            return List.of();
        }
        boolean earlier = isEarlier(other.get());
        return new ExpectationWords(studio.words().get())
                .of(earlier ? other.get() : mine.get(), earlier ? mine.get() : other.get(), comparison.get());
    }
}

package org.toeline.desk.across;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.toeline.across.Comparison;
import org.toeline.desk.records.Records;
import org.toeline.desk.text.Days;
import org.toeline.desk.text.Texts;
import org.toeline.ledger.store.Ledger;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.rows.LessonFindings;
import org.toeline.ledger.store.rows.LessonLine;
import org.toeline.ledger.store.rows.Player;
import org.toeline.ledger.store.rows.Search;
import org.toeline.mark.Club;

/** Whose lessons with which club are shown, and which of them are compared. Knows no control. */
final class AcrossModel {

    /** More stills than these are not shown beside each other. */
    static final int MOST_TICKED = 6;

    private static final int MOST_LESSONS = 1000;

    /**
     * What the ledger said.
     *
     * @param players all, by name
     * @param player  whose lessons are shown; empty when there is nobody
     * @param clubs   those of the player's lessons
     * @param lines   the lessons with the club, in their order, {@code lessons} too
     */
    record Answer(
            List<Player> players,
            Optional<Player> player,
            List<Club> clubs,
            Club club,
            List<LessonLine> lines,
            List<LessonFindings> lessons) {

        static final Answer NOTHING =
                new Answer(List.of(), Optional.empty(), List.of(), Club.DRIVER, List.of(), List.of());
    }

    private final Records records;
    private final Runnable changed;
    private Answer answer = Answer.NOTHING;
    private SortedSet<Integer> ticked = new TreeSet<>();
    private Optional<Comparison> comparison = Optional.empty();
    private List<String> days = List.of();

    /** @param changed is told when something else is to be shown */
    AcrossModel(Records records, Runnable changed) {
        this.records = records;
        this.changed = changed;
    }

    /**
     * Asks the ledger anew.
     *
     * @param wanted  whose lessons; else those shown before, else those of the latest lesson
     * @param wantedClub with which club; else the latest lesson's
     */
    void load(OptionalInt wanted, Optional<Club> wantedClub) {
        OptionalInt before = answer.player.map(p -> OptionalInt.of(p.id())).orElse(OptionalInt.empty());
        OptionalInt asked = wanted.isPresent() ? wanted : before;
        Optional<Club> club = wantedClub.isPresent()
                ? wantedClub
                : asked.equals(before) && answer.player.isPresent() ? Optional.of(answer.club) : Optional.empty();
        records.ask(ledger -> ask(ledger, asked, club), this::show);
    }

    private static Answer ask(Ledger ledger, OptionalInt asked, Optional<Club> wantedClub) throws LedgerException {
        List<Player> players = new ArrayList<>(ledger.players());
        players.sort(Comparator.comparing(p -> name(p).toLowerCase(Locale.ROOT)));
        OptionalInt latest = ledger.find(Search.RECENT.withMost(1)).stream()
                .mapToInt(LessonLine::playerId)
                .findFirst();
        Optional<Player> player = players.stream()
                .filter(p -> asked.isPresent() && p.id() == asked.getAsInt())
                .findFirst()
                .or(() -> players.stream()
                        .filter(p -> latest.isPresent() && p.id() == latest.getAsInt())
                        .findFirst());
        if (player.isEmpty()) {
            return Answer.NOTHING;
        }
        List<LessonLine> all = new ArrayList<>(
                ledger.find(Search.RECENT.withPlayer(player.get().id()).withMost(MOST_LESSONS)));
        List<Club> clubs = all.stream()
                .flatMap(l -> Club.of(l.club()).stream())
                .distinct()
                .sorted()
                .toList();
        Club club = wantedClub
                .filter(clubs::contains)
                .or(() -> all.stream().flatMap(l -> Club.of(l.club()).stream()).findFirst())
                .orElse(Club.DRIVER);
        List<LessonLine> lines = all.stream()
                .filter(l -> l.club().equals(club.id()))
                .sorted(Comparator.comparingInt(LessonLine::id))
                .toList();
        return new Answer(
                List.copyOf(players),
                player,
                clubs,
                club,
                lines,
                ledger.acrossLessons(player.get().id(), club));
    }

    private void show(Answer said) {
        if (said.equals(answer) && comparison.isPresent()) {
            return;
        }
        List<Integer> ids = said.lessons.stream().map(LessonFindings::lessonId).toList();
        boolean same = said.player.equals(answer.player)
                && said.club == answer.club
                && ids.containsAll(ticked)
                && ids.size() == answer.lessons.size();
        answer = said;
        days = days(said.lessons);
        if (!same) {
            ticked = new TreeSet<>();
            if (!ids.isEmpty()) {
                ticked.add(ids.get(0));
                ticked.add(ids.get(ids.size() - 1));
            }
        }
        compare();
    }

    private void compare() {
        comparison = ticked.isEmpty()
                ? Optional.empty()
                : Optional.of(Comparison.of(answer.lessons, ticked.first(), ticked.last()));
        changed.run();
    }

    Answer answer() {
        return answer;
    }

    /** The lessons whose stills are shown, in their order; the first is compared with the last. */
    SortedSet<Integer> ticked() {
        return ticked;
    }

    /** Empty when there is no lesson, or none is ticked. */
    Optional<Comparison> comparison() {
        return comparison;
    }

    /** Takes a lesson into the comparison or out of it; false when there are as many as can be shown. */
    boolean turn(int lessonId) {
        if (ticked.contains(lessonId)) {
            ticked.remove(lessonId);
        } else if (ticked.size() < MOST_TICKED) {
            ticked.add(lessonId);
        } else {
            return false;
        }
        compare();
        return true;
    }

    static String name(Player player) {
        return player.details().name().orElse(Texts.of("across.unnamed", Integer.toString(player.id())));
    }

    /** What a lesson is called: its day, else its number. */
    static String day(int lessonId, Optional<String> recorded) {
        return recorded.flatMap(Days::of).orElse(Texts.of("across.lesson", Integer.toString(lessonId)));
    }

    /** What the lessons of the comparison are called; those of one day are told apart by their numbers. */
    List<String> days() {
        return days;
    }

    private static List<String> days(List<LessonFindings> lessons) {
        Map<Integer, String> byLesson = new LinkedHashMap<>();
        lessons.forEach(l -> byLesson.put(l.lessonId(), day(l.lessonId(), l.recorded())));
        Map<String, Long> howOften =
                byLesson.values().stream().collect(Collectors.groupingBy(d -> d, Collectors.counting()));
        List<String> days = new ArrayList<>();
        byLesson.forEach((id, day) -> days.add(
                Objects.requireNonNull(howOften.get(day)) > 1
                        ? Texts.of("across.day-and-lesson", day, Integer.toString(id))
                        : day));
        return List.copyOf(days);
    }
}

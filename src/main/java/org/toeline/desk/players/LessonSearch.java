package org.toeline.desk.players;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.toeline.advice.Verdict;
import org.toeline.desk.records.Records;
import org.toeline.ledger.store.rows.LessonLine;
import org.toeline.ledger.store.rows.Search;
import org.toeline.mark.Club;
import org.toeline.reading.ReadingKind;

/** What is looked for among the lessons, and what was found; an answer that came too late is dropped. */
final class LessonSearch {

    /** When a lesson took place. */
    enum When {
        EVER(0),
        MONTH(31),
        YEAR(366);

        private final int days;

        When(int days) {
            this.days = days;
        }
    }

    static final int MOST = 200;

    private final Records records;
    private final Consumer<List<LessonLine>> found;
    private Search search = Search.RECENT.withMost(MOST);
    private Optional<ReadingKind> outOfRange = Optional.empty();
    private When when = When.EVER;
    private int ticket;

    /** @param found takes the lessons found, on the JavaFX thread */
    LessonSearch(Records records, Consumer<List<LessonLine>> found) {
        this.records = records;
        this.found = found;
    }

    void text(String text) {
        search = search.withText(text);
        look();
    }

    void club(Optional<Club> club) {
        search = new Search(
                search.text(),
                search.playerId(),
                club,
                search.reading(),
                search.verdicts(),
                search.from(),
                search.to(),
                search.most());
        look();
    }

    /** Only lessons in which this reading was out of its range. */
    void outOfRange(Optional<ReadingKind> reading) {
        outOfRange = reading;
        look();
    }

    void when(When changed) {
        when = changed;
        look();
    }

    void look() {
        Search now = outOfRange
                .map(r -> search.withFinding(r.id(), Set.of(Verdict.OUT_LOW.id(), Verdict.OUT_HIGH.id())))
                .orElse(search);
        if (when != When.EVER) {
            LocalDate today = LocalDate.now();
            now = now.between(today.minusDays(when.days), today);
        }
        Search asked = now;
        int own = ++ticket;
        records.ask(l -> l.find(asked), lines -> {
            if (own == ticket) {
                found.accept(RecentFirst.of(lines));
            }
        });
    }
}

package org.toeline.ledger.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.place.LedgerPlace;
import org.toeline.ledger.store.rows.Finder;
import org.toeline.ledger.store.rows.FindingRows;
import org.toeline.ledger.store.rows.Player;
import org.toeline.ledger.store.rows.PlayerDetails;
import org.toeline.ledger.store.rows.Search;
import org.toeline.mark.Club;
import org.toeline.mark.Handedness;

/** How the database goes about the queries: by index, without sorting the ledger or reading documents. */
class PlanTest {

    @TempDir
    private Path folder;

    private Ledger ledger;

    @BeforeEach
    void open() throws LedgerException {
        ledger = Ledger.open(new LedgerPlace.Folder(folder), "bay 1");
        Player player = ledger.addPlayer(PlayerDetails.of(Optional.of("B. Trial"), Handedness.RIGHT));
        ledger.keep(player.id(), TestLessons.lesson("B. Trial"), TestLessons.findings(5));
    }

    @AfterEach
    void close() {
        ledger.close();
    }

    private List<String> plan(Search search) throws LedgerException {
        return ledger.database().readPlain("", c -> Finder.plan(search, c));
    }

    private static void assertNeverReadsAll(List<String> plan, String... tables) {
        for (String table : tables) {
            assertThat(plan).as(table).noneMatch(step -> step.matches("SCAN (\\w+ )?" + table + "\\b.*"));
        }
    }

    @Test
    void theFirstListStopsAfterFifty() throws Exception {
        List<String> plan = plan(Search.RECENT);
        assertThat(plan)
                .as("walks lessons from the last, as many as are shown")
                .anyMatch(step -> step.startsWith("SCAN l"));
        assertThat(plan).noneMatch(step -> step.contains("TEMP B-TREE"));
        assertNeverReadsAll(plan, "p", "f");
    }

    @Test
    void wordsAreSearchedByIndex() throws Exception {
        List<String> plan = plan(Search.text("an be"));
        assertThat(plan)
                .anyMatch(step -> step.contains("SEARCH w USING") && step.contains("player_word"))
                .anyMatch(step -> step.contains("SEARCH lesson_word USING"))
                .anyMatch(step -> step.matches("SEARCH l USING INTEGER PRIMARY KEY.*"));
        assertNeverReadsAll(plan, "l", "n", "w", "p", "f", "lesson", "lesson_word", "player_word", "finding");
    }

    @Test
    void filtersUseIndexesAndNeverReadAllFindings() throws Exception {
        List<Search> searches = new ArrayList<>();
        searches.add(Search.RECENT.withPlayer(1));
        searches.add(Search.RECENT.withClub(Club.DRIVER));
        searches.add(Search.RECENT.withPlayer(1).withClub(Club.DRIVER));
        for (Search search : searches) {
            List<String> plan = plan(search);
            assertThat(plan).anyMatch(step -> step.contains("SEARCH l USING"));
            assertNeverReadsAll(plan, "l", "p", "f", "finding");
        }
        for (Search search : List.of(
                Search.RECENT.withFinding("shoulder-tilt", Set.of("out-low")),
                Search.RECENT.between(LocalDate.of(2026, 1, 1), LocalDate.of(2026, 2, 1)))) {
            assertNeverReadsAll(plan(search), "p", "f", "finding", "lesson_document");
        }
    }

    @Test
    void acrossLessonsReadsOnePlayer() throws Exception {
        List<String> plan = ledger.database()
                .read(
                        "",
                        h -> h.createQuery("explain query plan " + FindingRows.ACROSS)
                                .bind("player", 1)
                                .bind("club", "driver")
                                .map((row, context) -> row.getString("detail"))
                                .list());
        assertThat(plan)
                .anyMatch(step -> step.contains("SEARCH l USING") && step.contains("lesson_by_player"))
                .anyMatch(step -> step.contains("SEARCH f USING"));
        assertNeverReadsAll(plan, "l", "f");
    }
}

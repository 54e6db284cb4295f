package org.toeline.flight.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.toeline.flight.Air;
import org.toeline.flight.Implausible;
import org.toeline.flight.Plausibility;
import org.toeline.flight.Shot;
import org.toeline.flight.ShotFigure;
import org.toeline.language.Language;

/** What is said of a table, and of a shot that no flight could give, is said in German to whoever reads German. */
class GermanReasonsTest {

    private final Locale before = Language.now();

    @AfterEach
    void speakAsBefore() {
        Locale.setDefault(Locale.Category.DISPLAY, before);
    }

    private static List<String> said() {
        List<String> all = new ArrayList<>();
        for (MadeTable table : MadeTables.all()) {
            Proposal proposal = Proposal.of(table.bytes(), "test");
            Imported read = ShotImport.read(table.bytes(), proposal.template());
            all.addAll(read.notes());
            Stream.concat(
                            read.leftOut().stream().map(LeftOut::reason),
                            proposal.asked().stream().map(Asked::why))
                    .forEach(all::add);
        }
        return all;
    }

    /** Each sentence of the made tables is another one in German. */
    @Test
    void whatIsSaidOfTables() {
        Language.choose(Locale.ENGLISH);
        List<String> english = said();
        Language.choose(Locale.GERMAN);
        List<String> german = said();
        assertThat(german).hasSameSizeAs(english);
        Set<String> same = new TreeSet<>(english);
        same.retainAll(new TreeSet<>(german));
        assertThat(new TreeSet<>(english)).hasSizeGreaterThan(30);
        assertThat(same).isEmpty();
    }

    @Test
    void whatIsSaidOfAShot() {
        Language.choose(Locale.GERMAN);
        Shot shot = new Shot(Map.of(ShotFigure.BALL_SPEED, 147.0, ShotFigure.HANG_TIME, 1.9, ShotFigure.APEX, 27.4));
        assertThat(new Plausibility(Air.USUAL).check(shot))
                .extracting(Implausible::reason)
                .containsExactlyInAnyOrder(
                        "Balltempo: 147,0 m/s; möglich sind 1,0 m/s bis 108,0 m/s: mph als m/s gelesen (65,7 m/s würden"
                                + " passen), oder km/h als m/s gelesen (40,8 m/s würden passen), oder km/h als mph"
                                + " gelesen (91,3 m/s würden passen)?",
                        "Scheitel: 27,4 m, höher als ein Ball in 1,9 s fallen kann, 17,7 m: Fuß als Meter gelesen (8,4 m"
                                + " würden passen), oder Fuß als Yard gelesen (9,1 m würden passen)?");
    }
}

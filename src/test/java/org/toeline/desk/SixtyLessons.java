package org.toeline.desk;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.toeline.ledger.ClipMoment;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.store.Ledger;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.rows.Player;
import org.toeline.ledger.store.rows.PlayerDetails;
import org.toeline.ledger.store.rows.StatedFinding;
import org.toeline.mark.View;

/** A player of long standing, made up from one lesson: figures that rise, fall or stay, and scatter; clips that are gone. */
final class SixtyLessons {

    private SixtyLessons() {}

    static Player of(String name, Lesson like, List<StatedFinding> stated, Ledger ledger) throws LedgerException {
        Player player = ledger.addPlayer(
                PlayerDetails.of(Optional.of(name), like.sheet().handedness()));
        for (int i = 0; i < 60; i++) {
            double share = i / 59.0;
            List<StatedFinding> moved = new ArrayList<>();
            for (StatedFinding f : stated) {
                double by = f.u() * (4 * share * (moved.size() % 3 - 1) + Math.sin(i * 2.4 + moved.size()));
                moved.add(new StatedFinding(
                        f.reading(),
                        f.value() + by,
                        f.u(),
                        f.low() + by,
                        f.high() + by,
                        f.unit(),
                        f.range(),
                        f.verdict(),
                        f.place()));
            }
            Lesson lesson = like.withPlayerName(player.details().name())
                    .withNotes("Grip first, then the ball; lesson " + i)
                    .withPlace("Bay 2")
                    .withRecorded(
                            OffsetDateTime.parse("2024-01-10T09:30:00+01:00").plusDays(13L * i));
            for (View view : lesson.clips().keySet()) {
                lesson = lesson.withClip(
                        view,
                        new ClipMoment(
                                "/nowhere/clip-" + i + ".mp4",
                                lesson.clips().get(view).seconds()));
            }
            ledger.keep(player.id(), lesson, moved);
        }
        return player;
    }
}

package org.toeline.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.toeline.advice.Assessment;
import org.toeline.advice.Finding;
import org.toeline.advice.Verdict;
import org.toeline.geometry.WorldPoint;
import org.toeline.mark.Club;
import org.toeline.mark.Landmark;
import org.toeline.reading.ReadingKind;

/**
 * Whole lessons of one player drawn large and small, from 1.10 to 2.05 m, filmed and marked anew at every size: what is wrong
 * with his setup at one size is not right at another.
 */
class SameProportionsTest {

    private static final double[] STATURES_M = {1.10, 1.30, 1.50, 1.75, 2.05};
    private static final int PLAYERS_A_CLUB = 2;

    private static RandomScene.Player of(RandomScene.Player player, double statureM) {
        double scale = statureM / player.statureM();
        Map<Landmark, WorldPoint> landmarks = new EnumMap<>(Landmark.class);
        player.landmarks()
                .forEach((landmark, p) ->
                        landmarks.put(landmark, new WorldPoint(p.t() * scale, p.h() * scale, p.u() * scale)));
        return new RandomScene.Player(landmarks, statureM);
    }

    static Assessment lesson(long seed, Club club, double statureM) {
        RandomScene scene = new RandomScene(
                seed,
                SceneKind.BOTH_AND_RODS,
                List.of(club),
                (c, random) -> of(new RandomPlayer(random, c, RandomPlayer.Build.ANY).player(), statureM));
        return Assessment.of(scene.sheet);
    }

    private static Map<ReadingKind, Verdict> verdicts(Assessment lesson) {
        Map<ReadingKind, Verdict> verdicts = new HashMap<>();
        for (Finding finding : lesson.advice().findings()) {
            finding.verdict().ifPresent(v -> verdicts.put(finding.kind(), v));
        }
        return verdicts;
    }

    @Test
    void whatIsWrongAtOneSizeIsNotRightAtAnother() {
        int decided = 0;
        int same = 0;
        for (Club club : Club.values()) {
            for (int seed = 0; seed < PLAYERS_A_CLUB; seed++) {
                Map<ReadingKind, Verdict> firstSaid = new HashMap<>();
                for (double m : STATURES_M) {
                    Assessment lesson = lesson(4_100 + seed, club, m);
                    assertThat(lesson.advice().withheld())
                            .as("%s, %s, %.2f m", seed, club, m)
                            .isEqualTo(Optional.empty());
                    for (Map.Entry<ReadingKind, Verdict> e : verdicts(lesson).entrySet()) {
                        Verdict said = e.getValue();
                        if (said != Verdict.IN_RANGE && !said.isOut()) {
                            continue;
                        }
                        Verdict before = firstSaid.putIfAbsent(e.getKey(), said);
                        assertThat(said)
                                .as("%s, %s, player %d of %.2f m", e.getKey().id(), club, seed, m)
                                .isEqualTo(before == null ? said : before);
                        decided++;
                        same += before == null ? 0 : 1;
                    }
                }
            }
        }
        assertThat(decided).isGreaterThan(500);
        assertThat(same).isGreaterThan(decided / 2);
    }
}

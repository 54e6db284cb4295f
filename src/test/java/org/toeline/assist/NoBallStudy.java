package org.toeline.assist;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.BallMark;
import org.toeline.mark.View;

/**
 * Clicks on everything in the sample clips that is no ball: how many are taken for one. Each landmark of the player and the
 * club, toes and heels with eight places about them, and the ends of the rods.
 */
final class NoBallStudy {

    private static final double APART_PX = 7;
    private static final int SIDE = 3;

    private record Click(SampleBalls on, String what, ImagePoint at) {

        boolean nearBall() {
            return at.distancePx(on.centre()) < 0.75 * on.diameterPx() + 4;
        }

        boolean inside() {
            return at.xPx() > 2
                    && at.yPx() > 2
                    && at.xPx() < on.frame().width() - 2
                    && at.yPx() < on.frame().height() - 2;
        }
    }

    private NoBallStudy() {}

    public static void main(String[] args) throws Exception {
        List<Click> clicks = new ArrayList<>();
        for (String lesson : SampleBalls.LESSONS) {
            for (View view : View.values()) {
                clicks.addAll(clicks(SampleBalls.of(lesson, view)));
            }
        }
        Map<String, int[]> tally = new TreeMap<>();
        clicks.parallelStream().map(NoBallStudy::row).toList().forEach(row -> {
            int[] count = tally.computeIfAbsent(row.what, k -> new int[2]);
            count[0]++;
            count[1] += row.taken ? 1 : 0;
        });
        System.out.println("| what | clicks | taken for a ball |");
        tally.forEach((what, count) -> System.out.println("| " + what + " | " + count[0] + " | " + count[1] + " |"));
    }

    private record Row(String what, boolean taken) {}

    private static Row row(Click click) {
        Optional<BallMark> taken = click.on.fit(click.at);
        taken.ifPresent(ball -> System.out.println(
                click.on.lesson() + " " + click.on.view().id() + " " + click.what + " " + click.at + ": " + ball));
        return new Row(kind(click.what) + ", " + click.on.view().id(), taken.isPresent());
    }

    private static String kind(String landmark) {
        return landmark.matches(".*(toe|heel|ankle)")
                ? "shoes"
                : landmark.matches(".*wrist|grip-end")
                        ? "hands and grip"
                        : landmark.matches("crown|club-head")
                                ? "club head"
                                : landmark.startsWith("rod")
                                        ? "rods"
                                        : landmark.matches("head-centre|neck") ? "head and cap" : "clothes";
    }

    private static List<Click> clicks(SampleBalls on) {
        List<Click> clicks = new ArrayList<>();
        on.truth().path("landmarks").fieldNames().forEachRemaining(id -> {
            int side = id.endsWith("toe") || id.endsWith("heel") ? SIDE : 1;
            on.about(id, APART_PX, side).forEach(at -> clicks.add(new Click(on, id, at)));
        });
        on.rodEnds().forEach(end -> clicks.add(new Click(on, "rod", end)));
        return clicks.stream().filter(c -> c.inside() && !c.nearBall()).toList();
    }
}

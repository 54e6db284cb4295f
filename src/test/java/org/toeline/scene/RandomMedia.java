package org.toeline.scene;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import org.bytedeco.ffmpeg.global.avutil;
import org.toeline.geometry.ImagePoint;
import org.toeline.geometry.WorldPoint;
import org.toeline.ledger.ClipMoment;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.LessonDocument;
import org.toeline.mark.BallMark;
import org.toeline.mark.Club;
import org.toeline.mark.FloorMark;
import org.toeline.mark.FloorReference;
import org.toeline.mark.Landmark;
import org.toeline.mark.Mark;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.Takes;
import org.toeline.mark.VerticalMark;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;

/**
 * Films driver lessons of {@link RandomLessons} as {@link SampleMedia} films its own: three clips with their light and grain, the
 * truth beside each, and the lesson as a coach's hand would mark it, a click's spread away from the truth.
 *
 * <p>{@code RandomMedia FOLDER FIRST COUNT}: the first so many driver lessons from that number on.
 */
public final class RandomMedia {

    private static final long BITS_PER_SECOND = 4_300_000;

    /** Half as many frames as the sample clips have. */
    private static final int EVERY = 2;

    /** A click of somebody who takes care, magnified: what the sample lessons' marks by eye are off the truth, pixels. */
    private static final double CLICK_PX = 1.5;

    private static final double BALL_SIGMA_PX = 0.4;
    private static final double DIAMETER_SIGMA_PX = 0.6;

    /** What is marked by hand in the sample lessons. */
    private static final Map<View, List<Landmark>> BY_HAND = Map.of(
            View.FACE_ON,
            List.of(
                    Landmark.LEAD_SHOULDER,
                    Landmark.TRAIL_SHOULDER,
                    Landmark.LEAD_HEEL,
                    Landmark.LEAD_TOE,
                    Landmark.TRAIL_HEEL,
                    Landmark.TRAIL_TOE,
                    Landmark.LEAD_WRIST,
                    Landmark.TRAIL_WRIST,
                    Landmark.LEAD_ELBOW,
                    Landmark.TRAIL_ELBOW,
                    Landmark.LEAD_HIP,
                    Landmark.TRAIL_HIP,
                    Landmark.HEAD_CENTRE,
                    Landmark.LEAD_ANKLE,
                    Landmark.TRAIL_ANKLE,
                    Landmark.CLUB_HEAD),
            View.DOWN_THE_LINE,
            List.of(
                    Landmark.TRAIL_SHOULDER,
                    Landmark.TRAIL_HEEL,
                    Landmark.TRAIL_TOE,
                    Landmark.LEAD_HEEL,
                    Landmark.LEAD_TOE,
                    Landmark.TRAIL_WRIST,
                    Landmark.TRAIL_ELBOW,
                    Landmark.TRAIL_HIP,
                    Landmark.HEAD_CENTRE,
                    Landmark.GRIP_END,
                    Landmark.CLUB_HEAD,
                    Landmark.TRAIL_ANKLE,
                    Landmark.LEAD_ANKLE),
            View.TEE,
            List.of(Landmark.CROWN, Landmark.GROUND));

    private final int number;
    private final Scenario scenario;
    private final SplittableRandom random;

    private RandomMedia(int number) {
        this.number = number;
        this.scenario = RandomLessons.lesson(number);
        this.random = new SplittableRandom(number * 15485863L);
    }

    public static void main(String[] arguments) throws Exception {
        avutil.av_log_set_level(avutil.AV_LOG_ERROR);
        int left = Integer.parseInt(arguments[2]);
        for (int number = Integer.parseInt(arguments[1]); left > 0; number++) {
            RandomMedia media = new RandomMedia(number);
            if (media.scenario.club().club() == Club.DRIVER) {
                left--;
                Path own = Files.createDirectories(Path.of(arguments[0], media.scenario.id()));
                for (View view : View.values()) {
                    media.film(own, view);
                }
                LessonDocument.write(media.byHand(), own.resolve(media.scenario.id() + ".lesson.json"));
                System.out.println(own + ", " + media.scenario.handedness().id() + "-handed");
            }
        }
    }

    private void film(Path folder, View view) throws IOException {
        new TruthDocument(scenario, view).write(folder.resolve(view.id() + ".truth.json"));
        Stage stage = new Stage(scenario);
        Filming filming = new Filming(scenario, stage, view, Scenario.WIDTH, Scenario.HEIGHT);
        boolean tee = view == View.TEE;
        int frames = (tee ? Motion.TEE_FRAMES : Motion.FRAMES) / EVERY;
        RandomLessons.Look look = RandomLessons.look(number);
        try (ClipWriter writer = new ClipWriter(
                folder.resolve(view.id() + ".mp4"),
                Scenario.WIDTH,
                Scenario.HEIGHT,
                Motion.FRAMES_PER_SECOND / EVERY,
                BITS_PER_SECOND)) {
            for (int f = 0; f < frames; f++) {
                double time = tee ? Motion.addressS() : f * EVERY / (double) Motion.FRAMES_PER_SECOND;
                writer.add(RandomLessons.developed(filming.frame(stage.moves(Motion.at(time)), f), look, random));
            }
        }
    }

    private Lesson byHand() {
        MarkSheet sheet = MarkSheet.empty(scenario.handedness(), scenario.club().club())
                .withTakes(Takes.SIMULTANEOUS)
                .withFloor(scenario.floor());
        Map<View, ClipMoment> clips = new EnumMap<>(View.class);
        for (View view : View.values()) {
            sheet = sheet.withView(byHand(view));
            double at = view == View.TEE ? 0.5 : Motion.addressS();
            clips.put(view, new ClipMoment(view.id() + ".mp4", OptionalDouble.of(at)));
        }
        return Lesson.of(sheet).withClips(clips);
    }

    private ViewMarks byHand(View view) {
        ViewMarks marks = ViewMarks.empty(view, Scenario.WIDTH, Scenario.HEIGHT);
        Map<Landmark, WorldPoint> body = scenario.landmarks(Motion.addressS());
        for (Landmark landmark : BY_HAND.get(view)) {
            ImagePoint at = clicked(view, body.get(landmark));
            if (isShown(at)) {
                marks = marks.withMark(Mark.placed(landmark, at, MarkSheet.USUAL_CLICK_SIGMA_PX));
            }
        }
        if (view != View.TEE) {
            for (FloorReference point : scenario.floor().points()) {
                ImagePoint at = clicked(view, new WorldPoint(point.t(), point.h(), 0));
                if (isShown(at)) {
                    marks = marks.withFloorMark(new FloorMark(point.id(), at, MarkSheet.USUAL_CLICK_SIGMA_PX));
                }
            }
            marks = marks.withVerticals(uprights(view));
        }
        Truth.Outline ball = Truth.ball(scenario, view);
        return marks.withBall(Optional.of(new BallMark(
                off(ball.centre(), BALL_SIGMA_PX),
                OptionalDouble.of(ball.diameterPx() + DIAMETER_SIGMA_PX * gauss()),
                BALL_SIGMA_PX,
                DIAMETER_SIGMA_PX)));
    }

    /** Along what is in the picture of each. */
    private List<VerticalMark> uprights(View view) {
        List<VerticalMark> uprights = new ArrayList<>();
        Bay.UPRIGHTS.values().forEach(place -> {
            List<ImagePoint> seen = new ArrayList<>();
            for (double u = 0.1; u < Bay.UPRIGHT_U; u += 0.05) {
                WorldPoint p = new WorldPoint(place[0], place[1], u);
                if (scenario.camera(view).project(p).isPresent()) {
                    seen.add(Truth.pixel(scenario, view, p));
                }
            }
            seen.removeIf(p -> !isShown(p));
            if (seen.size() > 2) {
                uprights.add(new VerticalMark(
                        off(seen.get(0), CLICK_PX),
                        off(seen.get(seen.size() - 1), CLICK_PX),
                        MarkSheet.USUAL_CLICK_SIGMA_PX));
            }
        });
        return uprights;
    }

    private ImagePoint clicked(View view, WorldPoint point) {
        return scenario.camera(view).project(point).isEmpty()
                ? new ImagePoint(-1, -1)
                : off(Truth.pixel(scenario, view, point), CLICK_PX);
    }

    private ImagePoint off(ImagePoint p, double sigmaPx) {
        return p.plus(sigmaPx * gauss(), sigmaPx * gauss());
    }

    private double gauss() {
        return ((RandomGenerator) random).nextGaussian();
    }

    private static boolean isShown(ImagePoint p) {
        return p.xPx() >= 0 && p.yPx() >= 0 && p.xPx() < Scenario.WIDTH && p.yPx() < Scenario.HEIGHT;
    }
}

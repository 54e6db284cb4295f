package org.toeline.study;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.toeline.camera.Camera;
import org.toeline.camera.Lens;
import org.toeline.camera.Pose;
import org.toeline.geometry.GolfBall;
import org.toeline.geometry.ImagePoint;
import org.toeline.geometry.WorldPoint;
import org.toeline.mark.BallMark;
import org.toeline.mark.Club;
import org.toeline.mark.FloorLayout;
import org.toeline.mark.FloorMark;
import org.toeline.mark.FloorReference;
import org.toeline.mark.Handedness;
import org.toeline.mark.Landmark;
import org.toeline.mark.Laying;
import org.toeline.mark.Mark;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.Stature;
import org.toeline.mark.Takes;
import org.toeline.mark.VerticalMark;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;
import org.toeline.posture.Posture;
import org.toeline.posture.TruePosture;

/**
 * A player, a ball and cameras of known truth, and the marks a coach would place: 2 px clicks on a 1920 × 1080 picture,
 * landmarks taken 8 mm off (points that clothing hides more), rods whose ends were measured to 3 mm, one door post a
 * view, the ball's outline to half a pixel.
 */
final class RandomScene {

    static final double CLICK_PX = 2;
    private static final double OUTLINE_PX = 0.5;
    private static final int WIDTH = 1920;
    private static final int HEIGHT = 1080;
    private static final double LAYOUT_M = 0.003;

    final MarkSheet sheet;
    /** The sheet less the wrong mark: what could be known at best. */
    final MarkSheet withoutWrong;

    final Map<Landmark, WorldPoint> landmarks;
    final WorldPoint ball;
    final double ballDiameterM;
    final Map<View, Camera> cameras = new EnumMap<>(View.class);
    final WorldPoint shift;
    final Map<String, WorldPoint> floorTruth = new java.util.HashMap<>();
    final Optional<String> wrong;
    final Optional<Landmark> wrongLandmark;
    /** How the layout moved (t, h) and turned between the views; metres, radians. */
    final double[] laidAgain;

    private final SplittableRandom random;
    private final Handedness handedness;
    private final double layoutT;
    private final double layoutH;

    /** Who stands there: a player drawn anew, or one that is given. */
    interface Players {
        Player with(Club club, SplittableRandom random);
    }

    /** Landmarks from the ground under the ball, metres. */
    record Player(Map<Landmark, WorldPoint> landmarks, double statureM) {}

    RandomScene(long seed, SceneKind kind) {
        this(
                seed,
                kind,
                List.of(Club.DRIVER, Club.DRIVER, Club.MID_IRON, Club.SHORT_IRON),
                (club, random) -> new RandomPlayer(random, club, RandomPlayer.Build.ANY).player());
    }

    RandomScene(long seed, SceneKind kind, List<Club> clubs, Players players) {
        this.random = new SplittableRandom(seed);
        this.handedness = random.nextBoolean() ? Handedness.LEFT : Handedness.RIGHT;
        Club club = clubs.get(random.nextInt(clubs.size()));
        Player player = players.with(club, random);
        this.landmarks = player.landmarks();
        this.ballDiameterM = GolfBall.USUAL_DIAMETER_M + 0.0001 * random.nextGaussian();
        double teed = club == Club.DRIVER
                ? Math.max(0.005, 0.045 + 0.020 * random.nextGaussian())
                : Math.abs(0.006 * random.nextGaussian());
        this.ball = new WorldPoint(0, 0, teed + ballDiameterM / 2);
        boolean separate = kind.takes == Takes.SEPARATE;
        this.shift = separate
                ? new WorldPoint(
                        0.015 * random.nextGaussian(), 0.015 * random.nextGaussian(), 0.006 * random.nextGaussian())
                : WorldPoint.ORIGIN;
        this.layoutT = random.nextDouble(-0.5, 0.5);
        this.layoutH = random.nextDouble(-0.5, 0.5);
        FloorLayout once = kind.rods ? rods() : FloorLayout.NONE;
        boolean again = kind == SceneKind.LAID_AGAIN;
        FloorLayout layout = again ? once.withLaying(Laying.AGAIN) : once;
        this.laidAgain = again
                ? new double[] {
                    0.3 * random.nextGaussian(),
                    0.3 * random.nextGaussian(),
                    Math.toRadians(1.5) * random.nextGaussian()
                }
                : new double[3];
        List<ViewMarks> views = new ArrayList<>();
        if (kind.faceOn) {
            views.add(view(View.FACE_ON, layout));
        }
        if (kind.downTheLine) {
            views.add(view(View.DOWN_THE_LINE, layout));
        }
        Optional<Stature> stature = kind == SceneKind.HEIGHT_TOLD
                ? Optional.of(Stature.told(
                        player.statureM() + Stature.TOLD_TOO_TALL_M + Stature.TOLD_SIGMA_M * random.nextGaussian()))
                : Optional.empty();
        MarkSheet clean = new MarkSheet(handedness, club, kind.takes, layout, views, CLICK_PX, stature);
        if (kind.wrongMarks > 0) {
            int which = random.nextInt(views.size());
            ViewMarks spoilt = views.get(which);
            Mark mark = spoilt.marks().get(random.nextInt(spoilt.marks().size()));
            double off = random.nextDouble(35, 70);
            double way = random.nextDouble(2 * Math.PI);
            while (!inside(mark.at().plus(off * Math.cos(way), off * Math.sin(way)))) {
                way = random.nextDouble(2 * Math.PI);
            }
            this.wrongLandmark = Optional.of(mark.landmark());
            this.wrong = Optional.of(spoilt.view().id() + " " + mark.landmark().id());
            this.withoutWrong = clean.withView(spoilt.withoutMark(mark.landmark()));
            this.sheet = clean.withView(
                    spoilt.withMark(mark.movedTo(mark.at().plus(off * Math.cos(way), off * Math.sin(way)))));
        } else {
            this.wrongLandmark = Optional.empty();
            this.wrong = Optional.empty();
            this.sheet = clean;
            this.withoutWrong = clean;
        }
    }

    /** A T: one rod along the target line on the player's side of the ball, one across it towards the feet. */
    private FloorLayout rods() {
        String[] ids = {"rod-near", "rod-far", "cross-ball", "cross-feet"};
        double[][] at = {{-0.60, 0.12}, {0.60, 0.12}, {0, 0.16}, {0, 1.36}};
        List<FloorReference> points = new ArrayList<>();
        for (int i = 0; i < ids.length; i++) {
            floorTruth.put(ids[i], new WorldPoint(at[i][0], at[i][1], 0));
            points.add(new FloorReference(
                    ids[i],
                    at[i][0] + layoutT + LAYOUT_M * random.nextGaussian(),
                    at[i][1] + layoutH + LAYOUT_M * random.nextGaussian()));
        }
        return new FloorLayout(points, LAYOUT_M);
    }

    /** Where a point of the layout lies the second time: turned about the middle of the rods' ends, and moved. */
    private WorldPoint laidAgain(WorldPoint p) {
        double dh = p.h() - 0.44;
        return new WorldPoint(p.t() + laidAgain[0] - laidAgain[2] * dh, p.h() + laidAgain[1] + laidAgain[2] * p.t(), 0);
    }

    /** Where the measured layout has its origin, seen from the ball. */
    WorldPoint layoutOfBall() {
        return new WorldPoint(layoutT, layoutH, 0);
    }

    private ViewMarks view(View view, FloorLayout layout) {
        Camera camera = filmingAll(view);
        cameras.put(view, camera);
        boolean moved = view == View.DOWN_THE_LINE;
        List<Mark> marks = new ArrayList<>();
        landmarks.forEach((landmark, p) -> {
            WorldPoint there = moved ? p.plus(shift.t(), shift.h(), onFloor(landmark) ? 0 : shift.u()) : p;
            if (moved && landmark == Landmark.CLUB_HEAD) {
                there = p;
            }
            double spreadPx = spreadM(landmark) * camera.lens().focalPx() / camera.depthM(there);
            marks.add(Mark.placed(
                    landmark,
                    shown(camera.project(there)
                            .orElseThrow()
                            .plus(
                                    Math.hypot(CLICK_PX, spreadPx) * random.nextGaussian(),
                                    Math.hypot(CLICK_PX, spreadPx) * random.nextGaussian())),
                    CLICK_PX));
        });
        List<FloorMark> floor = new ArrayList<>();
        for (FloorReference p : layout.points()) {
            WorldPoint truth = floorTruth.get(p.id());
            ImagePoint at = shown(clicked(camera, moved ? laidAgain(truth) : truth, CLICK_PX));
            if (inside(at)) {
                floor.add(new FloorMark(p.id(), at, CLICK_PX));
            }
        }
        WorldPoint post = view == View.FACE_ON
                ? new WorldPoint(random.nextDouble(-1.5, 1.5), 2.5, 0)
                : new WorldPoint(4, random.nextDouble(-1, 1.5), 0);
        ImagePoint foot = shown(clicked(camera, post.plus(0, 0, 0.4), CLICK_PX));
        ImagePoint top = shown(clicked(camera, post.plus(0, 0, 1.6), CLICK_PX));
        List<VerticalMark> verticals =
                inside(foot) && inside(top) ? List.of(new VerticalMark(foot, top, CLICK_PX)) : List.of();
        BallMark outline = new BallMark(
                shown(clicked(camera, ball, OUTLINE_PX)),
                OptionalDouble.of(camera.lens().focalPx() * ballDiameterM / camera.depthM(ball)
                        + OUTLINE_PX * random.nextGaussian()),
                OUTLINE_PX,
                OUTLINE_PX);
        return new ViewMarks(
                view, WIDTH, HEIGHT, org.toeline.mark.LensNote.NONE, floor, verticals, Optional.of(outline), marks);
    }

    /** The study's own statement of how well points are told, the same for all but hips, head and joints. */
    private static double spreadM(Landmark landmark) {
        return switch (landmark) {
            case LEAD_HIP, TRAIL_HIP -> 0.016;
            case HEAD_CENTRE, NECK -> 0.012;
            case LEAD_ELBOW, TRAIL_ELBOW, LEAD_KNEE, TRAIL_KNEE, LEAD_ANKLE, TRAIL_ANKLE -> 0.010;
            case CLUB_HEAD -> 0.006;
            default -> 0.008;
        };
    }

    private static boolean onFloor(Landmark landmark) {
        return landmark.id().endsWith("heel") || landmark.id().endsWith("toe");
    }

    private ImagePoint clicked(Camera camera, WorldPoint p, double sigmaPx) {
        return camera.project(p).orElseThrow().plus(sigmaPx * random.nextGaussian(), sigmaPx * random.nextGaussian());
    }

    private ImagePoint shown(ImagePoint p) {
        return handedness == Handedness.LEFT ? p.mirrored(WIDTH) : p;
    }

    private static boolean inside(ImagePoint p) {
        return p.xPx() >= 0 && p.xPx() <= WIDTH && p.yPx() >= 0 && p.yPx() <= HEIGHT;
    }

    /** A placement that has the whole player in the picture, with a margin for clicks: who films looks. */
    private Camera filmingAll(View view) {
        while (true) {
            Camera camera = camera(view);
            if (landmarks.values().stream()
                    .allMatch(p -> camera.project(p)
                            .filter(q -> inside(q.plus(60, 60)) && inside(q.plus(-60, -60)))
                            .isPresent())) {
                return camera;
            }
        }
    }

    /** A phone on a bag or a tripod: anywhere it plausibly stands, aimed at the player by eye. */
    private Camera camera(View view) {
        double focal = 0.76 * WIDTH * Math.exp(0.10 * random.nextGaussian());
        double height = random.nextDouble(0.6, 1.7);
        WorldPoint from;
        WorldPoint aim;
        if (view == View.FACE_ON) {
            from = new WorldPoint(random.nextDouble(-1.0, 0.8), -random.nextDouble(1.8, 4.2), height);
            aim = new WorldPoint(-0.15 + random.nextDouble(-0.25, 0.25), 0.7, random.nextDouble(0.65, 1.0));
        } else {
            from = new WorldPoint(-random.nextDouble(2.4, 4.8), random.nextDouble(-0.4, 1.2), height);
            aim = new WorldPoint(0, 0.5 + random.nextDouble(-0.25, 0.25), random.nextDouble(0.65, 1.0));
        }
        return new Camera(
                Lens.centred(focal, WIDTH, HEIGHT),
                Pose.looking(from, aim, Math.toRadians(1.7 * random.nextGaussian())));
    }

    /** Where everything stood, for the marks that are there, none of them wrong. */
    Posture truth() {
        return TruePosture.of(
                withoutWrong, landmarks, ball, ballDiameterM, cameras, shift, floorTruth, layoutOfBall(), laidAgain);
    }
}

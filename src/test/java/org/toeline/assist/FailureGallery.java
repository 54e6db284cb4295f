package org.toeline.assist;

import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.imageio.ImageIO;
import org.toeline.assist.ViewSuggestion.Part;
import org.toeline.assist.ViewSuggestion.Reason;
import org.toeline.camera.UsualLens;
import org.toeline.desk.sheet.MissingWords;
import org.toeline.geometry.ImagePoint;
import org.toeline.geometry.WorldPoint;
import org.toeline.mark.BallMark;
import org.toeline.mark.FloorMark;
import org.toeline.mark.FloorReference;
import org.toeline.mark.Landmark;
import org.toeline.mark.Mark;
import org.toeline.mark.View;
import org.toeline.scene.RandomLessons;
import org.toeline.scene.Scenario;
import org.toeline.scene.Truth;
import org.toeline.video.Frame;

/**
 * What one press gets wrong or leaves out on drawn players, and what the program says there. PICTURES FOLDER PICTURE…: pictures
 * made by {@link org.toeline.scene.RandomPicture}, where their small copies go, and which of them: {@code 9802-face-on}, or
 * {@code 9802} for all its views. Of each in which something is wrong or left out the part about it is kept, with what was
 * suggested drawn as the desk draws it and what was wrong or left out crossed where it truly is.
 */
final class FailureGallery {

    private static final int WIDTH = 480;
    private static final int HEIGHT = 270;

    private static final double LEAST_PART = 0.3;

    /** Something with one place. */
    record Thing(String what, ImagePoint truth, Optional<ImagePoint> suggested, double sigmaPx, double cmPx) {

        double offPx() {
            return suggested.map(truth::distancePx).orElse(0.0);
        }

        boolean isWrong() {
            return offPx() > WholeViewStudy.WRONG * sigmaPx && offPx() > WholeViewStudy.LEAST_WRONG_PX;
        }
    }

    private final Scenario scenario;
    private final View view;
    private final BufferedImage image;
    private final double share;
    private final ViewSuggestion seen;
    private final List<FloorMark> ends;
    private final List<Thing> things = new ArrayList<>();

    private FailureGallery(int number, View view, BufferedImage image, LandmarkSuggester suggester) {
        this.scenario = RandomLessons.lesson(number);
        this.view = view;
        this.image = image;
        int w = image.getWidth();
        int h = image.getHeight();
        this.share = (double) w / Scenario.WIDTH;
        Frame frame = new Frame(0, 0, w, h, image.getRGB(0, 0, w, h, null, 0, w));
        this.seen = suggester.suggest(
                new Asked(frame, view, scenario.handedness(), List.of(), UsualLens.MAIN.focalPx(w, h)), () -> false);
        this.ends = RodNames.of(seen.rods(), scenario.floor(), view, scenario.handedness());
        landmarks();
        ball();
        if (view != View.TEE) {
            ends();
        }
    }

    public static void main(String[] arguments) throws Exception {
        Path pictures = Path.of(arguments[0]);
        Path folder = Files.createDirectories(Path.of(arguments[1]));
        try (LandmarkSuggester suggester = LandmarkSuggester.load().orElseThrow()) {
            for (int i = 2; i < arguments.length; i++) {
                String[] which = arguments[i].split("-", 2);
                int number = Integer.parseInt(which[0]);
                for (View view : View.values()) {
                    String name = number + "-" + view.id();
                    File file = pictures.resolve(name + "-0.png").toFile();
                    if (file.length() > 0 && (which.length == 1 || which[1].equals(view.id()))) {
                        FailureGallery one = new FailureGallery(number, view, ImageIO.read(file), suggester);
                        System.out.println(name + one.told(number));
                        if (!one.failed().isEmpty()) {
                            ImageIO.write(
                                    one.part(),
                                    "jpg",
                                    folder.resolve(name + ".jpg").toFile());
                        }
                    }
                }
            }
        }
    }

    private void landmarks() {
        Map<Landmark, WorldPoint> truth = scenario.landmarks(RandomLessons.momentS(0, 1));
        for (Landmark landmark : Landmark.values()) {
            Optional<Mark> mark = seen.landmarks().stream()
                    .filter(m -> m.landmark() == landmark)
                    .findFirst();
            boolean looked =
                    switch (landmark) {
                        case CLUB_HEAD, GRIP_END -> view != View.TEE;
                        case CROWN, GROUND -> view == View.TEE;
                        default -> mark.isPresent();
                    };
            if (looked) {
                ImagePoint at = WholeViewStudy.pixel(scenario, view, truth.get(landmark), share);
                // at the tee heights are read, and the top of a head is flat
                double x = mark.filter(m -> view == View.TEE)
                        .map(m -> m.at().xPx())
                        .orElse(at.xPx());
                add(
                        landmark.id(),
                        new ImagePoint(x, at.yPx()),
                        mark.map(Mark::at),
                        mark.map(Mark::sigmaPx).orElse(1.0),
                        truth.get(landmark));
            }
        }
    }

    private void ball() {
        Truth.Outline ball = Truth.ball(scenario, view);
        ImagePoint centre =
                new ImagePoint(ball.centre().xPx() * share, ball.centre().yPx() * share);
        add(
                "ball",
                centre,
                seen.ball().map(BallMark::centre),
                seen.ball().map(BallMark::sigmaPx).orElse(1.0),
                scenario.ball());
    }

    private void ends() {
        for (FloorReference end : scenario.floor().points()) {
            Optional<FloorMark> mark =
                    ends.stream().filter(m -> m.pointId().equals(end.id())).findFirst();
            ImagePoint at = WholeViewStudy.floor(scenario, view, end, share);
            add(
                    end.id(),
                    at,
                    mark.map(FloorMark::at),
                    mark.map(FloorMark::sigmaPx).orElse(1.0),
                    new WorldPoint(end.t(), end.h(), 0));
        }
    }

    private void add(String what, ImagePoint truth, Optional<ImagePoint> suggested, double sigmaPx, WorldPoint at) {
        WorldPoint above = new WorldPoint(at.t(), at.h(), at.u() + 0.01);
        double cmPx = WholeViewStudy.pixel(scenario, view, above, share)
                .distancePx(WholeViewStudy.pixel(scenario, view, at, share));
        boolean shown = truth.xPx() >= 0
                && truth.yPx() >= 0
                && truth.xPx() < image.getWidth()
                && truth.yPx() < image.getHeight();
        if (shown || suggested.isPresent()) {
            things.add(new Thing(what, truth, suggested, sigmaPx, cmPx));
        }
    }

    /** What is wrong; else the club and the ball where they are left out; else ends of rods. */
    private List<Thing> failed() {
        List<Thing> wrong = things.stream().filter(Thing::isWrong).toList();
        if (!wrong.isEmpty()) {
            return wrong;
        }
        List<Thing> missing =
                things.stream().filter(t -> t.suggested().isEmpty()).toList();
        List<Thing> club = missing.stream()
                .filter(t -> scenario.floor().points().stream().noneMatch(p -> p.id().equals(t.what())))
                .toList();
        return club.isEmpty() ? missing : club;
    }

    private String told(int number) {
        RandomLessons.Look look = RandomLessons.look(number);
        String off = things.stream()
                .filter(Thing::isWrong)
                .map(t -> String.format(
                        Locale.ROOT,
                        "  wrong: %s %.0f px, %.1f cm, stated %.1f px%n",
                        t.what(),
                        t.offPx(),
                        t.offPx() / t.cmPx(),
                        t.sigmaPx()))
                .collect(Collectors.joining());
        String missing = things.stream()
                .filter(t -> t.suggested().isEmpty())
                .map(Thing::what)
                .collect(Collectors.joining(", "));
        return String.format(
                Locale.ROOT,
                ", %s, %d px wide, light %.2f, grain %.1f, looks like %s %s%n%s  left out: %s%n  said: %s",
                scenario.club().club(),
                image.getWidth(),
                look.gain(),
                look.noise(),
                seen.view().map(View::id).orElse("?"),
                seen.hand().map(h -> h.id()).orElse("?"),
                off,
                missing,
                said());
    }

    /** As the desk says it where nothing is marked yet. */
    private String said() {
        Map<Part, Reason> missing = new EnumMap<>(Part.class);
        missing.putAll(seen.missing());
        Optional<String> nobody = MissingWords.ofNobody(missing);
        if (nobody.isPresent()) {
            return nobody.get();
        }
        if (view != View.TEE && ends.isEmpty()) {
            missing.putIfAbsent(Part.RODS, Reason.NOT_FOUND);
        }
        return missing.entrySet().stream()
                .map(e -> MissingWords.of(e.getKey(), e.getValue()))
                .collect(Collectors.joining(" "));
    }

    /** The part about what failed, all of the picture where the body did. */
    private BufferedImage part() {
        Rectangle part = around();
        double scale = WIDTH / (double) part.width;
        BufferedImage small = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = small.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        BufferedImage cut = image.getSubimage(part.x, part.y, part.width, part.height);
        g.drawImage(cut.getScaledInstance(WIDTH, HEIGHT, Image.SCALE_AREA_AVERAGING), 0, 0, null);
        MarksDrawn marks = new MarksDrawn(g, part.x, part.y, scale);
        seen.uprights().forEach(v -> marks.line(v.from(), v.to()));
        seen.ball().ifPresent(b -> marks.ball(b.centre(), b.diameterPx().orElse(4)));
        seen.landmarks().forEach(m -> marks.ring(m.at(), MarksDrawn.PLACED));
        ends.forEach(m -> marks.ring(m.at(), MarksDrawn.FLOOR));
        for (Thing thing : things) {
            if (thing.isWrong() || thing.suggested().isEmpty()) {
                marks.truth(thing.truth(), thing.suggested());
            }
        }
        g.dispose();
        return small;
    }

    private Rectangle around() {
        int w = image.getWidth();
        int h = image.getHeight();
        boolean body = seen.missing().containsKey(Part.BODY) && view != View.TEE;
        List<Thing> about = failed();
        if (body || about.isEmpty()) {
            return new Rectangle(0, 0, w, h);
        }
        Rectangle2D box = new Rectangle2D.Double(
                about.get(0).truth().xPx(), about.get(0).truth().yPx(), 0, 0);
        for (Thing thing : about) {
            box.add(thing.truth().xPx(), thing.truth().yPx());
            thing.suggested().ifPresent(p -> box.add(p.xPx(), p.yPx()));
        }
        double tall = 1.4 * Math.max(box.getHeight(), box.getWidth() * HEIGHT / WIDTH);
        int height = (int) Math.min(h, Math.max(LEAST_PART * h, tall));
        int width = Math.min(w, height * WIDTH / HEIGHT);
        int x = (int) Math.max(0, Math.min(w - width, box.getCenterX() - width / 2.0));
        int y = (int) Math.max(0, Math.min(h - height, box.getCenterY() - height / 2.0));
        return new Rectangle(x, y, width, height);
    }
}

package org.toeline.desk.sheet;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.toeline.advice.Words;
import org.toeline.assist.BallOutline;
import org.toeline.assist.EdgeSnap;
import org.toeline.assist.SnappedLine;
import org.toeline.assist.SnappedRod;
import org.toeline.desk.lesson.Item;
import org.toeline.desk.lesson.LessonModel;
import org.toeline.desk.lesson.LineMark;
import org.toeline.desk.lesson.Marking;
import org.toeline.desk.lesson.Spread;
import org.toeline.desk.picture.PicturePane;
import org.toeline.desk.picture.Snap;
import org.toeline.desk.records.OwnCorrections;
import org.toeline.desk.text.Texts;
import org.toeline.desk.work.Background;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.BallMark;
import org.toeline.mark.Handedness;
import org.toeline.mark.View;
import org.toeline.video.Frame;

/** What the program finds in the picture for the coach: the ball's outline, straight edges, a person's landmarks. */
public final class Assistant implements PicturePane.Gestures {

    /** Nobody draws a smaller one; a click that slipped is none. */
    private static final double SMALLEST_BALL_PX = 4;
    /** Nor a larger one, as a share of the picture's height; a stroke that was meant to move the picture is none. */
    private static final double LARGEST_BALL = 0.06;

    private static final double LARGEST_BALL_AT_THE_TEE = 0.4;

    private final LessonModel model;
    private final ClipDrawer clips;
    private final Consumer<String> say;
    private final Searches searches;
    private final Steadier steadier;
    private final Learning learning;
    private final Suggesting suggesting;
    private final Drafts drafts;

    public Assistant(
            LessonModel model,
            Background background,
            ClipDrawer clips,
            OwnCorrections corrections,
            Supplier<Words> words,
            Consumer<String> say) {
        this.model = model;
        this.clips = clips;
        this.say = say;
        this.searches = new Searches(model, background, clips, say);
        this.learning = new Learning(model, corrections, say);
        this.suggesting = new Suggesting(model, searches, clips, learning, say);
        this.drafts = new Drafts(model, suggesting, clips);
        this.steadier = new Steadier(model, background, clips, words, say);
    }

    /** A click on the large picture: the ball is looked for, anything else goes where the click was. */
    @Override
    public void clicked(ImagePoint at, Snap snap) {
        View of = model.large();
        Optional<Frame> frame = clips.frame(of);
        boolean ball = model.selected().filter(i -> i instanceof Item.OfBall).isPresent() && !model.repeating();
        if (!ball || frame.isEmpty() || snap == Snap.BY_HAND || model.away(of)) {
            model.place(at);
            return;
        }
        double focalPx = Suggesting.focalPx(model, of, frame.get());
        searches.run(
                of,
                Item.BALL,
                frame.get(),
                Texts.of("ball.looking"),
                () -> BallOutline.fit(frame.get(), of, focalPx, at),
                found -> {
                    found.ifPresent(mark -> model.place(of, mark));
                    say.accept(found.map(mark -> Texts.of(
                                    "ball.found", Spread.half(mark.sigmaPx()), Spread.half(mark.diameterSigmaPx())))
                            .orElse(Texts.of("ball.none")));
                });
    }

    /**
     * A stroke along a rod or an upright, brought onto the edge it was meant for, where there is one; or from one side of the
     * ball to the other. While marking again it is the hand that is learnt, so nothing is looked for.
     */
    @Override
    public void stroked(ImagePoint from, ImagePoint to, Snap snap) {
        View of = model.large();
        Optional<Frame> frame = clips.frame(of);
        if (model.selected().isEmpty()) {
            return;
        }
        if (model.away(of)) {
            say.accept(Texts.of("film.elsewhere"));
            return;
        }
        if (model.selected().get() instanceof Item.OfBall) {
            circled(of, from, to);
            return;
        }
        double click = model.sheet().clickSigmaPx();
        LineMark rough = new LineMark(model.selected().get(), from, click, to, click);
        if (frame.isEmpty() || snap == Snap.BY_HAND || model.repeating()) {
            model.place(of, rough);
            say.accept(Texts.of("line.by-hand", Spread.half(click)));
            return;
        }
        searches.run(
                of, rough.item(), frame.get(), Texts.of("line.looking"), () -> snapped(frame.get(), rough), found -> {
                    model.place(of, found.orElse(rough));
                    say.accept(Texts.of(
                            found.isPresent() ? "line.found" : "line.none",
                            Spread.half(found.orElse(rough).fromSigmaPx())));
                });
    }

    private void circled(View of, ImagePoint from, ImagePoint to) {
        if (from.distancePx(to) < SMALLEST_BALL_PX) {
            say.accept(Texts.of("ball.too-small"));
            return;
        }
        double largest = of == View.TEE ? LARGEST_BALL_AT_THE_TEE : LARGEST_BALL;
        if (model.marks(of)
                .filter(v -> from.distancePx(to) > largest * v.heightPx())
                .isPresent()) {
            say.accept(Texts.of("ball.too-large"));
            return;
        }
        BallMark ball = Marking.ball(from, to, model.sheet().clickSigmaPx());
        model.place(of, ball);
        say.accept(Texts.of("ball.by-hand", Spread.half(ball.sigmaPx()), Spread.half(ball.diameterSigmaPx())));
    }

    private static Optional<LineMark> snapped(Frame frame, LineMark rough) {
        if (rough.item() instanceof Item.OfFloor) {
            Optional<SnappedRod> rod = EdgeSnap.rod(frame, rough.from(), rough.to());
            return rod.filter(r -> isIn(frame, r.onGround(r.from())) && isIn(frame, r.onGround(r.to())))
                    .map(r -> new LineMark(
                            rough.item(),
                            r.onGround(r.from()),
                            r.sigmaOnGroundPx(r.from()),
                            r.onGround(r.to()),
                            r.sigmaOnGroundPx(r.to())));
        }
        Optional<SnappedLine> line = EdgeSnap.along(frame, rough.from(), rough.to());
        return line.map(l -> new LineMark(rough.item(), l.from(), l.endSigmaPx(), l.to(), l.endSigmaPx()));
    }

    private static boolean isIn(Frame frame, ImagePoint at) {
        return at.xPx() >= 0 && at.xPx() <= frame.width() && at.yPx() >= 0 && at.yPx() <= frame.height();
    }

    /** All of the large view that is not placed yet, as the program sees it; to be accepted, moved or deleted. */
    public void suggest() {
        suggesting.suggest();
    }

    /** What is suggested of clips that arrive, by itself. */
    public Drafts drafts() {
        return drafts;
    }

    /** What is learnt of the coach's corrections. */
    public Learning learning() {
        return learning;
    }

    /** From which hand the pictures show the player to play. */
    HandSeen hands() {
        return suggesting.hands();
    }

    /** From which hand a view was looked at last. */
    Optional<Handedness> looked(View of) {
        return suggesting.hand(of);
    }

    /** The coach says that the hand that is set is the right one. */
    void keepHand() {
        suggesting.keepHand();
    }

    /** Puts the large view's marks where they are on the average while the player stands still. */
    public void steady() {
        steadier.steady();
    }

    /** Gives up what is being looked for; answers whether anything was. */
    public boolean stop() {
        drafts.stop();
        return searches.stop() | steadier.stop();
    }

    public void close() {
        learning.leave();
        suggesting.close();
    }
}

package org.toeline.desk.film;

import java.util.Optional;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.util.Duration;
import org.toeline.assist.Movement;

/**
 * A clip laid out below its picture: a row of small frames, how much moves drawn over them, where the player stands still as a
 * band, the moments of address and the strike as ticks, the marked frame pinned, and the moment that is shown as a line. It is
 * dragged along to look; with the shift key a stretch is chosen to be played over and over.
 */
public final class Strip extends Region {

    static final double HEIGHT = 66;
    private static final double TOP = 13;
    private static final double FRAMES = 42;
    private static final double BAND = 7;
    private static final Color GROUND = Color.web("#1a1c1f");
    private static final Color INK = Color.web("#f2f0eb");
    private static final Color QUIET = Color.web("#b9b5ad");
    private static final Color PIN = Color.web("#F0E442");

    /** What a hand on the strip asks for, in the clip's own time, seconds. */
    public interface Hand {

        void to(double seconds);

        void repeat(Optional<Span> span);
    }

    private final Canvas ground = new Canvas();
    private final Canvas moving = new Canvas();
    private final StripFrames frames = new StripFrames();
    private final Hand hand;
    private final Timeline growing = new Timeline(new KeyFrame(Duration.millis(250), e -> ground()));
    private Optional<StripFacts> facts = Optional.empty();
    private Optional<Span> repeated = Optional.empty();
    private double pressedS;

    public Strip(Hand hand) {
        this.hand = hand;
        setId("strip");
        setMinSize(0, HEIGHT);
        setPrefHeight(HEIGHT);
        setMaxHeight(HEIGHT);
        getChildren().addAll(ground, moving);
        ground.setMouseTransparent(true);
        moving.setMouseTransparent(true);
        growing.setCycleCount(Timeline.INDEFINITE);
        widthProperty().addListener((o, a, b) -> resized());
        setOnMousePressed(e -> {
            pressedS = seconds(e);
            dragged(e);
        });
        setOnMouseDragged(this::dragged);
    }

    /** Shows a clip; nothing where there is no film. */
    public void show(Optional<StripFacts> shown, Optional<Span> repeats) {
        boolean same = facts.equals(shown) && repeated.equals(repeats);
        facts = shown;
        repeated = repeats;
        setVisible(shown.isPresent());
        setManaged(shown.isPresent());
        if (!same || growing.getStatus() == Timeline.Status.RUNNING) {
            ground();
        }
        moved();
    }

    private void resized() {
        for (Canvas canvas : new Canvas[] {ground, moving}) {
            canvas.setWidth(getWidth());
            canvas.setHeight(HEIGHT);
        }
        ground();
        moved();
    }

    private void dragged(MouseEvent e) {
        if (facts.isEmpty()) {
            return;
        }
        if (e.isShiftDown()) {
            double to = seconds(e);
            boolean none = Math.abs(x(to) - x(pressedS)) < 4;
            hand.repeat(
                    none ? Optional.empty() : Optional.of(new Span(Math.min(pressedS, to), Math.max(pressedS, to))));
        } else {
            hand.to(seconds(e));
        }
    }

    private double startS() {
        return facts.orElseThrow().reel().clip().info().startSeconds();
    }

    private double lengthS() {
        return Math.max(1e-6, facts.orElseThrow().reel().clip().info().durationSeconds());
    }

    private double x(double seconds) {
        return facts.isEmpty() ? 0 : (seconds - startS()) / lengthS() * getWidth();
    }

    private double seconds(MouseEvent e) {
        double share = Math.max(0, Math.min(1, e.getX() / Math.max(1, getWidth())));
        return facts.isEmpty() ? 0 : startS() + share * lengthS();
    }

    /** What does not move, drawn anew; again later, while frames are still being made ready. */
    private void ground() {
        GraphicsContext g = ground.getGraphicsContext2D();
        g.setFill(GROUND);
        g.fillRect(0, 0, ground.getWidth(), ground.getHeight());
        if (facts.isEmpty() || getWidth() < 1) {
            growing.stop();
            return;
        }
        StripFacts f = facts.get();
        frames.prepare(f.reel(), getWidth(), FRAMES);
        boolean all = frames.draw(g, TOP);
        if (all || f.reel().film().ended()) {
            growing.stop();
        } else if (growing.getStatus() != Timeline.Status.RUNNING) {
            growing.play();
        }
        f.movement().ifPresent(m -> movement(g, m));
        repeated.ifPresent(span -> bracket(g, span));
        f.struckS().ifPresent(s -> tick(g, s, INK, "strip.strike"));
        f.markedS().ifPresent(s -> pin(g, s));
    }

    private void movement(GraphicsContext g, Movement movement) {
        double base = TOP + FRAMES;
        g.setFill(QUIET);
        movement.stills()
                .forEach(s -> g.fillRect(
                        x(s.fromSeconds()), base + 2, Math.max(1, x(s.toSeconds()) - x(s.fromSeconds())), BAND));
        double most = movement.amounts().stream()
                .mapToDouble(Movement.Amount::amount)
                .max()
                .orElse(0);
        if (most > 0) {
            curve(g, movement, most, Color.color(0, 0, 0, 0.7), 3.2);
            curve(g, movement, most, INK, 1.3);
        }
        movement.moments().forEach(m -> tick(g, m.addressSeconds(), QUIET, "strip.address"));
    }

    /** The root of it, since a swing moves a hundred times as much as a waggle. */
    private void curve(GraphicsContext g, Movement movement, double most, Color ink, double width) {
        g.setStroke(ink);
        g.setLineWidth(width);
        g.beginPath();
        boolean first = true;
        for (Movement.Amount a : movement.amounts()) {
            double y = TOP + FRAMES - 1 - 0.8 * FRAMES * Math.sqrt(Math.max(0, a.amount()) / most);
            if (first) {
                g.moveTo(x(a.seconds()), y);
            } else {
                g.lineTo(x(a.seconds()), y);
            }
            first = false;
        }
        g.stroke();
    }

    private void tick(GraphicsContext g, double seconds, Color ink, String key) {
        double x = x(seconds);
        g.setStroke(ink);
        g.setLineWidth(2);
        g.strokeLine(x, TOP - 4, x, TOP + 5);
        words(g, x, ink, key);
    }

    private void words(GraphicsContext g, double x, Color ink, String key) {
        g.setFill(ink);
        g.setFont(javafx.scene.text.Font.font(10.5));
        String words = org.toeline.desk.text.Texts.of(key);
        boolean right = x + 6.2 * words.length() + 8 < getWidth();
        g.setTextAlign(right ? javafx.scene.text.TextAlignment.LEFT : javafx.scene.text.TextAlignment.RIGHT);
        g.fillText(words, right ? x + 5 : x - 5, TOP - 3);
    }

    /** The marked frame: a pin through the whole strip. */
    private void pin(GraphicsContext g, double seconds) {
        double x = x(seconds);
        g.setStroke(Color.color(0, 0, 0, 0.7));
        g.setLineWidth(4);
        g.strokeLine(x, TOP, x, HEIGHT);
        g.setStroke(PIN);
        g.setLineWidth(2);
        g.strokeLine(x, TOP, x, HEIGHT);
        g.setFill(PIN);
        g.fillOval(x - 5, TOP - 7, 10, 10);
    }

    private void bracket(GraphicsContext g, Span span) {
        g.setStroke(INK);
        g.setLineWidth(2);
        double from = x(span.fromS());
        double to = x(span.toS());
        double y = TOP + FRAMES + BAND + 2;
        g.strokeLine(from, y, to, y);
        g.strokeLine(from, y, from, y - 8);
        g.strokeLine(to, y, to, y - 8);
    }

    /** The moment that is shown. */
    public void moved() {
        GraphicsContext g = moving.getGraphicsContext2D();
        g.clearRect(0, 0, moving.getWidth(), moving.getHeight());
        facts.ifPresent(f -> {
            double x = x(f.reel().clip().seconds(f.reel().at()));
            g.setStroke(Color.color(0, 0, 0, 0.8));
            g.setLineWidth(4);
            g.strokeLine(x, TOP, x, TOP + FRAMES);
            g.setStroke(Color.WHITE);
            g.setLineWidth(1.6);
            g.strokeLine(x, TOP, x, TOP + FRAMES);
        });
    }
}

package org.toeline.desk.film;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.toeline.desk.text.Texts;
import org.toeline.mark.View;
import org.toeline.video.QuickFilm;

/** Which films are looked at: the large view's, or that and the other view's in step with it. */
public final class Films {

    private final Supplier<View> large;
    private final Function<View, Optional<Reel>> reels;
    private final Supplier<String> tieKey;
    private final Consumer<String> say;
    private final Player player;
    private final Player.Listener listener;
    private Optional<Tie> tie = Optional.empty();
    private List<QuickFilm> tied = List.of();
    private final Map<View, Double> said = new EnumMap<>(View.class);
    private boolean together;

    /** @param tieKey the key by which two frames are said to be one moment */
    public Films(
            Supplier<View> large,
            Function<View, Optional<Reel>> reels,
            Player.Listener listener,
            Supplier<String> tieKey,
            Consumer<String> say) {
        this.tieKey = tieKey;
        this.large = large;
        this.reels = reels;
        this.say = say;
        this.listener = listener;
        this.player = new Player(this::looked, listener, say);
    }

    public Player player() {
        return player;
    }

    /** What ties both views; empty while nothing does. */
    public Optional<Tie> tie() {
        // another clip in one of the views is another film
        return tied.equals(both()) ? tie : Optional.empty();
    }

    /** What the program found of two clips: what a person said of the same two stands, however late this comes. */
    public void found(Optional<Tie> other) {
        if (tie().filter(t -> t.by() == Tie.By.HAND).isEmpty()) {
            tie(other);
        }
    }

    public void tie(Optional<Tie> other) {
        tie = other;
        tied = both();
        listener.changed();
    }

    private List<QuickFilm> both() {
        return Stream.of(View.FACE_ON, View.DOWN_THE_LINE)
                .map(reels)
                .flatMap(Optional::stream)
                .map(Reel::film)
                .toList();
    }

    /** Whether both views are watched in step. */
    public boolean together() {
        return together && companion().isPresent() && tie().isPresent();
    }

    /** Both in step, or the large one alone again. */
    public void toggleTogether() {
        together = !together();
        if (together && !together()) {
            say.accept(companion().isEmpty() ? Texts.of("step.one-clip") : Texts.of("step.no-tie", tieKey.get()));
            together = false;
        }
        player.stop();
        listener.changed();
        if (together()) {
            looked().ifPresent(f -> f.go(f.parts().get(0).reel().at()));
        }
    }

    /** The view that is watched with the large one. */
    public Optional<View> companion() {
        View other =
                switch (large.get()) {
                    case FACE_ON -> View.DOWN_THE_LINE;
                    case DOWN_THE_LINE -> View.FACE_ON;
                    case TEE -> View.TEE;
                };
        return other == large.get() || reels.apply(large.get()).isEmpty()
                ? Optional.empty()
                : reels.apply(other).map(Reel::view);
    }

    /**
     * The frame shown of the large view belongs to the same moment as the frame of the other view for which this was called
     * before. Answers whether both are known now.
     */
    public boolean oneMoment() {
        reels.apply(large.get()).ifPresent(r -> said.put(r.view(), r.clip().seconds(r.at())));
        Double faceOn = said.get(View.FACE_ON);
        Double downTheLine = said.get(View.DOWN_THE_LINE);
        if (faceOn == null || downTheLine == null) {
            return false;
        }
        said.clear();
        // somebody's frame is right to a frame of the slower clip
        tie(Optional.of(new Tie(faceOn, downTheLine, frameS() / 2, Tie.By.HAND)));
        return true;
    }

    private double frameS() {
        return Stream.of(View.FACE_ON, View.DOWN_THE_LINE)
                .map(reels)
                .flatMap(Optional::stream)
                .mapToDouble(r ->
                        r.motion().realSeconds(1 / Math.max(1, r.clip().info().rate())))
                .max()
                .orElse(0);
    }

    /** Another lesson: nothing is tied, nothing plays. */
    public void forget() {
        tie = Optional.empty();
        said.clear();
        together = false;
        player.forget();
    }

    /** Frames on, or back, with whatever is in step. */
    public void step(int frames) {
        player.stop();
        looked().ifPresent(f -> f.go(f.parts().get(0).reel().at() + frames));
        listener.moved();
    }

    /** To a time of the large view's clip. */
    public void seek(double seconds) {
        player.stop();
        looked().ifPresent(f -> f.go(f.parts().get(0).reel().clip().indexAt(seconds)));
        listener.moved();
    }

    /** So many seconds of the large view's clip on, or back. */
    public void jump(double seconds) {
        reels.apply(large.get()).ifPresent(r -> seek(r.clip().seconds(r.at()) + seconds));
    }

    /** To a time of a view's clip, while the hand is on its strip. */
    public void scrub(View view, double seconds) {
        looked().flatMap(f -> f.part(view)).ifPresent(p -> player.scrub(p.realOf(seconds)));
    }

    /** The stretch of a view's clip that is played over and over. */
    public Optional<Span> repeated(View view) {
        return player.repeated()
                .flatMap(span -> looked().flatMap(f -> f.part(view))
                        .map(p -> new Span(p.clipOf(span.fromS()), p.clipOf(span.toS()))));
    }

    public void repeat(View view, Optional<Span> span) {
        player.repeat(span.flatMap(s ->
                looked().flatMap(f -> f.part(view)).map(p -> new Span(p.realOf(s.fromS()), p.realOf(s.toS())))));
    }

    /** The strike in a view's clip, where the views are tied by it. */
    public OptionalDouble struck(View view) {
        return tie().filter(t -> t.by() == Tie.By.SOUND && view != View.TEE)
                .map(t -> OptionalDouble.of(moment(view)))
                .orElse(OptionalDouble.empty());
    }

    private Optional<InStep> looked() {
        List<InStep.Part> parts = new ArrayList<>();
        boolean tied = together();
        reels.apply(large.get()).ifPresent(r -> parts.add(new InStep.Part(r, tied ? moment(r.view()) : 0)));
        if (tied) {
            companion().flatMap(reels).ifPresent(r -> parts.add(new InStep.Part(r, moment(r.view()))));
        }
        return parts.isEmpty() ? Optional.empty() : Optional.of(new InStep(parts));
    }

    private double moment(View view) {
        Tie known = tie().orElseThrow();
        return view == View.FACE_ON ? known.faceOnS() : known.downTheLineS();
    }
}

package org.toeline.desk.sheet;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.scene.image.Image;
import org.toeline.assist.Movement;
import org.toeline.desk.film.FilmPictures;
import org.toeline.desk.film.Reel;
import org.toeline.video.Clip;
import org.toeline.video.ClipException;
import org.toeline.video.Frame;
import org.toeline.video.FrameFetcher;
import org.toeline.video.QuickFilm;

/** The clip of a view, where in it the view stands, its marked frame, and the pictures of both. Owned by the interface thread. */
final class OpenClip implements AutoCloseable {

    private static final Logger LOG = Logger.getLogger(OpenClip.class.getName());

    final FrameFetcher fetcher;
    /** Its small pictures; none of a photograph. */
    final Optional<QuickFilm> film;
    /** Where the lesson says the clip is. */
    final String named;
    /** Place of the frame that is or will be shown. */
    int at;
    /** That frame, once it is shown. */
    Optional<Frame> shown = Optional.empty();
    /** Time of the marked frame; empty for the first. */
    OptionalDouble markedAt = OptionalDouble.empty();
    /** The marked frame, once it was decoded. */
    Optional<Frame> marked = Optional.empty();
    /** It is being decoded, as the view has left it before it was shown. */
    boolean markedComes;

    /** How it moves, once it was looked through. */
    Optional<Movement> movement = Optional.empty();
    /** As it is looked through by others. */
    Optional<Reel> reel = Optional.empty();

    private final Optional<FilmPictures> pictures;
    private volatile boolean closed;

    OpenClip(Clip clip, String named) {
        this.fetcher = new FrameFetcher(clip);
        this.film = film(clip);
        this.pictures = film.map(FilmPictures::new);
        this.named = named;
    }

    private static Optional<QuickFilm> film(Clip clip) {
        try {
            return clip.frameCount() > 1 ? Optional.of(new QuickFilm(clip)) : Optional.empty();
        } catch (ClipException e) {
            // the exact frames can be had all the same, and say what is wrong where it is
            LOG.log(Level.WARNING, "a clip without small pictures", e);
            return Optional.empty();
        }
    }

    /** The frame shown at a time; the first where none is given. */
    int place(OptionalDouble seconds) {
        return seconds.isPresent() ? fetcher.clip().indexAt(seconds.getAsDouble()) : 0;
    }

    /** A frame, on any thread; empty when the clip was closed meanwhile. */
    Optional<Frame> decoded(int frame) throws ClipException {
        try {
            return closed ? Optional.empty() : Optional.of(fetcher.clip().frame(frame));
        } catch (IllegalStateException e) {
            if (closed) {
                return Optional.empty();
            }
            throw e;
        }
    }

    /**
     * Frames in which the player stands as in another one, to be decoded on any thread: none of a photograph, where no moment of
     * standing still is known or when the clip was closed meanwhile.
     *
     * @param slowedDown how many seconds of the clip a second of real time takes
     */
    Supplier<List<Frame>> still(Frame as, double slowedDown) {
        Clip clip = fetcher.clip();
        List<Integer> places = movement.map(m -> m.besides(as.seconds(), slowedDown)).orElse(List.of()).stream()
                .map(clip::indexAt)
                .filter(i -> i != as.index())
                .distinct()
                .toList();
        return () -> places.stream().flatMap(i -> passing(clip, i).stream()).toList();
    }

    /** Not kept: it is not shown. */
    private Optional<Frame> passing(Clip clip, int at) {
        int[] pixels = new int[clip.info().width() * clip.info().height()];
        try {
            clip.show(at, pixels);
            return Optional.of(new Frame(
                    at, clip.seconds(at), clip.info().width(), clip.info().height(), pixels));
        } catch (ClipException | IllegalStateException e) {
            // closed, or damaged there: the frame that was asked about is there all the same
            LOG.log(closed ? Level.FINE : Level.WARNING, "a frame of the still span", e);
            return Optional.empty();
        }
    }

    /** A small picture of a frame, if it is ready. */
    Optional<Image> small(int frame) {
        return pictures.flatMap(p -> p.picture(frame));
    }

    @Override
    public void close() {
        closed = true;
        film.ifPresent(QuickFilm::close);
        fetcher.close();
    }
}

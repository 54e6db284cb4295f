package org.toeline.desk.players;

import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.embed.swing.SwingFXUtils;
import org.toeline.desk.records.AddressFrames;
import org.toeline.desk.records.LessonFrames;
import org.toeline.desk.records.Records;
import org.toeline.desk.work.Background;
import org.toeline.ledger.store.Ledger;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.place.LedgerPlace;
import org.toeline.ledger.store.rows.KeptLesson;
import org.toeline.ledger.store.rows.Take;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;

/**
 * Small pictures of the frames that lessons were marked on, face-on where there is one. They are made in the background, one after
 * the other and what is asked for last first, and held until the lesson is another. On the interface thread.
 */
final class Thumbnails {

    static final int WIDTH = 72;
    static final int HEIGHT = 44;
    /** Of those that wait: what a list shows at once, and a little more. */
    private static final int MOST_WAITING = 40;

    private static final Logger LOG = Logger.getLogger(Thumbnails.class.getName());

    /** What is known of a lesson's picture. */
    record Thumb(boolean looked, int version, Optional<javafx.scene.image.Image> picture) {

        static final Thumb NOT_YET = new Thumb(false, 0, Optional.empty());
    }

    private record Source(KeptLesson kept, List<Take> takes) {

        static Optional<Source> of(Ledger ledger, int lesson) {
            try {
                Optional<KeptLesson> kept = ledger.lesson(lesson);
                return kept.isEmpty() ? Optional.empty() : Optional.of(new Source(kept.get(), ledger.takes(lesson)));
            } catch (LedgerException e) {
                LOG.log(Level.FINE, "a lesson for a small picture could not be read", e);
                return Optional.empty();
            }
        }
    }

    private final Records records;
    private final Background background;
    private final Map<Integer, ReadOnlyObjectWrapper<Thumb>> made = new HashMap<>();
    private final Set<Integer> looked = new HashSet<>();
    private final Deque<Integer> waiting = new ArrayDeque<>();
    private boolean works;

    Thumbnails(Records records, Background background) {
        this.records = records;
        this.background = background;
    }

    /** The lessons may be others now: each is looked at once more when it is asked for, and made anew if it changed. */
    void renew() {
        looked.clear();
        waiting.clear();
        works = false;
    }

    /** A lesson's picture, as it is and as it will be. */
    ReadOnlyObjectProperty<Thumb> of(int lesson) {
        ReadOnlyObjectWrapper<Thumb> thumb =
                made.computeIfAbsent(lesson, id -> new ReadOnlyObjectWrapper<>(Thumb.NOT_YET));
        if (looked.add(lesson)) {
            waiting.addFirst(lesson);
            if (waiting.size() > MOST_WAITING) {
                looked.remove(waiting.removeLast());
            }
            next();
        }
        return thumb.getReadOnlyProperty();
    }

    private void next() {
        if (works || waiting.isEmpty()) {
            return;
        }
        works = true;
        int lesson = waiting.removeFirst();
        ReadOnlyObjectWrapper<Thumb> thumb = made.get(lesson);
        int before = thumb.get().looked() ? thumb.get().version() : -1;
        LedgerPlace.Folder place = records.settings().folder();
        records.ask(l -> Source.of(l, lesson), source -> {
            if (source.filter(s -> s.kept().version() != before).isEmpty()) {
                done();
                return;
            }
            background.run(() -> small(source.get(), place), now -> {
                thumb.set(now);
                done();
            });
        });
    }

    private void done() {
        works = false;
        next();
    }

    /** What was kept of the frame, which is read at once; else out of the clip. */
    private static Thumb small(Source source, LedgerPlace.Folder place) {
        List<ViewMarks> views = source.kept().lesson().sheet().views();
        Optional<ViewMarks> shown = views.stream()
                .filter(v -> v.view() == View.FACE_ON)
                .findFirst()
                .or(() -> views.stream().findFirst());
        Optional<BufferedImage> frame = shown.flatMap(v -> frame(source, place, v));
        return new Thumb(true, source.kept().version(), frame.map(f -> SwingFXUtils.toFXImage(scaled(f), null)));
    }

    private static Optional<BufferedImage> frame(Source source, LedgerPlace.Folder place, ViewMarks marks) {
        try {
            Optional<BufferedImage> kept =
                    AddressFrames.read(place, source.kept().identity(), marks.view());
            if (kept.isPresent()) {
                return kept;
            }
        } catch (IOException e) {
            LOG.log(Level.FINE, "a kept frame could not be read", e);
        }
        return new LessonFrames(source.kept(), source.takes(), place).of(marks).picture();
    }

    private static BufferedImage scaled(BufferedImage frame) {
        double scale = Math.min((double) WIDTH / frame.getWidth(), (double) HEIGHT / frame.getHeight());
        int width = Math.max(1, (int) Math.round(scale * frame.getWidth()));
        int height = Math.max(1, (int) Math.round(scale * frame.getHeight()));
        BufferedImage small = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = small.createGraphics();
        g.drawImage(frame.getScaledInstance(width, height, Image.SCALE_AREA_AVERAGING), 0, 0, null);
        g.dispose();
        return small;
    }
}

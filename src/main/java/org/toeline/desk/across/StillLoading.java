package org.toeline.desk.across;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.toeline.desk.across.StillSource.Still;
import org.toeline.desk.screen.Studio;
import org.toeline.ledger.store.rows.Take;
import org.toeline.mark.View;

/** Fetches lessons' stills off the interface thread, one after the other, and keeps the latest. */
final class StillLoading {

    /** A picture that was fetched, good for as long as the lesson is not changed. */
    private record Key(int lessonId, int version, View view) {}

    private final Studio studio;
    private final Consumer<Still> then;
    private final Map<Key, Still> kept = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Key, Still> eldest) {
            return size() > 2 * AcrossModel.MOST_TICKED;
        }
    };
    private int asked;

    /** @param then takes each still on the interface thread */
    StillLoading(Studio studio, Consumer<Still> then) {
        this.studio = studio;
        this.then = then;
    }

    /** What was asked for before and is not there yet comes to nothing. */
    void load(List<Integer> lessons, View view) {
        next(lessons, view, ++asked);
    }

    private void next(List<Integer> lessons, View view, int ticket) {
        if (lessons.isEmpty() || ticket != asked) {
            return;
        }
        int id = lessons.get(0);
        List<Integer> rest = lessons.subList(1, lessons.size());
        studio.records()
                .ask(
                        l -> {
                            List<Take> takes = l.takes(id);
                            return l.lesson(id)
                                    .map(k -> new StillSource(
                                            k,
                                            takes,
                                            studio.records().settings().folder()));
                        },
                        source -> {
                            if (ticket == asked) {
                                source.ifPresentOrElse(
                                        s -> fetch(s, rest, view, ticket), () -> next(rest, view, ticket));
                            }
                        });
    }

    private void fetch(StillSource source, List<Integer> rest, View view, int ticket) {
        Key key = new Key(source.kept().id(), source.kept().version(), view);
        Optional<Still> before =
                Optional.ofNullable(kept.get(key)).filter(s -> s.missing().isEmpty());
        if (before.isPresent()) {
            then.accept(before.get());
            next(rest, view, ticket);
            return;
        }
        studio.background().run(() -> source.of(view), still -> {
            kept.put(key, still);
            if (ticket == asked) {
                then.accept(still);
                next(rest, view, ticket);
            }
        });
    }
}

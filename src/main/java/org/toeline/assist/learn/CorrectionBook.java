package org.toeline.assist.learn;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.toeline.assist.LandmarkSuggester;
import org.toeline.assist.ViewSuggestion;
import org.toeline.assist.learn.Correction.Kind;
import org.toeline.document.Json;
import org.toeline.geometry.ImagePoint;
import org.toeline.language.Sentences;
import org.toeline.mark.Handedness;
import org.toeline.mark.Landmark;
import org.toeline.mark.Mark;
import org.toeline.mark.View;

/**
 * All that is learnt of one coach: shares of a span, by view and landmark, and nothing else. Immutable; any thread.
 *
 * @param all at most one for a view and a landmark
 */
public record CorrectionBook(List<Corrections> all) {

    public static final CorrectionBook EMPTY = new CorrectionBook(List.of());

    private static final String FORMAT = "toeline-corrections";
    private static final Sentences SENTENCES = Sentences.of(CorrectionBook.class);
    /** What is written of a share: a twentieth of a pixel in a player who is 500 px high. */
    private static final double FINEST = 1e4;

    public CorrectionBook {
        all = List.copyOf(all);
        for (int i = 0; i < all.size(); i++) {
            if (place(all.subList(0, i), all.get(i).view(), all.get(i).landmark()) >= 0) {
                throw new IllegalArgumentException(SENTENCES.of(
                        "corrections.twice",
                        all.get(i).landmark().id(),
                        all.get(i).view().id()));
            }
        }
    }

    private static int place(List<Corrections> in, View view, Landmark landmark) {
        for (int i = 0; i < in.size(); i++) {
            if (in.get(i).view() == view && in.get(i).landmark() == landmark) {
                return i;
            }
        }
        return -1;
    }

    public Optional<Corrections> of(View view, Landmark landmark) {
        int place = place(all, view, landmark);
        return place < 0 ? Optional.empty() : Optional.of(all.get(place));
    }

    CorrectionBook with(Corrections changed) {
        List<Corrections> with = new ArrayList<>(all);
        int place = place(all, changed.view(), changed.landmark());
        if (place < 0) {
            with.add(changed);
        } else {
            with.set(place, changed);
        }
        return new CorrectionBook(with);
    }

    /** What was suggested, with the landmarks of the body where this coach would mark them, as far as that is learnt. */
    public ViewSuggestion onto(ViewSuggestion seen, View view, Handedness hand) {
        OptionalDouble span = seen.spanPx();
        return span.isEmpty() || all.isEmpty()
                ? seen
                : seen.with(seen.landmarks().stream()
                        .map(mark -> of(view, mark.landmark())
                                .flatMap(c -> c.learnt().map(l -> moved(mark, l, c.stated(), span.getAsDouble(), hand)))
                                .orElse(mark))
                        .toList());
    }

    /** What the places in several frames scatter by stays in the spread. */
    private static Mark moved(Mark mark, Learnt learnt, double stated, double spanPx, Handedness hand) {
        ImagePoint at = Correction.moved(mark.at(), learnt.towards(), learnt.up(), spanPx, hand);
        double scatter = Math.max(0, Math.pow(mark.sigmaPx(), 2) - Math.pow(stated * spanPx, 2));
        double sigma = Math.sqrt(scatter + Math.pow(learnt.spread() * spanPx, 2));
        return new Mark(mark.landmark(), at, sigma, mark.origin());
    }

    /**
     * Reads a document as {@link #json} writes it.
     *
     * @throws IllegalArgumentException with a clause, when it is none, or was learnt from what another edition of the program suggests
     */
    public static CorrectionBook of(byte[] json) throws Json.NotJson {
        JsonNode tree = Json.read(json);
        if (!tree.path("format").asText().equals(FORMAT)) {
            throw new IllegalArgumentException(SENTENCES.of("corrections.format"));
        }
        if (!tree.path("of").asText().equals(LandmarkSuggester.edition())) {
            throw new IllegalArgumentException(SENTENCES.of("corrections.edition"));
        }
        List<Corrections> read = new ArrayList<>();
        for (JsonNode node : tree.path("landmarks")) {
            read.add(read(node));
        }
        return new CorrectionBook(read);
    }

    private static Corrections read(JsonNode node) {
        String name = node.path("landmark").asText();
        View view = View.of(node.path("view").asText()).orElse(View.TEE);
        Landmark landmark = Landmark.of(name).orElse(Landmark.GROUND);
        if (LandmarkSuggester.spread(landmark, view).isEmpty()
                || !node.path("misses").canConvertToInt()
                || node.path("misses").asInt() < 0) {
            throw new IllegalArgumentException(SENTENCES.of("corrections.landmark", name));
        }
        Corrections read =
                new Corrections(view, landmark, List.of(), node.path("misses").asInt());
        for (Kind kind : Kind.values()) {
            for (JsonNode pair : node.path(word(kind))) {
                if (pair.size() != 2 || !isShare(pair.path(0)) || !isShare(pair.path(1))) {
                    throw new IllegalArgumentException(SENTENCES.of("corrections.share", name));
                }
                read = read.with(
                        new Correction(pair.path(0).asDouble(), pair.path(1).asDouble(), kind));
            }
        }
        return read;
    }

    private static boolean isShare(JsonNode number) {
        return number.isNumber() && Math.abs(number.asDouble()) <= Correction.MOST;
    }

    private static String word(Kind kind) {
        return kind == Kind.MOVED ? "moved" : "agreed";
    }

    /** The document; the older first, of each kind for itself. */
    public byte[] json() {
        ObjectNode document =
                Json.object().put("format", FORMAT).put("version", 1).put("of", LandmarkSuggester.edition());
        ArrayNode list = document.putArray("landmarks");
        for (Corrections corrections : all) {
            ObjectNode node = list.addObject()
                    .put("view", corrections.view().id())
                    .put("landmark", corrections.landmark().id())
                    .put("misses", corrections.misses());
            for (Kind kind : Kind.values()) {
                ArrayNode pairs = node.putArray(word(kind));
                corrections.kept().stream()
                        .filter(c -> c.kind() == kind)
                        .forEach(c -> pairs.addArray().add(written(c.towards())).add(written(c.up())));
            }
        }
        return Json.bytes(document);
    }

    private static double written(double share) {
        return Math.rint(share * FINEST) / FINEST;
    }
}

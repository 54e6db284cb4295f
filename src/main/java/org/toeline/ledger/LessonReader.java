package org.toeline.ledger;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import org.toeline.geometry.ImagePoint;
import org.toeline.language.Sentences;
import org.toeline.mark.BallMark;
import org.toeline.mark.Club;
import org.toeline.mark.FloorLayout;
import org.toeline.mark.FloorMark;
import org.toeline.mark.FloorReference;
import org.toeline.mark.Handedness;
import org.toeline.mark.Landmark;
import org.toeline.mark.Laying;
import org.toeline.mark.LensNote;
import org.toeline.mark.Mark;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.PinnedWords;
import org.toeline.mark.Stature;
import org.toeline.mark.Takes;
import org.toeline.mark.VerticalMark;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;

/** Turns a document that the schema allows into a lesson, or says what in it cannot be. */
final class LessonReader {

    private final String name;
    private final ObjectNode document;
    private String place = "";
    private double clickSigmaPx = MarkSheet.USUAL_CLICK_SIGMA_PX;

    private LessonReader(ObjectNode document, String name) {
        this.document = document;
        this.name = name;
    }

    static Lesson read(ObjectNode document, String name) throws DocumentException {
        LessonReader reader = new LessonReader(document, name);
        try {
            return reader.lesson();
        } catch (IllegalArgumentException e) {
            throw new DocumentException(
                    name + ": " + (reader.place.isEmpty() ? "" : reader.place + ": ") + e.getMessage());
        }
    }

    private Lesson lesson() throws DocumentException {
        clickSigmaPx = document.path("clickSd").asDouble(clickSigmaPx);
        JsonNode player = document.path("player");
        String handed = player.path("handedness").asText();
        FloorLayout floor = floor(document.path("floor"));
        List<ViewMarks> views = new ArrayList<>();
        Map<View, ClipMoment> clips = new EnumMap<>(View.class);
        Unfinished unfinished = Unfinished.NOTHING;
        List<PinnedWords> words = new ArrayList<>();
        JsonNode nodes = document.path("views");
        for (int i = 0; i < nodes.size(); i++) {
            JsonNode node = nodes.get(i);
            place = "views[" + i + "]";
            if (node.has("handedness") && !node.path("handedness").asText().equals(handed)) {
                throw new DocumentException(Sentences.of(LessonReader.class)
                        .of(
                                "lesson.handedness",
                                name,
                                place,
                                node.path("handedness").asText(),
                                handed));
            }
            ViewMarks view = view(node);
            views.add(view);
            if (node.has("clip")) {
                clips.put(
                        view.view(),
                        new ClipMoment(node.path("clip").asText(), number(node, "time"), number(node, "filmedAt")));
            }
            place = "views[" + i + "]";
            unfinished = unfinished(unfinished, view, node);
            words.addAll(words(view, node.path("words"), "views[" + i + "]"));
        }
        place = "";
        MarkSheet sheet = new MarkSheet(
                handed.equals(Handedness.LEFT.id()) ? Handedness.LEFT : Handedness.RIGHT,
                Club.of(document.path("club").asText()).orElseThrow(),
                document.path("takes").asText(Takes.SEPARATE.id()).equals(Takes.SIMULTANEOUS.id())
                        ? Takes.SIMULTANEOUS
                        : Takes.SEPARATE,
                floor,
                views,
                clickSigmaPx,
                stature(player));
        Optional<String> playerName =
                player.has("name") ? Optional.of(player.path("name").asText()) : Optional.empty();
        return new Lesson(playerName, recorded(), sheet, clips, unfinished, words, new KeptTree(document));
    }

    private Optional<OffsetDateTime> recorded() throws DocumentException {
        if (!document.has("recorded")) {
            return Optional.empty();
        }
        try {
            return Optional.of(OffsetDateTime.parse(document.path("recorded").asText()));
        } catch (DateTimeException e) {
            throw new DocumentException(Sentences.of(LessonReader.class)
                    .of("lesson.recorded", name, document.path("recorded").asText()));
        }
    }

    private FloorLayout floor(JsonNode node) {
        place = "floor";
        List<FloorReference> points = new ArrayList<>();
        for (JsonNode p : node.path("points")) {
            points.add(new FloorReference(
                    p.path("id").asText(), p.path("t").asDouble(), p.path("h").asDouble()));
        }
        return new FloorLayout(
                points,
                node.path("sd").asDouble(FloorLayout.USUAL_SIGMA_M),
                node.path("movedBetweenViews").asBoolean() ? Laying.AGAIN : Laying.ONCE);
    }

    private Optional<Stature> stature(JsonNode player) {
        if (!player.has("height")) {
            return Optional.empty();
        }
        place = "player.height";
        double heightM = player.path("height").asDouble();
        Optional<Stature> stature = Optional.of(
                player.has("heightSd")
                        ? new Stature(heightM, player.path("heightSd").asDouble())
                        : Stature.told(heightM));
        place = "";
        return stature;
    }

    private Unfinished unfinished(Unfinished before, ViewMarks view, JsonNode node) {
        Set<String> unseen = new TreeSet<>();
        node.path("unseen").forEach(n -> unseen.add(n.asText()));
        Unfinished read = before.withUnseen(view.view(), none -> unseen);
        if (!node.has("again")) {
            return read;
        }
        place += ".again";
        return read.withAgain(marks(view.view(), view.widthPx(), view.heightPx(), LensNote.NONE, node.path("again")));
    }

    private List<PinnedWords> words(ViewMarks view, JsonNode nodes, String at) {
        List<PinnedWords> words = new ArrayList<>();
        for (JsonNode node : nodes) {
            place = at + ".words[" + words.size() + "]";
            words.add(new PinnedWords(
                    view.view(),
                    node.path("text").asText(),
                    inside(node, "x", "y", view.widthPx(), view.heightPx()),
                    inside(node, "textX", "textY", view.widthPx(), view.heightPx()),
                    node.path("still").asBoolean()));
        }
        return words;
    }

    private ViewMarks view(JsonNode node) {
        return marks(
                View.of(node.path("view").asText()).orElseThrow(),
                node.path("width").asInt(),
                node.path("height").asInt(),
                lens(node.path("lens")),
                node);
    }

    /** What is marked on a picture. */
    private ViewMarks marks(View view, int width, int height, LensNote lens, JsonNode node) {
        String at = place;
        List<FloorMark> floorMarks = new ArrayList<>();
        for (JsonNode m : node.path("floorMarks")) {
            place = at + ".floorMarks[" + floorMarks.size() + "]";
            floorMarks.add(
                    new FloorMark(m.path("point").asText(), inside(m, "x", "y", width, height), sigma(m), origin(m)));
        }
        List<VerticalMark> verticals = new ArrayList<>();
        for (JsonNode m : node.path("verticals")) {
            place = at + ".verticals[" + verticals.size() + "]";
            verticals.add(new VerticalMark(
                    inside(m, "x1", "y1", width, height), inside(m, "x2", "y2", width, height), sigma(m), origin(m)));
        }
        List<Mark> marks = new ArrayList<>();
        for (JsonNode m : node.path("marks")) {
            place = at + ".marks[" + marks.size() + "] (" + m.path("landmark").asText() + ")";
            marks.add(new Mark(
                    Landmark.of(m.path("landmark").asText()).orElseThrow(),
                    inside(m, "x", "y", width, height),
                    sigma(m),
                    origin(m)));
        }
        place = at + ".ball";
        Optional<BallMark> ball =
                node.has("ball") ? Optional.of(ball(node.path("ball"), width, height)) : Optional.empty();
        place = at;
        return new ViewMarks(view, width, height, lens, floorMarks, verticals, ball, marks);
    }

    private BallMark ball(JsonNode node, int width, int height) {
        return new BallMark(
                inside(node, "x", "y", width, height),
                number(node, "diameter"),
                sigma(node),
                node.path("diameterSd").asDouble(BallMark.USUAL_DIAMETER_SIGMA_PX),
                origin(node));
    }

    /** A suggestion counts as one until it is accepted; earlier documents say no more than where it came from. */
    private static Mark.Origin origin(JsonNode node) {
        boolean accepted =
                node.path("accepted").asBoolean(!node.path("origin").asText().equals("suggested"));
        return accepted ? Mark.Origin.PLACED : Mark.Origin.SUGGESTED;
    }

    static LensNote lens(JsonNode node) {
        return new LensNote(
                number(node, "focal"),
                number(node, "focalSd"),
                number(node, "cx"),
                number(node, "cy"),
                number(node, "k1"),
                number(node, "k2"));
    }

    private static OptionalDouble number(JsonNode node, String key) {
        return node.has(key) ? OptionalDouble.of(node.path(key).asDouble()) : OptionalDouble.empty();
    }

    private double sigma(JsonNode node) {
        return node.path("sd").asDouble(clickSigmaPx);
    }

    private static ImagePoint inside(JsonNode node, String x, String y, int width, int height) {
        double px = node.path(x).asDouble();
        double py = node.path(y).asDouble();
        if (px < 0 || px > width || py < 0 || py > height) {
            throw new IllegalArgumentException(Sentences.of(LessonReader.class)
                    .of("lesson.outside", Double.toString(px), Double.toString(py), width, height));
        }
        return new ImagePoint(px, py);
    }
}

package org.toeline.ledger;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.BiConsumer;
import java.util.function.Function;
import org.toeline.mark.BallMark;
import org.toeline.mark.FloorLayout;
import org.toeline.mark.FloorMark;
import org.toeline.mark.FloorReference;
import org.toeline.mark.Laying;
import org.toeline.mark.LensNote;
import org.toeline.mark.Mark;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.PinnedWords;
import org.toeline.mark.Stature;
import org.toeline.mark.VerticalMark;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;

/** Puts a lesson into a tree: into the one it was read from, so that unknown keys stay, or into an empty one. */
final class LessonWriter {

    static final String FORMAT = "toeline-lesson";

    private final double clickSigmaPx;

    private LessonWriter(double clickSigmaPx) {
        this.clickSigmaPx = clickSigmaPx;
    }

    static ObjectNode tree(Lesson lesson, ObjectNode empty) {
        ObjectNode out =
                lesson.kept() instanceof KeptTree kept ? kept.document().deepCopy() : empty;
        new LessonWriter(lesson.sheet().clickSigmaPx()).put(lesson, out);
        return out;
    }

    private void put(Lesson lesson, ObjectNode out) {
        MarkSheet sheet = lesson.sheet();
        out.put("format", FORMAT);
        number(out, "version", 1);
        ObjectNode player = out.withObjectProperty("player");
        lesson.playerName().ifPresentOrElse(n -> player.put("name", n), () -> player.remove("name"));
        player.put("handedness", sheet.handedness().id());
        sheet.stature().ifPresentOrElse(s -> stature(s, player), () -> player.remove(List.of("height", "heightSd")));
        lesson.recorded().ifPresent(r -> {
            if (!out.path("recorded").asText().equals(r.toString())
                    && !same(out.path("recorded").asText(), r)) {
                out.put("recorded", r.toString());
            }
        });
        out.put("club", sheet.club().id());
        out.put("takes", sheet.takes().id());
        if (out.has("clickSd") || clickSigmaPx != MarkSheet.USUAL_CLICK_SIGMA_PX) {
            number(out, "clickSd", clickSigmaPx);
        }
        if (out.has("floor") || !sheet.floor().points().isEmpty()) {
            floor(sheet.floor(), out.withObjectProperty("floor"));
        }
        list(out, "views", sheet.views(), "view", v -> v.view().id(), (v, node) -> view(lesson, v, node));
    }

    private static void stature(Stature stature, ObjectNode player) {
        double toldM = stature.heightM() + Stature.TOLD_TOO_TALL_M;
        boolean told = stature.sigmaM() == Stature.TOLD_SIGMA_M
                && Stature.told(Math.rint(toldM * 1e4) / 1e4).equals(stature);
        if (told && !player.has("heightSd")) {
            number(player, "height", Math.rint(toldM * 1e4) / 1e4);
            return;
        }
        number(player, "height", stature.heightM());
        number(player, "heightSd", stature.sigmaM());
    }

    private static boolean same(String written, java.time.OffsetDateTime time) {
        try {
            return java.time.OffsetDateTime.parse(written).equals(time);
        } catch (java.time.DateTimeException e) {
            return false;
        }
    }

    private void floor(FloorLayout floor, ObjectNode node) {
        list(node, "points", floor.points(), "id", FloorReference::id, (p, n) -> {
            number(n, "t", p.t());
            number(n, "h", p.h());
        });
        if (node.has("sd") || floor.sigmaM() != FloorLayout.USUAL_SIGMA_M) {
            number(node, "sd", floor.sigmaM());
        }
        boolean moved = floor.laying() == Laying.AGAIN;
        if (node.path("movedBetweenViews").asBoolean() != moved) {
            node.put("movedBetweenViews", moved);
        }
    }

    private void view(Lesson lesson, ViewMarks v, ObjectNode node) {
        ClipMoment moment = lesson.clips().get(v.view());
        if (moment != null) {
            node.put("clip", moment.clip());
            optional(node, "time", moment.seconds());
            optional(node, "filmedAt", moment.filmedAt());
        } else {
            node.remove(List.of("clip", "time", "filmedAt"));
        }
        number(node, "width", v.widthPx());
        number(node, "height", v.heightPx());
        if (node.has("lens") || !v.lens().equals(LensNote.NONE)) {
            lens(v.lens(), node.withObjectProperty("lens"));
        }
        marks(v, node);
        words(lesson.words(v.view()), node);
        unfinished(lesson.unfinished(), v.view(), node);
    }

    /** Words have no names: the first stay the first. */
    private static void words(List<PinnedWords> words, ObjectNode node) {
        JsonNode before = node.path("words");
        if (words.isEmpty()) {
            node.remove("words");
            return;
        }
        ArrayNode after = node.arrayNode();
        for (PinnedWords w : words) {
            ObjectNode n = before.path(after.size()) instanceof ObjectNode old ? old : node.objectNode();
            n.put("text", w.text());
            number(n, "x", w.at().xPx());
            number(n, "y", w.at().yPx());
            number(n, "textX", w.stand().xPx());
            number(n, "textY", w.stand().yPx());
            n.put("still", w.onStill());
            after.add(n);
        }
        node.set("words", after);
    }

    private void unfinished(Unfinished unfinished, View view, ObjectNode node) {
        List<String> unseen = unfinished.unseen(view).stream().sorted().toList();
        if (unseen.isEmpty()) {
            node.remove("unseen");
        } else {
            ArrayNode names = node.putArray("unseen");
            unseen.forEach(names::add);
        }
        unfinished
                .again(view)
                .ifPresentOrElse(v -> marks(v, node.withObjectProperty("again")), () -> node.remove("again"));
    }

    /** What is marked on a picture. */
    private void marks(ViewMarks v, ObjectNode node) {
        list(node, "floorMarks", v.floorMarks(), "point", FloorMark::pointId, (m, n) -> {
            number(n, "x", m.at().xPx());
            number(n, "y", m.at().yPx());
            sigma(n, m.sigmaPx());
            accepted(n, m.origin());
        });
        verticals(v.verticals(), node);
        v.ball().ifPresentOrElse(b -> ball(b, node.withObjectProperty("ball")), () -> node.remove("ball"));
        list(node, "marks", v.marks(), "landmark", m -> m.landmark().id(), (m, n) -> {
            number(n, "x", m.at().xPx());
            number(n, "y", m.at().yPx());
            sigma(n, m.sigmaPx());
            if (n.has("origin") || m.origin() == Mark.Origin.SUGGESTED) {
                n.put("origin", m.origin() == Mark.Origin.SUGGESTED ? "suggested" : "placed");
            }
            accepted(n, m.origin());
        });
    }

    static void lens(LensNote lens, ObjectNode node) {
        optional(node, "focal", lens.focalPx());
        optional(node, "focalSd", lens.focalSigmaPx());
        optional(node, "cx", lens.cxPx());
        optional(node, "cy", lens.cyPx());
        optional(node, "k1", lens.k1());
        optional(node, "k2", lens.k2());
    }

    private void ball(BallMark ball, ObjectNode node) {
        number(node, "x", ball.centre().xPx());
        number(node, "y", ball.centre().yPx());
        optional(node, "diameter", ball.diameterPx());
        sigma(node, ball.sigmaPx());
        if (node.has("diameterSd") || ball.diameterSigmaPx() != BallMark.USUAL_DIAMETER_SIGMA_PX) {
            number(node, "diameterSd", ball.diameterSigmaPx());
        }
        accepted(node, ball.origin());
    }

    private static void accepted(ObjectNode node, Mark.Origin origin) {
        if (origin == Mark.Origin.SUGGESTED || node.has("accepted")) {
            node.put("accepted", origin == Mark.Origin.PLACED);
        }
    }

    /** Verticals have no names: the first stays the first. */
    private void verticals(List<VerticalMark> verticals, ObjectNode node) {
        if (verticals.isEmpty() && !node.has("verticals")) {
            return;
        }
        JsonNode before = node.path("verticals");
        ArrayNode after = node.arrayNode();
        for (int i = 0; i < verticals.size(); i++) {
            VerticalMark m = verticals.get(i);
            ObjectNode n = before.path(i) instanceof ObjectNode old ? old : node.objectNode();
            number(n, "x1", m.from().xPx());
            number(n, "y1", m.from().yPx());
            number(n, "x2", m.to().xPx());
            number(n, "y2", m.to().yPx());
            sigma(n, m.sigmaPx());
            accepted(n, m.origin());
            after.add(n);
        }
        node.set("verticals", after);
    }

    /** Writes items under their names, each into the node that had its name. */
    private static <T> void list(
            ObjectNode parent,
            String key,
            List<T> items,
            String nameKey,
            Function<T, String> name,
            BiConsumer<T, ObjectNode> put) {
        if (items.isEmpty() && !parent.has(key) && !key.equals("views")) {
            return;
        }
        Map<String, ObjectNode> before = new HashMap<>();
        for (JsonNode n : parent.path(key)) {
            if (n instanceof ObjectNode o) {
                before.put(o.path(nameKey).asText(), o);
            }
        }
        ArrayNode after = parent.arrayNode();
        for (T item : items) {
            ObjectNode node = before.getOrDefault(name.apply(item), parent.objectNode());
            node.put(nameKey, name.apply(item));
            put.accept(item, node);
            after.add(node);
        }
        parent.set(key, after);
    }

    private void sigma(ObjectNode node, double sigmaPx) {
        if (node.has("sd") || sigmaPx != clickSigmaPx) {
            number(node, "sd", sigmaPx);
        }
    }

    private static void optional(ObjectNode node, String key, OptionalDouble value) {
        if (value.isPresent()) {
            number(node, key, value.getAsDouble());
        } else {
            node.remove(key);
        }
    }

    /** Leaves a number that says the same as it was written. */
    private static void number(ObjectNode node, String key, double value) {
        JsonNode before = node.path(key);
        if (before.isNumber() && before.asDouble() == value) {
            return;
        }
        if (value == Math.rint(value) && Math.abs(value) < 1e9) {
            node.put(key, (long) value);
        } else {
            node.put(key, value);
        }
    }
}

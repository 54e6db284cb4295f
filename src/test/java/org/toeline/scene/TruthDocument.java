package org.toeline.scene;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.toeline.camera.Camera;
import org.toeline.geometry.ImagePoint;
import org.toeline.geometry.WorldPoint;
import org.toeline.mark.FloorReference;
import org.toeline.mark.Handedness;
import org.toeline.mark.Landmark;
import org.toeline.mark.View;

/**
 * Writes the truth of one clip beside it: camera, floor points, ball, landmarks, readings, moments. World in metres
 * (t, h, u; origin on the ground under the ball), pixels of the picture as shown, angles of the camera in degrees.
 */
final class TruthDocument {

    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final int EVERY = 8;

    private final Scenario scenario;
    private final View view;

    TruthDocument(Scenario scenario, View view) {
        this.scenario = scenario;
        this.view = view;
    }

    /** Writes the truth of the sample lessons anew, beside clips that stay as they are. */
    public static void main(String[] arguments) throws IOException {
        for (Scenario scenario : Scenarios.all()) {
            for (View view : View.values()) {
                new TruthDocument(scenario, view)
                        .write(Path.of("sample-media", scenario.id(), view.id() + ".truth.json"));
            }
        }
    }

    void write(Path file) throws IOException {
        StringBuilder text = new StringBuilder("{\n");
        ObjectNode all = document();
        int[] left = {all.size()};
        all.properties().forEach(e -> {
            text.append("  \"").append(e.getKey()).append("\": ");
            if (e.getValue() instanceof ArrayNode list && e.getKey().equals("moments")) {
                text.append("[\n    ");
                for (int i = 0; i < list.size(); i++) {
                    text.append(i == 0 ? "" : ",\n    ").append(list.get(i));
                }
                text.append("]");
            } else {
                text.append(e.getValue());
            }
            text.append(--left[0] > 0 ? ",\n" : "\n");
        });
        Files.write(file, text.append("}\n").toString().getBytes(StandardCharsets.UTF_8));
    }

    ObjectNode document() {
        ObjectNode o = MAPPER.createObjectNode();
        o.put("format", "toeline-truth").put("version", 1);
        o.put("lesson", scenario.id()).put("view", view.id());
        o.put("handedness", scenario.handedness().id())
                .put("club", scenario.club().club().id());
        o.put("width", Scenario.WIDTH).put("height", Scenario.HEIGHT);
        boolean tee = view == View.TEE;
        o.put("framesPerSecond", Motion.FRAMES_PER_SECOND);
        o.put("frames", tee ? Motion.TEE_FRAMES : Motion.FRAMES);
        o.set("camera", camera());
        o.set("floor", floor());
        o.set("verticals", verticals());
        Truth.Outline ball = Truth.ball(scenario, view);
        ObjectNode b = o.putObject("ball");
        b.set("world", point(scenario.ball()));
        b.put("x", px(ball.centre().xPx())).put("y", px(ball.centre().yPx())).put("diameter", px(ball.diameterPx()));
        moments(o, tee);
        o.set("landmarks", landmarks(Truth.of(scenario).landmarks()));
        ObjectNode readings = o.putObject("readings");
        Truth.of(scenario)
                .readings()
                .forEach((id, v) ->
                        readings.putObject(id).put("value", round(v.value(), 4)).put("unit", v.unit()));
        if (!tee) {
            o.set("moments", moments());
        }
        return o;
    }

    private void moments(ObjectNode o, boolean tee) {
        ObjectNode still = o.putObject("still");
        if (tee) {
            still.put("from", 0.0).put("to", Motion.TEE_FRAMES / (double) Motion.FRAMES_PER_SECOND);
            return;
        }
        still.put("from", Motion.STILL_FROM_S).put("to", Motion.STILL_TO_S);
        o.putObject("waggle").put("from", Motion.WAGGLE_FROM_S).put("to", Motion.WAGGLE_TO_S);
        o.put("takeaway", Motion.TAKEAWAY_S);
    }

    private ObjectNode camera() {
        Camera c = scenario.camera(view);
        ObjectNode o = MAPPER.createObjectNode();
        o.put("of", "the picture of a right-handed player: mirror x to width − x for a left-handed one");
        o.put("focal", c.lens().focalPx())
                .put("cx", c.lens().cxPx())
                .put("cy", c.lens().cyPx());
        o.put("k1", c.lens().k1()).put("k2", c.lens().k2());
        o.set("position", point(c.pose().position()));
        o.put("headingDeg", round(Math.toDegrees(c.pose().headingRad()), 6));
        o.put("pitchDeg", round(Math.toDegrees(c.pose().pitchRad()), 6));
        o.put("rollDeg", round(Math.toDegrees(c.pose().rollRad()), 6));
        return o;
    }

    private ArrayNode floor() {
        ArrayNode list = MAPPER.createArrayNode();
        for (FloorReference f : scenario.floor().points()) {
            ObjectNode o =
                    list.addObject().put("id", f.id()).put("t", round(f.t(), 5)).put("h", round(f.h(), 5));
            WorldPoint p = new WorldPoint(f.t(), f.h(), 0);
            if (scenario.camera(view).project(p).isPresent()) {
                ImagePoint q = Truth.pixel(scenario, view, p);
                if (isShown(q)) {
                    o.put("x", px(q.xPx())).put("y", px(q.yPx()));
                }
            }
        }
        return list;
    }

    /** The stretch of each upright edge that lies in the picture: lower end, upper end. */
    private ArrayNode verticals() {
        ArrayNode list = MAPPER.createArrayNode();
        Bay.UPRIGHTS.forEach((id, place) -> {
            List<ImagePoint> seen = new ArrayList<>();
            for (double u = 0.1; u < Bay.UPRIGHT_U; u += 0.05) {
                scenario.camera(view)
                        .project(new WorldPoint(place[0], place[1], u))
                        .map(p -> scenario.handedness() == Handedness.LEFT ? p.mirrored(Scenario.WIDTH) : p)
                        .filter(TruthDocument::isShown)
                        .ifPresent(seen::add);
            }
            if (seen.size() > 1) {
                ImagePoint low = seen.get(0);
                ImagePoint high = seen.get(seen.size() - 1);
                list.addObject()
                        .put("id", id)
                        .put("x1", px(low.xPx()))
                        .put("y1", px(low.yPx()))
                        .put("x2", px(high.xPx()))
                        .put("y2", px(high.yPx()));
            }
        });
        return list;
    }

    private static boolean isShown(ImagePoint p) {
        return p.xPx() >= 0 && p.yPx() >= 0 && p.xPx() < Scenario.WIDTH && p.yPx() < Scenario.HEIGHT;
    }

    /** Of the whole still span each frame, of the rest every few frames: t, h, u in metres and x, y in pixels. */
    private ArrayNode moments() {
        ArrayNode list = MAPPER.createArrayNode();
        for (int f = 0; f < Motion.FRAMES; f++) {
            double time = f / (double) Motion.FRAMES_PER_SECOND;
            boolean still = time >= Motion.STILL_FROM_S && time < Motion.STILL_TO_S;
            if (still || f % EVERY == 0) {
                ObjectNode o = list.addObject().put("frame", f).put("time", round(time, 6));
                o.set("landmarks", landmarks(scenario.landmarks(time)));
            }
        }
        return list;
    }

    private ObjectNode landmarks(Map<Landmark, WorldPoint> body) {
        ObjectNode o = MAPPER.createObjectNode();
        for (Landmark landmark : Landmark.values()) {
            WorldPoint p = body.get(landmark);
            if (p == null) {
                continue;
            }
            ArrayNode list = o.putArray(landmark.id());
            list.add(round(p.t(), 5)).add(round(p.h(), 5)).add(round(p.u(), 5));
            if (scenario.camera(view).project(p).isPresent()) {
                ImagePoint q = Truth.pixel(scenario, view, p);
                list.add(px(q.xPx())).add(px(q.yPx()));
            }
        }
        return o;
    }

    private static ArrayNode point(WorldPoint p) {
        return JsonNodeFactory.instance
                .arrayNode()
                .add(round(p.t(), 6))
                .add(round(p.h(), 6))
                .add(round(p.u(), 6));
    }

    private static double px(double value) {
        return round(value, 2);
    }

    private static double round(double value, int digits) {
        return BigDecimal.valueOf(value)
                .setScale(digits, RoundingMode.HALF_EVEN)
                .doubleValue();
    }
}

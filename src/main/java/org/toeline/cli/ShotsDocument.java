package org.toeline.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.toeline.flight.Flight;
import org.toeline.flight.Shot;
import org.toeline.flight.ShotFigure;
import org.toeline.flight.compare.Difference;
import org.toeline.flight.compare.SetupComparison;
import org.toeline.flight.compare.SetupFigure;
import org.toeline.flight.table.Asked;

/**
 * Shots and their comparison as a JSON object; its schema is {@code shots.schema.json}. Metric units, and a plus towards
 * the left for whoever looks at the target, as everywhere inside.
 */
final class ShotsDocument {

    private static final MathContext DIGITS = new MathContext(7);

    private ShotsDocument() {}

    static ObjectNode of(
            ShotsCommand.Setup before,
            Optional<ShotsCommand.Setup> after,
            Optional<SetupsOfTable> inTurns,
            Optional<SetupComparison> comparison) {
        ObjectNode out = JsonNodeFactory.instance.objectNode();
        out.put("format", "toeline-shots").put("version", 1).put("positiveSide", "left");
        ObjectNode units = out.putObject("units");
        for (ShotFigure figure : ShotFigure.values()) {
            units.put(figure.id(), figure.shownUnit().id());
        }
        ArrayNode setups = out.putArray("setups");
        setups.add(setup(before));
        after.ifPresent(a -> setups.add(setup(a)));
        ArrayNode ask = out.putArray("ask");
        ask(ask, 0, before);
        after.ifPresent(a -> ask(ask, 1, a));
        inTurns.ifPresent(t -> out.putObject("inTurns")
                .put("heading", t.heading())
                .put("before", t.first())
                .put("after", t.second())
                .put("neither", t.neither()));
        comparison.ifPresent(c -> {
            ArrayNode differences = out.putArray("differences");
            c.differences().forEach(d -> differences.add(difference(d)));
        });
        return out;
    }

    private static void ask(ArrayNode ask, int setup, ShotsCommand.Setup of) {
        for (Asked asked : of.table().asked()) {
            ObjectNode node = ask.addObject()
                    .put("setup", setup)
                    .put("column", asked.place())
                    .put("heading", asked.heading());
            asked.perhaps()
                    .ifPresent(c -> node.put("perhaps", c.meaning().id())
                            .put("unit", c.unit().id()));
            ArrayNode values = node.put("why", asked.why()).putArray("values");
            asked.values().forEach(values::add);
        }
    }

    private static ObjectNode setup(ShotsCommand.Setup setup) {
        ObjectNode out = JsonNodeFactory.instance.objectNode();
        out.put("file", setup.table().file().toString());
        ArrayNode shots = out.putArray("shots");
        for (int i = 0; i < setup.figures().shots().size(); i++) {
            Shot shot = setup.figures().shots().get(i);
            ObjectNode node = shots.addObject()
                    .put("line", setup.table().imported().lines().get(i));
            ObjectNode figures = node.putObject("figures");
            shot.figures().forEach((figure, value) -> figures.put(figure.id(), shown(figure, value)));
            if (!shot.remark().isEmpty()) {
                node.put("remark", shot.remark());
            }
            setup.aside(i).ifPresent(why -> node.put("aside", why));
            if (!setup.table().imported().groups().get(i).isEmpty()) {
                ObjectNode group = node.putObject("group");
                setup.table().imported().groups().get(i).forEach(group::put);
            }
            ArrayNode flights = node.putArray("flights");
            setup.flights()
                    .get(i)
                    .ifPresent(f ->
                            f.band().flights().forEach(flight -> flights.add(flight(flight, shot.tellsSide()))));
        }
        ArrayNode computed = out.putArray("computed");
        setup.figures().computed().stream().sorted().forEach(f -> computed.add(f.id()));
        out.put("computedBy", setup.figures().model());
        ArrayNode flags = out.putArray("flags");
        setup.flags()
                .forEach(f -> flags.addObject()
                        .put("line", f.line())
                        .put("figure", f.found().figure().id())
                        .put("grade", f.found().grade().name().toLowerCase(Locale.ROOT))
                        .put("reason", f.found().reason()));
        ArrayNode leftOut = out.putArray("leftOut");
        setup.table()
                .imported()
                .leftOut()
                .forEach(l -> leftOut.addObject()
                        .put("line", l.line())
                        .put("reason", l.reason())
                        .put("extent", l.extent().name().toLowerCase(Locale.ROOT)));
        ArrayNode notes = out.putArray("notes");
        setup.table().imported().notes().forEach(notes::add);
        ObjectNode filters = out.putObject("filters");
        setup.pooled().forEach((heading, values) -> values.forEach(filters.putObject(heading)::put));
        ArrayNode middles = out.putArray("middles");
        (setup.pooled().isEmpty() ? SetupFigure.of(setup.counted()) : List.<SetupFigure>of()).forEach(f -> {
            ObjectNode node = middles.addObject().put("figure", f.figure().id()).put("shots", f.count());
            node.put("value", shown(f.figure(), f.centre()));
            f.halfWidth().ifPresent(h -> node.put("halfWidth", shown(f.figure(), h)));
        });
        return out;
    }

    private static ObjectNode flight(Flight flight, boolean tellsSide) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("model", flight.model());
        node.put("carry", shown(ShotFigure.CARRY, flight.carryM())).put("apex", shown(ShotFigure.APEX, flight.apexM()));
        if (tellsSide) {
            node.put("side", shown(ShotFigure.SIDE, flight.sideM()));
        }
        node.put("descent-angle", shown(ShotFigure.DESCENT_ANGLE, flight.descentRad()));
        node.put("hang-time", shown(ShotFigure.HANG_TIME, flight.hangTimeS()));
        node.put("outsideShare", rounded(flight.outsideShare()));
        return node;
    }

    private static ObjectNode difference(Difference d) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("figure", d.figure().id()).put("before", d.before()).put("after", d.after());
        node.put("state", d.state().name().toLowerCase(Locale.ROOT).replace('_', '-'))
                .put("words", d.words());
        d.estimate().ifPresent(e -> {
            node.put("difference", shown(d.figure(), e.difference()));
            node.put("low", shown(d.figure(), e.low())).put("high", shown(d.figure(), e.high()));
            node.put("p", rounded(e.p())).put("apart", e.apart());
        });
        if (d.moreShots() > 0) {
            node.put("moreShots", d.moreShots());
        }
        return node;
    }

    private static double shown(ShotFigure figure, double inside) {
        return rounded(figure.shownUnit().fromInside(inside));
    }

    private static double rounded(double value) {
        return BigDecimal.valueOf(value).round(DIGITS).doubleValue();
    }
}

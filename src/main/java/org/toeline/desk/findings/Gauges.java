package org.toeline.desk.findings;

import java.awt.geom.Rectangle2D;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javafx.geometry.Bounds;
import javafx.scene.canvas.Canvas;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Tooltip;
import javafx.scene.input.MouseEvent;
import org.toeline.advice.Finding;
import org.toeline.advice.FindingWords;
import org.toeline.advice.Words;
import org.toeline.desk.look.Look;
import org.toeline.paint.BandGauge;
import org.toeline.reading.ReadingKind;

/** One gauge a finding, below each other; under the pointer a finding is said as a sentence. */
final class Gauges extends Canvas {

    private static final double HEIGHT = 84;
    private static final double GAP = 16;
    /** Beside usual text. */
    private static final double LEAST_WIDTH = 250;

    private static final double TOP = 4;
    private static final double TIP_WIDTH = 340;

    private final ScrollPane scroll;
    private final Tooltip tip = new Tooltip();
    private Words words = Words.usual();
    private List<Finding> findings = List.of();
    private Set<ReadingKind> kinds = Set.of();
    /** Of the kinds there are, by {@link BandGauge#longest}; not measured anew while a mark is dragged. */
    private double longest = 1;
    /** What stands on the canvas, by place; nothing where it was out of sight. */
    private final Map<Place, BandGauge.Look> painted = new HashMap<>();

    private record Place(int row, BandGauge.Part part) {}

    /** @param scroll what they are scrolled in */
    Gauges(ScrollPane scroll) {
        this.scroll = scroll;
        setId("gauges");
        scroll.vvalueProperty().addListener((o, a, b) -> paint());
        scroll.viewportBoundsProperty().addListener((o, a, b) -> paint());
        boundsInParentProperty().addListener((o, a, b) -> paint());
        tip.setWrapText(true);
        tip.setMaxWidth(TIP_WIDTH);
        addEventFilter(MouseEvent.MOUSE_MOVED, e -> point(e.getY()));
    }

    void words(Words changed) {
        words = changed;
        kinds = Set.of();
    }

    void width(double width) {
        if (getWidth() != width) {
            painted.clear();
        }
        setWidth(width);
        show(findings);
    }

    /** As large as the text, but never so large that a gauge has no room for its words. */
    private double scale() {
        return Math.max(1, Math.min(Look.scale(), getWidth() / LEAST_WIDTH));
    }

    void show(List<Finding> shown) {
        findings = List.copyOf(shown);
        Set<ReadingKind> now = findings.stream().map(Finding::kind).collect(Collectors.toSet());
        if (!now.equals(kinds)) {
            kinds = now;
            painted.clear();
            longest = new BandGauge(words).longest(now);
        }
        double height = Math.max(10, findings.size() * scale() * (HEIGHT + GAP));
        if (getHeight() != height) {
            painted.clear();
            setHeight(height);
        }
        Tooltip.uninstall(this, tip);
        if (!findings.isEmpty()) {
            Tooltip.install(this, tip);
        }
        FindingWords said = new FindingWords(words);
        setAccessibleText(String.join(" ", findings.stream().map(said::sentence).toList()));
        paint();
    }

    /** The finding whose gauge is drawn there. */
    Optional<Finding> at(double y) {
        int index = (int) Math.floor((y / scale() - TOP) / (HEIGHT + GAP));
        return index >= 0 && index < findings.size() ? Optional.of(findings.get(index)) : Optional.empty();
    }

    private void point(double y) {
        at(y).map(new FindingWords(words)::sentence).ifPresent(tip::setText);
    }

    /** Paints what can be seen of the gauges and looks otherwise than they did: while a mark is dragged, all of them would take too long. */
    private void paint() {
        if (scroll.getContent() == null) {
            return;
        }
        Bounds seen = scroll.getViewportBounds();
        double content = scroll.getContent().getBoundsInLocal().getHeight();
        double above = Math.max(0, content - seen.getHeight()) * scroll.getVvalue();
        double top = above - getBoundsInParent().getMinY();
        double scale = scale();
        if (painted.isEmpty()) {
            Look.now().ink(this, scale);
        }
        BandGauge gauge = new BandGauge(words);
        double width = getWidth() / scale - 4;
        for (int i = 0; i < findings.size(); i++) {
            double y = TOP + i * (HEIGHT + GAP);
            boolean inSight = (y + HEIGHT + GAP) * scale > top - HEIGHT * scale
                    && y * scale < top + Math.max(600, seen.getHeight()) + HEIGHT * scale;
            if (!inSight) {
                continue;
            }
            Rectangle2D area = new Rectangle2D.Double(2, y, width, HEIGHT);
            for (BandGauge.Part part : BandGauge.Part.values()) {
                BandGauge.Look look = gauge.look(part, findings.get(i), width);
                if (!look.equals(painted.put(new Place(i, part), look))) {
                    Rectangle2D wiped = part.in(area);
                    gauge.paint(
                            Look.now().ink(this, wiped.getY(), wiped.getHeight()),
                            part,
                            findings.get(i),
                            area,
                            longest);
                }
            }
        }
    }
}

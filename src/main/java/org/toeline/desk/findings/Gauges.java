package org.toeline.desk.findings;

import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javafx.geometry.Bounds;
import javafx.scene.canvas.Canvas;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Tooltip;
import javafx.scene.input.MouseEvent;
import org.jfree.fx.FXGraphics2D;
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
            longest = new BandGauge(words).longest(now);
        }
        double height = Math.max(10, findings.size() * scale() * (HEIGHT + GAP));
        if (getHeight() != height) {
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

    /** Paints the gauges that can be seen: while a mark is dragged, all of them would take too long. */
    private void paint() {
        if (scroll.getContent() == null) {
            return;
        }
        Bounds seen = scroll.getViewportBounds();
        double content = scroll.getContent().getBoundsInLocal().getHeight();
        double above = Math.max(0, content - seen.getHeight()) * scroll.getVvalue();
        double top = above - getBoundsInParent().getMinY();
        double scale = scale();
        FXGraphics2D g = Look.now().ink(this, scale);
        BandGauge gauge = new BandGauge(words);
        double y = TOP;
        for (Finding finding : findings) {
            if ((y + HEIGHT + GAP) * scale > top - HEIGHT * scale
                    && y * scale < top + Math.max(600, seen.getHeight()) + HEIGHT * scale) {
                gauge.paint(g, finding, new Rectangle2D.Double(2, y, getWidth() / scale - 4, HEIGHT), longest);
            }
            y += HEIGHT + GAP;
        }
    }
}

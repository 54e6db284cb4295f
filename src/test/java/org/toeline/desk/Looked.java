package org.toeline.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ComboBoxBase;
import javafx.scene.control.Control;
import javafx.scene.control.Labeled;
import javafx.scene.control.ListView;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TableView;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.skin.VirtualFlow;
import javafx.scene.layout.BackgroundFill;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.text.Text;

/** What is wrong with what a window shows: words that are cut, things outside or over one another, text that is hard to read. */
final class Looked {

    /** Layout rounds to whole pixels. */
    private static final double ROUNDED = 1.5;

    /** A line or two. */
    private static final double LEAST_SCROLLED = 44;

    private static final double LEAST_TEXT_CONTRAST = 4.5;
    private static final double LEAST_LARGE_TEXT_CONTRAST = 3;
    private static final double LARGE_PX = 24;
    private static final double LARGE_BOLD_PX = 18.66;

    /** What tells that something drops down, and how far one has scrolled. */
    private static final List<String> TOLD_BY = List.of("arrow", "thumb");

    /** A table of labels; what must be in sight of it is held by the test of the shots. */
    private static final String COMPARED = "shots-differences-scroll";

    private final Parent whole;
    private final String where;
    private final List<String> faults = new ArrayList<>();
    private final List<Control> controls = new ArrayList<>();

    Looked(Parent whole, String where) {
        this.whole = whole;
        this.where = where;
    }

    List<String> faults() {
        whole.applyCss();
        whole.layout();
        visit(whole);
        for (int i = 0; i < controls.size(); i++) {
            for (int j = 0; j < i; j++) {
                apart(controls.get(i), controls.get(j));
            }
        }
        if (controls.isEmpty()) {
            fault("nothing is shown");
        }
        return faults;
    }

    private void fault(String what) {
        faults.add(where + ": " + what);
    }

    private void visit(Node node) {
        if (!node.isVisible() || node.getOpacity() == 0) {
            return;
        }
        if (node instanceof Labeled labeled && !blank(labeled.getText())) {
            cutShort(labeled);
        }
        if (node instanceof Text text && !blank(text.getText())) {
            if (!isTyped(text)) {
                inside(text, "“" + text.getText() + "”");
            }
            readable(text);
        }
        if (node instanceof TextInputControl && !isDisabled(node) && !isTable(node)) {
            seenAsField((Region) node);
        }
        if (node instanceof Region part && TOLD_BY.stream().anyMatch(node.getStyleClass()::contains)) {
            seenAsPart(part);
        }
        if (isLeaf(node)) {
            controls.add((Control) node);
            inside(node, described(node));
        }
        if (node instanceof ScrollPane
                || node instanceof TableView<?>
                || node instanceof ListView<?> && !(node.getParent() instanceof ComboBoxBase<?>)) {
            seenAtAll((Control) node);
        }
        if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(this::visit);
        }
    }

    /** What scrolls may be small, but not so small that nothing of it is seen; and but for tables it scrolls up and down alone. */
    private void seenAtAll(Control scrolled) {
        if (scrolled.getHeight() < LEAST_SCROLLED || scrolled.getWidth() < LEAST_SCROLLED) {
            fault(described(scrolled) + " is squeezed to " + Math.round(scrolled.getWidth()) + " × "
                    + Math.round(scrolled.getHeight()));
        }
        if (scrolled instanceof ScrollPane pane && pane.getContent() != null && !COMPARED.equals(pane.getId())) {
            double wide = pane.getContent().getLayoutBounds().getWidth();
            double there = pane.getViewportBounds().getWidth();
            if (wide > there + ROUNDED) {
                fault(described(pane) + " is to be scrolled sideways: " + Math.round(wide) + " in "
                        + Math.round(there));
            }
        }
    }

    private static boolean blank(String text) {
        return text == null || text.isBlank();
    }

    /** What holds words or is pressed, and is not made of others. */
    private static boolean isLeaf(Node node) {
        return node instanceof Labeled labeled
                        && (!blank(labeled.getText()) || labeled.getGraphic() != null)
                        && !(node.getParent() instanceof Labeled)
                        && !isCell(node)
                || node instanceof TextInputControl
                || node instanceof ComboBoxBase<?>;
    }

    private static boolean isCell(Node node) {
        return node instanceof javafx.scene.control.Cell<?>;
    }

    private void cutShort(Labeled labeled) {
        if (labeled.isWrapText()
                && labeled.getWidth() < 2 * labeled.getFont().getSize()
                && labeled.prefWidth(-1) > labeled.getWidth() + ROUNDED) {
            fault(described(labeled) + " is broken letter by letter, in " + Math.round(labeled.getWidth()));
        }
        labeled.getChildrenUnmodifiable().stream()
                .filter(Text.class::isInstance)
                .map(t -> ((Text) t).getText())
                .filter(shown -> !shown.equals(labeled.getText()))
                .forEach(shown -> fault(described(labeled) + " is cut to “" + shown + "”"));
    }

    /** In the window and in all that holds it; in what scrolls, across where it does not scroll across. */
    private void inside(Node node, String name) {
        if (isTable(node)) {
            return;
        }
        Bounds at = node.localToScene(node.getLayoutBounds());
        boolean down = true;
        boolean across = true;
        for (Parent p = node.getParent(); p != null && p != whole.getParent() && across; p = p.getParent()) {
            Bounds in = p.localToScene(p.getLayoutBounds());
            if (p.getStyleClass().contains("viewport") || p.getStyleClass().contains("clipped-container")) {
                down = false;
                across = p.getParent() instanceof ScrollPane s && s.getHbarPolicy() == ScrollPane.ScrollBarPolicy.NEVER
                        || p.getParent() instanceof VirtualFlow<?> && !isTable(p);
                if (!across) {
                    return;
                }
            } else if (!(p instanceof Region) || isScrolled(p)) {
                continue;
            }
            if (at.getMinX() < in.getMinX() - ROUNDED || at.getMaxX() > in.getMaxX() + ROUNDED) {
                fault(name + " reaches out of " + described(p) + " sideways: " + range(at.getMinX(), at.getMaxX())
                        + " of " + range(in.getMinX(), in.getMaxX()));
                return;
            }
            if (down && (at.getMinY() < in.getMinY() - ROUNDED || at.getMaxY() > in.getMaxY() + ROUNDED)) {
                fault(name + " reaches out of " + described(p) + " up or down: " + range(at.getMinY(), at.getMaxY())
                        + " of " + range(in.getMinY(), in.getMaxY()));
                return;
            }
        }
    }

    /** What a scroll pane moves about behind its window. */
    private static boolean isScrolled(Parent p) {
        return p.getParent() != null && p.getParent().getStyleClass().contains("viewport");
    }

    /** What is longer than its field is scrolled in it. */
    private static boolean isTyped(Node text) {
        for (Parent p = text.getParent(); p != null; p = p.getParent()) {
            if (p instanceof TextInputControl) {
                return true;
            }
        }
        return false;
    }

    /** A table is scrolled across. */
    private static boolean isTable(Node inside) {
        for (Parent p = inside.getParent(); p != null; p = p.getParent()) {
            if (p instanceof TableView<?>) {
                return true;
            }
        }
        return false;
    }

    private static String range(double from, double to) {
        return Math.round(from) + "…" + Math.round(to);
    }

    private void apart(Control one, Control other) {
        if (holds(one, other) || holds(other, one)) {
            return;
        }
        Optional<Bounds> a = seen(one);
        Optional<Bounds> b = seen(other);
        if (a.isEmpty() || b.isEmpty()) {
            return;
        }
        double across = Math.min(a.get().getMaxX(), b.get().getMaxX())
                - Math.max(a.get().getMinX(), b.get().getMinX());
        double down = Math.min(a.get().getMaxY(), b.get().getMaxY())
                - Math.max(a.get().getMinY(), b.get().getMinY());
        if (across > ROUNDED && down > ROUNDED) {
            fault(described(one) + " lies over " + described(other));
        }
    }

    private static boolean holds(Node outer, Node inner) {
        for (Parent p = inner.getParent(); p != null; p = p.getParent()) {
            if (p == outer) {
                return true;
            }
        }
        return false;
    }

    /** Where it is seen: what is scrolled away is not. */
    private static Optional<Bounds> seen(Node node) {
        Bounds at = node.localToScene(node.getLayoutBounds());
        for (Parent p = node.getParent(); p != null; p = p.getParent()) {
            if (p.getStyleClass().contains("viewport") || p.getStyleClass().contains("clipped-container")) {
                Bounds in = p.localToScene(p.getLayoutBounds());
                if (!in.intersects(at)) {
                    return Optional.empty();
                }
                double x = Math.max(at.getMinX(), in.getMinX());
                double y = Math.max(at.getMinY(), in.getMinY());
                at = new javafx.geometry.BoundingBox(
                        x, y, Math.min(at.getMaxX(), in.getMaxX()) - x, Math.min(at.getMaxY(), in.getMaxY()) - y);
            }
        }
        return Optional.of(at);
    }

    /** WCAG 2.2, 1.4.3; what is disabled is exempt there. */
    private void readable(Text text) {
        if (isDisabled(text) || !(text.getFill() instanceof Color fill)) {
            return;
        }
        Color ground = ground(text);
        double px = text.getFont().getSize();
        boolean bold = text.getFont().getStyle().contains("Bold");
        double least = px >= LARGE_PX || bold && px >= LARGE_BOLD_PX ? LEAST_LARGE_TEXT_CONTRAST : LEAST_TEXT_CONTRAST;
        double contrast = Contrast.of(Contrast.over(fill, ground), ground);
        if (contrast < least) {
            fault("“" + text.getText() + "” in " + described(text.getParent()) + ": contrast "
                    + Math.round(contrast * 10) / 10.0 + " of " + fill + " on " + ground);
        }
    }

    /** WCAG 2.2, 1.4.11: where one can type is told from the ground around it, by its edge or by its own ground. */
    private void seenAsField(Region field) {
        Color ground = ground(field);
        double contrast = field.getBackground().getFills().stream()
                .map(BackgroundFill::getFill)
                .filter(Color.class::isInstance)
                .mapToDouble(fill -> Contrast.of(Contrast.over((Color) fill, ground), ground))
                .max()
                .orElse(1);
        if (contrast < LEAST_LARGE_TEXT_CONTRAST) {
            fault(described(field) + ": its edge has a contrast of " + Math.round(contrast * 10) / 10.0);
        }
    }

    /** WCAG 2.2, 1.4.11: what is needed to know a control is told from its ground. */
    private void seenAsPart(Region part) {
        if (isDisabled(part) || part.getBackground() == null || part.getWidth() == 0 || part.getHeight() == 0) {
            return;
        }
        Color ground = ground(part);
        part.getBackground().getFills().stream()
                .map(BackgroundFill::getFill)
                .filter(Color.class::isInstance)
                .mapToDouble(fill -> Contrast.of(Contrast.over((Color) fill, ground), ground))
                .max()
                .stream()
                .filter(contrast -> contrast < LEAST_LARGE_TEXT_CONTRAST)
                .forEach(contrast -> fault(described(part) + " of " + described(controlOf(part)) + ": contrast "
                        + Math.round(contrast * 10) / 10.0 + " on " + ground));
    }

    private static Node controlOf(Node part) {
        Node holder = part;
        while (!(holder instanceof Control) && holder.getParent() != null) {
            holder = holder.getParent();
        }
        return holder;
    }

    private static boolean isDisabled(Node node) {
        return node.isDisabled() || node.getParent() != null && isDisabled(node.getParent());
    }

    /** The grounds of all that holds it, one upon the other. */
    static Color ground(Node node) {
        List<Color> layers = new ArrayList<>();
        for (Parent p = node.getParent(); p != null; p = p.getParent()) {
            if (p instanceof Region region && region.getBackground() != null) {
                List<BackgroundFill> fills = region.getBackground().getFills();
                for (int i = fills.size() - 1; i >= 0; i--) {
                    if (fills.get(i).getFill() instanceof Color color) {
                        layers.add(color);
                    }
                }
                if (layers.stream().anyMatch(Color::isOpaque)) {
                    break;
                }
            }
        }
        Color ground = Color.WHITE;
        for (int i = layers.size() - 1; i >= 0; i--) {
            ground = Contrast.over(layers.get(i), ground);
        }
        return ground;
    }

    static String described(Node node) {
        String id = node.getId() == null ? "" : "#" + node.getId() + " ";
        String words = node instanceof Labeled l && !blank(l.getText()) ? " “" + l.getText() + "”" : "";
        String in = id.isEmpty() && words.isEmpty() ? " " + node.getStyleClass() : "";
        return id + node.getClass().getSimpleName() + in + words;
    }
}

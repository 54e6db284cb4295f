package org.toeline.paint;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import org.toeline.across.Comparison;

/** Above the rows: what the two compared lessons are called, and the first and the last, each over its place in the rows. */
public final class AcrossHeader {

    private static final double BETWEEN = 14;
    /** Smaller type would not be read: then the later of the two is left out. */
    private static final double LEAST = 0.6;

    private AcrossHeader() {}

    /**
     * Paints over rows that are as wide.
     *
     * @param days      what each lesson is called, in their order
     * @param rowHeight that of the rows
     */
    public static void paint(
            Graphics2D g, Comparison comparison, List<String> days, Rectangle2D area, double rowHeight) {
        int last = days.size() - 1;
        List<Integer> chosen =
                List.of(comparison.indexOf(comparison.earlier()), comparison.indexOf(comparison.later()));
        List<Integer> order = new ArrayList<>(chosen);
        order.addAll(List.of(0, last));
        Rectangle2D plot =
                AcrossRow.plotArea(new Rectangle2D.Double(area.getX(), area.getY(), area.getWidth(), rowHeight));
        double apart = plot.getWidth() / days.size() * Math.abs(chosen.get(1) - chosen.get(0)) - BETWEEN;
        List<Rectangle2D> taken = new ArrayList<>();
        for (int index : new LinkedHashSet<>(order)) {
            boolean bold = chosen.contains(index);
            Font font = bold ? chosen(days.get(index), area.getHeight(), apart) : Ink.plain(area.getHeight() * 0.5);
            double width = Ink.width(days.get(index), font);
            double x = Math.max(
                    area.getX(),
                    Math.min(area.getMaxX() - width, AcrossRow.middle(plot, index, days.size()) - width / 2));
            Rectangle2D place = new Rectangle2D.Double(x - 6, area.getY(), width + 12, area.getHeight());
            if (taken.stream().noneMatch(place::intersects)) {
                Ink.text(
                        g, days.get(index), font, bold ? Ink.TEXT : Ink.GREY, x, area.getY() + area.getHeight() * 0.72);
                taken.add(place);
            }
        }
    }

    /** So small that both that are compared can stand. */
    private static Font chosen(String day, double height, double room) {
        Font font = Ink.bold(height * 0.5);
        Font fitting = Ink.fitting(day, font, room);
        return fitting.getSize2D() < LEAST * font.getSize2D() ? font : fitting;
    }
}

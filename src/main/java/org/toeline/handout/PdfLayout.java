package org.toeline.handout;

import java.awt.Font;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.toeline.paint.Ink;
import org.toeline.paint.TextBlock;

/**
 * Where everything stands on one sheet of paper: whose it is and the one thing over its full width, the still with what belongs beside it, the
 * rest in two columns below. The largest type is taken with which all of it fits, and a wide still where little is said;
 * before the type gets small, the still is made smaller. Points; y is measured down from the top edge.
 *
 * @param still the width of the still
 */
record PdfLayout(List<Block> blocks, float stillX, float stillY, float still, float end) {

    static final float MARGIN = 36;
    private static final float GAP = 18;
    private static final float TITLE = 17;
    private static final float LEADING = 1.32f;
    private static final float STEP = 0.25f;
    private static final float LARGEST = 13;
    private static final float SMALLEST = 6.5f;
    /** Where little is said, large type goes with a wide still, and neither is given up for the other. */
    private static final float LARGE = 12;

    private static final float[] WIDE = {0.60f};
    /** Sizes of type below which the still is rather made smaller. */
    private static final float[] LEAST = {9.5f, 8.5f, 7.5f, SMALLEST};

    private static final float[] SHARES = {0.50f, 0.44f, 0.38f, 0.30f};

    /** What a block is, for those who have the page read to them. */
    enum Role {
        WHO,
        TITLE,
        LEAD,
        SMALL,
        HEADING,
        PARAGRAPH
    }

    /**
     * Lines below each other.
     *
     * @param baseline of the first line
     */
    record Block(Role role, List<String> lines, float size, float x, float baseline) {

        Block {
            lines = List.copyOf(lines);
        }

        float leading() {
            return size * LEADING;
        }

        boolean bold() {
            return role == Role.TITLE || role == Role.HEADING;
        }
    }

    /** @param shape height of the still over its width */
    static PdfLayout of(Page page, double shape, Paper paper) {
        Optional<PdfLayout> fits = fitting(page, shape, paper, WIDE, LARGEST, LARGE);
        float largest = LARGEST;
        for (float least : LEAST) {
            if (fits.isPresent()) {
                break;
            }
            fits = fitting(page, shape, paper, SHARES, largest, least);
            largest = least - STEP;
        }
        return fits.orElseGet(() -> new Draft(page, paper, SMALLEST).lay(SHARES[SHARES.length - 1], (float) shape));
    }

    /** The widest still with the largest type that fits beside it. */
    private static Optional<PdfLayout> fitting(
            Page page, double shape, Paper paper, float[] shares, float largest, float least) {
        for (float share : shares) {
            for (float size = largest; size >= least; size -= STEP) {
                PdfLayout layout = new Draft(page, paper, size).lay(share, (float) shape);
                if (layout.end <= paper.heightPt() - MARGIN) {
                    return Optional.of(layout);
                }
            }
        }
        return Optional.empty();
    }

    /** One try with one size of type. */
    private static final class Draft {

        private final Page page;
        private final Paper paper;
        private final float size;
        private final List<Block> blocks = new ArrayList<>();

        Draft(Page page, Paper paper, float size) {
            this.page = page;
            this.paper = paper;
            this.size = size;
        }

        PdfLayout lay(float share, float shape) {
            float full = paper.widthPt() - 2 * MARGIN;
            float top = put(Role.WHO, page.who(), size, MARGIN, MARGIN, full) + 2;
            top = put(Role.TITLE, page.headline(), TITLE, MARGIN, top, full) + 2;
            top = put(Role.LEAD, page.lead(), size * 1.1f, MARGIN, top, full);
            top = put(Role.SMALL, page.small(), size * 0.9f, MARGIN, top, full) + 8;
            float still = (full - GAP) * share;
            float besideX = MARGIN + still + GAP;
            float y = top - size * 0.3f;
            for (Page.Section section : page.beside()) {
                y = section(section, besideX, y, full - still - GAP);
            }
            float below = Math.max(y, top + still * shape + 12);
            float column = (full - GAP) / 2;
            float end = below;
            int first = firstColumn(column);
            y = below;
            for (int i = 0; i < page.below().size(); i++) {
                y = i == first ? below : y;
                y = section(page.below().get(i), i < first ? MARGIN : MARGIN + column + GAP, y, column);
                end = Math.max(end, y);
            }
            return new PdfLayout(List.copyOf(blocks), MARGIN, top, still, end);
        }

        /** How many sections go left, so that both columns are about as long. */
        private int firstColumn(float width) {
            float all = 0;
            for (Page.Section section : page.below()) {
                all += height(section, width);
            }
            float left = 0;
            int count = 0;
            while (count < page.below().size() - 1 && left + height(page.below().get(count), width) / 2 < all / 2) {
                left += height(page.below().get(count), width);
                count++;
            }
            return count;
        }

        private float height(Page.Section section, float width) {
            float lines = TextBlock.of(section.heading(), Ink.bold(size * 1.15), width)
                            .lines()
                            .size()
                    * 1.15f;
            for (String paragraph : section.paragraphs()) {
                lines += TextBlock.of(paragraph, Ink.plain(size), width).lines().size() + 0.2f;
            }
            return lines * size * LEADING + size * 0.7f;
        }

        private float section(Page.Section section, float x, float top, float width) {
            float y = put(Role.HEADING, section.heading(), size * 1.15f, x, top, width) + size * 0.1f;
            for (String paragraph : section.paragraphs()) {
                y = put(Role.PARAGRAPH, paragraph, size, x, y, width) + size * 0.2f;
            }
            return y + size * 0.7f;
        }

        /** Returns where the block ends. */
        private float put(Role role, String text, float type, float x, float top, float width) {
            if (text.isEmpty()) {
                return top;
            }
            Font font = role == Role.TITLE || role == Role.HEADING ? Ink.bold(type) : Ink.plain(type);
            List<String> lines = TextBlock.of(text, font, width).lines();
            blocks.add(new Block(role, lines, type, x, top + type));
            return top + lines.size() * type * LEADING;
        }
    }
}

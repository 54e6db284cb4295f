package org.toeline.paint;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.toeline.flight.FigureUnit;
import org.toeline.flight.Flight;
import org.toeline.flight.Quantity;
import org.toeline.flight.ShotFigure;
import org.toeline.flight.compare.SetupFigure;

/**
 * Shots of one or two setups over one another, from the side and from above, both to one scale: computed curves, measured
 * points, the middle with its interval. The first setup is green, whole lines and dots, the second purple, dashed lines and
 * diamonds. One painter for the screen, a picture file and a PDF page.
 *
 * @param setups one or two, the earlier first; none paints the empty axes
 * @param length unit of the axes, a unit of length
 * @param notes  what is to be known beside it, such as the model of the curves; sentences
 * @param described the picture in words, for those who do not see it
 */
public record ShotPicture(List<Setup> setups, FigureUnit length, List<String> notes, String described)
        implements Drawing {

    private static final int FILE_WIDTH = 1800;
    private static final int FILE_HEIGHT = 1240;
    /** On paper and in a file the picture is laid out at this width and then enlarged. */
    private static final double LAID_OUT_WIDTH = 900;

    /**
     * The shots of one setup.
     *
     * @param name    as it stands in the legend
     * @param count   how many shots count
     * @param shots   curves and points of them, or of many some
     * @param middle  the flight of the middle launch by each model, the one whose figures stand first in front; may be empty
     * @param tellsSide whether that flight tells where it goes sideways; else it is not seen from above
     * @param middles where the shots lie in carry, side and apex
     */
    public record Setup(
            String name,
            int count,
            List<Trace> shots,
            List<Flight> middle,
            boolean tellsSide,
            Map<ShotFigure, SetupFigure> middles) {

        public Setup {
            shots = List.copyOf(shots);
            middle = List.copyOf(middle);
            EnumMap<ShotFigure, SetupFigure> copy = new EnumMap<>(ShotFigure.class);
            copy.putAll(middles);
            middles = java.util.Collections.unmodifiableMap(copy);
        }
    }

    /**
     * One shot.
     *
     * @param computed    the curve, if it can be computed
     * @param tellsSide   whether the curve tells where it goes sideways; else it is not seen from above
     * @param carryM      measured, metres
     * @param sideM       measured, metres, positive towards {@code h}
     * @param apexM       measured, metres
     * @param pickedLabel a name to point it out by; empty for the others
     */
    public record Trace(
            Optional<Flight> computed,
            boolean tellsSide,
            OptionalDouble carryM,
            OptionalDouble sideM,
            OptionalDouble apexM,
            String pickedLabel) {}

    public ShotPicture {
        setups = List.copyOf(setups);
        notes = List.copyOf(notes);
        if (setups.size() > 2 || length.quantity() != Quantity.LENGTH) {
            throw new IllegalArgumentException(setups.size() + " setups in " + length + "; two at most, and a length");
        }
    }

    /** Paints into a rectangle; the ground is left as it is. */
    public void paint(Graphics2D g, Rectangle2D area) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        new ShotPlots(this, g, area).paint();
    }

    @Override
    public double width() {
        return FILE_WIDTH;
    }

    @Override
    public double height() {
        return FILE_HEIGHT;
    }

    @Override
    public String title() {
        return setups.stream().map(Setup::name).collect(Collectors.joining(" · "));
    }

    @Override
    public void paint(Graphics2D g) {
        g.setColor(Ink.PAPER);
        g.fill(new Rectangle2D.Double(0, 0, FILE_WIDTH, FILE_HEIGHT));
        page(g, FILE_WIDTH, FILE_HEIGHT);
    }

    /** One page, A4 across, of lines: it may be enlarged at will. */
    public byte[] pdf() {
        PDRectangle across = new PDRectangle(PDRectangle.A4.getHeight(), PDRectangle.A4.getWidth());
        try (PDDocument document = new PDDocument()) {
            PDPage page = new PDPage(across);
            document.addPage(page);
            var g = new de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D(document, across.getWidth(), across.getHeight());
            page(g, across.getWidth(), across.getHeight());
            g.dispose();
            try (PDPageContentStream out = new PDPageContentStream(document, page)) {
                out.drawForm(g.getXFormObject());
            }
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            document.save(bytes);
            return bytes.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void page(Graphics2D g, double width, double height) {
        double enlarged = width / LAID_OUT_WIDTH;
        g.scale(enlarged, enlarged);
        double margin = 18;
        paint(g, new Rectangle2D.Double(margin, margin, LAID_OUT_WIDTH - 2 * margin, height / enlarged - 2 * margin));
    }
}

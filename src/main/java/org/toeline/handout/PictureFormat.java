package org.toeline.handout;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Locale;
import java.util.Optional;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import org.toeline.paint.Drawing;

/**
 * The kinds of picture file a drawing is written as. None carries a place, a device or a time: pixels are painted anew, and
 * the writers are given no metadata.
 */
public enum PictureFormat {
    PNG {
        @Override
        public byte[] of(Drawing drawing) {
            return png(image(drawing));
        }
    },
    JPEG {
        @Override
        public byte[] of(Drawing drawing) {
            return jpeg(image(drawing));
        }
    },
    SVG {
        @Override
        public byte[] of(Drawing drawing) {
            return SvgPicture.of(drawing);
        }
    };

    /** Type and thin lines stay clean from about here; half the bytes of a PNG. */
    private static final float JPEG_QUALITY = 0.92f;

    /** Of a PNG this is only how long the writer looks for shorter bytes: a tenth larger than at its best, in half the time. */
    private static final float PNG_QUICK = 0.7f;

    /** The whole file. */
    public abstract byte[] of(Drawing drawing);

    /** The usual ending of such a file, without the dot. */
    public String ending() {
        return this == JPEG ? "jpg" : name().toLowerCase(Locale.ROOT);
    }

    /** The format a file name asks for by its ending. */
    public static Optional<PictureFormat> byName(String fileName) {
        String name = fileName.toLowerCase(Locale.ROOT);
        for (PictureFormat format : values()) {
            if (name.endsWith("." + format.ending())) {
                return Optional.of(format);
            }
        }
        return name.endsWith(".jpeg") ? Optional.of(JPEG) : Optional.empty();
    }

    /** The drawing as pixels. */
    public static BufferedImage image(Drawing drawing) {
        return image(drawing, 1);
    }

    /** @param scale pixels a unit of the drawing */
    public static BufferedImage image(Drawing drawing, double scale) {
        BufferedImage image = new BufferedImage(
                (int) Math.ceil(scale * drawing.width()),
                (int) Math.ceil(scale * drawing.height()),
                BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        try {
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
            g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
            g.scale(scale, scale);
            drawing.paint(g);
        } finally {
            g.dispose();
        }
        return image;
    }

    static byte[] png(BufferedImage image) {
        return written(image, "png", PNG_QUICK);
    }

    static byte[] jpeg(BufferedImage image) {
        return written(image, "jpeg", JPEG_QUALITY);
    }

    private static byte[] written(BufferedImage image, String format, float quality) {
        ImageWriter writer = ImageIO.getImageWritersByFormatName(format).next();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (MemoryCacheImageOutputStream to = new MemoryCacheImageOutputStream(out)) {
            ImageWriteParam how = writer.getDefaultWriteParam();
            how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            how.setCompressionQuality(quality);
            writer.setOutput(to);
            writer.write(null, new IIOImage(image, null, null), how);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            writer.dispose();
        }
        return out.toByteArray();
    }
}

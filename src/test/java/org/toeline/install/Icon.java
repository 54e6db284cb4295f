package org.toeline.install;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;

/**
 * The program's own drawing: two feet on a line, a ball before them, and the line through the ball. Main class: writes the
 * picture that the desk's window bears.
 */
final class Icon {

    private static final Color GRASS = new Color(0x1F, 0x5E, 0x45);
    private static final Color CHALK = new Color(0xF4, 0xF1, 0xE4);
    private static final Color ROD = new Color(0xE8, 0xA3, 0x3D);

    private Icon() {}

    public static void main(String[] args) throws IOException {
        Files.write(Path.of(args[0]), png(256));
    }

    static byte[] png(int size) throws IOException {
        BufferedImage image = new BufferedImage(size, size, BufferedImage.TYPE_INT_ARGB);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.scale(size / 64.0, size / 64.0);
        g.setColor(GRASS);
        g.fill(new RoundRectangle2D.Double(2, 2, 60, 60, 16, 16));
        g.setStroke(new BasicStroke(3.5f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.setColor(ROD);
        g.draw(new Line2D.Double(9, 33, 55, 33));
        g.draw(new Line2D.Double(37, 11, 37, 33));
        g.setColor(CHALK);
        foot(g, 19, 46, 8);
        foot(g, 45, 46, -14);
        g.fill(new Ellipse2D.Double(37 - 5.5, 11 - 2, 11, 11));
        g.dispose();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(image, "png", out);
        return out.toByteArray();
    }

    private static void foot(Graphics2D g, double x, double y, double turnedOutDeg) {
        Graphics2D own = (Graphics2D) g.create();
        own.translate(x, y);
        own.rotate(Math.toRadians(-turnedOutDeg));
        own.fill(new RoundRectangle2D.Double(-5, -10, 10, 21, 10, 12));
        own.dispose();
    }

    /** As Windows has it: a directory, and pictures as PNG. */
    static byte[] ico() throws IOException {
        List<Integer> sizes = List.of(16, 32, 48, 256);
        Map<Integer, byte[]> pictures = new LinkedHashMap<>();
        int bytes = 6 + 16 * sizes.size();
        for (int size : sizes) {
            pictures.put(size, png(size));
            bytes += png(size).length;
        }
        ByteBuffer out = ByteBuffer.allocate(bytes).order(ByteOrder.LITTLE_ENDIAN);
        out.putShort((short) 0).putShort((short) 1).putShort((short) sizes.size());
        int at = 6 + 16 * sizes.size();
        for (Map.Entry<Integer, byte[]> picture : pictures.entrySet()) {
            // 256 is written as 0
            byte side = (byte) (int) picture.getKey();
            out.put(side)
                    .put(side)
                    .put((byte) 0)
                    .put((byte) 0)
                    .putShort((short) 1)
                    .putShort((short) 32);
            out.putInt(picture.getValue().length).putInt(at);
            at += picture.getValue().length;
        }
        pictures.values().forEach(out::put);
        return out.array();
    }

    /** As macOS has it: a row of PNG, each with the name of its size. */
    static byte[] icns() throws IOException {
        Map<String, byte[]> pictures =
                new LinkedHashMap<>(Map.of("ic07", png(128), "ic08", png(256), "ic09", png(512)));
        int bytes = 8 + pictures.values().stream().mapToInt(p -> p.length + 8).sum();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        DataOutputStream data = new DataOutputStream(out);
        data.writeBytes("icns");
        data.writeInt(bytes);
        for (Map.Entry<String, byte[]> picture : pictures.entrySet()) {
            data.writeBytes(picture.getKey());
            data.writeInt(picture.getValue().length + 8);
            data.write(picture.getValue());
        }
        return out.toByteArray();
    }
}

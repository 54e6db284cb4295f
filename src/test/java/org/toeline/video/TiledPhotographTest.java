package org.toeline.video;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * HEIC as phones write it: a grid of tiles, each an HEVC picture of its own (ISO/IEC 23008-12, 6.6.2.3), of which the last
 * row and column are wider than what is shown. The file is put together here, box by box (ISO/IEC 14496-12, 8.11).
 */
class TiledPhotographTest {

    private static final int TILE = 128;
    private static final int WIDTH = 230;
    private static final int HEIGHT = 200;
    /** HEVC of even areas in limited range: what coding and rounding leave. */
    private static final double LEVELS = 4;

    private static final Color[] COLOURS = {
        new Color(200, 40, 40), new Color(40, 160, 40), new Color(40, 40, 200), new Color(220, 220, 220)
    };

    @TempDir
    Path folder;

    private byte[] configuration = {};
    private final List<byte[]> tiles = new ArrayList<>();

    @BeforeEach
    void codedTiles() throws Exception {
        Assumptions.assumeTrue(PhoneClips.canMake("libx265"), "no ffmpeg with libx265 on this machine");
        for (int i = 0; i < 4; i++) {
            BufferedImage image = new BufferedImage(TILE, TILE, BufferedImage.TYPE_INT_RGB);
            Graphics2D g = image.createGraphics();
            g.setColor(COLOURS[i]);
            g.fillRect(0, 0, TILE, TILE);
            g.dispose();
            Path png = folder.resolve("tile" + i + ".png");
            ImageIO.write(image, "png", png.toFile());
            byte[] coded = Files.readAllBytes(PhoneClips.make(
                    png,
                    folder.resolve("tile" + i + ".mp4"),
                    "|-frames:v 1 -vf"
                            + " scale=out_color_matrix=bt709:out_range=limited,format=yuv420p -c:v libx265 -tag:v hvc1"
                            + " -colorspace bt709 -color_range tv -x265-params log-level=error:info=0:crf=10"));
            configuration = box(coded, "hvcC");
            byte[] data = box(coded, "mdat");
            tiles.add(Arrays.copyOfRange(data, 8, data.length));
        }
    }

    /** The last box of that name, with its header. */
    private static byte[] box(byte[] file, String name) {
        String text = new String(file, StandardCharsets.ISO_8859_1);
        int at = text.lastIndexOf(name) - 4;
        int size = (file[at] & 255) << 24 | (file[at + 1] & 255) << 16 | (file[at + 2] & 255) << 8 | file[at + 3] & 255;
        return Arrays.copyOfRange(file, at, at + size);
    }

    private interface Content {
        void into(DataOutputStream out) throws IOException;
    }

    private static byte[] made(String name, Content content) throws IOException {
        ByteArrayOutputStream inner = new ByteArrayOutputStream();
        content.into(new DataOutputStream(inner));
        ByteArrayOutputStream outer = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(outer);
        out.writeInt(8 + inner.size());
        out.writeBytes(name);
        out.write(inner.toByteArray());
        return outer.toByteArray();
    }

    /** Items 1 to 4 are the tiles, 5 the grid. */
    private Path photograph(int tilesInFile, int rotation) throws IOException {
        byte[] grid = {0, 0, 1, 1, 0, (byte) WIDTH, 0, (byte) HEIGHT};
        List<byte[]> data = new ArrayList<>(tiles.subList(0, tilesInFile));
        data.add(grid);
        byte[] type = made("ftyp", o -> o.writeBytes("heic\0\0\0\0mif1heic"));
        int from = type.length + meta(data, 0, rotation).length + 8;
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        file.write(type);
        file.write(meta(data, from, rotation));
        file.write(made("mdat", o -> {
            for (byte[] part : data) {
                o.write(part);
            }
        }));
        return Files.write(folder.resolve("photo.heic"), file.toByteArray());
    }

    private byte[] meta(List<byte[]> data, int from, int rotation) throws IOException {
        int items = data.size();
        return made("meta", o -> {
            o.writeInt(0);
            o.write(made("hdlr", h -> {
                h.writeLong(0);
                h.writeBytes("pict");
                h.write(new byte[13]);
            }));
            o.write(made("pitm", p -> {
                p.writeInt(0);
                p.writeShort(items);
            }));
            o.write(made("iinf", n -> {
                n.writeInt(0);
                n.writeShort(items);
                for (int i = 1; i <= items; i++) {
                    n.write(entry(i, i < items ? "hvc1" : "grid"));
                }
            }));
            o.write(made("iref", r -> {
                r.writeInt(0);
                r.write(made("dimg", d -> {
                    d.writeShort(items);
                    d.writeShort(items - 1);
                    for (int i = 1; i < items; i++) {
                        d.writeShort(i);
                    }
                }));
            }));
            o.write(properties(items, rotation));
            o.write(places(data, from));
        });
    }

    private static byte[] entry(int item, String kind) throws IOException {
        return made("infe", e -> {
            e.writeInt(2 << 24 | (kind.equals("grid") ? 0 : 1));
            e.writeShort(item);
            e.writeShort(0);
            e.writeBytes(kind + "\0");
        });
    }

    private byte[] properties(int items, int rotation) throws IOException {
        return made("iprp", p -> {
            p.write(made("ipco", c -> {
                c.write(configuration);
                c.write(extent(TILE, TILE));
                c.write(extent(WIDTH, HEIGHT));
                c.write(made("irot", r -> r.writeByte(rotation)));
            }));
            p.write(made("ipma", a -> {
                a.writeInt(0);
                a.writeInt(items);
                for (int i = 1; i <= items; i++) {
                    a.writeShort(i);
                    a.writeByte(2);
                    // the highest bit: essential
                    a.write(i < items ? new byte[] {(byte) 0x81, 2} : new byte[] {3, (byte) 0x84});
                }
            }));
        });
    }

    private static byte[] extent(int width, int height) throws IOException {
        return made("ispe", e -> {
            e.writeInt(0);
            e.writeInt(width);
            e.writeInt(height);
        });
    }

    private static byte[] places(List<byte[]> data, int from) throws IOException {
        return made("iloc", l -> {
            l.writeInt(0);
            l.writeShort(0x4400);
            l.writeShort(data.size());
            int at = from;
            for (int i = 0; i < data.size(); i++) {
                l.writeShort(i + 1);
                l.writeShort(0);
                l.writeShort(1);
                l.writeInt(at);
                l.writeInt(data.get(i).length);
                at += data.get(i).length;
            }
        });
    }

    private static void check(Frame frame, double x, double y, Color expected) {
        int pixel = frame.argb()[(int) y * frame.width() + (int) x];
        assertThat((double) (pixel >> 16 & 255)).isCloseTo(expected.getRed(), within(LEVELS));
        assertThat((double) (pixel >> 8 & 255)).isCloseTo(expected.getGreen(), within(LEVELS));
        assertThat((double) (pixel & 255)).isCloseTo(expected.getBlue(), within(LEVELS));
    }

    @Test
    void tilesArePutTogetherAndCut() throws Exception {
        try (Clip clip = Clip.open(photograph(4, 0))) {
            assertThat(clip.info().width()).isEqualTo(WIDTH);
            assertThat(clip.info().height()).isEqualTo(HEIGHT);
            assertThat(clip.frameCount()).isEqualTo(1);
            Frame frame = clip.frameAt(0);
            for (int i = 0; i < 4; i++) {
                for (double inset : new double[] {2, 60}) {
                    check(
                            frame,
                            i % 2 == 0 ? TILE - 1 - inset : TILE + inset,
                            i / 2 == 0 ? TILE - 1 - inset : TILE + inset,
                            COLOURS[i]);
                }
            }
            check(frame, 0, 0, COLOURS[0]);
            check(frame, WIDTH - 1, HEIGHT - 1, COLOURS[3]);
            assertThat(clip.frame(0).argb()).as("asked for again").isEqualTo(frame.argb());
        }
    }

    /** A quarter turn anticlockwise (ISO/IEC 23008-12, 6.5.10): the top right corner goes to the top left. */
    @Test
    void turnedAsTheFileSays() throws Exception {
        try (Clip clip = Clip.open(photograph(4, 1))) {
            assertThat(clip.info().rotation()).isEqualTo(270);
            Frame frame = clip.frame(0);
            assertThat(frame.width()).isEqualTo(HEIGHT);
            assertThat(frame.height()).isEqualTo(WIDTH);
            check(frame, 3, 3, COLOURS[1]);
            check(frame, HEIGHT - 3, 3, COLOURS[3]);
            check(frame, 3, WIDTH - 3, COLOURS[0]);
        }
    }

    @Test
    void cutShortItIsRefusedWithASentence() throws Exception {
        Path photo = photograph(4, 0);
        byte[] whole = Files.readAllBytes(photo);
        Files.write(photo, Arrays.copyOf(whole, whole.length - 12 - tiles.get(3).length));
        assertThatExceptionOfType(ClipException.class)
                .isThrownBy(() -> Clip.open(photo).close())
                .withMessageContaining("photo.heic");
    }
}

package org.toeline.video;

import static org.assertj.core.api.Assertions.assertThat;
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
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A photograph is a clip of one frame, upright as its Exif data say. */
class PhotographTest {

    private static final int WIDTH = 160;
    private static final int HEIGHT = 96;
    /** JPEG of even quarters: what its coding and half-resolved colour leave. */
    private static final double LEVELS = 4;

    private static final int PNG_HEADER_END = 33;

    @TempDir
    Path folder;

    /** Quarters: red, green; blue, white. */
    private static byte[] stored(String kind) throws IOException {
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        Color[] colours = {
            new Color(200, 40, 40), new Color(40, 160, 40), new Color(40, 40, 200), new Color(230, 230, 230)
        };
        for (int i = 0; i < 4; i++) {
            g.setColor(colours[i]);
            g.fillRect(i % 2 * WIDTH / 2, i / 2 * HEIGHT / 2, WIDTH / 2, HEIGHT / 2);
        }
        g.dispose();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(image, kind, out);
        return out.toByteArray();
    }

    /** A TIFF header and one directory of one entry: tag 274, a short (Exif 2.32, 4.6.2). */
    private static byte[] exif(int orientation) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(bytes);
        out.writeBytes("MM");
        out.writeShort(42);
        out.writeInt(8);
        out.writeShort(1);
        out.writeShort(274);
        out.writeShort(3);
        out.writeInt(1);
        out.writeShort(orientation);
        out.writeShort(0);
        out.writeInt(0);
        return bytes.toByteArray();
    }

    private Path jpeg(int orientation) throws IOException {
        byte[] exif = exif(orientation);
        byte[] stored = stored("jpg");
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(bytes);
        out.write(stored, 0, 2);
        out.writeShort(0xFFE1);
        out.writeShort(2 + 6 + exif.length);
        out.writeBytes("Exif\0\0");
        out.write(exif);
        out.write(stored, 2, stored.length - 2);
        return Files.write(folder.resolve("photo.jpg"), bytes.toByteArray());
    }

    private Path png(int orientation) throws IOException {
        byte[] exif = exif(orientation);
        byte[] stored = stored("png");
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(bytes);
        CRC32 crc = new CRC32();
        crc.update("eXIf".getBytes(StandardCharsets.US_ASCII));
        crc.update(exif);
        out.write(stored, 0, PNG_HEADER_END);
        out.writeInt(exif.length);
        out.writeBytes("eXIf");
        out.write(exif);
        out.writeInt((int) crc.getValue());
        out.write(stored, PNG_HEADER_END, stored.length - PNG_HEADER_END);
        return Files.write(folder.resolve("photo.png"), bytes.toByteArray());
    }

    /** Where row 0 and column 0 lie as shown (Exif 2.32, tag 274), as the colours of the quarters from the top left. */
    @ParameterizedTest
    @CsvSource({
        "1, RGBW, 0, false",
        "2, GRWB, 0, true",
        "3, WBGR, 180, false",
        "4, BWRG, 180, true",
        "5, RBGW, 270, true",
        "6, BRWG, 90, false",
        "7, WGBR, 90, true",
        "8, GWRB, 270, false",
        "0, RGBW, 0, false",
        "99, RGBW, 0, false"
    })
    void shownUpright(int number, String quarters, int rotation, boolean mirrored) throws Exception {
        for (Path file : new Path[] {jpeg(number), png(number)}) {
            try (Clip clip = Clip.open(file)) {
                assertThat(clip.frameCount()).isEqualTo(1);
                assertThat(clip.info().rotation()).isEqualTo(rotation);
                assertThat(clip.info().mirrored()).isEqualTo(mirrored);
                boolean upright = rotation % 180 == 0;
                Frame frame = clip.frameAt(0);
                assertThat(frame.width()).isEqualTo(upright ? WIDTH : HEIGHT);
                for (int i = 0; i < 4; i++) {
                    check(frame, i, quarters.charAt(i));
                }
                assertThat(clip.frame(0).argb()).as("asked for again").isEqualTo(frame.argb());
            }
        }
    }

    private static void check(Frame frame, int quarter, char colour) {
        int x = (1 + 2 * (quarter % 2)) * frame.width() / 4;
        int y = (1 + 2 * (quarter / 2)) * frame.height() / 4;
        int pixel = frame.argb()[y * frame.width() + x];
        int expected =
                switch (colour) {
                    case 'R' -> 0xC82828;
                    case 'G' -> 0x28A028;
                    case 'B' -> 0x2828C8;
                    default -> 0xE6E6E6;
                };
        for (int shift = 0; shift <= 16; shift += 8) {
            assertThat((double) (pixel >> shift & 255))
                    .as("quarter %d, bits from %d", quarter, shift)
                    .isCloseTo(expected >> shift & 255, within(LEVELS));
        }
    }

    @Test
    void aPhotographWithoutExifIsShownAsStored() throws Exception {
        try (Clip clip = Clip.open(Files.write(folder.resolve("plain.jpg"), stored("jpg")))) {
            assertThat(clip.info().width()).isEqualTo(WIDTH);
            check(clip.frame(0), 0, 'R');
        }
    }
}

package org.toeline.video;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.LongStream;
import java.util.zip.CRC32;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.toeline.video.TestClips.Coding;

/** Files that are broken, lie or are no clips end in a sentence. */
class BrokenClipTest {

    private static final long LIMIT_S = 120;

    @TempDir
    Path folder;

    private Path clip(String name) {
        return TestClips.write(
                folder.resolve(name),
                new Coding("libopenh264", "mp4", 12, 0, 0),
                LongStream.range(0, 10).map(i -> 33 * i).toArray());
    }

    private static void refused(Path file, String... parts) {
        assertThatExceptionOfType(ClipException.class)
                .isThrownBy(() -> Clip.open(file).close())
                .withMessageContaining(file.toString())
                .satisfies(e -> assertThat(e.getMessage()).doesNotContain("\n"))
                .satisfies(e -> List.of(parts)
                        .forEach(part -> assertThat(e.getMessage()).contains(part)));
    }

    /** In a process of its own, so that a crash of the native side would be seen and not take the tests with it. */
    @Test
    void damagedCopies() throws Exception {
        Path log = folder.resolve("log");
        Process child = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx512m",
                        "-cp",
                        System.getProperty("java.class.path"),
                        FuzzStudy.class.getName(),
                        Files.createDirectory(folder.resolve("copies")).toString(),
                        "80")
                .redirectErrorStream(true)
                .redirectOutput(log.toFile())
                .start();
        try {
            assertThat(child.waitFor(LIMIT_S, TimeUnit.SECONDS))
                    .as("ended in time")
                    .isTrue();
            assertThat(child.exitValue()).as(Files.readString(log)).isZero();
            assertThat(Files.readString(log))
                    .matches("(?s)80 copies: [1-9]\\d* read, [1-9]\\d* refused with a sentence\\s*");
        } finally {
            child.destroyForcibly();
        }
    }

    /** A copy that was broken off: what is missing is known from the list of frames in the header. */
    @Test
    void aFilmCutShortSaysHowMuchIsMissing() throws Exception {
        Path whole = Path.of("sample-media", "before", "face-on.mp4");
        byte[] bytes = Files.readAllBytes(whole);
        Path cut = Files.write(folder.resolve("cut.mp4"), Arrays.copyOf(bytes, bytes.length / 3));
        try (Clip there = Clip.open(whole);
                Clip clip = Clip.open(cut)) {
            assertThat(there.info().missingSeconds()).isZero();
            assertThat(there.info().remarks()).isEmpty();
            double missing = there.info().durationSeconds() - clip.info().durationSeconds();
            assertThat(missing).isGreaterThan(1);
            assertThat(clip.info().missingSeconds()).isCloseTo(missing, within(0.1));
            assertThat(clip.info().remarks()).singleElement().asString().contains("cut short");
        }
    }

    /** The sample entry holds width and height 24 bytes after its name (ISO/IEC 14496-12, 12.1.3). */
    @Test
    void aClipThatLiesAboutItsSizeIsRefusedFromTheHeader() throws Exception {
        Path file = clip("lie.mp4");
        byte[] bytes = Files.readAllBytes(file);
        int entry = new String(bytes, StandardCharsets.ISO_8859_1).indexOf("avc1", 100);
        ByteBuffer all = ByteBuffer.wrap(bytes);
        assertThat(all.getShort(entry + 28)).isEqualTo((short) TestClips.WIDTH);
        all.putShort(entry + 28, (short) 65535).putShort(entry + 30, (short) 32767);
        Files.write(file, bytes);
        refused(file, "65535 × 32767", "million pixels");
    }

    @Test
    void aPhotographThatLiesAboutItsSizeIsRefused() throws Exception {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream png = new DataOutputStream(bytes);
        png.writeLong(0x89504E470D0A1A0AL);
        ByteBuffer header = ByteBuffer.allocate(17)
                .put("IHDR".getBytes(StandardCharsets.US_ASCII))
                .putInt(65535)
                .putInt(32767)
                .put(new byte[] {8, 2, 0, 0, 0});
        CRC32 crc = new CRC32();
        crc.update(header.array());
        png.writeInt(13);
        png.write(header.array());
        png.writeInt((int) crc.getValue());
        png.writeInt(0);
        png.writeBytes("IDAT");
        png.writeInt(0x35AF061E);
        refused(Files.write(folder.resolve("lie.png"), bytes.toByteArray()));
    }

    @Test
    void openingHasALimitOfTime() {
        Path file = clip("slow.mp4");
        assertThatExceptionOfType(ClipException.class)
                .isThrownBy(() -> Clip.open(file, 1 << 20, 0).close())
                .withMessageContainingAll(file.toString(), "took longer");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "nothing that moves", "\0\0\0\u0018ftypmp42", "RIFF\0\0\0\0AVI LIST"})
    void whatIsNoClip(String content) throws Exception {
        refused(Files.writeString(folder.resolve("no.mp4"), content, StandardCharsets.ISO_8859_1));
    }

    @Test
    void soundWithoutPicture() throws Exception {
        int rate = 8000;
        ByteBuffer wave = ByteBuffer.allocate(44 + rate).order(java.nio.ByteOrder.LITTLE_ENDIAN);
        wave.put("RIFF".getBytes(StandardCharsets.US_ASCII))
                .putInt(36 + rate)
                .put("WAVEfmt ".getBytes(StandardCharsets.US_ASCII))
                .putInt(16)
                .putShort((short) 1)
                .putShort((short) 1)
                .putInt(rate)
                .putInt(rate)
                .putShort((short) 1)
                .putShort((short) 8)
                .put("data".getBytes(StandardCharsets.US_ASCII))
                .putInt(rate);
        refused(Files.write(folder.resolve("sound.mp4"), wave.array()), "no picture");
    }

    @ParameterizedTest
    @ValueSource(strings = {"Übung am Übungsplatz ⛳.mp4", "50 % #1 a b.mp4", "file:c.mp4", "-i.mp4", "%03d.mp4"})
    void namesOfEveryKind(String name) throws Exception {
        Path file = Files.move(clip("plain.mp4"), folder.resolve(name));
        try (Clip clip = Clip.open(file)) {
            assertThat(clip.frameCount()).isEqualTo(10);
        }
    }

    @Test
    void photographsOfEveryName() throws Exception {
        var image = new java.awt.image.BufferedImage(64, 48, java.awt.image.BufferedImage.TYPE_INT_RGB);
        for (String name : new String[] {"50 %.jpg", "%03d.jpg", "a*b?.jpg", "ü [1].png"}) {
            Path file = folder.resolve(name);
            javax.imageio.ImageIO.write(image, name.substring(name.length() - 3), file.toFile());
            try (Clip clip = Clip.open(file)) {
                assertThat(clip.frame(0).width()).as(name).isEqualTo(64);
            }
        }
    }
}

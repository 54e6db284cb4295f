package org.toeline.ledger.store.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Boxes as 3GPP TS 26.244 and Apple's QuickTime File Format lay them out, made by hand. */
class PlaceTagsTest {

    private static final String WHERE = "+48.1000+011.5000/";

    @TempDir
    private Path folder;

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.ISO_8859_1);
    }

    private static byte[] joined(byte[]... parts) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        for (byte[] part : parts) {
            out.writeBytes(part);
        }
        return out.toByteArray();
    }

    private static byte[] box(String type, byte[]... body) {
        byte[] inside = joined(body);
        return joined(ByteBuffer.allocate(4).putInt(8 + inside.length).array(), bytes(type), inside);
    }

    private static byte[] number(int n) {
        return ByteBuffer.allocate(4).putInt(n).array();
    }

    private byte[] without(byte[] clip) throws Exception {
        try (InputStream in = PlaceTags.without(Files.write(folder.resolve("clip.mp4"), clip))) {
            return in.readAllBytes();
        }
    }

    @Test
    void nothingSaysWhereItWasFilmed() throws Exception {
        byte[] picture = box("mdat", bytes("+48 is no place here".repeat(9)));
        byte[] keys = box(
                "keys",
                number(0),
                number(2),
                box("mdta", bytes("com.apple.quicktime.make")),
                box("mdta", bytes("com.apple.quicktime.location.ISO6709")));
        byte[] list = box(
                "ilst",
                box("\0\0\0\1", box("data", number(1), number(0), bytes("Maker"))),
                box("\0\0\0\2", box("data", number(1), number(0), bytes(WHERE))));
        byte[] clip = joined(
                box("ftyp", bytes("mp42")),
                picture,
                box(
                        "moov",
                        box(
                                "udta",
                                box("\u00a9xyz", number(0x1215c7), bytes(WHERE)),
                                box("loci", bytes("0000" + WHERE))),
                        box("trak", box("meta", keys, list)),
                        box("meta", number(0), keys, list)));
        byte[] out = without(clip);
        assertThat(out).hasSameSizeAs(clip);
        assertThat(new String(out, StandardCharsets.ISO_8859_1))
                .doesNotContain("48.1000", "loci", "xyz")
                .contains("Maker", "+48 is no place here");
    }

    @Test
    void whatHasNoneIsUntouched() throws Exception {
        Path sample = Path.of("sample-media/before/face-on.mp4");
        assertThat(without(Files.readAllBytes(sample))).isEqualTo(Files.readAllBytes(sample));
        for (String odd : new String[] {"", "x", "no clip at all", "\0\0\0\1moov\0\0\0\0\0\0\0\1", "\0\0\0\0moov"}) {
            assertThat(without(bytes(odd))).as(odd).isEqualTo(bytes(odd));
        }
    }
}

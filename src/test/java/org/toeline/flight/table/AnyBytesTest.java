package org.toeline.flight.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.toeline.flight.Shot;
import org.toeline.flight.ShotFigure;

/** Whatever bytes a file holds, the import ends with shots and reasons, never with an exception. */
class AnyBytesTest {

    private static final String TABLE = """
        Shot;Ball Speed (mph);Launch Angle (deg);Carry Side (yd);Back Spin (rpm);Side Spin (rpm, right +);Carry (yd);Club
        1;146,2;12,3;3,2 L;2600;120;241,5;Driver
        2;"147,0";13,1;-1,1;2.512;-80;245,0;"Driver; low"
        3;--;;;;;;
        Average;146,6;12,7;;;;243,2;
        """;
    private static final String[] PIECES = {
        "\"",
        "\"\"",
        ";",
        ",",
        "\t",
        "\n",
        "\r",
        "9".repeat(400),
        "1e999",
        "NaN",
        "∞",
        "-",
        "−",
        "L",
        "=1+1",
        "\u0000",
        "°",
        "km/h",
        "1.2.3,4,5",
        "'",
        "\ufeff",
        "[",
        "(mph",
        "Infinity",
        "0x1F",
        "\ud83c"
    };

    private final SplittableRandom random = new SplittableRandom(13);

    private static void check(byte[] bytes) {
        Proposal proposal = Proposal.of(bytes, "any");
        Imported imported = ShotImport.read(bytes, proposal.template());
        Imported own = ShotImport.read(bytes, ShotExport.template());
        for (Shot shot : imported.shots()) {
            assertThat(shot.figures()).isNotEmpty();
        }
        assertThat(own.shots().size()).isEqualTo(own.lines().size());
        imported.leftOut().forEach(l -> assertThat(l.reason()).isNotBlank().hasSizeLessThan(400));
    }

    @Test
    void anyBytes() {
        for (int i = 0; i < 300; i++) {
            byte[] bytes = new byte[random.nextInt(600)];
            for (int k = 0; k < bytes.length; k++) {
                bytes[k] = (byte) random.nextInt(256);
            }
            check(bytes);
        }
    }

    @Test
    void damagedTables() {
        List<Charset> charsets = List.of(
                StandardCharsets.UTF_8,
                StandardCharsets.UTF_16LE,
                StandardCharsets.UTF_16BE,
                Charset.forName("windows-1252"));
        for (int i = 0; i < 700; i++) {
            StringBuilder text = new StringBuilder(TABLE);
            for (int k = random.nextInt(1, 6); k > 0; k--) {
                int at = random.nextInt(text.length());
                switch (random.nextInt(3)) {
                    case 0 -> text.insert(at, PIECES[random.nextInt(PIECES.length)]);
                    case 1 -> text.delete(at, Math.min(text.length(), at + random.nextInt(1, 12)));
                    default -> text.setCharAt(at, PIECES[random.nextInt(PIECES.length)].charAt(0));
                }
            }
            check(text.toString().getBytes(charsets.get(i % charsets.size())));
        }
    }

    @Test
    void theUndamagedTableIsReadInFull() {
        byte[] bytes = TABLE.getBytes(StandardCharsets.UTF_8);
        Imported imported = ShotImport.read(bytes, Proposal.of(bytes, "any").template());
        assertThat(imported.shots()).hasSize(2);
        assertThat(imported.leftOut()).extracting(LeftOut::line).containsExactly(4, 5);
        assertThat(imported.shots().get(1).remark()).isEqualTo("2, Driver; low");
        assertThat(imported.shots().get(1).figure(ShotFigure.SPIN_AXIS).getAsDouble())
                .isPositive();
    }
}

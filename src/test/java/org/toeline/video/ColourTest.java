package org.toeline.video;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.bytedeco.ffmpeg.global.avutil.*;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Path;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.javacpp.BytePointer;
import org.bytedeco.javacpp.ShortPointer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Reference: colours of known patches, by the equations of the standards. */
class ColourTest {

    private static final int WIDTH = 64;
    private static final int HEIGHT = 48;
    /** Rounding to 8 bits on the way in and out, and the converter's own tables; 2.5 is the most seen. */
    private static final double LEVELS = 3;

    private static final int[][] PATCHES = {
        {192, 32, 64},
        {30, 180, 60},
        {20, 60, 210},
        {128, 128, 128},
        {250, 240, 20},
        {12, 10, 14},
        {255, 255, 255},
        {0, 0, 0}
    };

    @TempDir
    Path folder;

    /** Luma weights of red and blue: BT.601-7, 2.5.1; BT.709-6, 3.2; BT.2020-2, table 4. */
    private static double[] weights(String standard) {
        return switch (standard) {
            case "601" -> new double[] {0.299, 0.114};
            case "709" -> new double[] {0.2126, 0.0722};
            default -> new double[] {0.2627, 0.0593};
        };
    }

    private static int matrix(String standard) {
        return switch (standard) {
            case "601" -> AVCOL_SPC_SMPTE170M;
            case "709" -> AVCOL_SPC_BT709;
            default -> AVCOL_SPC_BT2020_NCL;
        };
    }

    /** Digital luma and colour differences: BT.601-7, 2.5.3 and BT.2100-2, table 9. */
    private static int[] coded(int[] rgb, String standard, String range, int bits) {
        double kr = weights(standard)[0];
        double kb = weights(standard)[1];
        double r = rgb[0] / 255.0;
        double g = rgb[1] / 255.0;
        double b = rgb[2] / 255.0;
        double y = kr * r + (1 - kr - kb) * g + kb * b;
        double cb = (b - y) / (2 - 2 * kb);
        double cr = (r - y) / (2 - 2 * kr);
        boolean full = range.equals("full");
        int unit = 1 << bits - 8;
        double top = (1 << bits) - 1;
        double middle = 1 << bits - 1;
        return new int[] {
            (int) Math.round(full ? top * y : unit * (219 * y + 16)),
            (int) Math.round(Math.min(top, (full ? top : 224 * unit) * cb + middle)),
            (int) Math.round(Math.min(top, (full ? top : 224 * unit) * cr + middle))
        };
    }

    private static AVFrame frame(int format, int[] values, int bits) {
        AVFrame frame = av_frame_alloc();
        frame.width(WIDTH).height(HEIGHT).format(format);
        assertThat(av_frame_get_buffer(frame, 64)).isZero();
        for (int plane = 0; plane < 3; plane++) {
            int samples = frame.linesize(plane) * (plane == 0 || format == AV_PIX_FMT_YUV444P ? HEIGHT : HEIGHT / 2);
            BytePointer data = new BytePointer(frame.data(plane)).capacity(samples);
            for (int i = 0; bits == 8 && i < samples; i++) {
                data.put(i, (byte) values[plane]);
            }
            ShortPointer wide = new ShortPointer(data);
            for (int i = 0; bits > 8 && i < samples / 2; i++) {
                wide.put(i, (short) values[plane]);
            }
        }
        return frame;
    }

    private static int[] shown(AVFrame frame) throws ClipException {
        try (PictureConverter converter = new PictureConverter("patch", WIDTH, HEIGHT, Orientation.AS_STORED)) {
            int pixel = converter.convert(frame)[WIDTH * HEIGHT / 2 + WIDTH / 2];
            return new int[] {pixel >> 16 & 255, pixel >> 8 & 255, pixel & 255};
        } finally {
            av_frame_free(frame);
        }
    }

    private static void check(int[] shown, int[] expected, double levels, String what) {
        for (int c = 0; c < 3; c++) {
            assertThat((double) shown[c]).as("%s, channel %d", what, c).isCloseTo(expected[c], within(levels));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "601, limited, 8",
        "601, full, 8",
        "709, limited, 8",
        "709, full, 8",
        "2020, limited, 8",
        "2020, full, 8",
        "601, limited, 10",
        "709, limited, 10",
        "709, full, 10",
        "2020, limited, 10",
        "2020, full, 10"
    })
    void patchesComeOutAsTheyWentIn(String standard, String range, int bits) throws ClipException {
        for (int[] patch : PATCHES) {
            for (int format : bits == 8
                    ? new int[] {AV_PIX_FMT_YUV420P, AV_PIX_FMT_YUV444P}
                    : new int[] {AV_PIX_FMT_YUV420P10LE}) {
                AVFrame frame = frame(format, coded(patch, standard, range, bits), bits);
                frame.colorspace(matrix(standard));
                frame.color_range(range.equals("full") ? AVCOL_RANGE_JPEG : AVCOL_RANGE_MPEG);
                check(shown(frame), patch, LEVELS, standard + " " + range + " " + patch[0]);
            }
        }
    }

    /** Common practice where a stream says nothing: BT.601 below 720 lines, limited range. */
    @Test
    void whatIsNotStatedIsTakenForTheUsual() throws ClipException {
        check(
                shown(frame(AV_PIX_FMT_YUV420P, coded(PATCHES[0], "601", "limited", 8), 8)),
                PATCHES[0],
                LEVELS,
                "unstated");
    }

    /** Through a file: what the program of another maker writes and tags. */
    @ParameterizedTest
    @CsvSource({
        "bt601, smpte170m, tv",
        "bt601, smpte170m, pc",
        "bt709, bt709, tv",
        "bt709, bt709, pc",
        "bt2020, bt2020nc, tv",
        "bt2020, bt2020nc, pc"
    })
    void patchesThroughAFile(String matrix, String tag, String range) throws Exception {
        assumeTrue(PhoneClips.canMake("libx264"), "ffmpeg with libx264 is not installed");
        Path file = PhoneClips.make(
                Path.of("color=c=0xC02040:s=320x192:r=30:d=0.2,format=rgb24"),
                folder.resolve("patch.mp4"),
                "-f lavfi |-c:v libx264 -qp 1 -pix_fmt yuv420p -vf scale=out_color_matrix=" + matrix + ":out_range="
                        + range + ",format=yuv420p -colorspace " + tag + " -color_range " + range);
        try (Clip clip = Clip.open(file)) {
            int pixel = clip.frame(2).argb()[320 * 96 + 160];
            check(
                    new int[] {pixel >> 16 & 255, pixel >> 8 & 255, pixel & 255},
                    PATCHES[0],
                    LEVELS,
                    matrix + " " + range);
        }
    }

    private static int[] grey(int transfer, double share) throws ClipException {
        AVFrame frame = frame(AV_PIX_FMT_YUV420P10LE, new int[] {(int) Math.round(64 + 876 * share), 512, 512}, 10);
        frame.colorspace(AVCOL_SPC_BT2020_NCL).color_trc(transfer).color_primaries(AVCOL_PRI_BT2020);
        return shown(frame);
    }

    /**
     * BT.2408-7, table 1: 18 % grey is coded as 38 % in both, 26 cd/m² of 203 for white, which is 0.395 in sRGB, 101 of
     * 255; reference white as 58 % of PQ and 75 % of HLG, here to be bright and below the top; 1000 cd/m² as 75 % and
     * 100 %, the top.
     */
    @ParameterizedTest
    @CsvSource({
        "true, 0.38, 95, 107",
        "false, 0.38, 95, 107",
        "true, 0.58, 225, 240",
        "false, 0.75, 225, 240",
        "true, 0.752, 253, 255",
        "false, 1.0, 253, 255",
        "true, 1.0, 253, 255",
        "true, 0, 0, 1",
        "false, 0, 0, 1"
    })
    void highDynamicRangeIsShownWithSaneBrightness(boolean quantizer, double share, int from, int to)
            throws ClipException {
        int[] shown = grey(quantizer ? AVCOL_TRC_SMPTE2084 : AVCOL_TRC_ARIB_STD_B67, share);
        assertThat(shown[0]).isBetween(from, to);
        assertThat(Math.abs(shown[0] - shown[1]) + Math.abs(shown[1] - shown[2]))
                .as("a grey stays grey")
                .isLessThan(4);
    }

    /** Property: more light never looks darker. */
    @ParameterizedTest
    @ValueSource(ints = {16, 18})
    void brighterIsNeverDarker(int transfer) throws ClipException {
        int before = -1;
        for (int i = 0; i <= 100; i++) {
            int now = grey(transfer, i / 100.0)[1];
            assertThat(now).as("%d %%", i).isGreaterThanOrEqualTo(before);
            before = now;
        }
    }

    /** BT.2087-0: BT.709's red within BT.2020 is (0.627, 0.069, 0.016) of light; it must come back as pure red. */
    @Test
    void primariesOfHighDynamicRangeBecomeThoseOfTheScreen() throws ClipException {
        double[] light = {0.627404, 0.069097, 0.016391};
        int[] rgb = new int[3];
        for (int c = 0; c < 3; c++) {
            double y = Math.pow(60 * light[c] / 10_000, 2610 / 16384.0);
            rgb[c] = (int) Math.round(
                    255 * Math.pow((3424 / 4096.0 + 2413 / 128.0 * y) / (1 + 2392 / 128.0 * y), 2523 / 32.0));
        }
        AVFrame frame = frame(AV_PIX_FMT_YUV420P10LE, coded(rgb, "2020", "limited", 10), 10);
        frame.colorspace(AVCOL_SPC_BT2020_NCL).color_trc(AVCOL_TRC_SMPTE2084).color_primaries(AVCOL_PRI_BT2020);
        int[] shown = shown(frame);
        // 60 of 203 cd/m² is 0.581 in sRGB
        assertThat(shown[0]).isBetween(142, 154);
        assertThat(shown[1]).isLessThan(25);
        assertThat(shown[2]).isLessThan(25);
    }
}

package org.toeline.video;

import static org.bytedeco.ffmpeg.global.avcodec.AV_PKT_DATA_DISPLAYMATRIX;
import static org.bytedeco.ffmpeg.global.avcodec.av_packet_side_data_get;

import com.drew.imaging.ImageMetadataReader;
import com.drew.imaging.ImageProcessingException;
import com.drew.metadata.MetadataException;
import com.drew.metadata.exif.ExifDirectoryBase;
import com.drew.metadata.exif.ExifIFD0Directory;
import java.io.IOException;
import java.nio.file.Path;
import org.bytedeco.ffmpeg.avcodec.AVCodecParameters;
import org.bytedeco.ffmpeg.avcodec.AVPacketSideData;
import org.bytedeco.javacpp.BytePointer;
import org.bytedeco.javacpp.IntPointer;
import org.jspecify.annotations.Nullable;

/**
 * How a stored picture becomes the one shown: mirrored left to right first if the file says so, then turned.
 *
 * @param clockwise 0, 90, 180 or 270 degrees
 */
record Orientation(int clockwise, boolean mirrored) {

    static final Orientation AS_STORED = new Orientation(0, false);
    private static final int MATRIX_BYTES = 36;

    Orientation {
        if (clockwise != 0 && clockwise != 90 && clockwise != 180 && clockwise != 270) {
            throw new IllegalArgumentException("turned by " + clockwise + "°; 0, 90, 180 or 270 are possible");
        }
    }

    /** Whether width and height change places. */
    boolean onItsSide() {
        return clockwise % 180 != 0;
    }

    /** As the container says; as stored when it says nothing. */
    static Orientation of(AVCodecParameters parameters) {
        return of(parameters.coded_side_data(), parameters.nb_coded_side_data());
    }

    /** As a display matrix among these says; as stored when there is none. */
    static Orientation of(@Nullable AVPacketSideData all, int count) {
        AVPacketSideData data =
                all == null || count == 0 ? null : av_packet_side_data_get(all, count, AV_PKT_DATA_DISPLAYMATRIX);
        return data == null || data.isNull() || data.size() < MATRIX_BYTES ? AS_STORED : of(data.data());
    }

    /** As a photograph's Exif data say; as stored when there are none. */
    static Orientation ofPhotograph(Path file) {
        try {
            ExifIFD0Directory exif =
                    ImageMetadataReader.readMetadata(file.toFile()).getFirstDirectoryOfType(ExifIFD0Directory.class);
            return exif != null && exif.containsTag(ExifDirectoryBase.TAG_ORIENTATION)
                    ? ofExif(exif.getInt(ExifDirectoryBase.TAG_ORIENTATION))
                    : AS_STORED;
        } catch (ImageProcessingException | MetadataException | IOException e) {
            return AS_STORED;
        }
    }

    /** Exif 2.32, tag 274: 1 to 8; anything else counts as 1. */
    static Orientation ofExif(int number) {
        return switch (number) {
            case 2 -> new Orientation(0, true);
            case 3 -> new Orientation(180, false);
            case 4 -> new Orientation(180, true);
            case 5 -> new Orientation(270, true);
            case 6 -> new Orientation(90, false);
            case 7 -> new Orientation(90, true);
            case 8 -> new Orientation(270, false);
            default -> AS_STORED;
        };
    }

    private static Orientation of(@Nullable BytePointer nineNumbers) {
        if (nineNumbers == null || nineNumbers.isNull()) {
            return AS_STORED;
        }
        int[] matrix = new int[MATRIX_BYTES / Integer.BYTES];
        new IntPointer(nineNumbers).get(matrix);
        return of(matrix);
    }

    /**
     * From a display matrix, row by row (ISO/IEC 14496-12, 6.2.2): a stored point (x, y) goes to (a·x + c·y, b·x + d·y)
     * with a, b, c, d = its elements 0, 1, 3, 4.
     */
    static Orientation of(int[] matrix) {
        double a = matrix[0];
        double b = matrix[1];
        boolean mirrored = a * matrix[4] - b * matrix[3] < 0;
        double angle = mirrored ? Math.atan2(-b, -a) : Math.atan2(b, a);
        return new Orientation((int) Math.floorMod(Math.round(Math.toDegrees(angle) / 90) * 90, 360L), mirrored);
    }

    /** Puts the pixels of a picture of that size, row by row, as they are shown into another array, or leaves them in it. */
    void apply(int[] stored, int width, int height, int[] shown) {
        if (!equals(AS_STORED)) {
            move(stored, width, height, shown);
        } else if (stored != shown) {
            System.arraycopy(stored, 0, shown, 0, width * height);
        }
    }

    /** The values of a small picture, as they are shown. */
    float[] applied(float[] stored, int width, int height) {
        if (equals(AS_STORED)) {
            return stored;
        }
        int[] bits = new int[stored.length];
        for (int i = 0; i < bits.length; i++) {
            bits[i] = Float.floatToRawIntBits(stored[i]);
        }
        int[] shown = new int[bits.length];
        apply(bits, width, height, shown);
        float[] out = new float[shown.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = Float.intBitsToFloat(shown[i]);
        }
        return out;
    }

    private void move(int[] stored, int width, int height, int[] shown) {
        // where stored (0, 0) goes, and how far a step right or down goes
        int right =
                switch (clockwise) {
                    case 0 -> 1;
                    case 90 -> height;
                    case 180 -> -1;
                    default -> -height;
                };
        int down =
                switch (clockwise) {
                    case 0 -> width;
                    case 90 -> -1;
                    case 180 -> -width;
                    default -> 1;
                };
        int origin =
                switch (clockwise) {
                    case 0 -> 0;
                    case 90 -> height - 1;
                    case 180 -> width * height - 1;
                    default -> (width - 1) * height;
                };
        if (mirrored) {
            origin += (width - 1) * right;
            right = -right;
        }
        move(stored, width, height, shown, origin, right, down);
    }

    /** Tile by tile, so that both pictures stay in the processor's cache. */
    private static void move(int[] stored, int width, int height, int[] shown, int origin, int right, int down) {
        int tile = 32;
        for (int y0 = 0; y0 < height; y0 += tile) {
            int y1 = Math.min(height, y0 + tile);
            for (int x0 = 0; x0 < width; x0 += tile) {
                int x1 = Math.min(width, x0 + tile);
                for (int y = y0; y < y1; y++) {
                    int to = origin + x0 * right + y * down;
                    for (int from = y * width + x0; from < y * width + x1; from++) {
                        shown[to] = stored[from];
                        to += right;
                    }
                }
            }
        }
    }
}

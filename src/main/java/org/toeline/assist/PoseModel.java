package org.toeline.assist;

import java.io.IOException;
import java.io.InputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;
import org.bytedeco.javacpp.BytePointer;
import org.bytedeco.javacpp.FloatPointer;
import org.bytedeco.javacpp.PointerScope;
import org.bytedeco.opencv.global.opencv_core;
import org.bytedeco.opencv.global.opencv_dnn;
import org.bytedeco.opencv.opencv_core.Mat;
import org.bytedeco.opencv.opencv_core.MatVector;
import org.bytedeco.opencv.opencv_core.StringVector;
import org.bytedeco.opencv.opencv_dnn.Net;
import org.toeline.geometry.ImagePoint;
import org.toeline.video.Frame;

/**
 * A general body-pose model: joint centres of one person in a square part of a picture (its origin and licence stand in
 * NOTICE.txt beside it). Runs on the processor. One thread at a time; native memory is released by {@link #close}.
 */
final class PoseModel implements AutoCloseable {

    static final String RESOURCE = "pose_landmark_full.tflite";
    /** As NOTICE.txt says it. */
    static final String SHA_256 = "e9a5c5cb17f736fafd4c2ec1da3b3d331d6edbe8a0d32395855aeb2cdfd64b9f";

    static final int POINTS = 39;
    private static final int SIDE = 256;
    private static final int VALUES = 5;

    /**
     * A square of the picture that the model looks at, upright when the turn is zero.
     *
     * @param turnRad by how much its upright is turned from the picture's, clockwise as seen
     */
    record Region(double xPx, double yPx, double sidePx, double turnRad) {

        ImagePoint at(double u, double v) {
            double a = (u - 0.5) * sidePx;
            double b = (v - 0.5) * sidePx;
            return new ImagePoint(
                    xPx + a * Math.cos(turnRad) - b * Math.sin(turnRad),
                    yPx + a * Math.sin(turnRad) + b * Math.cos(turnRad));
        }
    }

    /**
     * What the model sees.
     *
     * @param score      that there is a person, 0 to 1
     * @param points     in the picture; 33 of the body, then helpers, of which 33 is the middle of the hips and 34 lies
     *                   at the rim of the circle around the person
     * @param visibility of each, 0 to 1
     */
    record Seen(double score, ImagePoint[] points, double[] visibility) {}

    private final Net net;
    private final StringVector outputs;

    private PoseModel(byte[] model) {
        try (BytePointer pointer = new BytePointer(model)) {
            net = opencv_dnn.readNetFromTFLite(pointer, model.length);
        }
        outputs = new StringVector("Identity", "Identity_1");
    }

    /** The model that comes with the program; empty where the file is missing or is not the one that was measured. */
    static Optional<PoseModel> open() {
        try (InputStream in = PoseModel.class.getResourceAsStream(RESOURCE)) {
            return in == null ? Optional.empty() : of(in.readAllBytes());
        } catch (IOException e) {
            return Optional.empty(); // a damaged archive: as good as missing
        }
    }

    /** Whatever else is read as a model may end the program, not only the reading: native code trusts it. */
    static Optional<PoseModel> of(byte[] file) {
        return SHA_256.equals(sha256(file)) ? Optional.of(new PoseModel(file)) : Optional.empty();
    }

    static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    Seen look(Frame frame, Region region) {
        try (PointerScope scope = new PointerScope()) {
            Mat blob = new Mat(new int[] {1, 3, SIDE, SIDE}, opencv_core.CV_32F, new FloatPointer(crop(frame, region)));
            net.setInput(blob);
            MatVector out = new MatVector();
            net.forward(out, outputs);
            float[] values = new float[POINTS * VALUES];
            new FloatPointer(out.get(0).data()).get(values);
            float[] score = new float[1];
            new FloatPointer(out.get(1).data()).get(score);
            return seen(region, values, score[0]);
        }
    }

    private static Seen seen(Region region, float[] values, double score) {
        ImagePoint[] points = new ImagePoint[POINTS];
        double[] visibility = new double[POINTS];
        for (int i = 0; i < POINTS; i++) {
            points[i] = region.at(values[VALUES * i] / SIDE, values[VALUES * i + 1] / SIDE);
            visibility[i] = 1 / (1 + Math.exp(-values[VALUES * i + 3]));
        }
        return new Seen(score, points, visibility);
    }

    /** Red, green and blue planes of the region, 0 to 1; where several pixels fall on one, their mean. */
    private static float[] crop(Frame frame, Region region) {
        float[] planes = new float[3 * SIDE * SIDE];
        int fine = Math.max(1, Math.min(4, (int) Math.round(region.sidePx / SIDE)));
        for (int i = 0; i < SIDE * SIDE; i++) {
            for (int k = 0; k < fine * fine; k++) {
                double u = (i % SIDE + (k % fine + 0.5) / fine) / SIDE;
                double v = (i / SIDE + (k / fine + 0.5) / fine) / SIDE;
                ImagePoint p = region.at(u, v);
                int x = (int) Math.floor(p.xPx());
                int y = (int) Math.floor(p.yPx());
                if (x >= 0 && y >= 0 && x < frame.width() && y < frame.height()) {
                    int c = frame.argb()[y * frame.width() + x];
                    float share = 1 / (255f * fine * fine);
                    planes[i] += share * (c >> 16 & 255);
                    planes[SIDE * SIDE + i] += share * (c >> 8 & 255);
                    planes[2 * SIDE * SIDE + i] += share * (c & 255);
                }
            }
        }
        return planes;
    }

    @Override
    public void close() {
        outputs.close();
        net.close();
    }
}

package org.toeline.posture;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.toeline.mark.Club;
import org.toeline.mark.Landmark;

/**
 * How people stand at address with a club: a size, and a shape that goes with it. The shape is one joint normal
 * distribution of all landmarks, brought to one stature: mean and covariance of many {@link DrawnPlayer}s. Limbs of one
 * body go together in it (a long forearm comes with a high shoulder), and leaving landmarks out is leaving rows out. The
 * size is kept apart, since one camera alone sees shapes: were it a part of the covariance, a player of any size would
 * be taken for a smaller one, whose limbs would seem to differ less. It decides only what the marks leave open.
 */
final class Population {

    /** The stature that shapes are brought to, metres. */
    static final double USUAL_STATURE_M = 1.70;

    private static final int DRAWS = 6000;
    /** Any number; fixed, so that the same marks give the same readings. */
    private static final long SEED = 20260514;

    private static final int N = 3 * Landmark.values().length;
    private static final int PAIRS = Landmark.values().length * Landmark.values().length;
    private static final Map<Club, Population> BY_CLUB = new EnumMap<>(Club.class);

    private final double[] mean = new double[N];
    /** Rows, each up to the diagonal. */
    private final double[][] covariance = new double[N][];

    private final double[] lengthMean = new double[PAIRS];
    private final double[] lengthSquare = new double[PAIRS];
    private double logSizeMean;
    private double logSizeSigma;

    private Population(Club club) {
        SplittableRandom random = new SplittableRandom(SEED);
        double[][] draws = new double[DRAWS][N];
        double squares = 0;
        for (double[] draw : draws) {
            DrawnPlayer player = new DrawnPlayer(club, random);
            double logSize = Math.log(player.statureM() / USUAL_STATURE_M);
            logSizeMean += logSize / DRAWS;
            squares += logSize * logSize / DRAWS;
            for (Landmark landmark : Landmark.values()) {
                double size = grows(landmark) ? Math.exp(logSize) : 1;
                for (int i = 0; i < 3; i++) {
                    draw[3 * landmark.ordinal() + i] = player.at(landmark)[i] / size;
                }
            }
            for (int i = 0; i < N; i++) {
                mean[i] += draw[i] / DRAWS;
            }
            lengths(draw);
        }
        logSizeSigma = Math.sqrt(squares - logSizeMean * logSizeMean);
        for (double[] draw : draws) {
            for (int i = 0; i < N; i++) {
                draw[i] -= mean[i];
            }
        }
        // each row by itself, so that all processors have one
        IntStream.range(0, N).parallel().forEach(i -> covariance[i] = row(draws, i));
    }

    /** One row of the covariance, up to the diagonal, of draws less their mean. */
    private static double[] row(double[][] draws, int i) {
        double[] row = new double[i + 1];
        for (double[] draw : draws) {
            double di = draw[i] / (DRAWS - 1);
            for (int j = 0; j <= i; j++) {
                row[j] += di * draw[j];
            }
        }
        return row;
    }

    private void lengths(double[] draw) {
        int landmarks = Landmark.values().length;
        for (int i = 0; i < landmarks; i++) {
            for (int j = 0; j < i; j++) {
                double square = 0;
                for (int k = 0; k < 3; k++) {
                    double d = draw[3 * i + k] - draw[3 * j + k];
                    square += d * d;
                }
                lengthMean[i * landmarks + j] += Math.sqrt(square) / DRAWS;
                lengthSquare[i * landmarks + j] += square / DRAWS;
            }
        }
    }

    /** How far two landmarks are from each other at the usual stature: mean and standard deviation, metres. */
    record Length(double meanM, double sigmaM) {}

    Length length(Landmark a, Landmark b) {
        int i = Math.max(a.ordinal(), b.ordinal()) * Landmark.values().length + Math.min(a.ordinal(), b.ordinal());
        return new Length(lengthMean[i], Math.sqrt(lengthSquare[i] - lengthMean[i] * lengthMean[i]));
    }

    static Population with(Club club) {
        synchronized (BY_CLUB) {
            return BY_CLUB.computeIfAbsent(club, Population::new);
        }
    }

    /** Whether a landmark belongs to the player's body, and so grows with its size. */
    static boolean grows(Landmark landmark) {
        return switch (landmark) {
            case CLUB_HEAD, CROWN, GROUND -> false;
            default -> true;
        };
    }

    double logSizeMean() {
        return logSizeMean;
    }

    double logSizeSigma() {
        return logSizeSigma;
    }

    /** At the usual stature. */
    double mean(Landmark landmark, int axis) {
        return mean[3 * landmark.ordinal() + axis];
    }

    /** The covariance of some landmarks, rows in their order, t h u in turn; lower triangle. */
    double[] covariance(List<Landmark> landmarks) {
        int n = 3 * landmarks.size();
        double[] part = new double[n * n];
        for (int i = 0; i < n; i++) {
            int from = 3 * landmarks.get(i / 3).ordinal() + i % 3;
            for (int j = 0; j <= i; j++) {
                int with = 3 * landmarks.get(j / 3).ordinal() + j % 3;
                part[i * n + j] = from >= with ? covariance[from][with] : covariance[with][from];
            }
        }
        return part;
    }
}

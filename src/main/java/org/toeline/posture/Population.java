package org.toeline.posture;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.toeline.mark.Club;
import org.toeline.mark.Landmark;

/**
 * How people stand at address with a club, as one joint normal distribution of all landmarks: mean and covariance of
 * many {@link DrawnPlayer}s. Limbs of one body go together in it (a long forearm comes with a high shoulder), and
 * leaving landmarks out is leaving rows out. It decides only what the marks leave open.
 */
final class Population {

    private static final int DRAWS = 6000;
    /** Any number; fixed, so that the same marks give the same readings. */
    private static final long SEED = 20260514;
    private static final int N = 3 * Landmark.values().length;
    private static final Map<Club, Population> BY_CLUB = new EnumMap<>(Club.class);

    private final double[] mean = new double[N];
    private final double[] covariance = new double[N * N];

    private Population(Club club) {
        SplittableRandom random = new SplittableRandom(SEED);
        double[][] draws = new double[DRAWS][N];
        for (double[] draw : draws) {
            DrawnPlayer player = new DrawnPlayer(club, random);
            for (Landmark landmark : Landmark.values()) {
                System.arraycopy(player.at(landmark), 0, draw, 3 * landmark.ordinal(), 3);
            }
            for (int i = 0; i < N; i++) {
                mean[i] += draw[i] / DRAWS;
            }
        }
        for (double[] draw : draws) {
            for (int i = 0; i < N; i++) {
                double di = (draw[i] - mean[i]) / (DRAWS - 1);
                for (int j = 0; j <= i; j++) {
                    covariance[i * N + j] += di * (draw[j] - mean[j]);
                }
            }
        }
    }

    static Population with(Club club) {
        synchronized (BY_CLUB) {
            return BY_CLUB.computeIfAbsent(club, Population::new);
        }
    }

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
                part[i * n + j] = from >= with ? covariance[from * N + with] : covariance[with * N + from];
            }
        }
        return part;
    }
}

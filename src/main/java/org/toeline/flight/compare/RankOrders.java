package org.toeline.flight.compare;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Spearman's rank correlation of a few things with each of their orders: what it is when nothing goes together. */
final class RankOrders {

    private static final Map<Integer, double[]> KNOWN = new ConcurrentHashMap<>();

    private RankOrders() {}

    /** Of all n! orders of n things. */
    static double[] correlations(int n) {
        return KNOWN.computeIfAbsent(n, RankOrders::all);
    }

    private static double[] all(int n) {
        int count = 1;
        for (int i = 2; i <= n; i++) {
            count *= i;
        }
        double[] found = new double[count];
        int[] order = new int[n];
        for (int i = 0; i < n; i++) {
            order[i] = i;
        }
        int at = 0;
        do {
            double squares = 0;
            for (int i = 0; i < n; i++) {
                squares += (double) (order[i] - i) * (order[i] - i);
            }
            found[at++] = 1 - 6 * squares / (n * ((double) n * n - 1));
        } while (next(order));
        return found;
    }

    /** The next order by the alphabet, if there is one. */
    private static boolean next(int[] order) {
        int i = order.length - 2;
        while (i >= 0 && order[i] > order[i + 1]) {
            i--;
        }
        if (i < 0) {
            return false;
        }
        int j = order.length - 1;
        while (order[j] < order[i]) {
            j--;
        }
        swap(order, i, j);
        for (int a = i + 1, b = order.length - 1; a < b; a++, b--) {
            swap(order, a, b);
        }
        return true;
    }

    private static void swap(int[] order, int i, int j) {
        int kept = order[i];
        order[i] = order[j];
        order[j] = kept;
    }
}

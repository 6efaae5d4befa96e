// SPDX-License-Identifier: Apache-2.0
package org.earleaf.card;

/**
 * Threshold between two kinds of pixels.
 *
 * <pre>
 * t = argmax w0 w1 (m1 - m0)^2
 *
 * w0, w1  share of pixels up to t and above it; m0, m1 their means
 * Range   histogram of any length; of equal bests the lowest
 * Source  Otsu 1979, IEEE Trans. Syst. Man Cybern. 9:62
 * Check   StainsTest (scikit-image 0.26.0, threshold_otsu)
 * </pre>
 */
final class Otsu {
    private Otsu() {}

    /** The last bin of the lower kind; -1 when all pixels are in one bin. */
    static int threshold(int[] histogram) {
        long all = 0;
        double sum = 0;
        for (int bin = 0; bin < histogram.length; bin++) {
            all += histogram[bin];
            sum += (double) bin * histogram[bin];
        }
        int best = -1;
        double bestSpread = 0;
        long below = 0;
        double sumBelow = 0;
        for (int bin = 0; bin < histogram.length - 1; bin++) {
            below += histogram[bin];
            sumBelow += (double) bin * histogram[bin];
            long above = all - below;
            if (below == 0 || above == 0) {
                continue;
            }
            double apart = sumBelow / below - (sum - sumBelow) / above;
            double spread = (double) below * above * apart * apart;
            if (spread > bestSpread * (1 + 1e-12)) {
                bestSpread = spread;
                best = bin;
            }
        }
        return best;
    }
}

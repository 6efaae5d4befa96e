// SPDX-License-Identifier: Apache-2.0
package org.earleaf.card;

/**
 * Which pixels of a card are stained.
 *
 * <p>The paper is yellow and turns blue: s = (R + G)/2 - B falls from yellow to blue and hardly changes with the
 * brightness of both. Below Otsu's threshold is stain. A card without stains has no two kinds of pixels, but Otsu would
 * still part its noise in two halves; so the two kinds must lie {@link #LEAST_CONTRAST} apart.
 */
final class StainMask {
    /** Least distance of the means of stained and clean pixels [of 255]: own construct, blank scans stay below 20. */
    static final int LEAST_CONTRAST = 45;

    private static final int LOWEST = -255;

    final int width;
    final int height;
    final boolean[] stained;

    StainMask(int width, int height, boolean[] stained) {
        this.width = width;
        this.height = height;
        this.stained = stained;
    }

    static StainMask of(CardPicture card) {
        int[] rgb = card.rgb();
        short[] yellow = new short[rgb.length];
        int[] histogram = new int[255 - LOWEST + 1];
        for (int k = 0; k < rgb.length; k++) {
            int s = ((rgb[k] >> 16 & 255) + (rgb[k] >> 8 & 255)) / 2 - (rgb[k] & 255);
            yellow[k] = (short) s;
            histogram[s - LOWEST]++;
        }
        int threshold = Otsu.threshold(histogram);
        boolean[] stained = new boolean[rgb.length];
        if (threshold >= 0 && contrast(histogram, threshold) >= LEAST_CONTRAST) {
            for (int k = 0; k < rgb.length; k++) {
                stained[k] = yellow[k] - LOWEST <= threshold;
            }
        }
        return new StainMask(card.width(), card.height(), stained);
    }

    private static double contrast(int[] histogram, int threshold) {
        return mean(histogram, threshold + 1, histogram.length) - mean(histogram, 0, threshold + 1);
    }

    private static double mean(int[] histogram, int from, int to) {
        double sum = 0;
        long n = 0;
        for (int bin = from; bin < to; bin++) {
            sum += (double) bin * histogram[bin];
            n += histogram[bin];
        }
        return sum / n;
    }

    /** Without the outermost pixels: stained where the pixel and its neighbours above, below, left and right are. */
    StainMask cores() {
        boolean[] core = new boolean[stained.length];
        for (int y = 0, k = 0; y < height; y++) {
            for (int x = 0; x < width; x++, k++) {
                core[k] = stained[k]
                        && (x == 0 || stained[k - 1])
                        && (x == width - 1 || stained[k + 1])
                        && (y == 0 || stained[k - width])
                        && (y == height - 1 || stained[k + width]);
            }
        }
        return new StainMask(width, height, core);
    }
}

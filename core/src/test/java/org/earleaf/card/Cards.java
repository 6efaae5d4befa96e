// SPDX-License-Identifier: Apache-2.0
package org.earleaf.card;

import java.util.Arrays;
import java.util.SplittableRandom;

/** Pictures of cards: discs thrown at random on yellow paper, edges drawn smooth. Invented, for tests only. */
final class Cards {
    private static final int[] PAPER = {232, 214, 62};
    private static final int[] BLUE = {48, 66, 150};
    static final double DOTS_1200_UM = 25_400 / 1200.0;

    private Cards() {}

    /** Discs whose middles may lie outside, so that the edge cuts some. */
    static CardPicture thrown(double n_cm2, double stain_um, double side_um, SplittableRandom random) {
        double r = stain_um / 2 / DOTS_1200_UM;
        int side = (int) Math.round(side_um / DOTS_1200_UM);
        double wide = side + 2 * r + 4;
        double wide_cm = wide * DOTS_1200_UM / 1e4;
        int n = poisson(n_cm2 * wide_cm * wide_cm, random);
        double[][] discs = new double[n][];
        for (int k = 0; k < n; k++) {
            discs[k] = new double[] {random.nextDouble() * wide - r - 2, random.nextDouble() * wide - r - 2};
        }
        return drawn(side, side, discs, r, random);
    }

    static CardPicture drawn(int width, int height, double[][] discs, double r, SplittableRandom random) {
        float[] ink = new float[width * height];
        for (double[] disc : discs) {
            int top = (int) Math.max(0, Math.floor(disc[1] - r - 1));
            int bottom = (int) Math.min(height - 1, Math.ceil(disc[1] + r + 1));
            int left = (int) Math.max(0, Math.floor(disc[0] - r - 1));
            int right = (int) Math.min(width - 1, Math.ceil(disc[0] + r + 1));
            for (int y = top; y <= bottom; y++) {
                for (int x = left; x <= right; x++) {
                    double inside = .5 + r - Math.hypot(x - disc[0], y - disc[1]);
                    float share = (float) Math.max(0, Math.min(1, inside));
                    ink[y * width + x] = Math.max(ink[y * width + x], share);
                }
            }
        }
        int[] rgb = new int[ink.length];
        for (int k = 0; k < rgb.length; k++) {
            rgb[k] = colour(ink[k], random);
        }
        return new CardPicture(width, height, rgb, DOTS_1200_UM);
    }

    private static int colour(float ink, SplittableRandom random) {
        int pixel = 0;
        int noise = random.nextInt(-5, 6);
        for (int c = 0; c < 3; c++) {
            int v = Math.round(PAPER[c] * (1 - ink) + BLUE[c] * ink) + noise + random.nextInt(-3, 4);
            pixel = pixel << 8 | Math.max(0, Math.min(255, v));
        }
        return pixel;
    }

    /** Mixed with grey. */
    static CardPicture paler(CardPicture card, double share) {
        int[] rgb = Arrays.stream(card.rgb())
                .map(p -> {
                    int pixel = 0;
                    for (int shift = 16; shift >= 0; shift -= 8) {
                        pixel = pixel << 8 | (int) Math.round((p >> shift & 255) * (1 - share) + 128 * share);
                    }
                    return pixel;
                })
                .toArray();
        return new CardPicture(card.width(), card.height(), rgb, card.pixel_um());
    }

    @SuppressWarnings("ArgumentSelectionDefectChecker") // a quarter turn: what was tall is wide
    static CardPicture turned(CardPicture card) {
        int[] rgb = new int[card.rgb().length];
        for (int y = 0; y < card.height(); y++) {
            for (int x = 0; x < card.width(); x++) {
                rgb[x * card.height() + card.height() - 1 - y] = card.rgb()[y * card.width() + x];
            }
        }
        return new CardPicture(card.height(), card.width(), rgb, card.pixel_um());
    }

    private static int poisson(double mean, SplittableRandom random) {
        double left = mean;
        int n = -1;
        while (left >= 0) {
            left -= -Math.log(1 - random.nextDouble());
            n++;
        }
        return n;
    }
}

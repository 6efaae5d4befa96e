// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.drawing;

/** The outline of a corn plant as one path: stalk, alternating leaves, tassel and ear when it has them. */
final class Corn {
    private static final int MOST_LEAVES = 8;
    private static final double LEAVES_PER_COLLAR = .6;

    private Corn() {}

    /**
     * @param x foot of the stalk
     * @param y the ground
     * @param height units of the drawing
     * @param collars leaf collars
     * @param silked whether tassel and ear show
     */
    static String plant(double x, double y, double height, double collars, boolean silked) {
        return plant(x, y, height, 1, collars, silked);
    }

    /** @param scale of the leaves' length against that of the large drawing */
    static String plant(double x, double y, double height, double scale, double collars, boolean silked) {
        StringBuilder d = new StringBuilder();
        if (height < 1) {
            return "";
        }
        double girth = Math.min(2.2, .5 + height * .02);
        move(d, x - girth, y).append('L');
        pair(d, x, y - height * .96).append('L');
        pair(d, x + girth, y).append('z');
        int leaves = (int) Math.round(Ink.clamp(LEAVES_PER_COLLAR * collars, 2, MOST_LEAVES));
        for (int k = 0; k < leaves; k++) {
            leaf(d, x, y, height, (k + .7) / (leaves + .1), k % 2 == 0 ? -scale : scale);
        }
        if (silked) {
            tassel(d, x, y - height * .93, Math.min(15, height * .12));
            ear(d, x + girth * .6, y - height * .42, Math.min(15, height * .11));
        }
        return d.toString();
    }

    /** A crescent that rises from the stalk and hangs over; the middle leaves are the longest. */
    private static void leaf(StringBuilder d, double x, double y, double height, double t, double side) {
        double foot = y - height * .84 * t;
        double length =
                side * (20 + 34 * Math.sin(Math.PI * Math.min(1, .16 + .74 * t))) * Math.min(1, .14 + height / 78);
        double rise = 3 + height * .17 * (.9 + t);
        double tip = foot + rise * (.55 - .85 * t);
        double thick = Math.min(6.2, 1.2 + height * .052);
        move(d, x, foot).append('C');
        pair(d, x + length * .22, foot - rise * .95).append(' ');
        pair(d, x + length * .68, foot - rise * 1.1).append(' ');
        pair(d, x + length, tip).append('C');
        pair(d, x + length * .7, foot - rise + thick * .9).append(' ');
        pair(d, x + length * .3, foot - rise * .72 + thick).append(' ');
        pair(d, x, foot + thick * .75).append('z');
    }

    private static void tassel(StringBuilder d, double x, double y, double size) {
        for (int k = -2; k <= 2; k++) {
            double lean = k * size * .3;
            move(d, x - .7, y).append('L');
            pair(d, x + lean, y - size * (1 - .12 * Math.abs(k))).append('L');
            pair(d, x + .7, y).append('z');
        }
    }

    private static void ear(StringBuilder d, double x, double y, double size) {
        move(d, x, y).append('C');
        pair(d, x + size * .1, y - size * .7).append(' ');
        pair(d, x + size * .5, y - size * 1.2).append(' ');
        pair(d, x + size * .85, y - size * 1.3).append('C');
        pair(d, x + size, y - size * .8).append(' ');
        pair(d, x + size * .6, y - size * .1).append(' ');
        pair(d, x, y).append('z');
    }

    private static StringBuilder move(StringBuilder d, double x, double y) {
        return pair(d.append('M'), x, y);
    }

    private static StringBuilder pair(StringBuilder d, double x, double y) {
        Ink.append(d, x);
        d.append(' ');
        Ink.append(d, y);
        return d;
    }
}

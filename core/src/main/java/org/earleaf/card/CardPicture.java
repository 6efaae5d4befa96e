// SPDX-License-Identifier: Apache-2.0
package org.earleaf.card;

/**
 * A flat picture of a card, as scanned.
 *
 * @param rgb pixels row by row, 0xRRGGBB; higher bits are not read
 * @param pixel_um side of a pixel [um]; 25,400 / dots per inch
 */
public record CardPicture(int width, int height, int[] rgb, double pixel_um) {
    public CardPicture {
        if (width < 1 || height < 1 || rgb.length != width * height) {
            throw new IllegalArgumentException(rgb.length + " pixels for " + width + " x " + height);
        }
        if (!(pixel_um > 0)) {
            throw new IllegalArgumentException("pixels of " + pixel_um + " um");
        }
    }

    /** Without a margin on every side, where scissors and fingers have been. */
    public CardPicture inside(double margin_um) {
        int cut = (int) Math.ceil(margin_um / pixel_um);
        int w = width - 2 * cut;
        int h = height - 2 * cut;
        if (w < 1 || h < 1) {
            throw new IllegalArgumentException("a margin of " + margin_um + " um leaves nothing of the card");
        }
        int[] inner = new int[w * h];
        for (int y = 0; y < h; y++) {
            System.arraycopy(rgb, (y + cut) * width + cut, inner, y * w, w);
        }
        return new CardPicture(w, h, inner, pixel_um);
    }
}

// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import javax.imageio.stream.ImageInputStream;
import org.earleaf.card.CardPicture;
import org.earleaf.exchange.table.CsvText;
import org.earleaf.units.EarleafException;

/** Scan of a card from a PNG or JPEG file. Its size is read and judged before a dot of it is. */
public final class CardImage {
    private static final double UM_PER_IN = 25_400;
    /** Below it a stain of 100 um is not three dots wide. */
    private static final double LEAST_DPI = 600;

    private static final double MOST_DPI = 9600;
    private static final long MOST_DOTS = 60_000_000;
    private static final String EXPECTED =
            "a flat scan of one card, PNG or JPEG, at most 60 million dots, cut to the card";

    private CardImage() {}

    /** @param dpi dots per inch of the scan */
    public static CardPicture read(Path file, double dpi) {
        if (!(dpi >= LEAST_DPI && dpi <= MOST_DPI)) {
            throw EarleafException.of(
                    "--dpi",
                    dpi + " dots per inch",
                    "600 to 9600; 1200 is better than 600",
                    "Scan the card anew: coarser dots hide small drops.");
        }
        String name = CsvText.name(file);
        if (!Files.isRegularFile(file)) {
            throw EarleafException.of(name, "no such file", EXPECTED, "Mend the name.");
        }
        try (ImageInputStream in = ImageIO.createImageInputStream(file.toFile());
                WholePicture whole = WholePicture.find(in)
                        .orElseThrow(() -> EarleafException.of(
                                name, "something that is no picture in PNG or JPEG", EXPECTED, "Save it as PNG."))) {
            return picture(name, whole, UM_PER_IN / dpi);
        } catch (IOException broken) {
            throw EarleafException.of(
                    name,
                    "a picture that cannot be opened whole: it is damaged or cut short",
                    EXPECTED,
                    "Scan or save it anew.");
        }
    }

    private static CardPicture picture(String name, WholePicture whole, double pixel_um) throws IOException {
        int wide = whole.wide();
        int tall = whole.tall();
        if ((long) wide * tall > MOST_DOTS) {
            throw EarleafException.of(name, wide + " x " + tall + " dots", EXPECTED, "Cut it to the card.");
        }
        BufferedImage image = whole.dots(1);
        return new CardPicture(wide, tall, image.getRGB(0, 0, wide, tall, null, 0, wide), pixel_um);
    }
}

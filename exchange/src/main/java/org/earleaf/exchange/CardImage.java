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
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/** Scan of a card from a PNG or JPEG file. Its size is read and judged before a dot of it is. */
public final class CardImage {
    private static final double UM_PER_IN = 25_400;
    /** Below it a stain of 100 um is not three dots wide. */
    private static final double LEAST_DPI = 600;

    private static final double MOST_DPI = 9600;
    private static final long MOST_DOTS = 60_000_000;

    private CardImage() {}

    /** @param dpi dots per inch of the scan */
    public static CardPicture read(Path file, double dpi) {
        if (!(dpi >= LEAST_DPI && dpi <= MOST_DPI)) {
            throw EarleafException.coded("card.dpi", "--dpi", String.valueOf(dpi));
        }
        String name = CsvText.name(file);
        if (!Files.isRegularFile(file)) {
            throw refused("card.no-file", name, Said.of("found.no-file"));
        }
        try (ImageInputStream in = ImageIO.createImageInputStream(file.toFile());
                WholePicture whole = WholePicture.find(in)
                        .orElseThrow(() -> refused("card.no-picture", name, Said.of("found.no-picture")))) {
            return picture(name, whole, UM_PER_IN / dpi);
        } catch (IOException broken) {
            throw refused("card.damaged", name, Said.of("found.damaged-picture"));
        }
    }

    private static EarleafException refused(String code, String name, Said seen) {
        return new EarleafException(Problem.of(code, Said.text(name), seen));
    }

    private static CardPicture picture(String name, WholePicture whole, double pixel_um) throws IOException {
        int wide = whole.wide();
        int tall = whole.tall();
        if ((long) wide * tall > MOST_DOTS) {
            throw refused("card.too-many-dots", name, Said.of("found.dots", "wide", wide, "tall", tall));
        }
        BufferedImage image = whole.dots(1);
        return new CardPicture(wide, tall, image.getRGB(0, 0, wide, tall, null, 0, wide), pixel_um);
    }
}

// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import org.earleaf.exchange.table.CsvText;
import org.earleaf.proof.CardPicture;
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
        try (ImageInputStream in = ImageIO.createImageInputStream(file.toFile())) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
            if (!readers.hasNext()) {
                throw EarleafException.of(name, "something that is no picture", EXPECTED, "Save it as PNG.");
            }
            ImageReader reader = readers.next();
            try {
                reader.setInput(in, true, true);
                return picture(name, reader, UM_PER_IN / dpi);
            } finally {
                reader.dispose();
            }
        } catch (IOException | IllegalArgumentException | IndexOutOfBoundsException broken) {
            throw EarleafException.of(name, "a picture that cannot be opened", EXPECTED, "Scan or save it anew.");
        }
    }

    private static CardPicture picture(String name, ImageReader reader, double pixel_um) throws IOException {
        long wide = reader.getWidth(0);
        long tall = reader.getHeight(0);
        if (wide * tall > MOST_DOTS) {
            throw EarleafException.of(name, wide + " x " + tall + " dots", EXPECTED, "Cut it to the card.");
        }
        BufferedImage image = reader.read(0);
        int w = image.getWidth();
        int h = image.getHeight();
        return new CardPicture(w, h, image.getRGB(0, 0, w, h, null, 0, w), pixel_um);
    }
}

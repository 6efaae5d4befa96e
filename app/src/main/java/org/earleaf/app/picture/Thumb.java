// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.picture;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.ImageIO;
import javax.imageio.stream.ImageInputStream;
import org.earleaf.exchange.WholePicture;
import org.earleaf.units.Said;

/** A picture made small enough for a list; making it also shows that it can be opened. */
final class Thumb {
    private static final int LONG_SIDE = 480;

    private Thumb() {}

    static byte[] of(Stripped picture) {
        try {
            BufferedImage read = read(picture);
            // On white and without transparency: JPEG has none.
            BufferedImage plain = new BufferedImage(read.getWidth(), read.getHeight(), BufferedImage.TYPE_INT_RGB);
            Graphics2D onto = plain.createGraphics();
            onto.drawImage(read, 0, 0, Color.WHITE, null);
            onto.dispose();
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            ImageIO.write(plain, "jpg", out);
            return Stripped.withTurn(out.toByteArray(), picture.turn());
        } catch (IOException | RuntimeException unreadable) {
            throw Photograph.refused("photograph.damaged", Said.of("found.damaged-picture"));
        }
    }

    /** Every k-th dot of every k-th line: of twelve million dots only what is needed is held in memory. */
    private static BufferedImage read(Stripped picture) throws IOException {
        try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(picture.bytes()));
                WholePicture whole = WholePicture.find(in).orElseThrow(() -> new IOException("no reader"))) {
            if (whole.wide() != picture.wide() || whole.tall() != picture.tall()) {
                throw new IOException("two sizes"); // before a dot is read: the size that was held to a limit counts
            }
            return whole.dots(Math.max(1, Math.max(picture.wide(), picture.tall()) / LONG_SIDE));
        }
    }
}

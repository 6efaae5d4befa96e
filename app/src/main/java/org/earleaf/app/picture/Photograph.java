// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.picture;

import java.util.Arrays;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/**
 * A photograph that goes with a reading. What a camera writes beside the picture (where and when it was taken, with
 * which device, a second picture) is left out before anything is kept; only how to turn it stays.
 *
 * @param type "image/jpeg" or "image/png"
 * @param small the same picture for a list, JPEG
 * @param wide as it is shown, turned
 */
public record Photograph(byte[] image, String type, byte[] small, int wide, int tall) {
    /** Largest file that is taken. */
    public static final int MOST_BYTES = 8 << 20;
    /** A small file may unfold to a picture that fills the memory. */
    static final long MOST_PIXELS = 60_000_000L;

    /** What is known of a kept photograph without its picture. */
    public record Note(String id, String reading, String type, int wide, int tall) {}

    /** From what was sent; refused with the reason when it is no picture that can be kept. */
    public static Photograph of(byte[] sent) {
        if (sent.length > MOST_BYTES) {
            throw refused(
                    "photograph.too-large", Said.of("found.mb", "mb", sent.length >> 20), "most", MOST_BYTES >> 20);
        }
        Stripped picture = Stripped.of(sent);
        if (picture.wide() < 1 || picture.tall() < 1 || (long) picture.wide() * picture.tall() > MOST_PIXELS) {
            throw refused(
                    "photograph.too-many-dots",
                    Said.of("found.dots", "wide", picture.wide(), "tall", picture.tall()),
                    "most",
                    MOST_PIXELS / 1_000_000);
        }
        byte[] small = Thumb.of(picture);
        boolean turned = picture.turn() >= 5;
        return new Photograph(
                picture.bytes(),
                picture.type(),
                small,
                turned ? picture.tall() : picture.wide(),
                turned ? picture.wide() : picture.tall());
    }

    static EarleafException refused(String code, Said seen, Object... namesAndValues) {
        return new EarleafException(Problem.of(code, Said.of("where.photograph"), seen, namesAndValues));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Photograph p && Arrays.equals(image, p.image);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(image);
    }

    @Override
    public String toString() {
        return type + ", " + wide + " by " + tall;
    }
}

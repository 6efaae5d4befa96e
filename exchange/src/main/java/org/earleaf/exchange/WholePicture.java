// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.awt.image.BufferedImage;
import java.io.Closeable;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.zip.CRC32;
import javax.imageio.IIOException;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;

/**
 * A JPEG or PNG that is read whole or not at all. A decoder fills what is missing with grey and only warns; dots that no
 * camera saw would be measured like all others. Here whatever it warns of is refused, and so is a PNG whose parts do not
 * add up to the sums written beside them (which the JDK's reader does not look at).
 *
 * <p>Its size is known before a dot of it is read, so that it can be held to a limit first. Every failure is an
 * {@link IOException}.
 *
 * <p>PNG: ISO/IEC 15948, clause 5.
 */
public final class WholePicture implements Closeable {
    private static final Set<String> FORMATS = Set.of("jpeg", "png");
    private static final byte[] PNG = {(byte) 0x89, 'P', 'N', 'G', 0x0D, 0x0A, 0x1A, 0x0A};

    private final ImageReader reader;
    /** Kept until the decoder is done: it must not be stopped by force in the midst of its work. */
    private final List<String> warnings = new ArrayList<>();

    private WholePicture(ImageInputStream in, ImageReader reader) {
        this.reader = reader;
        reader.addIIOReadWarningListener((from, warning) -> warnings.add(warning));
        reader.setInput(in, true, true);
    }

    /** Empty when it is neither JPEG nor PNG; who opened the stream closes it. */
    public static Optional<WholePicture> find(ImageInputStream in) throws IOException {
        Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
        while (readers.hasNext()) {
            ImageReader reader = readers.next();
            if (FORMATS.contains(reader.getFormatName().toLowerCase(Locale.ROOT))) {
                checkSums(in); // first, for the decoder lets go of what it has read
                return Optional.of(new WholePicture(in, reader));
            }
            reader.dispose();
        }
        return Optional.empty();
    }

    public int wide() throws IOException {
        return whole(() -> reader.getWidth(0));
    }

    public int tall() throws IOException {
        return whole(() -> reader.getHeight(0));
    }

    /** @param every 1 for all of it; k for every k-th dot of every k-th line, so that little memory is held */
    public BufferedImage dots(int every) throws IOException {
        ImageReadParam param = reader.getDefaultReadParam();
        param.setSourceSubsampling(every, every, 0, 0);
        return whole(() -> reader.read(0, param));
    }

    @FunctionalInterface
    private interface Read<T> {
        T it() throws IOException;
    }

    private <T> T whole(Read<T> read) throws IOException {
        T found;
        try {
            found = read.it();
        } catch (RuntimeException broken) { // decoders throw many kinds on a broken file
            throw new IIOException(broken.getMessage(), broken);
        }
        if (!warnings.isEmpty()) {
            throw new IIOException(warnings.toString());
        }
        return found;
    }

    /** Of a PNG: the sum after every part. Nothing to check in a JPEG. */
    private static void checkSums(ImageInputStream in) throws IOException {
        byte[] start = new byte[PNG.length];
        in.mark();
        in.readFully(start);
        if (Arrays.equals(start, PNG)) {
            checkParts(in);
        }
        in.reset();
    }

    private static void checkParts(ImageInputStream in) throws IOException {
        byte[] buffer = new byte[1 << 16];
        String name = "";
        while (!name.equals("IEND")) {
            long left = in.readUnsignedInt() + 4;
            CRC32 sum = new CRC32();
            for (boolean first = true; left > 0; first = false) {
                int here = (int) Math.min(left, buffer.length);
                in.readFully(buffer, 0, here);
                sum.update(buffer, 0, here);
                name = first ? new String(buffer, 0, 4, StandardCharsets.ISO_8859_1) : name;
                left -= here;
            }
            if (in.readUnsignedInt() != sum.getValue()) {
                throw new IIOException(name);
            }
        }
    }

    @Override
    public void close() {
        reader.dispose();
    }
}

// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.picture;

import java.io.ByteArrayOutputStream;
import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import org.earleaf.units.Said;

/**
 * A picture's file without what stands beside the picture: of a JPEG all APP segments but for colour, comments, and what
 * follows its end; of a PNG every chunk that the picture does not need. Its dots are not touched.
 *
 * <p>JPEG: ITU-T T.81, annex B; the turn: Exif 2.3, tag 0x0112; PNG: ISO/IEC 15948.
 *
 * @param turn 1 to 8 as in Exif; 1 is upright
 */
@SuppressWarnings("ByteBufferBackingArray") // every buffer here wraps a whole array
record Stripped(byte[] bytes, String type, int wide, int tall, int turn) {
    private static final String ICC = "ICC_PROFILE\0";
    private static final String EXIF = "Exif\0\0";
    private static final int JFIF_ALONE = 14;
    private static final long PNG = 0x89504E470D0A1A0AL;
    private static final Set<String> PNG_NEEDS =
            Set.of("IHDR", "PLTE", "IDAT", "IEND", "tRNS", "gAMA", "cHRM", "sRGB", "iCCP", "sBIT", "bKGD");

    static Stripped of(byte[] file) {
        ByteBuffer in = ByteBuffer.wrap(file);
        try {
            if (file.length > 3 && (in.getInt(0) >>> 8) == 0xFFD8FF) {
                return jpeg(in);
            }
            if (file.length > 8 && in.getLong(0) == PNG) {
                return png(in);
            }
        } catch (BufferUnderflowException | IllegalArgumentException | IndexOutOfBoundsException cutShort) {
            throw Photograph.refused("photograph.cut-short", Said.of("found.cut-short"));
        }
        throw Photograph.refused(
                "photograph.no-picture", Said.of(file.length == 0 ? "found.empty-file" : "found.no-photograph"));
    }

    private static Stripped jpeg(ByteBuffer in) {
        ByteArrayOutputStream out = new ByteArrayOutputStream(in.capacity());
        int wide = 0;
        int tall = 0;
        int turn = 1;
        in.position(2);
        int marker = marker(in);
        while (marker != 0xD9) {
            int at = in.position();
            int length = in.getShort() & 0xFFFF;
            ByteBuffer body = in.slice(at + 2, length - 2);
            if (marker == 0xE1 && starts(body, EXIF)) {
                turn = turn(body);
            }
            if (isFrame(marker)) {
                tall = body.getShort(1) & 0xFFFF;
                wide = body.getShort(3) & 0xFFFF;
            }
            if (isKept(marker, body)) {
                out.write(0xFF);
                out.write(marker);
                out.write(in.array(), at, length);
            }
            in.position(at + length);
            if (marker == 0xDA) {
                copyScan(in, out);
            }
            marker = marker(in);
        }
        out.write(0xFF);
        out.write(0xD9);
        return new Stripped(withTurn(out.toByteArray(), turn), "image/jpeg", wide, tall, turn);
    }

    /** The next marker, past bytes that fill the space before it. */
    private static int marker(ByteBuffer in) {
        if ((in.get() & 0xFF) != 0xFF) {
            throw new IllegalArgumentException("no marker");
        }
        int marker = 0xFF;
        while (marker == 0xFF) {
            marker = in.get() & 0xFF;
        }
        return marker;
    }

    /** The dots themselves, up to the next marker that is not of them. */
    private static void copyScan(ByteBuffer in, ByteArrayOutputStream out) {
        int from = in.position();
        while (true) {
            if ((in.get() & 0xFF) == 0xFF) {
                int next = in.get(in.position()) & 0xFF;
                boolean ofTheDots = next == 0 || (next >= 0xD0 && next <= 0xD7);
                if (!ofTheDots && next != 0xFF) {
                    break;
                }
            }
        }
        in.position(in.position() - 1);
        out.write(in.array(), from, in.position() - from);
    }

    private static boolean isFrame(int marker) {
        return marker >= 0xC0 && marker <= 0xCF && marker != 0xC4 && marker != 0xC8 && marker != 0xCC;
    }

    /** APP0 (JFIF, without a small picture), APP14 (how colours were turned) and colour profiles say how to show it. */
    private static boolean isKept(int marker, ByteBuffer body) {
        boolean app = marker >= 0xE0 && marker <= 0xEF;
        boolean colour = (marker == 0xE0 && body.remaining() == JFIF_ALONE)
                || marker == 0xEE
                || (marker == 0xE2 && starts(body, ICC));
        return marker != 0xFE && (!app || colour);
    }

    private static boolean starts(ByteBuffer body, String word) {
        byte[] wanted = word.getBytes(StandardCharsets.ISO_8859_1);
        return body.remaining() >= wanted.length && ByteBuffer.wrap(wanted).equals(body.slice(0, wanted.length));
    }

    /** As it says; upright when what it says cannot be read, for the picture itself may be whole. */
    private static int turn(ByteBuffer exif) {
        try {
            return findTurn(exif);
        } catch (IndexOutOfBoundsException | IllegalArgumentException unreadable) {
            return 1;
        }
    }

    private static int findTurn(ByteBuffer exif) {
        ByteBuffer tiff = exif.slice(6, exif.capacity() - 6);
        tiff.order(tiff.get(0) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        int at = tiff.getInt(4);
        int entries = tiff.getShort(at) & 0xFFFF;
        for (int k = 0; k < entries; k++) {
            int entry = at + 2 + 12 * k;
            if ((tiff.getShort(entry) & 0xFFFF) == 0x0112) {
                int turn = tiff.getShort(entry + 8) & 0xFFFF;
                return turn >= 1 && turn <= 8 ? turn : 1;
            }
        }
        return 1;
    }

    /** A JPEG with nothing in its Exif but how to turn it. */
    static byte[] withTurn(byte[] rest, int turn) {
        boolean hasStart = rest.length > 1 && (rest[0] & 0xFF) == 0xFF && (rest[1] & 0xFF) == 0xD8;
        int from = hasStart ? 2 : 0;
        ByteBuffer out = ByteBuffer.allocate(rest.length - from + 2 + (turn == 1 ? 0 : 36));
        out.putShort((short) 0xFFD8);
        if (turn != 1) {
            out.putShort((short) 0xFFE1).putShort((short) 34);
            out.put(EXIF.getBytes(StandardCharsets.ISO_8859_1));
            out.putInt(0x4D4D002A).putInt(8).putShort((short) 1);
            out.putShort((short) 0x0112)
                    .putShort((short) 3)
                    .putInt(1)
                    .putShort((short) turn)
                    .putShort((short) 0);
            out.putInt(0);
        }
        return out.put(rest, from, rest.length - from).array();
    }

    private static Stripped png(ByteBuffer in) {
        ByteArrayOutputStream out = new ByteArrayOutputStream(in.capacity());
        out.write(in.array(), 0, 8);
        in.position(8);
        String name = "";
        while (!name.equals("IEND")) {
            int at = in.position();
            int length = in.getInt();
            if (length < 0) {
                throw new IllegalArgumentException("a chunk of no length");
            }
            byte[] word = new byte[4];
            in.get(word);
            name = new String(word, StandardCharsets.ISO_8859_1);
            in.position(at + 12 + length);
            if (PNG_NEEDS.contains(name)) {
                out.write(in.array(), at, 12 + length);
            }
        }
        return new Stripped(out.toByteArray(), "image/png", in.getInt(16), in.getInt(20), 1);
    }
}

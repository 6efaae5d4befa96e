// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange.table;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.earleaf.units.Said;

/** A file's text in UTF-8, with or without a byte order mark; says where it is not UTF-8. */
public final class CsvText {
    /** A farm's hundred years of days are 4 MB, and its ten years of hours 8 MB. */
    private static final int MOST_BYTES = 32 << 20;

    private CsvText() {}

    /** Text of the file; empty when it cannot be read, the reason being noted. */
    public static Optional<String> read(Path file, Findings findings) {
        String name = name(file);
        // Asked before it is opened: a pipe would wait for its writer, a device never end.
        if (!Files.isRegularFile(file)) {
            findings.problem("file.no-file", Place.of(name), Said.of("found.no-plain-file"));
            return Optional.empty();
        }
        byte[] bytes;
        try (InputStream in = Files.newInputStream(file)) {
            bytes = in.readNBytes(MOST_BYTES + 1);
        } catch (IOException e) {
            findings.problem("file.unreadable", Place.of(name), Said.of("found.unreadable-file"));
            return Optional.empty();
        }
        if (bytes.length > MOST_BYTES) {
            findings.problem("file.too-large", Place.of(name), Said.of("found.more-than-mb", "most", MOST_BYTES >> 20));
            return Optional.empty();
        }
        Optional<Said> foreign = foreign(bytes);
        if (foreign.isPresent()) {
            findings.problem("file.not-utf-8", new Place(name, 1, ""), foreign.get());
            return Optional.empty();
        }
        return decode(bytes, name, findings);
    }

    /** File name for messages; with its folder when that is weather. */
    public static String name(Path file) {
        Path folder = file.toAbsolutePath().getParent();
        boolean inWeather = folder != null && folder.endsWith("weather");
        return inWeather ? "weather/" + file.getFileName() : file.getFileName().toString();
    }

    private static Optional<Said> foreign(byte[] b) {
        if (starts(b, 0xFF, 0xFE) || starts(b, 0xFE, 0xFF)) {
            return Optional.of(Said.of("found.utf-16"));
        }
        if (starts(b, 'P', 'K', 3, 4)) {
            return Optional.of(Said.of("found.archive"));
        }
        return Optional.empty();
    }

    private static boolean starts(byte[] bytes, int... with) {
        if (bytes.length < with.length) {
            return false;
        }
        for (int k = 0; k < with.length; k++) {
            if ((bytes[k] & 0xFF) != with[k]) {
                return false;
            }
        }
        return true;
    }

    private static Optional<String> decode(byte[] bytes, String name, Findings findings) {
        int start = starts(bytes, 0xEF, 0xBB, 0xBF) ? 3 : 0;
        ByteBuffer in = ByteBuffer.wrap(bytes, start, bytes.length - start);
        CharBuffer out = CharBuffer.allocate(bytes.length + 1);
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        CoderResult result = decoder.decode(in, out, true);
        if (result.isError()) {
            String odd = String.format("%02X", bytes[in.position()] & 0xFF);
            findings.problem(
                    "file.not-utf-8",
                    new Place(name, lineOf(bytes, in.position()), ""),
                    Said.of("found.odd-byte", "odd", odd));
            return Optional.empty();
        }
        return Optional.of(out.flip().toString());
    }

    private static int lineOf(byte[] bytes, int position) {
        int line = 1;
        for (int k = 0; k < position; k++) {
            if (bytes[k] == '\n') {
                line++;
            }
        }
        return line;
    }
}

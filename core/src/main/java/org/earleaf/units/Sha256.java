// SPDX-License-Identifier: Apache-2.0
package org.earleaf.units;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 (FIPS 180-4) of text in UTF-8. */
public final class Sha256 {
    private Sha256() {}

    /** Of some texts, one behind the other; 64 hexadecimal digits. */
    public static String hex(String... texts) {
        MessageDigest sha = digest();
        for (String text : texts) {
            sha.update(text.getBytes(StandardCharsets.UTF_8));
        }
        return HexFormat.of().formatHex(sha.digest());
    }

    private static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            // Every Java platform must have it (java.security.MessageDigest).
            throw new AssertionError(e);
        }
    }
}

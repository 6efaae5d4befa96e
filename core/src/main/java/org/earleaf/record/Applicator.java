// SPDX-License-Identifier: Apache-2.0
package org.earleaf.record;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * Who put it on, and for whom.
 *
 * @param name the certified applicator who applied or supervised; for plain fertiliser whoever made the pass
 * @param certification number of the certificate, empty when none
 * @param customer name, for commercial work
 * @param customerAddress address, for commercial work
 * @param helper name of an uncertified applicator under supervision, empty when none
 * @param helperTraining where that person's training record is kept
 */
public record Applicator(
        Kind kind,
        String name,
        String certification,
        String customer,
        String customerAddress,
        String helper,
        String helperTraining) {
    /** Whose ground: own (private) or a customer's (commercial); the law asks the latter for more. */
    public enum Kind {
        PRIVATE,
        COMMERCIAL;

        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        public static Optional<Kind> findByWord(String word) {
            return Arrays.stream(values())
                    .filter(k -> k.word().equalsIgnoreCase(word.trim()))
                    .findFirst();
        }
    }

    public static Applicator onOwnGround(String name, String certification) {
        return new Applicator(Kind.PRIVATE, name, certification, "", "", "", "");
    }
}

// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.util.Optional;
import java.util.stream.Collectors;
import org.earleaf.mix.MixForm;

/** Codes of what a product is, as the mixing order knows them; words used in the US for the same are understood. */
final class Formulation {
    private Formulation() {}

    static Optional<String> find(String word) {
        return MixForm.find(word).map(MixForm::code);
    }

    static boolean isLiquid(String code) {
        return MixForm.find(code).filter(MixForm::isLiquid).isPresent();
    }

    static String words() {
        return MixForm.listAll().stream().map(MixForm::code).sorted().collect(Collectors.joining(" "));
    }
}

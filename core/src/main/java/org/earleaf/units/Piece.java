// SPDX-License-Identifier: Apache-2.0
package org.earleaf.units;

import java.util.function.Function;
import java.util.function.Supplier;

/** What became of a piece of work. A pool would throw a copy of what went wrong, without its message. */
record Piece<B>(Supplier<B> result) {
    static <A, B> Piece<B> of(A piece, Function<? super A, ? extends B> work) {
        try {
            B result = work.apply(piece);
            return new Piece<>(() -> result);
        } catch (RuntimeException wrong) {
            return new Piece<>(() -> {
                throw wrong;
            });
        }
    }

    B get() {
        return result.get();
    }
}

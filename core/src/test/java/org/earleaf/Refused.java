// SPDX-License-Identifier: Apache-2.0
package org.earleaf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;

/** What keeps an input out: the first problem of its refusal, to be asked for code and values. */
public final class Refused {
    private Refused() {}

    public static Problem by(ThrowingCallable work) {
        EarleafException refusal = catchThrowableOfType(EarleafException.class, work);
        assertThat(refusal).as("it went through").isNotNull();
        return refusal.problems().get(0);
    }

    public static String code(ThrowingCallable work) {
        return by(work).code();
    }
}

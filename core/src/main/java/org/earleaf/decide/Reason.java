// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import org.earleaf.units.Said;

/** A reason kept as a record of facts; {@link #said} names its sentence and the values in it. */
public interface Reason {
    Said said();
}

// SPDX-License-Identifier: Apache-2.0
package org.earleaf.pressure;

import org.earleaf.units.Said;

/** A reason kept as a record of facts; {@link #said} names its sentence and the values in it. */
public interface ProtectionReason {
    Said said();
}

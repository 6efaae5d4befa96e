// SPDX-License-Identifier: Apache-2.0
package org.earleaf.pressure;

/** A reason kept as a record of facts; {@link #sentence} says it in US units for people. */
public interface ProtectionReason {
    String sentence();
}

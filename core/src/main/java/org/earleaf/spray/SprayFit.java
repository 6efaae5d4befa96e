// SPDX-License-Identifier: Apache-2.0
package org.earleaf.spray;

/**
 * How an hour suits a spray pass by its weather, best first. Fit never means allowed: the label, and wind and inversion
 * checked on the spot, decide.
 */
public enum SprayFit {
    FIT,
    WITH_CARE,
    UNFIT;

    public SprayFit worse(SprayFit other) {
        return compareTo(other) >= 0 ? this : other;
    }
}

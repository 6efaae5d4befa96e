// SPDX-License-Identifier: Apache-2.0
package org.earleaf.pressure;

/**
 * The fungicide of a pass.
 *
 * @param cost_usdHa product on a hectare
 */
public record Fungicide(String product, FungicideKind kind, double cost_usdHa) {}

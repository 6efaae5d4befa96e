// SPDX-License-Identifier: Apache-2.0
package org.earleaf.protection;

/**
 * The fungicide of a pass.
 *
 * @param surfactant whether a surfactant or oil goes with it
 * @param cost_usdHa product on a hectare
 */
public record Fungicide(String product, FungicideKind kind, boolean surfactant, double cost_usdHa) {}

// SPDX-License-Identifier: Apache-2.0
package org.earleaf.weather;

/**
 * One possible course of the weather: what was observed, and from there on one way it may go.
 *
 * @param label the year that was taken for the future ("1993"), "generated 4", or the year itself when all is observed
 * @param weight share of this future among its kin; they add up to 1
 * @param weather from the start of the run to its end, without gaps
 */
public record Future(String label, double weight, WeatherSeries weather) {}

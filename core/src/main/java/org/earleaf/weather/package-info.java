/**
 * Weather: daily and hourly facts of one place, what can be computed from them alone, and possible futures.
 *
 * <p>In: units. Out: {@link org.earleaf.weather.WeatherSeries} (contiguous days, gaps filled and flagged),
 * {@link org.earleaf.weather.Forcing} (what the season model eats: radiation, reference evapotranspiration, growing
 * degree days per day), analog years and the weather generator. Not here: hours fit for spraying (spray).
 */
package org.earleaf.weather;

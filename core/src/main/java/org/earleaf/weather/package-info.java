/**
 * Weather: daily and hourly facts of one place, what can be computed from them alone, and possible futures.
 *
 * <p>In: units. Out: {@link org.earleaf.weather.WeatherSeries} (contiguous days, gaps filled and flagged),
 * {@link org.earleaf.weather.Forcing} (what the season model eats: radiation, reference evapotranspiration, growing
 * degree days per day), analog years and the weather generator; {@link org.earleaf.weather.SprayHours}, the hours in
 * which a pass may be made by its weather, each other hour with its reason.
 */
package org.earleaf.weather;

/**
 * Units: value records, conversions, and the one way to say that an input is wrong.
 *
 * <p>In: nothing. Out: {@link org.earleaf.units.Units} (exact factors), {@link org.earleaf.units.Quantity} (a number
 * with its unit, as people write it), {@link org.earleaf.units.Problem} and
 * {@link org.earleaf.units.EarleafException}. Inside Earleaf everything is SI or its agronomic multiples (mm, kg/ha,
 * °C, MJ/m2); US units live only in factories here, in exchange and in app.
 */
package org.earleaf.units;

// SPDX-License-Identifier: Apache-2.0
package org.earleaf.units;

/**
 * What kind of quantity a number inside Earleaf is, so that the doors can write it in US or metric units. The unit
 * named here is the one inside; how it is shown is no matter of core.
 */
public enum Measure {
    /** Mass of the element nitrogen on ground, kg/ha. */
    NITROGEN_RATE("kg/ha"),
    /** Mass of a dry product on ground, kg/ha. */
    MASS_RATE("kg/ha"),
    /** Active ingredient on ground, kg/ha. */
    ACTIVE_RATE("kg/ha"),
    /** Liquid product or carrier on ground, L/ha. */
    VOLUME_RATE("L/ha"),
    /** Small amounts of a liquid product on ground, L/ha; US in fl oz/ac. */
    SMALL_VOLUME_RATE("L/ha"),
    MASS("kg"),
    VOLUME("m3"),
    /** Small amounts of a liquid, m3; US in fl oz. */
    SMALL_VOLUME("m3"),
    FLOW("m3/s"),
    PRESSURE("Pa"),
    DENSITY("kg/m3"),
    AREA("ha"),
    /** Height of the crop, cm. */
    HEIGHT("cm"),
    /** Short lengths of machines, such as a row width or the height of a boom: m, shown in in or cm. */
    SPAN("m"),
    /** A hole of an outlet: m, shown in in or mm. */
    HOLE("m"),
    /** Depth in the soil: mm, shown in in or cm. */
    DEPTH("mm"),
    /** Length of a boom, hose or buffer: m, shown in ft or m. */
    LENGTH("m"),
    /** Way driven: m, shown in mi or km. */
    DISTANCE("m"),
    /** Rain and water in the soil: mm, shown in in or mm. */
    RAIN("mm"),
    TEMPERATURE("°C"),
    /** A difference of temperatures, K. */
    TEMPERATURE_STEP("K"),
    /** Heat sum of corn, °F d as the trade counts it. */
    HEAT("°F d"),
    /** Speed of a rig, m/s; metric in km/h. */
    SPEED("m/s"),
    /** Wind, m/s; metric in m/s. */
    WIND("m/s"),
    /** Dry grain on ground, kg/ha; shown at the trade's 15.5 % moisture. */
    YIELD("kg/ha"),
    /** Plants on ground, 1/m2. */
    PLANTS("1/m2"),
    MONEY("$"),
    /** Money on ground, $/ha. */
    MONEY_RATE("$/ha"),
    /** Price of nitrogen, $/kg. */
    NITROGEN_PRICE("$/kg"),
    /** Price of corn, $ a bushel in both systems. */
    CORN_PRICE("$/bu"),
    /** Share of equally likely years, 0 to 1; shown as "8 of 10". */
    CHANCE("1"),
    /** Share, 0 to 1; shown in per cent. */
    SHARE("1"),
    /** Time that work takes, s; shown in minutes or hours. */
    DURATION("s"),
    DAYS("d"),
    HOURS("h"),
    CONCENTRATION("mg/kg");

    private final String inside;

    Measure(String inside) {
        this.inside = inside;
    }

    /** The unit inside Earleaf. */
    public String inside() {
        return inside;
    }

    /** A quantity of this kind, in the unit inside. */
    public Measured of(double value) {
        return new Measured(value, this);
    }
}

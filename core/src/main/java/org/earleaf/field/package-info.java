/**
 * Field: the crop and ground as facts: zones, passes made or planned, readings, irrigation, manure, past
 * years.
 *
 * <p>In: units, weather, soil. Out: records only; nothing here computes a season. Passes made live here, so that the
 * season model can read them while the filing of records stays downstream.
 */
package org.earleaf.field;
